namespace Gaugerod.Files.Jobs;

/// <summary>The groups that tell what is bought by the pack and where it is used.</summary>
internal static class SupplyForms
{
    private const string ASmallLength = "a length such as \"1/8\"";

    public static readonly Form Supply = new(
        "supply", new("name", "a name such as \"wall mortar\"", true), new("kind", "\"mortar\"", true), new("yield", "what a pack makes, such as \"0.66 ft3\"", true), new("pack", "what a pack is called, such as \"50 lb bag\""), new("loss", "a number of hundredths"),
        new("potLife", WorkForms.ASpan), new("openTime", WorkForms.ASpan), new("holds", "a group such as { \"grout\": \"24 h\" }"),
        new("covers", "what a pack of membrane covers, such as \"55 ft2\""), new("dry", "a film such as \"25 mil\""), new("solids", "hundredths of volume such as 50"));

    public static readonly Form Under = new("under", new("primer", "a group such as { \"of\": \"primer\" }"), new("membrane", "a group such as { \"of\": \"membrane\" }"), new("filler", "a filler's name"));

    public static readonly Form Membrane = new(
        "membrane", new("of", "a membrane's name", true), new("coats", "a whole number such as 2"), new("to", Forms.ALength), new("bands", Forms.ALength), new("band", "a band's name"));

    public static readonly Form Setting = new(
        "setting", new("mortar", "a mortar's name"), new("trowel", "a group such as { \"width\": \"1/4\", \"depth\": \"3/8\", \"tooth\": \"1/4\" }"), new("backButter", ASmallLength), new("grout", "a grout's name"), new("jointDepth", ASmallLength),
        new("sealant", "a sealant's name"), new("sealantDepth", ASmallLength), new("backer", "a backer's name"), new("spacers", "a group such as { \"of\": \"1/8 spacers\" }"), new("clips", "a group such as { \"of\": \"1/16 clips\", \"every\": \"12\" }"),
        new("wedges", "the name of wedges"), new("sealer", "a group such as { \"of\": \"stone sealer\" }"), new("batten", "a group such as { \"of\": \"batten\" }"));

    public static readonly Form Batten = new("batten", new("of", "a batten's name", true), new("screws", "the name of a supply of screws"), new("every", "a length such as \"18\""));

    public static readonly Form Fill = new("fill", new("name", "a name such as \"bench\"", true), new("of", "the name of a supply of masonry", true), new("length", Forms.ALength, true), new("width", Forms.ALength, true), new("height", Forms.ALength, true));

    public static readonly Form Between = new("between", new("of", "a supply's name", true), new("every", Forms.ALength));

    public static readonly Form Coated = new("coated", new("of", "a supply's name", true), new("coats", "a whole number such as 2"));

    public static readonly Form Trowel = new("trowel", new("width", ASmallLength, true), new("depth", ASmallLength, true), new("tooth", ASmallLength, true), new("shape", "\"square\""), new("angle", "degrees"));

    public static readonly IReadOnlyList<Form> All = [Supply, Setting, Trowel, Between, Batten, Fill, Coated, Under, Membrane];
}
