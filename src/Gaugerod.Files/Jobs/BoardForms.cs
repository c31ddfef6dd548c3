namespace Gaugerod.Files.Jobs;

/// <summary>The groups of the job file that tell of board.</summary>
internal static class BoardForms
{
    private const string ASmallLength = "a length such as \"1/8\"";

    public static readonly Field OfFace = new("board", "a group such as { \"of\": \"half inch board\" }");

    public static readonly Form Board = new(
        "board",
        new("name", "a name such as \"half inch board\"", true), new("width", Forms.ALength, true), new("length", Forms.ALength, true), new("thickness", ASmallLength),
        new("gap", ASmallLength), new("screwsApart", "a length such as \"18\""), new("inset", "a length such as \"1/2\""), new("screws", "the name of a supply of screws"), new("tape", "the name of a supply of tape"),
        new("breakage", "a whole number such as 3"), new("tapeMortar", "a group such as { \"of\": \"wall mortar\" }"));

    public static readonly Form TapeMortar = new("tapeMortar", new("of", "a mortar's name", true), new("width", "a length such as \"2\"", true), new("thickness", ASmallLength, true));

    public static readonly Form Boarding = new(
        "boarding",
        new("of", "a board's name", true), new("studs", "a group such as { \"from\": \"18\", \"spacing\": \"18\" }"), new("lay", "\"across\" or \"along\""), new("foot", ASmallLength), new("edges", ASmallLength), new("wet", Forms.ALength));

    public static readonly Form Studs = new(
        "studs", new("from", "a length such as \"18\""), new("spacing", "a length such as \"18\""), new("at", "a list of places [ , ]"), new("width", "a length such as \"2\""), new("run", "\"plumb\" or \"level\""));

    public static readonly IReadOnlyList<Form> All = [Board, TapeMortar, Boarding, Studs];
}
