using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Testing;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>Plans to draw: the hand-made one on both papers and tapes, and the invented samples.</summary>
internal static class Samples
{
    public static Plan GuestShower { get; } = Planner.Plan(Read("guest-shower.json"));

    /// <summary>A floor with a frame, a field turned by 45 degrees and a rug.</summary>
    public static Plan PorchFloor { get; } = Planner.Plan(Read("porch-floor.json"));

    public static IReadOnlyDictionary<string, Plan> Plans { get; } = new Dictionary<string, Plan>(StringComparer.Ordinal)
    {
        ["hand A4 in"] = HandPlan.Shower(),
        ["hand Letter in"] = HandPlan.Shower(Paper.Letter),
        ["hand A4 mm"] = HandPlan.Shower(metric: true),
        ["hand Letter mm"] = HandPlan.Shower(Paper.Letter, metric: true),
        ["hand two runs"] = HandPlan.TwoRuns(),
        ["plain wall"] = Planner.Plan(Read("plain-wall.json")),
        ["guest shower"] = GuestShower,
        ["cloakroom"] = Planner.Plan(Read("cloakroom.json")),
        ["galley splash"] = Planner.Plan(Read("galley-splash.json")),
        ["porch floor"] = PorchFloor,
    };

    public static TheoryData<string> Names => [.. Plans.Keys];

    private static Job Read(string name) =>
        Assert.IsType<JobReading.Understood>(JobReader.Read(File.ReadAllBytes(Path.Combine(Repo.Root, "samples", name)), name)).Job;
}
