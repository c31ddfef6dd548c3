using System.Text;
using System.Text.Json.Nodes;
using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;
using Gaugerod.Files.Tests.Schemas;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>An invented boarded wall with a niche that is lined, and the mortar under its tape.</summary>
public sealed class NicheJobTests
{
    private const string Wall = """
        { "format": "gaugerod-job/1", "name": "Wash house", "note": "Invented.", "units": "mm", "edgeJoint": 3,
          "products": [{ "name": "tile", "width": 300, "height": 300, "thickness": 8, "bondCoat": 3 }],
          "boards": [{ "name": "board", "width": 900, "length": 1500, "thickness": 13, "screws": "screws", "tape": "mesh", "tapeMortar": { "of": "mortar", "width": 50, "thickness": 2 } }],
          "supplies": [{ "name": "screws", "kind": "screws", "yield": 200 }, { "name": "mesh", "kind": "tape", "pack": "roll", "yield": "50 m" }, { "name": "mortar", "kind": "mortar", "yield": "14 l", "potLife": "3 h" }],
          "faces": [
            { "name": "north", "outline": [[0, 0], [2410, 0], [2410, 2400], [0, 2400]],
              "edges": [{ "name": "foot", "kind": "floor" }, { "name": "right", "kind": "inside corner" }, { "name": "head", "kind": "ceiling" }, { "name": "left", "kind": "inside corner" }],
              "openings": [{ "name": "niche", "left": 1000, "bottom": 1100, "width": 300, "height": 600, "depth": 90 }],
              "board": { "of": "board", "studs": { "from": 400, "spacing": 400 }, "lay": "across", "foot": 6 } }],
          "runs": [{ "name": "north", "product": "tile", "faces": ["north"], "bond": { "kind": "grid" }, "joint": 3, "setting": { "mortar": "mortar" } }],
          "work": { "start": "2027-03-08", "pace": { "setting": "1 m2" } } }
        """;

    // By hand: 300 by 600 mm, 90 deep, board of 13 mm. The sides stand behind the wall's board, 77 mm deep; bottom and top reach over the ends of left and right; the back lies over them all.
    [Fact]
    public void A_niche_is_lined_with_five_pieces_out_of_the_walls_sheets()
    {
        Assert.Empty(SchemaTests.Faults(SchemaTests.JobSchema, Wall));
        var plan = Planner.Plan(Job(Wall));
        var face = Assert.Single(plan.Boards.Faces);
        var niche = Assert.Single(face.Niches);
        Assert.Equal(
            [(NichePart.Back, 626, 326), (NichePart.Bottom, 326, 77), (NichePart.Top, 326, 77), (NichePart.Left, 600, 77), (NichePart.Right, 600, 77)],
            niche.Pieces.Select(piece => (piece.Part, (int)piece.Along.Millimetres, (int)piece.Across.Millimetres)));

        // No farther apart than 200 mm, 12 mm from the edges: 5 by 3 in the back, 3 by 2 below and above, 4 by 2 at the sides.
        Assert.Equal([15, 6, 6, 8, 8], niche.Pieces.Select(piece => piece.Screws));
        Assert.Equal(43, face.Screws - face.Pieces.Sum(piece => piece.Screws.Count));

        // Numbers go on from the wall's; every piece comes out of one of the sheets that are bought, within it.
        Assert.Equal(Enumerable.Range(1, face.Pieces.Count + 5).Select(i => $"b{i}"), face.Pieces.Select(piece => piece.Id).Concat(niche.Pieces.Select(piece => piece.Id)));
        var stock = Assert.Single(plan.Boards.Stocks);
        foreach (var piece in niche.Pieces)
        {
            var at = Assert.Single(stock.Sheets[piece.Sheet - 1].Pieces, one => one.Id == piece.Id).At;
            Assert.Equal((piece.Along, piece.Across), (at.Width, at.Height));
            Assert.True(at.Right.Millimetres <= 1500 && at.Top.Millimetres <= 900);
        }

        Assert.Equal(stock.Sheets.Count, plan.Order.Single(line => line.Item == "board").Need);
        var json = Encoding.UTF8.GetString(PlanWriter.Write(plan));
        Assert.Empty(SchemaTests.Faults(SchemaTests.PlanSchema, json));
        Assert.Equal("back", (string)JsonNode.Parse(json)!["prep"]!["boards"]!["faces"]![0]!["niches"]![0]!["pieces"]![0]!["part"]!);
    }

