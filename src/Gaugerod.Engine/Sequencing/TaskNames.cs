namespace Gaugerod.Engine.Sequencing;

/// <summary>What tasks are called. A kind's word stands for all its tasks.</summary>
public static class TaskNames
{
    /// <summary>The kinds that are done at a pace, in the trade's order, and their words.</summary>
    public static IReadOnlyList<(WorkKind Kind, string Word)> Words { get; } =
    [
        (WorkKind.Protection, "protection"), (WorkKind.TearOut, "tear-out"), (WorkKind.Boards, "boards"), (WorkKind.Seams, "seams"), (WorkKind.Levelling, "levelling"), (WorkKind.Bed, "bed"),
        (WorkKind.Primer, "primer"), (WorkKind.Membrane, "membrane"), (WorkKind.FloodTest, "flood test"), (WorkKind.Lines, "lines"), (WorkKind.Setting, "setting"), (WorkKind.Returns, "returns"),
        (WorkKind.FloorCover, "floor cover"), (WorkKind.Trims, "trims"), (WorkKind.Grouting, "grouting"), (WorkKind.SoftJoints, "soft joints"), (WorkKind.Sealer, "sealer"), (WorkKind.HandOver, "hand-over"),
    ];

    /// <summary>The first use, which comes of itself.</summary>
    public const string FirstUse = "first use";

    /// <summary>The moment before all work.</summary>
    public const string Start = "start";

    /// <summary>The word of a kind.</summary>
    public static string Word(WorkKind kind) => kind switch
    {
        WorkKind.FirstUse => FirstUse,
        WorkKind.Arrival => "arrival",
        WorkKind.Own => "own task",
        _ => Words.First(known => known.Kind == kind).Word,
    };

    /// <summary>The setting of a face, from its starting line up.</summary>
    public static string Set(string face) => "set " + face;

    /// <summary>The setting of the cut course below a level line of it.</summary>
    public static string Below(string face) => Set(face) + ", below the line";

    /// <summary>The setting of what waits for something made elsewhere.</summary>
    public static string Waiting(string face, string made) => $"{Set(face)}, with {made}";

    /// <summary>The returns of niches and windows on a face.</summary>
    public static string Returns(string face) => "returns on " + face;

    /// <summary>The levelling of a face.</summary>
    public static string Level(string face) => "level " + face;

    /// <summary>The bed of a floor.</summary>
    public static string Bed(string floor) => "bed of " + floor;

    /// <summary>A coat of membrane.</summary>
    public static string Coat(int number) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"membrane, coat {number}");

    /// <summary>The lines of a run.</summary>
    public static string Lines(string run) => "lines of " + run;

    /// <summary>The trims beside a run.</summary>
    public static string Trims(string run) => "trims of " + run;

    /// <summary>The grouting of a run.</summary>
    public static string Grout(string run) => "grout " + run;

    /// <summary>The soft joints of a run.</summary>
    public static string Soft(string run) => "soft joints of " + run;

    /// <summary>The sealing of a run.</summary>
    public static string Seal(string run) => "seal " + run;

    /// <summary>When something made elsewhere is in.</summary>
    public static string In(string made) => made + " is in";
}
