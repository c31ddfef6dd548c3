using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Formats;
using Gaugerod.Sheets.Sheets;
using Gaugerod.Testing;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>An invented shower with a niche and a raking side wall, boarded: what the one who hangs the sheets has before him.</summary>
public sealed class BoardSheetTests
{
    private const string Shower = """
        { "format": "gaugerod-job/1", "name": "Attic shower", "note": "Invented.", "units": "in", "edgeJoint": "1/8",
          "products": [{ "name": "tile", "width": "11 7/8", "height": "5 7/8", "thickness": "5/16" }],
          "boards": [{ "name": "half inch board", "width": 36, "length": 60, "thickness": "1/2", "screws": "board screws", "tape": "mesh tape", "breakage": 1 }],
          "supplies": [{ "name": "board screws", "kind": "screws", "pack": "box", "yield": 185 }, { "name": "mesh tape", "kind": "tape", "pack": "roll", "yield": "50 ft" }],
          "faces": [
            { "name": "back", "readings": { "width": { "foot": "62 1/4" }, "height": { "left": 90 } },
              "fixtures": [{ "name": "tray", "from": 0, "to": 60, "height": 3 }],
              "openings": [{ "name": "niche", "left": "16 3/4", "bottom": 44, "width": "14 1/2", "height": 12 }],
              "holes": [{ "name": "arm", "x": 40, "y": 78, "diameter": "1 1/4" }],
              "board": { "of": "half inch board", "studs": { "from": 16, "spacing": 16, "at": ["3/4", "61 1/2"] }, "wet": 84 } },
            { "name": "side", "outline": [[0, 0], [100, 0], [100, 60], [64, 90], [0, 90]],
              "edges": [{ "name": "foot", "kind": "floor" }, { "name": "right", "kind": "free" }, { "name": "rake", "kind": "ceiling" }, { "name": "head", "kind": "ceiling" }, { "name": "left", "kind": "inside corner" }],
              "openings": [{ "name": "window", "left": 42, "bottom": 40, "width": 22, "height": 34 }],
              "board": { "of": "half inch board", "studs": { "from": "15 1/4", "spacing": 16 } } },
            { "name": "floor", "outline": [[0, 0], [72, 0], [72, 66], [0, 66]],
              "edges": [{ "name": "south", "kind": "inside corner" }, { "name": "east", "kind": "inside corner" }, { "name": "north", "kind": "inside corner" }, { "name": "west", "kind": "threshold" }],
              "board": { "of": "half inch board" } }],
          "runs": [{ "name": "walls", "product": "tile", "faces": ["back", "side"], "bond": { "kind": "running", "offset": "1/2" }, "joint": "1/8" },
            { "name": "floor", "product": "tile", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": "1/8" }] }
        """;

    private static readonly Plan s_plan = Planner.Plan(Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(Shower), "shower.json")).Job);

    [Fact]
    public void Its_sheets_are_the_accepted_ones()
    {
        var pages = Pages();
        Golden.Matches("sheets/boards-back.svg", SvgWriter.Write(pages[0]));
        Golden.Matches("sheets/boards-cuts.svg", SvgWriter.Write(pages[^1]));
        Golden.Matches("sheets/boards-words.txt", string.Join("\n\n", pages.Select(page => page.Title + "\n" + page.Description + "\n" + SheetLook.Words(page))) + "\n");
    }

    [Fact]
    public void Each_piece_stands_in_the_picture_or_at_least_in_the_table_with_its_size_and_its_sheet()
    {
        var words = string.Join('\n', Pages().Select(SheetLook.Words));
        Assert.All(s_plan.Boards.Faces.SelectMany(face => face.Pieces), piece => Assert.Contains(piece.Id, words, StringComparison.Ordinal));
        Assert.Contains("silica", words, StringComparison.Ordinal);
        Assert.Contains("Seams to tape", words, StringComparison.Ordinal);
        Assert.DoesNotContain("safe", words, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void A_dot_stands_for_every_screw_and_a_dashed_line_for_every_stud()
    {
        foreach (var face in s_plan.Boards.Faces)
        {
            var page = Pages().First(page => page.Title.Contains("Boards: " + face.Face, StringComparison.Ordinal));
            Assert.Equal(face.Screws, page.Marks.OfType<Mark.Area>().Count(area => area.Fill == Fill.Ink));
            Assert.Equal(face.Studs.Count, page.Marks.OfType<Mark.Line>().Count(line => line.Stroke == Stroke.Ghost));
        }
    }

    [Fact]
    public void Nothing_written_covers_anything_else_is_under_seven_points_or_leaves_the_paper()
    {
        foreach (var page in Pages())
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

    [Fact]
    public void A_job_without_boards_has_no_such_sheet()
    {
        var plan = s_plan with { Boards = Engine.Boards.BoardPlan.None };
        Assert.DoesNotContain(JobSheets.Pages(plan), page => page.Title.Contains("Boards", StringComparison.Ordinal) || page.Title.Contains("Sheets of board", StringComparison.Ordinal));
    }

    private static IReadOnlyList<Drawing> Pages() => [.. JobSheets.Pages(s_plan).Where(page => page.Title.Contains("Boards: ", StringComparison.Ordinal) || page.Title.Contains("Sheets of board", StringComparison.Ordinal))];
}
