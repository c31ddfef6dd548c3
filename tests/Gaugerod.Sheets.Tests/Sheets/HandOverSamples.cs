using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>An invented wet room of two walls and a floor, and what its setter noted for the client.</summary>
internal static class HandOverSamples
{
    /// <summary>The job with a hand-over; <c>{}</c> for one of which nothing was noted.</summary>
    public static string Job(string handOver) => Text.Replace("HANDOVER", handOver, StringComparison.Ordinal);

    public static Plan Plan(string handOver) => Planner.Plan(Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(Job(handOver)), "hand-over.json")).Job);

    public static Plan Noted { get; } = Plan(Notes);

    public static Plan Bare { get; } = Plan("{}");

    public const string Notes = """
        { "care": ["Wipe the glass side dry.", "Leave the door open after a shower."],
          "lots": [{ "of": "white", "lot": "07 B", "colour": "chalk", "caliber": "09" }, { "of": "white", "lot": "08 A", "colour": "chalk", "caliber": "09", "note": "back wall, last course" }, { "of": "light grout", "lot": "2214", "colour": "stone" }],
          "kept": "in the cellar, on the upper shelf", "renew": 5,
          "photographs": [{ "of": "back", "what": "pipes before boards", "where": "album 1, picture 3 to 9" }, { "of": "the drain", "what": "membrane with its collar" }],
          "tests": [{ "what": "flood test", "on": "2027-03-16", "by": "the setter", "result": "level held for 24 h", "again": "2028-03-16" }, { "what": "sealant by hand", "again": "2027-09-01" }] }
        """;

    private const string Text = """
        { "format": "gaugerod-job/1", "name": "Wet room", "note": "Invented.", "units": "mm", "edgeJoint": 4,
          "products": [{ "name": "white", "width": 297, "height": 197, "thickness": 8, "perBox": 10, "breakage": 2, "spares": 6 }, { "name": "grey", "width": 297, "height": 297, "thickness": 9, "perBox": 8, "spares": 3 }],
          "supplies": [{ "name": "wall mortar", "kind": "mortar", "pack": "20 kg bag", "yield": "14 l" },
            { "name": "light grout", "kind": "grout", "yield": "3 l", "holds": { "water": "7 days" } }, { "name": "joint sealant", "kind": "sealant", "yield": "310 ml" }],
          "faces": [
            { "name": "back", "outline": [[0, 0], [2000, 0], [2000, 2100], [0, 2100]],
              "edges": [{ "name": "foot", "kind": "floor", "sealed": false }, { "name": "right", "kind": "inside corner" }, { "name": "head", "kind": "ceiling" }, { "name": "left", "kind": "free" }] },
            { "name": "side", "outline": [[0, 0], [1500, 0], [1500, 2100], [0, 2100]],
              "edges": [{ "name": "foot", "kind": "floor", "sealed": false }, { "name": "right", "kind": "free" }, { "name": "head", "kind": "ceiling" }, { "name": "left", "kind": "inside corner" }] },
            { "name": "floor", "outline": [[0, 0], [2000, 0], [2000, 1500], [0, 1500]],
              "edges": [{ "name": "door", "kind": "threshold" }, { "name": "east", "kind": "inside corner" }, { "name": "north", "kind": "inside corner" }, { "name": "west", "kind": "inside corner" }] }],
          "runs": [
            { "name": "walls", "product": "white", "faces": ["back", "side"], "bond": { "kind": "grid" }, "joint": 3, "setting": { "mortar": "wall mortar", "trowel": { "width": 8, "depth": 8, "tooth": 8 }, "grout": "light grout", "sealant": "joint sealant" } },
            { "name": "ground", "product": "grey", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": 3, "movement": { "most": "1.2 m" }, "setting": { "mortar": "wall mortar", "trowel": { "width": 8, "depth": 8, "tooth": 8 }, "grout": "light grout", "sealant": "joint sealant" } }],
          "work": { "start": "2027-03-08", "floors": ["floor"], "floor": "before walls", "holds": { "walk": "24 h" }, "coats": 2, "flood": "24 h" },
          "handover": HANDOVER }
        """;
}
