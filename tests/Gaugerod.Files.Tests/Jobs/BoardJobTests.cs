using System.Text;
using System.Text.Json.Nodes;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;
using Gaugerod.Files.Tests.Schemas;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Two invented walls that meet in a corner, boarded on studs, and slips in them.</summary>
public sealed class BoardJobTests
{
    private const string Edges = "\"edges\": [{ \"name\": \"foot\", \"kind\": \"floor\" }, { \"name\": \"right\", \"kind\": \"inside corner\" }, { \"name\": \"head\", \"kind\": \"ceiling\" }, { \"name\": \"left\", \"kind\": \"inside corner\" }]";

    private const string Walls = $$"""
        { "format": "gaugerod-job/1", "name": "Wash house", "note": "Invented.", "units": "mm", "edgeJoint": 3,
          "products": [{ "name": "tile", "width": 300, "height": 300, "thickness": 8, "bondCoat": 3 }],
          "boards": [{ "name": "board", "width": 900, "length": 1500, "thickness": 13, "screws": "screws", "tape": "mesh", "breakage": 1 }],
          "supplies": [{ "name": "screws", "kind": "screws", "yield": 200 }, { "name": "mesh", "kind": "tape", "pack": "roll", "yield": "50 m" }, { "name": "grey", "kind": "grout", "yield": "1.5 l" }],
          "faces": [
            { "name": "north", "outline": [[0, 0], [2410, 0], [2410, 2400], [0, 2400]], {{Edges}}, "board": { "of": "board", "studs": { "from": 400, "spacing": 400 }, "lay": "across", "foot": 6 } },
            { "name": "east", "outline": [[0, 0], [1200, 0], [1200, 2400], [0, 2400]], {{Edges}}, "board": { "of": "board", "studs": { "at": [400, 800] } } }],
          "runs": [{ "name": "walls", "product": "tile", "faces": ["north", "east"], "bond": { "kind": "grid" }, "joint": 3 }] }
        """;

