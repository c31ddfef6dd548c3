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
        ["banded wall"] = Planner.Plan(Read(BandedWall.Replace("HIGH", "2450", StringComparison.Ordinal))),
        ["banded wall, lower"] = Planner.Plan(Read(BandedWall.Replace("HIGH", "2300", StringComparison.Ordinal))),
    };

    public static TheoryData<string> Names => [.. Plans.Keys];

    // Four runs on one wall, a niche that may be moved, and so many lines to say that the picture has to give way.
    private const string BandedWall = """
        { "format": "gaugerod-job/1", "name": "Bath wall", "note": "Invented.", "units": "mm", "edgeJoint": 3, "paper": "a4",
          "products": [{ "name": "white", "width": 197, "height": 97 }, { "name": "green", "width": 97, "height": 97 }, { "name": "pencil", "width": 200, "height": 20 }],
          "faces": [{ "name": "wall", "outline": [[0, 0], [2400, 0], [2400, HIGH], [0, HIGH]],
            "edges": [{ "name": "foot", "kind": "floor" }, { "name": "right", "kind": "inside corner" }, { "name": "top", "kind": "ceiling" }, { "name": "left", "kind": "inside corner" }],
            "openings": [{ "name": "niche", "left": 800, "bottom": 1100, "width": 600, "height": 300, "range": { "left": [700, 900], "bottom": [1050, 1150] },
              "edge": { "kind": "outside corner", "finish": "profile", "trim": 10 } }],
            "zones": [{ "kind": "band", "name": "line", "from": 900, "to": 926 }, { "kind": "band", "name": "mid", "from": 926, "to": 1800 }, { "kind": "band", "name": "upper", "from": 1800 }] }],
          "runs": [{ "name": "field", "product": "white", "faces": ["wall"], "bond": { "kind": "running", "offset": "1/2" }, "joint": 3 },
            { "name": "mid", "product": "white", "faces": ["mid"], "bond": { "kind": "running", "offset": "1/2" }, "joint": 3 },
            { "name": "line", "product": "pencil", "faces": ["line"], "bond": { "kind": "grid" }, "joint": 3 },
            { "name": "upper", "product": "green", "faces": ["upper"], "bond": { "kind": "grid", "turned": 45 }, "joint": 3 }] }
        """;

    private static Job Read(string job) => Assert.IsType<JobReading.Understood>(
        job.EndsWith(".json", StringComparison.Ordinal)
            ? JobReader.Read(File.ReadAllBytes(Path.Combine(Repo.Root, "samples", job)), job)
            : JobReader.Read(System.Text.Encoding.UTF8.GetBytes(job), "banded-wall.json")).Job;
}
