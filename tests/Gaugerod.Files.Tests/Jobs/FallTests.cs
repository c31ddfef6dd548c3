using System.Text;
using Gaugerod.Engine;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Floors that fall, read from files as they are written.</summary>
public sealed class FallTests
{
    private const string Round = """
        { "format": "gaugerod-job/1", "name": "wet", "units": "mm", "edgeJoint": 3,
          "products": [{ "name": "t", "width": 147, "height": 147 }],
          "faces": [{ "name": "floor", "outline": [{ "to": [0, 600], "through": [600, 1200] }, { "to": [1200, 600], "through": [600, 0] }],
            "edges": [{ "name": "one", "kind": "floor" }, { "name": "other", "kind": "floor" }],
            "holes": [{ "name": "drain", "x": 600, "y": 600, "diameter": 100 }], "falls": { "to": "drain" } }],
          "runs": [{ "name": "floor", "product": "t", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": 3 }] }
        """;

    [Fact]
    public void A_round_floor_is_laid_in_one_piece_and_told_from_where_its_tile_can_follow_the_fall()
    {
        var job = Read(Round);
        Assert.Empty(JobCheck.Check(job));
        var plan = Planner.Plan(job);
        Assert.Equal("floor", Assert.Single(plan.Runs[0].Faces).Face.Name);
        // No more tiles are cut than lie at the edge of a round of 8 by 8 tiles, and one at the drain.
        Assert.InRange(plan.Runs[0].Best.Score.Cuts, 20, 40);
        var finding = Assert.Single(plan.Findings, finding => finding.Rule == "falls");
        Assert.Equal(FindingLevel.Warn, finding.Level);
        Assert.Contains("nearer than", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_fold_that_would_not_be_cut_is_told_at_once_and_by_its_place_in_the_file()
    {
        var job = Read(Round.Replace("""{ "to": "drain" }""", """{ "lines": [[[0, 600], [1200, 600]], [[0, 600], [1200, 600]], [[600, 600], [900, 800]]] }""", StringComparison.Ordinal));
        Assert.Equal(["faces[0].falls.lines[1]", "faces[0].falls.lines[2]"], JobCheck.Check(job).Select(fault => fault.Path).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Folds_to_a_channel_in_the_floor_leave_four_planes_round_it()
    {
        var job = Read("""
            { "format": "gaugerod-job/1", "name": "channel", "units": "mm", "edgeJoint": 3,
              "products": [{ "name": "t", "width": 197, "height": 197 }],
              "faces": [{ "name": "floor", "outline": [[0, 0], [1600, 0], [1600, 900], [0, 900]],
                "edges": [{ "name": "south", "kind": "floor" }, { "name": "east", "kind": "floor" }, { "name": "north", "kind": "floor" }, { "name": "west", "kind": "floor" }],
                "openings": [{ "name": "channel", "left": 500, "bottom": 400, "width": 600, "height": 100 }],
                "falls": { "lines": [[[0, 0], [500, 400]], [[1600, 0], [1100, 400]], [[1600, 900], [1100, 500]], [[0, 900], [500, 500]]] } }],
              "runs": [{ "name": "floor", "product": "t", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": 3 }] }
            """);
        Assert.Empty(JobCheck.Check(job));
        var faces = Planner.Plan(job).Runs[0].Faces;
        Assert.Equal(["floor 1", "floor 2", "floor 3", "floor 4"], faces.Select(face => face.Face.Name));
        Assert.All(faces, face => Assert.NotEmpty(face.Pieces));
    }

    private static Job Read(string job) => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(job), "job.json")).Job;
}