    [Fact]
    public void Sheets_seams_screws_and_tape_stand_in_the_plan()
    {
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, Walls));
        var plan = Planner.Plan(Job(Walls));
        var json = Encoding.UTF8.GetString(PlanWriter.Write(plan));
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, json));
        var boards = JsonNode.Parse(json)!["prep"]!["boards"]!;
        Assert.Equal(2, boards["faces"]!.AsArray().Count);
        var sheets = boards["stocks"]![0]!["sheets"]!.AsArray();
        Assert.Equal(
            boards["faces"]!.AsArray().SelectMany(face => face!["pieces"]!.AsArray()).Select(piece => ((string)piece!["id"]!, (int)piece["sheet"]!)).Order(),
            sheets.SelectMany(sheet => sheet!["pieces"]!.AsArray().Select(piece => ((string)piece!["id"]!, (int)sheet["number"]!))).Order());

        // What is ordered: the sheets and one for breakage; screws and tape by the pack.
        var order = plan.Order.Single(line => line.Item == "board");
        Assert.Equal((sheets.Count + 1, "sheet"), (order.Need, order.Unit));
        Assert.Equal(plan.Boards.Screws, plan.Supplies.Single(line => line.Supply.Name == "screws").Amount, 1e-9);
        Assert.Equal((double)plan.Boards.Tape.Millimetres / 1000, plan.Supplies.Single(line => line.Supply.Name == "mesh").Amount, 1e-9);
        Assert.DoesNotContain(plan.Supplies, line => line.Supply.Name == "grey");
    }

    // By hand: four corners of 2,400 mm, of which the one between the walls is one; faces by their corners have it only where their sides say left and right.
    [Fact]
    public void The_corner_between_two_boarded_walls_is_taped_once()
    {
        Assert.Equal(3 * 2400, Planner.Plan(Job(Walls)).Boards.Corners.Millimetres);
        var one = Walls.Replace(", \"board\": { \"of\": \"board\", \"studs\": { \"at\": [400, 800] } }", "", StringComparison.Ordinal);
        Assert.NotEqual(Walls, one);
        Assert.Equal(2 * 2400, Planner.Plan(Job(one)).Boards.Corners.Millimetres);
    }

    [Fact]
    public void A_job_that_asks_for_no_board_has_none_in_its_plan()
    {
        var plan = Planner.Plan(Samples.Job("plain-wall"));
        Assert.DoesNotContain("\"boards\"", Encoding.UTF8.GetString(PlanWriter.Write(plan)), StringComparison.Ordinal);
        Assert.DoesNotContain(plan.Findings, finding => finding.Rule is "board" or "caution-board");
    }

    [Theory]
    [InlineData("\"of\": \"board\", \"studs\": { \"from\"", "\"of\": \"bord\", \"studs\": { \"from\"", "faces[0].board.of", "\"board\"")]
    [InlineData("\"spacing\": 400", "\"spacing\": 0", "faces[0].board.studs.spacing", "100 mm")]
    [InlineData("\"spacing\": 400", "\"spacing\": -400", "faces[0].board.studs.spacing", "400 mm")]
    [InlineData("\"from\": 400, \"spacing\": 400", "\"from\": 400", "faces[0].board.studs", "{ \"from\": 460, \"spacing\": 460 }")]
    [InlineData("\"from\": 400, \"spacing\": 400", "", "faces[0].board.studs", "{ \"from\": 460, \"spacing\": 460 }")]
    [InlineData("\"width\": 900", "\"width\": 1600", "boards[0].width", "\"width\": \"1500 mm\", \"length\": \"1600 mm\"")]
    [InlineData("\"width\": 900", "\"width\": 9", "boards[0].width", "300 mm")]
    [InlineData("\"thickness\": 13", "\"gap\": 2000", "boards[0].gap", "25 mm")]
    [InlineData("\"thickness\": 13", "\"screwsApart\": 0", "boards[0].screwsApart", "50 mm")]
    [InlineData("\"thickness\": 13", "\"inset\": 500", "boards[0].inset", "50 mm")]
    [InlineData("\"screws\": \"screws\"", "\"screws\": \"mesh\"", "boards[0].screws", null)]
    [InlineData("\"tape\": \"mesh\"", "\"tape\": \"mesch\"", "boards[0].tape", "\"mesh\"")]
    [InlineData("\"lay\": \"across\"", "\"lay\": \"acros\"", "faces[0].board.lay", "\"across\"")]
    [InlineData("\"boards\"", "\"bords\"", "bords", "\"boards\"")]
    [InlineData("\"name\": \"board\"", "\"name\": \"\"", "boards[0].name", null)]
    public void A_slip_is_said_where_it_stands_with_what_fits(string old, string changed, string path, string? nearest)
    {
        var spoilt = Walls.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(Walls, spoilt);
        Assert.Contains((path, nearest), Samples.Faults(spoilt).Select(fault => (fault.Path, fault.Nearest)));
    }

    [Theory]
    [InlineData("\"at\": [400, 800]", "\"at\": [400, 8000]", "faces[1].board.studs.at[1]", "1196 mm")]
    [InlineData("\"at\": [400, 800]", "\"at\": [-40, 800]", "faces[1].board.studs.at[0]", "4 mm")]
    [InlineData("\"from\": 400, \"spacing\": 400", "\"from\": 4000, \"spacing\": 400", "faces[0].board.studs.from", "2406 mm")]
    [InlineData("\"from\": 400, \"spacing\": 400", "\"at\": [100, 1700]", "faces[0].board.studs", "a stud between, or sheets longer than 1600 mm")]
    [InlineData("[[0, 0], [2410, 0], [2410, 2400], [0, 2400]]", "[[0, 0], [24100, 0], [24100, 24000], [0, 24000]]", "faces[0].board.of", "look for a length in the wrong unit")]
    public void What_cannot_be_boarded_is_said_where_it_stands_with_the_nearest_that_can(string old, string changed, string path, string nearest)
    {
        var spoilt = Walls.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(Walls, spoilt);
        Assert.Contains((path, nearest), JobCheck.Check(Job(spoilt)).Select(fault => (fault.Path, fault.Nearest!)));
    }

    private static Job Job(string text) => Assert.IsType<JobReading.Understood>(Samples.Read(text)).Job;
}
