using Gaugerod.Engine.Planning;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets.Tests.Sheets;

public sealed class SharedTileSheetTests
{
    // Narrow strips beside large hatches, bent round them, three to a tile.
    private const string Hatches = """
        { "format": "gaugerod-job/1", "name": "Hatches", "note": "Invented.", "units": "mm", "edgeJoint": 3,
          "products": [{ "name": "tile", "width": 600, "height": 300, "thickness": 8, "bondCoat": 3, "kerf": 3 }],
          "faces": [
            { "name": "west", "outline": [[0, 0], [2460, 0], [2460, 1680], [0, 1680]],
              "edges": [{ "name": "foot", "kind": "floor" }, { "name": "right", "kind": "inside corner" }, { "name": "head", "kind": "ceiling" }, { "name": "left", "kind": "inside corner" }],
              "openings": [{ "name": "low", "left": 48, "bottom": 50, "width": 700, "height": 900 }, { "name": "high", "left": 800, "bottom": 1040, "width": 1600, "height": 580 }] },
            { "name": "north", "outline": [[0, 0], [1333, 0], [1333, 1680], [0, 1680]],
              "edges": [{ "name": "foot", "kind": "floor" }, { "name": "right", "kind": "inside corner" }, { "name": "head", "kind": "ceiling" }, { "name": "left", "kind": "inside corner" }],
              "openings": [{ "name": "long", "left": 40, "bottom": 1240, "width": 1250, "height": 400 }] }],
          "runs": [
            { "name": "west", "product": "tile", "faces": ["west"], "bond": { "kind": "running", "offset": "1/3" }, "joint": 2 },
            { "name": "north", "product": "tile", "faces": ["north"], "bond": { "kind": "grid" }, "joint": 2 }] }
        """;

    private static readonly Plan s_hatches = Planner.Plan(Samples.Read(Hatches));

    public static TheoryData<string> Names => [.. Samples.Plans.Keys, "hatches"];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_cut_of_a_shared_tile_has_its_number_in_a_ring_and_every_piece_in_it_is_named(string name)
    {
        var plan = name == "hatches" ? s_hatches : Samples.Plans[name];
        var shared = plan.Cutting.SelectMany(cutting => cutting.Tiles).Where(tile => tile.Pieces.Count > 1).ToList();
        var pages = Pages(plan);
        var words = pages.SelectMany(SheetLook.Texts).Where(text => text.Bold).GroupBy(text => text.Words).ToDictionary(g => g.Key, g => g.Count(), StringComparer.Ordinal);
        Assert.All(shared.SelectMany(tile => tile.Pieces), piece => Assert.Equal(1, words.GetValueOrDefault(piece.Id)));
        Assert.Equal(shared.Where(tile => !tile.Nests).Sum(tile => tile.Cuts.Count), pages.Sum(page => Rings(page).Count));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void No_ring_lies_over_another_or_over_letters_that_are_not_its_own(string name)
    {
        foreach (var page in Pages(name == "hatches" ? s_hatches : Samples.Plans[name]))
        {
            var (rings, texts) = (Rings(page), SheetLook.Texts(page).Select(text => (text.Words, Box: SheetLook.Box(text))).ToList());
            for (var i = 0; i < rings.Count; i++)
            {
                Assert.DoesNotContain(rings.Skip(i + 1), other => other.Grown(-0.05).Meets(rings[i].Grown(-0.05)));
                Assert.Matches("^[0-9]+$", Assert.Single(texts, text => text.Box.Meets(rings[i])).Words);
            }
        }
    }

    private static List<Drawing> Pages(Plan plan) => [.. JobSheets.Pages(plan).Where(page => page.Title.Contains(": Shared tiles", StringComparison.Ordinal))];

    private static List<Frame> Rings(Drawing page) => [.. page.Marks.OfType<Mark.Area>()
        .Where(area => area.Fill == Fill.Paper && area.Rings[0].Count == 48).Select(area => Frame.Around(area.Rings[0]))];
}
