using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Planning;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>What may be moved is built before tiling: the plan says where, by the measures that its settled job holds.</summary>
public sealed class ToBuildTests
{
    private static readonly MovableRoom s_room = new(1500, 1800, (200, 100), new BondRequest.Grid(Lay.Level), [500, 900, 410, 310, 300, 600], [(105, 105), (60, 60), (10, 10), (10, 10), (60, 60), null], null);

    [Fact]
    public void A_niche_and_a_bench_that_were_moved_are_said_with_every_measure_that_places_them()
    {
        var plan = Planner.Plan(s_room.Open());
        var measures = MovableRoom.Measures(plan.Job);
        Assert.NotEqual(MovableRoom.Measures(s_room.Open()), measures);
        var near = measures.Select(measure => FormattableString.Invariant($"{Math.Floor((decimal)measure.Steps / 3200m + 0.5m):0} mm")).ToArray();
        Assert.Equal(
            [$"Frame niche: left {near[0]}, bottom {near[1]}, {near[2]} wide, {near[3]} high", $"Build bench: from 0 mm to {near[5]}, {near[4]} high"],
            plan.ToBuild.Select(thing => thing.Words));
        Assert.All(plan.ToBuild, thing => Assert.Contains("asked was", thing.From, StringComparison.Ordinal));
    }

    [Fact]
    public void What_was_left_as_asked_is_said_too_for_it_is_built_all_the_same()
    {
        var askew = s_room with { Bond = new BondRequest.Grid(Lay.Level) { Turn = Gaugerod.Plane.Measure.Angle.FromDegrees(45) } };
        Assert.Contains(Planner.Plan(askew.Open()).ToBuild, thing => thing.Words == "Frame niche: left 500 mm, bottom 900 mm, 410 mm wide, 310 mm high" && thing.From.EndsWith("It stands as asked.", StringComparison.Ordinal));
    }

    [Fact]
    public void A_job_with_nothing_left_open_has_nothing_to_build_first() =>
        Assert.Empty(Planner.Plan((s_room with { Range = new (int, int)?[6] }).Open()).ToBuild);
}
