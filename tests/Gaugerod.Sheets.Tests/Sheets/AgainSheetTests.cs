using Gaugerod.Engine.Planning;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>An invented wall of which three courses are set, 6 mm high; tiles of 200, joints of 3, allowed from 2 to 4.</summary>
public sealed class AgainSheetTests
{
    private const string Wall = """
        { "format": "gaugerod-job/1", "name": "Utility wall", "note": "Invented.", "units": "mm", "paper": "a4",
          "products": [{ "name": "white", "width": 200, "height": 200, "perBox": 1 }],
          "faces": [{ "name": "wall", "readings": { "width": { "foot": 1530 }, "height": { "left": 2400, "right": 2400 }, "levelLine": { "left": 1000, "right": 1000 }, "lean": { "left": 0, "right": 0 } } }],
          "runs": [{ "name": "wall", "product": "white", "faces": ["wall"], "bond": { "kind": "grid" }, "joint": { "least": 2, "wanted": 3, "most": 4 }SET }] }
        """;

    [Fact]
    public void The_sheet_says_how_far_off_it_stands_what_is_done_and_where_each_course_comes()
    {
        var fresh = Planner.Plan(Samples.Read(Wall.Replace("SET", "", StringComparison.Ordinal)));
        var top = fresh.Runs[0].Faces[0].Pieces.First(piece => piece.Course == 3).Cell.Top.Millimetres + 6;
        var plan = Planner.Plan(Samples.Read(Wall.Replace("SET", System.FormattableString.Invariant($", \"set\": [{{ \"face\": \"wall\", \"courses\": 3, \"top\": {top} }}]"), StringComparison.Ordinal)));
        var words = JobSheets.Pages(plan).Where(page => page.Title.Contains("Measured again: wall", StringComparison.Ordinal)).SelectMany(page => SheetLook.Texts(page)).Select(text => SheetLook.Plain(text.Words)).ToList();

        Assert.Contains("Courses 1 to 3 are set. The top of course 3 stands 6 mm high.", words);
        Assert.Contains(words, text => text.StartsWith("Level joints of ", StringComparison.Ordinal));
        Assert.Contains("On with the joint as planned, all of it moved.", string.Join(' ', words), StringComparison.Ordinal);
        foreach (var mark in plan.Again[0].Ways[0].Marks) Assert.Contains(mark.Course.ToString(System.Globalization.CultureInfo.InvariantCulture), words);
    }

    [Fact]
    public void Without_anything_set_there_is_no_such_sheet() =>
        Assert.DoesNotContain(JobSheets.Pages(Planner.Plan(Samples.Read(Wall.Replace("SET", "", StringComparison.Ordinal)))), page => page.Title.Contains("Measured again", StringComparison.Ordinal));
}
