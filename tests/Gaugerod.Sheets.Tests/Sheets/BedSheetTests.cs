using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>A shower floor, invented, 36 by 60 in, with its drain 14 in from one wall: what the one who packs the bed has before him.</summary>
public sealed class BedSheetTests
{
    private static readonly Plan s_plan = Planned("\"to\": \"drain\"");

    [Fact]
    public void Its_sheet_has_the_rise_at_every_corner_and_a_section_with_both_distances()
    {
        var pages = Of(s_plan);
        Assert.Equal(2, pages.Count);
        var words = SheetLook.Texts(pages[0]).Select(text => SheetLook.Plain(text.Words)).ToList();
        // By hand: the farthest corner is 43.909 from the drain, 0.915 up at 1 in 48; 15/16 on the tape.
        Assert.True(words.Count(word => word == "15/16") >= 4);
        Assert.Contains("14", words);
        Assert.Contains("43 15/16", words);
        // The fold to the farthest corner falls as asked, 2.08 in a hundred.
        Assert.Contains("2.1 %", words);
        Assert.Contains("to south and east", SheetLook.Words(pages[1]), StringComparison.Ordinal);
    }

    [Fact]
    public void No_figure_on_the_floor_covers_another_and_none_leaves_the_paper()
    {
        foreach (var plan in new[] { s_plan, Planned("\"drains\": [\"drain\", [[4, 50], [32, 50]]], \"perimeter\": \"constant\"") })
        {
            var page = Of(plan)[0];
            var figures = SheetLook.Texts(page).Where(text => text.Size == 8).Select(SheetLook.Box).ToList();
            Assert.True(figures.Count > 10);
            for (var i = 0; i < figures.Count; i++)
            {
                Assert.InRange(figures[i].X, 0, page.Width - figures[i].Width);
                for (var k = 0; k < i; k++) Assert.False(figures[i].Meets(figures[k]));
            }
        }
    }

    private static IReadOnlyList<Drawing> Of(Plan plan) => [.. JobSheets.Pages(plan).Where(page => page.Title.Contains("Bed: shower floor", StringComparison.Ordinal))];

    private static Plan Planned(string drains)
    {
        var job = $$"""
            { "format": "gaugerod-job/1", "name": "Shower", "note": "Invented.", "units": "in", "edgeJoint": "1/8",
              "products": [{ "name": "tile", "width": "1 7/8", "height": "1 7/8" }],
              "faces": [{ "name": "shower floor", "outline": [[0, 0], [36, 0], [36, 60], [0, 60]],
                "edges": [{ "name": "south", "kind": "threshold" }, { "name": "east", "kind": "inside corner" }, { "name": "north", "kind": "inside corner" }, { "name": "west", "kind": "inside corner" }],
                "holes": [{ "name": "drain", "x": 14, "y": 22, "diameter": 4 }], "falls": { {{drains}}, "least": "1 1/2" } }],
              "runs": [{ "name": "run 1", "product": "tile", "faces": ["shower floor"], "bond": { "kind": "grid" }, "joint": "1/8" }] }
            """;
        return Planner.Plan(Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(job), "shower.json")).Job);
    }
}
