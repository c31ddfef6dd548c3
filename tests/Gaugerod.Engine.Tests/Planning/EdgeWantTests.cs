using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>What the plan says of an edge that no joint can follow. A wall of 1200 by 1400 mm, tiles of 200, joint 3; worked by hand.</summary>
public sealed class EdgeWantTests
{
    [Fact]
    public void A_joint_on_a_bench_that_slopes_is_missed_and_the_plan_says_where_it_meets()
    {
        // 300 high at the left and 220 at the right, 80 in 700 down: a tile's side meets the low end, tiles are cut along all the rest.
        var outcome = Outcome(Room("bench", 3000, 2200));
        Assert.False(outcome.Held);
        Assert.True(outcome.MeetsInPart);
        Assert.StartsWith("Must: a joint on the bench on wall: missed, it is met at its right end, ", outcome.Text, StringComparison.Ordinal);
        Assert.EndsWith(" mm out at its left end.", outcome.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_joint_on_a_bench_that_is_out_by_less_than_the_tape_shows_is_held()
    {
        Assert.True(Outcome(Room("bench", 3000, 3006)).Held);
        Assert.False(Outcome(Room("bench", 3000, 3016)).Held);
    }

    [Fact]
    public void A_full_course_at_a_bench_that_slopes_is_whole_at_one_end_and_the_plan_says_at_which()
    {
        var job = Room("bench", 3000, 2200).Job();
        job = job with { Runs = [job.Runs[0] with { Wants = [new Want.FullCourse(new("wall", "bench"), true, 1)] }] };
        var outcome = Assert.Single(Planner.Plan(job).Runs[0].Best.Wants);
        Assert.True(outcome.Held);
        Assert.Contains("held at its right end, ", outcome.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_want_on_an_edge_that_rakes_is_missed_and_not_lost()
    {
        // 400 to 150 over 700 is steeper than 1 in 8.
        var outcome = Outcome(Room("bench", 4000, 1500));
        Assert.False(outcome.Held);
        Assert.Contains("neither level nor plumb", outcome.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_joint_on_a_side_is_missed_where_every_second_course_is_cut_there()
    {
        var room = Room("left", 3000, 3000) with { Bond = new BondRequest.Running(Lay.Level, 1, 2, Stepping.OneWay) };
        var outcome = Outcome(room);
        Assert.False(outcome.Held);
        Assert.EndsWith("missed, it is met in one course of 2.", outcome.Text, StringComparison.Ordinal);
        Assert.True(Outcome(room with { Bond = new BondRequest.Grid(Lay.Level) }).Held);
    }

    [Fact]
    public void A_joint_on_a_side_that_stands_within_one_course_is_held_in_a_running_bond()
    {
        var room = Room("niche.left", 3000, 3000) with { Bond = new BondRequest.Running(Lay.Level, 1, 2, Stepping.OneWay), Niche = (4000, 7000, 2000, 1400) };
        Assert.True(Outcome(room).Held);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    public void However_the_bond_is_turned_the_place_that_meets_the_bench_at_one_end_is_still_looked_for(int degrees)
    {
        var outcome = Outcome(Room("bench", 3000, 2900) with { Bond = new BondRequest.Grid(Lay.Level) { Turn = Angle.FromDegrees(degrees) } });
        Assert.Equal((false, true), (outcome.Held, outcome.MeetsInPart));
    }

    private static WantOutcome Outcome(SlopingRoom room) => Assert.Single(OneWall.Plan(room.Job(must: true)).Best.Wants);

    private static SlopingRoom Room(string edge, int left, int right) =>
        new((12000, 14000), (2000, 2000), new BondRequest.Grid(Lay.Level), (7000, left, right), (4000, 7000, 3000, 3000), 0, edge, null);
}
