using System.Globalization;
using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Formats;
using Gaugerod.Sheets.Sheets;
using Gaugerod.Testing;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>The invented floor of docs/bases.md, 120 by 96 in, and others: what the one who fills and grinds has before him.</summary>
public sealed class FlatSheetTests
{
    private const string Grid = """
        "grid": { "from": [12, 12], "step": 24, "heights": [[0, "1/16", "1/8", "1/8", "3/16"], ["1/16", "-1/8", "-3/16", "1/16", "3/16"], ["1/8", 0, "-1/16", "1/8", "1/4"], ["1/8", "1/8", "3/16", "1/4", "1/4"]] }
        """;

    private const string Laid = """
        "straightedge": [{ "from": [6, 48], "to": [114, 48], "gaps": [0, "1/16", "3/16", "1/4", "1/8", 0] }, { "from": [60, 6], "to": [60, 78], "gaps": [0, "1/32", 0, "1/32", 0] }]
        """;

    private static readonly Plan s_plan = Planned(Grid);

    [Fact]
    public void Its_sheets_are_the_accepted_ones()
    {
        var pages = Of(s_plan);
        Golden.Matches("sheets/flat-map.svg", SvgWriter.Write(pages[0]));
        Golden.Matches("sheets/flat-words.txt", string.Join("\n\n", pages.Select(page => page.Title + "\n" + page.Description + "\n" + SheetLook.Words(page))) + "\n");
    }

    [Fact]
    public void The_worst_place_and_what_is_asked_stand_beside_each_straightedge()
    {
        var words = string.Join('\n', Of(s_plan).Select(SheetLook.Words));
        // By hand: 12 in off the wall at 60 in across, rests of 2 and 3 sixteenths 72 in apart, -3 between them at a third: 2 1/3 + 3 sixteenths is 21.3/64.
        Assert.Contains("hollow 21/64", words, StringComparison.Ordinal);
        Assert.Contains("from [60, 12]", words, StringComparison.Ordinal);
        Assert.Contains("▲ out", words, StringComparison.Ordinal);
        Assert.Contains("ANSI A108.01", words, StringComparison.Ordinal);
        Assert.Contains("silica", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_floor_that_falls_is_not_judged_by_a_straightedge_and_nothing_is_to_be_ground()
    {
        var pages = Of(Planned(Grid, "\"holes\": [{ \"name\": \"drain\", \"x\": 60, \"y\": 48, \"diameter\": 4 }], \"falls\": { \"drains\": [\"drain\"], \"least\": 1 }, "));
        var words = string.Join('\n', pages.Select(SheetLook.Words));
        Assert.DoesNotContain("▲ out", words, StringComparison.Ordinal);
        Assert.DoesNotContain("grind", words, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("nothing is judged", words, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_written_covers_anything_else_is_under_seven_points_or_leaves_the_paper()
    {
        var many = string.Join(", ", Enumerable.Range(0, 20).Select(row => "[" + string.Join(", ", Enumerable.Range(0, 25).Select(column => string.Create(CultureInfo.InvariantCulture, $"\"{(7 * row * column % 23) - 9}/64\""))) + "]"));
        foreach (var plan in new[] { s_plan, Planned(Laid), Planned(Grid + "," + Laid), Planned($"\"grid\": {{ \"from\": [2, 2], \"step\": [\"4 3/4\", \"4 3/4\"], \"heights\": [{many}] }}") })
        {
            var pages = Of(plan);
            Assert.True(pages.Count >= 2);
            foreach (var page in pages)
            {
                var texts = SheetLook.Texts(page).Select(text => (text.Words, Box: SheetLook.Box(text).Grown(-0.15))).ToArray();
                Assert.All(SheetLook.Texts(page), text => Assert.True(text.Size >= 7));
                for (var i = 0; i < texts.Length; i++)
                {
                    Assert.True(new Frame(9, 6, page.Width - 18, page.Height - 12).Holds(texts[i].Box), $"{page.Title}: {texts[i].Words}");
                    for (var k = 0; k < i; k++) Assert.False(texts[i].Box.Meets(texts[k].Box), $"{page.Title}: '{texts[i].Words}' and '{texts[k].Words}'");
                }
            }
        }
    }

    [Fact]
    public void Highs_and_lows_differ_by_hatch_and_by_mark()
    {
        var areas = Of(s_plan)[0].Marks.OfType<Mark.Area>().ToList();
        Assert.NotEqual(Look.HatchOf(Fill.High), Look.HatchOf(Fill.Low));
        Assert.Equal(2, areas.Count(area => area.Fill is Fill.High or Fill.Low && area.Rings.Count > 4));
        Assert.Contains(areas, area => area.Name is "high" && area.Fill is Fill.Ink);
        Assert.Contains(areas, area => area.Name is "low" && area.Fill is Fill.Paper);
    }

    private static IReadOnlyList<Drawing> Of(Plan plan) => [.. JobSheets.Pages(plan).Where(page => page.Title.Contains("Flat: floor", StringComparison.Ordinal))];

    private static Plan Planned(string readings, string more = "")
    {
        var job = $$"""
            { "format": "gaugerod-job/1", "name": "Floor", "note": "Invented.", "units": "in", "edgeJoint": "1/8",
              "products": [{ "name": "tile", "width": "5 7/8", "height": "5 7/8" }],
              "faces": [{ "name": "floor", "outline": [[0, 0], [120, 0], [120, 96], [0, 96]],
                "edges": [{ "name": "south", "kind": "threshold" }, { "name": "east", "kind": "inside corner" }, { "name": "north", "kind": "inside corner" }, { "name": "west", "kind": "inside corner" }],
                {{more}}"flatness": { "of": "floor", {{readings}} } }],
              "runs": [{ "name": "run 1", "product": "tile", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": "1/8" }] }
            """;
        return Planner.Plan(Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(job), "floor.json")).Job);
    }
}
