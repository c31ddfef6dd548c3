using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>Joints that run on from one zone of a wall into the next. Judged by the tiles' own sides; the joint is 3 mm, so that a joint's middle lies 1.5 mm off them.</summary>
public sealed class InLineTests
{
    private static readonly Length s_half = Length.FromSteps(4800), s_hair = Length.FromSteps(33);

    [Theory]
    [InlineData("grid", 200)]
    [InlineData("running", 200)]
    [InlineData("grid", 120)]
    public void The_tile_above_a_line_takes_up_a_joint_of_the_tile_below(string bond, int above)
    {
        var plan = Planned(Wall(bond, above, "\"kind\": \"grid\"", "north"));
        var (below, upper) = (Sides(plan, 0), Sides(plan, 1));
        var shared = upper.Where(one => below.Any(other => (one - other).Abs() <= s_hair)).ToList();
        Assert.NotEmpty(shared);
        // Tiles of one width, laid alike, share every joint between them.
        if (bond == "grid" && above == 200) Assert.True(shared.Count >= 8, $"{shared.Count} of {upper.Count}");
        Assert.True(Assert.Single(plan.Runs[1].Best.Wants).Held);
        Assert.Equal("Must: a joint of upper in line with one of north: held.", plan.Runs[1].Best.Wants[0].Text);
    }

    [Fact]
    public void A_pattern_sets_a_crossing_of_its_joints_in_line_with_the_tile_below()
    {
        var plan = Planned(Wall("grid", 200, "\"kind\": \"basketweave\"", "north", "\"height\": 98.5,"));
        Assert.True(Assert.Single(plan.Runs[1].Best.Wants).Held);
        var (below, upper) = (Sides(plan, 0), plan.Runs[1].Faces[0].Pieces.SelectMany(piece => piece.Laid.Points).Select(point => point.X).SelectMany(x => new[] { x - s_half, x + s_half }).ToList());
        Assert.Contains(below, joint => upper.Exists(one => (one - joint).Abs() <= s_hair));
    }

    [Theory]
    [InlineData("attic", "the name of another zone of the wall")]
    [InlineData("upper", "a zone that an earlier run lays")]
    public void A_zone_that_cannot_be_taken_up_is_refused_with_one_that_can(string with, string expected)
    {
        var fault = Assert.Single(JobCheck.Check(Read(Wall("grid", 200, "\"kind\": \"grid\"", with))));
        Assert.Equal("runs[1].wants[0].with", fault.Path);
        Assert.Contains(expected, fault.Expected, StringComparison.Ordinal);
    }

    /// <summary>A zone so narrow that no upright joint of the other runs into it has nothing to stand in line with: the want is missed, and said to be.</summary>
    [Theory]
    [InlineData("\"kind\": \"grid\"")]
    [InlineData("\"kind\": \"hexagon\"")]
    public void Where_there_is_no_joint_to_take_up_the_want_is_said_to_be_missed(string bond)
    {
        var plan = Planned($$"""
            { "format": "gaugerod-job/1", "name": "one joint too few", "units": "mm", "edgeJoint": 3,
              "products": [{ "name": "t", "width": 900, "height": 100 }, { "name": "u", "width": 100, "height": 115, "thickness": 8 }],
              "faces": [{ "name": "north", "readings": { "width": { "foot": 600 }, "height": { "left": 2000 } },
                "zones": [{ "kind": "band", "name": "upper", "from": 1000 }] }],
              "runs": [
                { "name": "lower", "product": "t", "faces": ["north"], "bond": { "kind": "grid" }, "joint": 3, "wants": [{ "want": "centred", "face": "north", "on": "tile", "must": true }] },
                { "name": "upper", "product": "u", "faces": ["upper"], "bond": { {{bond}} }, "joint": 3, "limits": { "sliver": 5 },
                  "wants": [{ "want": "in line", "face": "upper", "with": "north" }] }] }
            """);
        Assert.False(Assert.Single(plan.Runs[1].Best.Wants).Held);
        Assert.Equal(1, plan.Runs[1].Best.Score.WantsMissed);
    }

    /// <summary>The middles of the upright joints between tiles of the lowest course of a zone, or of its highest, whichever is at the line 1000 up.</summary>
    private static List<Length> Sides(Plan plan, int run)
    {
        var pieces = plan.Runs[run].Faces[0].Pieces;
        var course = pieces.GroupBy(piece => piece.Cell.Bottom).MinBy(row => (row.Min(piece => piece.Cell.Bottom) - Length.FromMillimetres(run == 0 ? 900 : 1000)).Abs())!;
        return [.. course.SelectMany(piece => new[] { piece.Cell.Left - s_half, piece.Cell.Right + s_half }).Distinct()];
    }

    private static Job Read(string job) => Assert.IsType<JobReading.Understood>(JobReader.Read(Encoding.UTF8.GetBytes(job), "job.json")).Job;

    private static Plan Planned(string job) => Planner.Plan(Read(job));

    private static string Wall(string bond, int above, string bondAbove, string with, string heightAbove = "\"height\": 100,") => $$"""
        { "format": "gaugerod-job/1", "name": "two tiles", "units": "mm", "edgeJoint": 3,
          "products": [{ "name": "t", "width": 200, "height": 100 }, { "name": "u", "width": {{above}}, {{heightAbove}} "thickness": 8 }],
          "faces": [{ "name": "north", "readings": { "width": { "foot": 2111 }, "height": { "left": 2000 } },
            "zones": [{ "kind": "band", "name": "upper", "from": 1000 }] }],
          "runs": [
            { "name": "lower", "product": "t", "faces": ["north"], "bond": { "kind": "{{bond}}"{{(bond == "running" ? ", \"offset\": \"1/2\"" : "")}} }, "joint": 3 },
            { "name": "upper", "product": "u", "faces": ["upper"], "bond": { {{bondAbove}} }, "joint": 3,
              "wants": [{ "want": "in line", "face": "upper", "with": "{{with}}", "must": true }] }] }
        """;
}
