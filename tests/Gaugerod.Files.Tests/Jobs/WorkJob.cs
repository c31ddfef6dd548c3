namespace Gaugerod.Files.Tests.Jobs;

/// <summary>An invented bathroom wall and floor with an order of work.</summary>
internal static class WorkJob
{
    // The wall's lowest course is cut at the tub: a batten holds up the one above.
    public const string Text = """
        { "format": "gaugerod-job/1", "name": "Attic bath", "note": "Invented.", "units": "mm", "edgeJoint": 3,
          "products": [{ "name": "white", "width": 297, "height": 197, "thickness": 8 }, { "name": "grey", "width": 297, "height": 297, "thickness": 9 }],
          "supplies": [{ "name": "wall mortar", "kind": "mortar", "pack": "20 kg bag", "yield": "14 l", "potLife": "2 h", "openTime": "30 min", "holds": { "grout": "24 h", "support": "16 h" } },
            { "name": "light grout", "kind": "grout", "yield": "3 l", "holds": { "water": "7 days", "soft": "24 h" } }],
          "faces": [
            { "name": "wall", "outline": [[0, 0], [2000, 0], [2000, 2100], [0, 2100]],
              "edges": [{ "name": "tub", "kind": "fixture" }, { "name": "right", "kind": "inside corner" }, { "name": "head", "kind": "ceiling" }, { "name": "left", "kind": "inside corner" }],
              "openings": [{ "name": "niche", "left": 700, "bottom": 1100, "width": 400, "height": 300, "edge": { "kind": "outside corner", "finish": "profile", "trim": 10 } }] },
            { "name": "floor", "outline": [[0, 0], [2000, 0], [2000, 1500], [0, 1500]],
              "edges": [{ "name": "door", "kind": "threshold" }, { "name": "right", "kind": "inside corner" }, { "name": "back", "kind": "inside corner" }, { "name": "left", "kind": "inside corner" }] }],
          "runs": [
            { "name": "walls", "product": "white", "faces": ["wall"], "bond": { "kind": "running", "offset": "1/2" }, "joint": 3, "wants": [{ "want": "joint", "face": "wall", "edge": "niche.bottom", "must": true }], "setting": { "mortar": "wall mortar", "trowel": { "width": 8, "depth": 8, "tooth": 8 }, "grout": "light grout" } },
            { "name": "ground", "product": "grey", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": 3, "setting": { "mortar": "wall mortar", "trowel": { "width": 8, "depth": 8, "tooth": 8 }, "grout": "light grout" } }],
          "work": { "start": "2027-03-25", "day": { "from": "08:00", "to": "16:30", "break": "30 min" }, "days": ["mon", "tue", "wed", "thu", "fri"],
            "off": ["2027-03-29", { "from": "2027-04-01", "to": "2027-04-02" }], "clocks": "EU", "hands": 1, "floor": "after walls", "floors": ["floor"],
            "pace": { "protection": "1 h", "tearOut": "4 h", "primer": "20 m2", "membrane": "6 m2", "setting": "1.2 m2", "cutting": "12 cuts", "returns": "2 m", "lines": "6 lines", "grouting": "5 m2", "softJoints": "10 m", "handOver": "1 h" },
            "holds": { "primer": "2 h", "coat": "12 h", "test": "24 h", "walk": "24 h" }, "coats": 2, "flood": "24 h",
            "tasks": [{ "name": "pipes", "takes": "3 h", "hands": 0, "after": ["tear-out"], "before": ["primer"] }, { "name": "template", "takes": "1 h", "after": ["tear-out"] }],
            "made": [{ "name": "glass", "lead": "10 days", "after": "template", "before": ["hand-over"] }] } }
        """;
}
