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
