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

    /// <summary>A wall with trims of every way to end: mitred, at corner pieces, as bars, in a band and worked on the tiles.</summary>
    public static Plan TrimmedWall { get; } = Planner.Plan(Read(TrimmedWallJob));

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
        ["trimmed wall"] = TrimmedWall,
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

    private const string TrimmedWallJob = """
        { "format": "gaugerod-job/1", "name": "Trimmed wall", "note": "Invented.", "units": "mm", "edgeJoint": 3, "paper": "a4",
          "products": [{ "name": "white", "width": 197, "height": 97, "thickness": 8, "bondCoat": 3 }, { "name": "green", "width": 97, "height": 97, "thickness": 8, "bondCoat": 3 }],
          "trims": [
            { "name": "round", "kind": "bullnose", "length": 197, "width": 50, "joint": 3, "least": 40, "kerf": 2, "thickness": 8 },
            { "name": "frame", "kind": "quarter round", "length": 150, "width": 15, "joint": 2, "outside": 20, "inside": 20 },
            { "name": "pencil", "kind": "liner", "length": 200, "width": 20, "joint": 3 },
            { "name": "bar", "kind": "profile", "length": 2500, "width": 10, "sold": "bar" },
            { "name": "eased", "kind": "eased edge" }],
          "faces": [{ "name": "wall", "outline": [[0, 0], [2400, 0], [2400, 1500], [0, 1500]],
            "edges": [{ "name": "foot", "kind": "floor" }, { "name": "right", "kind": "outside corner", "finish": "profile", "cover": 0, "trim": { "of": "bar", "joints": "none" } },
              { "name": "top", "kind": "free", "trim": { "of": "round", "joints": "staggered", "corner": "mitred" } }, { "name": "left", "kind": "free", "trim": { "of": "round", "joints": "repeating", "corner": "mitred" } }],
            "openings": [
              { "name": "niche", "left": 800, "bottom": 300, "width": 600, "height": 300, "edge": { "kind": "free", "trim": { "of": "frame", "joints": "centred" } } },
              { "name": "shelf", "left": 1700, "bottom": 300, "width": 400, "height": 300, "edge": { "kind": "free", "trim": { "of": "eased" } } },
              { "name": "hatch", "left": 300, "bottom": 1050, "width": 350, "height": 260, "edge": { "kind": "free", "trim": { "of": "round", "joints": "in line" } } }],
            "zones": [{ "kind": "band", "name": "line", "from": 900, "trim": { "of": "pencil", "joints": "staggered" } }, { "kind": "band", "name": "upper", "from": 926 }] }],
          "runs": [{ "name": "field", "product": "white", "faces": ["wall"], "bond": { "kind": "running", "offset": "1/2" }, "joint": 3 },
            { "name": "upper", "product": "green", "faces": ["upper"], "bond": { "kind": "grid" }, "joint": 3 }] }
        """;

    internal static Job Read(string job) => Assert.IsType<JobReading.Understood>(
        job.EndsWith(".json", StringComparison.Ordinal)
            ? JobReader.Read(File.ReadAllBytes(Path.Combine(Repo.Root, "samples", job)), job)
            : JobReader.Read(System.Text.Encoding.UTF8.GetBytes(job), "wall.json")).Job;
}
