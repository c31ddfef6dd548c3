using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>An invented wall with its mortar and its grout, and slips in them.</summary>
public sealed class SupplyJobTests
{
    // 3 by 2.4 m of 300 mm tile, 3 mm joints, soft joints of 3 mm all round.
    private const string Wall = """
        { "format": "gaugerod-job/1", "name": "Utility wall", "note": "Invented.", "units": "mm", "edgeJoint": 3,
          "products": [{ "name": "tile", "width": 300, "height": 300, "thickness": 8 }],
          "supplies": [{ "name": "wall mortar", "kind": "mortar", "pack": "20 kg bag", "yield": "14 l", "loss": 10 }, { "name": "grey", "kind": "grout", "yield": "1.5 l" }],
          "faces": [{ "name": "wall", "outline": [[0, 0], [3000, 0], [3000, 2400], [0, 2400]],
            "edges": [{ "name": "foot", "kind": "floor" }, { "name": "right", "kind": "inside corner" }, { "name": "head", "kind": "ceiling" }, { "name": "left", "kind": "inside corner" }] }],
          "runs": [{ "name": "wall", "product": "tile", "faces": ["wall"], "bond": { "kind": "grid" }, "joint": 3,
            "setting": { "mortar": "wall mortar", "trowel": { "width": 8, "depth": 8, "tooth": 8, "angle": 60 }, "backButter": 1, "grout": "grey" } }] }
        """;

    [Fact]
    public void Mortar_and_grout_come_from_the_field_and_its_joints_in_whole_packs()
    {
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.JobSchema, Wall));
        var plan = Planner.Plan(Job(Wall));
        var (mortar, grout) = (plan.Supplies[0], plan.Supplies[1]);

        // By hand: 2994 by 2394 mm of field; 8 x 8 / 16 = 4 mm by sin 60; a millimetre on the backs; a tenth on top.
        var field = 2.994 * 2.394;
        var pieces = plan.Runs[0].Faces[0].Pieces.Sum(piece => (double)piece.Outline.DoubledArea) / 2 / (3200.0 * 3200.0) / 1e6;
        Assert.Equal(1.1 * ((field * 4 * Math.Sqrt(0.75)) + pieces), mortar.Amount, 1e-9);
        Assert.Equal((int)Math.Ceiling(mortar.Amount / 14), mortar.Packs);
        Assert.Equal((mortar.Packs * 14) - mortar.Amount, mortar.Over, 1e-9);

        // By hand: ten columns and eight courses of joints, nine and seven of them, crossings once; 8 mm deep.
        var (columns, courses) = (plan.Runs[0].Faces[0].Pieces.Max(piece => piece.Column), plan.Runs[0].Faces[0].Pieces.Max(piece => piece.Course));
        var joints = ((columns - 1) * 0.003 * 2.394) + ((courses - 1) * 0.003 * 2.994) - ((columns - 1) * (courses - 1) * 0.003 * 0.003);
        Assert.Equal(joints * 8, grout.Amount, 1e-9);
        Assert.Equal("pack", grout.Supply.Pack);

        var json = Encoding.UTF8.GetString(PlanWriter.Write(plan));
        Assert.Empty(Schemas.SchemaTests.Faults(Schemas.SchemaTests.PlanSchema, json));
        Assert.Contains("\"called\": \"20 kg bag\"", json, StringComparison.Ordinal);
        Assert.StartsWith("A 20 kg bag makes 14.0 l. wall: 7.17 m² of field, 3.5 mm thick (square notches 8 mm wide, 8 mm deep, 8 mm apart, held at 60°), and ", SupplyWords.Basis(mortar, plan.Job.Tape), StringComparison.Ordinal);
    }

    [Fact]
    public void A_pack_filled_to_the_last_drop_is_followed_by_none()
    {
        var exact = Planner.Plan(Job(Wall)).Supplies[1].Amount;
        var job = Job(Wall);
        var supplies = job.Supplies.Select(supply => supply.Name == "grey" ? supply with { Makes = exact / 3 } : supply);
        Assert.Equal(3, Planner.Plan(job with { Supplies = [.. supplies] }).Supplies[1].Packs);
    }

    [Theory]
    [InlineData("\"mortar\": \"wall mortar\"", "\"mortar\": \"wal mortar\"", "runs[0].setting.mortar", "\"wall mortar\"")]
    [InlineData("\"mortar\": \"wall mortar\"", "\"mortar\": \"grey\"", "runs[0].setting.mortar", null)]
    [InlineData("\"yield\": \"14 l\"", "\"yield\": \"0\"", "supplies[0].yield", null)]
    [InlineData("\"yield\": \"14 l\"", "\"yield\": \"14 stone\"", "supplies[0].yield", null)]
    [InlineData("\"kind\": \"grout\"", "\"kind\": \"growt\"", "supplies[1].kind", "\"grout\"")]
    [InlineData("\"loss\": 10", "\"loss\": 110", "supplies[0].loss", "100")]
    [InlineData("\"name\": \"grey\"", "\"name\": \"wall mortar\"", "supplies[1].name", "\"wall mortar 2\"")]
    [InlineData("\"angle\": 60", "\"angle\": 10", "runs[0].setting.trowel.angle", "30")]
    [InlineData("\"tooth\": 8", "\"tooth\": 0", "runs[0].setting.trowel.tooth", "1 mm")]
    [InlineData("\"depth\": 8", "\"depth\": 3, \"shape\": \"round\"", "runs[0].setting.trowel.depth", "4 mm")]
    [InlineData("\"setting\"", "\"seting\"", "runs[0].seting", "\"setting\"")]
    [InlineData("\"mortar\": \"wall mortar\", ", "", "runs[0].setting.trowel", "\"mortar\": \"..\"")]
    [InlineData("\"grout\": \"grey\"", "\"jointDepth\": 6", "runs[0].setting.jointDepth", "\"grout\": \"..\"")]
    [InlineData("\"grout\": \"grey\"", "\"grout\": \"grey\", \"jointDepth\": 0", "runs[0].setting.jointDepth", null)]
    [InlineData("\"yield\": \"14 l\", ", "", "supplies[0].yield", null)]
    public void A_slip_is_said_where_it_stands_with_what_fits(string old, string changed, string path, string? nearest)
    {
        var spoilt = Wall.Replace(old, changed, StringComparison.Ordinal);
        Assert.NotEqual(Wall, spoilt);
        Assert.Contains((path, nearest), Samples.Faults(spoilt).Select(fault => (fault.Path, fault.Nearest)));
    }

    [Theory]
    [InlineData("\"trowel\": { \"width\": 8, \"depth\": 8, \"tooth\": 8, \"angle\": 60 }, \"backButter\": 1, ", "", "runs[0].setting.mortar")]
    [InlineData(", \"thickness\": 8", "", "runs[0].setting.grout")]
    public void What_nothing_says_the_thickness_of_is_refused(string old, string changed, string path) =>
        Assert.Equal(path, Assert.Single(JobCheck.Check(Job(Wall.Replace(old, changed, StringComparison.Ordinal)))).Path);

    private static Job Job(string text) => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(text), "job.json")).Job;
}