    // By hand: round the front and round the back 2 (300 + 600) each, four corners of 90.
    [Fact]
    public void Its_joints_are_taped()
    {
        var plan = Planner.Plan(Job(Wall));
        Assert.Equal(3960, plan.Boards.Faces[0].NicheSeams.Millimetres);
        var bare = Planner.Plan(Job(Put(", \"depth\": 90", "")));
        Assert.Empty(bare.Boards.Faces[0].Niches);
        Assert.Equal(3960, (plan.Boards.Tape - bare.Boards.Tape).Millimetres);
        Assert.Equal(3.96, plan.Supplies.Single(line => line.Supply.Name == "mesh").Amount - bare.Supplies.Single(line => line.Supply.Name == "mesh").Amount, 1e-9);
    }

    // By hand: 300 mm and twice 13 are 326 mm, from 987 to 1313; studs of 38 mm at 800 and 1200 mm, of which the second stands in it; at 960 and 1340 none does.
    [Fact]
    public void A_stud_that_stands_where_its_lining_goes_is_told()
    {
        var found = Assert.Single(Planner.Plan(Job(Wall)).Findings, finding => finding.Text.StartsWith("With its lining niche", StringComparison.Ordinal));
        Assert.Equal(("326 mm clear between studs", "a stud at 1200 mm"), (found.Limit, found.Value));
        var clear = Planner.Plan(Job(Put("\"from\": 400, \"spacing\": 400", "\"at\": [400, 680, 960, 1340, 1740, 2100]")));
        Assert.DoesNotContain(clear.Findings, finding => finding.Text.StartsWith("With its lining", StringComparison.Ordinal));
    }

    // By hand: 50 mm wide and 2 mm thick, a metre of seam takes 0.1 l. The bond coat of 3 mm lies on the field of the run, which is called as the wall is.
    [Fact]
    public void Tape_is_bedded_in_a_tenth_of_a_litre_a_metre_and_none_of_it_is_mixed_for_tile()
    {
        var plan = Planner.Plan(Job(Wall));
        var uses = plan.Supplies.Single(line => line.Supply.Name == "mortar").Uses;
        Assert.Equal((double)plan.Boards.Tape.Millimetres / 10_000, uses.Where(use => use.IsUnder).Sum(use => use.Amount), 1e-9);
        Assert.Equal(["north", "inside corners"], uses.Where(use => use.IsUnder).Select(use => use.Where));
        var set = plan.Work!.Tasks.Where(task => task.Batches.Count > 0).ToList();
        Assert.NotEmpty(set);
        Assert.Equal(uses.Single(use => !use.IsUnder).Amount, set.Sum(task => task.Batches.Sum(batch => batch.Litres)), 1e-6);
    }

    [Theory]
    [InlineData("\"of\": \"mortar\", \"width\"", "\"of\": \"mesh\", \"width\"", "boards[0].tapeMortar.of", null)]
    [InlineData("\"width\": 50", "\"width\": 5", "boards[0].tapeMortar.width", "10 mm")]
    [InlineData("\"thickness\": 2 }", "\"thickness\": 0 }", "boards[0].tapeMortar.thickness", "1 mm")]
    [InlineData("\"depth\": 90", "\"depth\": -90", "faces[0].openings[0].depth", "90 mm")]
    public void A_slip_is_said_where_it_stands_with_what_fits(string old, string changed, string path, string? nearest) =>
        Assert.Contains((path, nearest), Samples.Faults(Put(old, changed)).Select(fault => (fault.Path, fault.Nearest)));

    [Theory]
    [InlineData("\"thickness\": 13", "\"thickness\": 95", "90 mm", "more than the board is thick, 95 mm")]
    [InlineData("\"left\": 1000, \"bottom\": 1100, \"width\": 300, \"height\": 600", "\"left\": 500, \"bottom\": 500, \"width\": 900, \"height\": 1480", "a niche that no sheet of board lines in five pieces", "one whose back and sides each come out of a sheet, 900 mm by 1500 mm")]
    public void A_niche_that_cannot_be_lined_so_is_refused_before_it_is_planned(string old, string changed, string found, string expected) =>
        Assert.Contains(("faces[0].openings[0].depth", found, expected), JobCheck.Check(Job(Put(old, changed))).Select(fault => (fault.Path, fault.Found, fault.Expected)));

    private static string Put(string old, string changed)
    {
        var put = Wall.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(Wall, put);
        return put;
    }

    private static Job Job(string text) => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(text), "job.json")).Job;
}
