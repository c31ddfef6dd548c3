using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rooms;

public sealed class HoleTests
{
    [Theory]
    [InlineData(500, 60)]
    [InlineData(560, 60)]
    [InlineData(500, 200)]
    public void Two_holes_that_meet_are_refused(long x, long diameter)
    {
        var fault = Assert.Single(Finish(WithHoles(new("valve", At(500, 1000), Mm(100)), new("spout", At(x, 1000), Mm(diameter)))).Faults);

        Assert.Equal(("faces[0].holes[1]", "the hole 'spout' running into 'valve'"), (fault.Path, fault.Found));
    }

    [Fact]
    public void Two_holes_with_tile_between_them_are_drilled()
    {
        var face = One(WithHoles(new("hot", At(500, 1000), Mm(30)), new("cold", At(650, 1000), Mm(30))));

        Assert.All(face.Holes, hole => Assert.Equal(OnTile.Wholly, HoleChecks.Of(hole, face.Field)));
    }

    [Theory]
    [InlineData(20, 1000)]
    [InlineData(-10, 1000)]
    [InlineData(450, 2390)]
    public void A_hole_that_reaches_over_the_tiles_edge_is_warned_of(long x, long y)
    {
        var run = Finish(WithHoles(new Hole("pipe", At(x, y), Mm(60))));

        Assert.Contains(run.Findings, f => f is { Level: FindingLevel.Warn, Rule: "hole" } && f.Text.Contains("'pipe' reaches over", StringComparison.Ordinal));
    }

    [Fact]
    public void A_hole_larger_than_the_wall_is_refused_with_the_largest_that_leaves_tile_round_it()
    {
        var fault = Assert.Single(Finish(WithHoles(new Hole("duct", At(450, 1200), Mm(4000)))).Faults);
        Assert.EndsWith(".holes[0].diameter", fault.Path, StringComparison.Ordinal);
        Assert.StartsWith("a hole of 4000 mm that takes all of", fault.Found, StringComparison.Ordinal);
        Assert.NotEmpty(fault.Mends);
    }

    // A raking ceiling from 2400 mm down to 600 mm over 900 mm: at x = 200 it stands at 2000 mm, well above the hole.
    [Fact]
    public void A_hole_below_a_raking_ceiling_is_drilled()
    {
        var gable = Given("gable", [(0, 0), (900, 0), (900, 600), (0, 2400)], Stop("foot"), Stop("right"), Stop("slope"), Stop("left"));
        var face = One(gable with { Holes = [new Hole("pipe", At(200, 1000), Mm(60))] });

        Assert.Equal(OnTile.Wholly, HoleChecks.Of(face.Holes[0], face.Field));
        Assert.DoesNotContain(Finish(gable with { Holes = face.Holes }).Findings, f => f.Rule == "hole");
    }

    private static Face WithHoles(params Hole[] holes) => Read("north", holes: holes.ToSequence());
}
