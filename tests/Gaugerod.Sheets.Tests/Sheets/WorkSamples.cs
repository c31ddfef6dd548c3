using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>An invented wall and floor with an order of work.</summary>
internal static class WorkSamples
{
    public static Plan Plan { get; } = Planner.Plan(Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(Job), "work.json")).Job);

    private const string Job = """
        { "format": "gaugerod-job/1", "name": "Landing bath", "note": "Invented.", "units": "in", "edgeJoint": "1/8",
          "products": [{ "name": "white", "width": "11 3/4", "height": "7 3/4", "thickness": "5/16" }, { "name": "grey", "width": "11 3/4", "height": "11 3/4", "thickness": "3/8" }],
          "supplies": [{ "name": "wall mortar", "kind": "mortar", "pack": "50 lb bag", "yield": "0.66 ft3", "potLife": "2 h", "openTime": "30 min", "holds": { "grout": "24 h", "support": "16 h" } },
            { "name": "light grout", "kind": "grout", "yield": "437 in3" }],
          "faces": [
            { "name": "wall", "outline": [[0, 0], [80, 0], [80, 84], [0, 84]],
              "edges": [{ "name": "tub", "kind": "fixture" }, { "name": "right", "kind": "inside corner" }, { "name": "head", "kind": "ceiling" }, { "name": "left", "kind": "inside corner" }],
              "openings": [{ "name": "niche", "left": 28, "bottom": 45, "width": 16, "height": 12, "edge": { "kind": "outside corner", "finish": "profile", "trim": "3/8" } }] },
            { "name": "floor", "outline": [[0, 0], [80, 0], [80, 60], [0, 60]],
              "edges": [{ "name": "door", "kind": "threshold" }, { "name": "right", "kind": "inside corner" }, { "name": "back", "kind": "inside corner" }, { "name": "left", "kind": "inside corner" }] }],
          "runs": [
            { "name": "walls", "product": "white", "faces": ["wall"], "bond": { "kind": "running", "offset": "1/2" }, "joint": "1/8", "wants": [{ "want": "joint", "face": "wall", "edge": "niche.bottom", "must": true }],
              "setting": { "mortar": "wall mortar", "trowel": { "width": "1/4", "depth": "3/8", "tooth": "1/4" }, "grout": "light grout" } },
            { "name": "ground", "product": "grey", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": "1/8", "setting": { "mortar": "wall mortar", "trowel": { "width": "1/4", "depth": "3/8", "tooth": "1/4" }, "grout": "light grout" } }],
          "work": { "start": "2027-03-11", "clocks": "US", "floors": ["floor"], "pace": { "protection": "1 h", "tearOut": "9 h", "setting": "10 ft2", "cutting": "10 cuts", "grouting": "50 ft2", "softJoints": "30 ft" },
            "coats": 1, "flood": "24 h", "made": [{ "name": "glass", "lead": "2 weeks", "after": "tear-out", "before": ["hand-over"] }] } }
        """;
}
