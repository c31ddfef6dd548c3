using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Sequencing;

/// <summary>Days by hand.</summary>
public sealed class WorkedDaysTests
{
    private static readonly Sequence<DayOfWeek> Week = [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday];

    [Fact]
    public void A_hold_goes_on_over_the_weekend_and_work_does_not()
    {
        // Friday 5 March 2027: six hours from 08:00 with half an hour of break; grout may follow after 48 h, on Sunday; the first hour of work is Monday's.
        var plan = Two(new(new(2027, 3, 5), 480, 990, 30, Week, [], Clocks.None), 360, 48 * 60, 60);
        Assert.Equal((new DateTime(2027, 3, 5, 8, 0, 0), new DateTime(2027, 3, 5, 14, 30, 0)), (plan.Tasks[0].Begins!.Value, plan.Tasks[0].Ends!.Value));
        Assert.Equal(new DateTime(2027, 3, 7, 14, 30, 0), plan.Tasks[1].Waits[0].Until);
        Assert.Equal(new DateTime(2027, 3, 8, 8, 0, 0), plan.Tasks[1].Begins);
    }

    [Fact]
    public void A_night_on_which_clocks_go_forward_is_an_hour_shorter_on_the_clock()
    {
        // Sunday 28 March 2027 at 02:00 in the middle of the Union: 24 h after Saturday 15:00 the clock shows 16:00.
        var hours = new WorkHours(new(2027, 3, 27), 480, 1200, 0, [.. Week, DayOfWeek.Saturday, DayOfWeek.Sunday], [], Clocks.Eu);
        var plan = Two(hours, 7 * 60, 24 * 60, 60);
        Assert.Equal(new DateTime(2027, 3, 27, 15, 0, 0), plan.Tasks[0].Ends);
        Assert.Equal(new DateTime(2027, 3, 28, 16, 0, 0), plan.Tasks[1].Begins);
    }

    [Fact]
    public void What_is_mixed_is_not_left_for_the_morning()
    {
        var hours = new WorkHours(new(2027, 3, 8), 480, 960, 0, Week, [], Clocks.None);
        var plan = Two(hours, 420, 0, 120, whole: true);
        Assert.Equal(new DateTime(2027, 3, 9, 8, 0, 0), plan.Tasks[1].Begins);
        Assert.Equal(new DateTime(2027, 3, 8, 15, 0, 0), Two(hours, 420, 0, 120).Tasks[1].Begins);
    }

    [Fact]
    public void Two_pairs_of_hands_work_beside_each_other_and_one_does_not()
    {
        Assert.Equal(new DateTime(2027, 3, 8, 9, 0, 0), Beside(1).Tasks[1].Begins);
        Assert.Equal(new DateTime(2027, 3, 8, 8, 0, 0), Beside(2).Tasks[1].Begins);
        Assert.Equal(["other"], Beside(1).Tasks[0].Beside);

        static WorkPlan Beside(int hands)
        {
            var graph = new WorkGraph();
            graph.Add(new("one", WorkKind.Own) { Minutes = 60 });
            graph.Add(new("other", WorkKind.Own) { Minutes = 60 });
            return WorkPlanner.Plan(new(new(new(2027, 3, 8), 480, 960, 0, Week, [], Clocks.None)) { Hands = hands }, graph);
        }
    }

    [Theory]
    [InlineData(9999, 12, 30, 4000)]
    [InlineData(2027, 3, 8, 4 * 525_600)]
    public void Days_that_never_come_end_the_order_and_no_loop_runs_for_ever(int year, int month, int day, int minutes)
    {
        var hours = new WorkHours(new(year, month, day), 480, 960, 0, Week, [new(new(2037, 1, 1), new(9999, 12, 31))], Clocks.Nz);
        var plan = Two(hours, 60, 0, minutes * 10);
        Assert.Null(plan.Tasks[^1].Begins);
        Assert.Contains(WorkRules.Findings(plan, null, Tape.Millimetres), finding => finding is { Level: FindingLevel.Stop, Rule: "work-never" });
    }

    private static WorkPlan Two(WorkHours hours, int first, int hold, int next, bool whole = false)
    {
        var graph = new WorkGraph();
        graph.Add(new("one", WorkKind.Own) { Minutes = first });
        graph.Add(new("other", WorkKind.Own) { Minutes = next, IsWhole = whole });
        graph.Link(new(0, 1, hold, HoldKind.Grout, HoldFrom.Job, null));
        return WorkPlanner.Plan(new(hours), graph);
    }
}
