namespace Gaugerod.App.Stations.Measure;

/// <summary>The words a job may hold, and what they are called on the page.</summary>
internal static class Words
{
    public static IReadOnlyList<string> Kinds { get; } = ["inside corner", "outside corner", "free", "floor", "ceiling", "fixture", "threshold"];

    public static IReadOnlyDictionary<string, string> KindWords { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["free"] = "free: tile stops on open wall", ["fixture"] = "fixture: bath, bench, sill, frame", ["threshold"] = "threshold: a doorway's sill",
    };

    public static IReadOnlyList<string> Finishes { get; } = ["bullnose over", "bullnose under", "mitre", "profile"];

    public static IReadOnlyDictionary<string, string> FinishWords { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["bullnose over"] = "bullnose, this side covers", ["bullnose under"] = "bullnose, other side covers",
    };

    public static IReadOnlyList<string> Laps { get; } = ["through", "laps"];

    public static IReadOnlyDictionary<string, string> LapWords { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["through"] = "this wall runs through", ["laps"] = "this wall is cut to the other",
    };

    public static IReadOnlyDictionary<string, string> TurnWords { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["free"] = "any way", ["half"] = "half round only", ["none"] = "not at all: it has a direction",
    };

    /// <summary>What a trim may be.</summary>
    public static IReadOnlyList<string> TrimKinds { get; } = ["bullnose", "quarter round", "cove", "profile", "liner", "mitred edge", "eased edge"];

    public static IReadOnlyDictionary<string, string> TrimKindWords { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["profile"] = "profile: bars", ["liner"] = "liner, band", ["mitred edge"] = "none: the tiles' edge is mitred", ["eased edge"] = "none: the tiles' edge is cut back and eased",
    };

    /// <summary>Where the joints of a trim may be wanted.</summary>
    public static IReadOnlyList<string> TrimJoints { get; } = ["staggered", "in line", "repeating", "centred", "none"];

    public static IReadOnlyDictionary<string, string> TrimJointWords { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["staggered"] = "clear of the field's joints", ["in line"] = "in line with joints of the field", ["repeating"] = "repeating as the field does",
        ["centred"] = "alike from both ends", ["none"] = "none: one piece",
    };

    public static IReadOnlyList<string> TrimCorners { get; } = ["mitred", "covers", "butts", "piece"];

    public static IReadOnlyDictionary<string, string> TrimCornerWords { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["covers"] = "this one runs over the other", ["butts"] = "this one ends against the other", ["piece"] = "at a corner piece",
    };

    /// <summary>What heights count from.</summary>
    public static IReadOnlyDictionary<string, string> Bases { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["floor"] = "the lower left corner", ["level line"] = "the level line, minus below",
    };

    /// <summary>What an edge usually is where the job says nothing.</summary>
    public static string Usual(string side) => side switch
    {
        "foot" => "floor",
        "head" => "ceiling",
        _ => "inside corner",
    };
}
