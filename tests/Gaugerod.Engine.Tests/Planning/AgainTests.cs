using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>A wall half done, measured again. The figures are reckoned by hand: tiles of 200, joints of 3, allowed from 2 to 4.</summary>
public sealed class AgainTests
{
    private static readonly JointRange Joints = new(Mm(2), Mm(3), Mm(4));

    [Fact]
    public void With_nothing_set_the_rest_is_the_plan()
    {
        var (plan, again) = Measured(new("wall", 0, null, null));
        var first = again.Ways[0];
        Assert.Equal("As planned.", first.Words);
        Assert.Empty(first.Changed);
        Assert.Empty(first.Missed);
        Assert.Equal(Outlines(plan.Runs[0].Faces[0].Pieces), Outlines(first.Pieces));
    }

    [Fact]
    public void With_everything_set_nothing_is_left_to_do()
    {
        var courses = Fresh().Runs[0].Faces[0].Pieces.Max(piece => piece.Course);
        var (plan, again) = Measured(new("wall", courses, null, null));
        Assert.All(again.Ways, way => Assert.Empty(way.Pieces));
        Assert.All(again.Ways, way => Assert.Empty(way.Marks));
        Assert.All(again.Ways, way => Assert.Equal(0, way.MustsMissed));
        Assert.Equal(0, plan.AgainOrders[0].Needed);
    }

    [Fact]
    public void A_third_course_as_planned_leaves_the_rest_as_planned()
    {
        var (plan, again) = Measured(new("wall", 3, null, null));
        Assert.Equal("As planned.", again.Ways[0].Words);
        Assert.Equal(Outlines(plan.Runs[0].Faces[0].Pieces.Where(piece => piece.Course > 3)), Outlines(again.Ways[0].Pieces));
    }

    [Fact]
    public void A_third_course_6_mm_high_is_evened_out_up_to_the_last_or_back_at_the_ninth_by_joints_of_2()
    {
        var (plan, again) = Measured(High(3, 6));
        Assert.Equal((Mm(6), Mm(6)), (again.OffLeft, again.OffRight));

        // Nine joints up to the twelfth: each two thirds of a millimetre less.
        Assert.Equal(12, again.Ways[0].BackAt);
        Assert.InRange((Mm(3) - again.Ways[0].Joint).Steps, 3200 * 2 / 3, (3200 * 2 / 3) + 1);
        Assert.Empty(again.Ways[0].Changed);

        var first = again.Ways[1];
        Assert.Equal((9, Mm(2)), (first.BackAt, first.Joint));
        Assert.Equal("Level joints of 2.0 mm up to course 9, which stands as planned; so does all above it.", first.Words);
        Assert.Empty(first.Changed);

        // Course 4 stands 5 mm high, and each after it a millimetre less.
        Assert.Equal([5, 4, 3, 2, 1, 0], first.Marks.Take(6).Select(mark => (mark.Left - mark.Planned).Steps / 3200));
        Assert.Equal(Outlines(plan.Runs[0].Faces[0].Pieces.Where(piece => piece.Course >= 9)), Outlines(first.Pieces.Where(piece => piece.Course >= 9)));
    }

    [Fact]
    public void Going_on_as_it_is_takes_6_mm_from_every_cut_at_the_ceiling()
    {
        var (plan, again) = Measured(High(3, 6));
        var on = Assert.Single(again.Ways, way => way.BackAt is null);
        var top = plan.Runs[0].Faces[0].Pieces.Max(piece => piece.Course);
        Assert.All(on.Pieces.Where(piece => piece.Course == top), piece => Assert.Equal(
            plan.Runs[0].Faces[0].Pieces.First(planned => planned.Id == piece.Id).Outline.Bounds.Height - Mm(6), piece.Outline.Bounds.Height));
        Assert.Equal(on.Pieces.Count(piece => piece.Course == top), on.Changed.Count);
    }

    [Fact]
    public void A_course_that_slopes_is_level_again_where_the_joints_allow()
    {
        var top = Top(3);
        var (_, again) = Measured(new("wall", 3, top + Mm(2), top));
        var first = again.Ways[1];

        // At the left 3 less 2 shared out over the joints is at least 2; at the right they stay 3.
        Assert.Equal(5, first.BackAt);
        Assert.Equal((1, 0), ((first.Marks[0].Left - first.Marks[0].Planned).Steps / 3200, (first.Marks[0].Right - first.Marks[0].Planned).Steps / 3200));
    }

    [Fact]
    public void A_joint_that_must_stand_at_a_height_is_met_by_then_or_said_to_be_lost()
    {
        var height = Top(6) + Mm(1) + Length.FromSteps(1600);
        Sequence<Want> wants = [new Want.JointAtHeight("wall", height, true, 1)];
        var (plan, again) = Measured(High(3, 3), wants);
        Assert.True(plan.Runs[0].Best.Wants[0].Held);
        // The joint lies under the seventh course.
        Assert.Equal((7, 0), (again.Ways[0].BackAt!.Value, again.Ways[0].MustsMissed));

        var late = Measured(High(3, 6), wants).Again;
        Assert.Equal(1, late.Ways[0].MustsMissed);
        Assert.EndsWith("lost.", Assert.Single(late.Ways[0].Missed), StringComparison.Ordinal);
    }

    [Fact]
    public void A_full_course_held_at_a_side_in_every_other_course_is_not_lost_by_courses_that_stand_high()
    {
        Sequence<Want> wants = [new Want.FullCourse(new("wall", "left"), false, 9)];
        var (plan, again) = Measured(High(3, 6, wants), wants);
        Assert.True(plan.Runs[0].Best.Wants[0].Held);
        Assert.Contains(plan.Runs[0].Faces[0].Pieces, piece => piece.Cuts.Any(cut => cut.Faces == "left"));
        Assert.All(again.Ways, way => Assert.Empty(way.Missed));
        // Joints 40 mm aside cut them all.
        Assert.All(Measured(High(3, 6, wants) with { Aside = Mm(40) }, wants).Again.Ways, way => Assert.Single(way.Missed));
    }

    /// <summary>Source: every course's joint tried in steps of half a millimetre.</summary>
    [Fact]
    public void Where_any_joints_meet_the_height_of_a_must_a_way_does()
    {
        var chance = new Random(8);
        var (found, lost) = (0, 0);
        for (var time = 0; time < 60; time++)
        {
            var (set, off, at) = (chance.Next(1, 5), chance.Next(-9, 10), chance.Next(3, 8));
            Sequence<Want> wants = [new Want.JointAtHeight("wall", Top(at) + Mm(1) + Length.FromSteps(1600), true, 1)];
            if (at < set) continue;
            var (plan, again) = Measured(High(set, off, wants), wants);
            if (!plan.Runs[0].Best.Wants[0].Held) continue;

            // From the top of the last course set, n joints of 2 to 4 and n - 1 tiles of 200 lie below the course; the middle of the last joint is asked for.
            var (from, height) = (Planned(plan, set) + off, Planned(plan, at) + 1.5);
            var any = Enumerable.Range(1, 9).Any(n => Sums(n).Any(sum => Math.Abs(from + ((n - 1) * 200) + sum.Before + (sum.Last / 2) - height) < 1e-6));
            if (any && at > set) Assert.True(again.Ways[0].MustsMissed == 0, $"set {set}, off {off}, at {at}: {again.Ways[0].Words}");
            if (any) found++;
            else lost++;
        }

        Assert.True(found > 10 && lost > 5, $"{found} and {lost}");

        static IEnumerable<(double Before, double Last)> Sums(int n) =>
            from before in Enumerable.Range((n - 1) * 4, ((n - 1) * 4) + 1) from last in Enumerable.Range(4, 5) select (before / 2.0, last / 2.0);
    }

    [Fact]
    public void Pieces_cut_for_the_ceiling_are_sawn_again_or_of_no_more_use()
    {
        var fresh = Fresh().Runs[0].Faces[0].Pieces;
        var id = fresh.First(piece => piece.Course == fresh.Max(p => p.Course)).Id;

        // Only the joint as planned is allowed: 6 mm high takes 6 mm off at the ceiling, 6 mm low adds them.
        var (_, high) = Measured(High(3, 6) with { Cut = [id] }, joint: JointRange.Only(Mm(3)));
        Assert.Equal(new CutAlready(id, false, id, $"{id} is too large now: saw it again."), Assert.Single(high.Cut));
        var (plan, low) = Measured(High(3, -6) with { Cut = [id] }, joint: JointRange.Only(Mm(3)));
        Assert.Equal(new CutAlready(id, false, null, $"{id} no longer fits anywhere."), Assert.Single(low.Cut));
        Assert.True(plan.AgainOrders[0].Needed > 0);
    }

    [Fact]
    public void What_was_entered_and_cannot_be_is_said_with_what_fits()
    {
        var (plan, again) = Measured(new("wall", 99, null, null) { Cut = ["Z9"] });
        Assert.Contains(plan.Findings, f => f.Rule == "set" && f.Text.StartsWith("99 courses are said to be set on wall, and the plan has courses 1 to ", StringComparison.Ordinal));
        Assert.Contains(plan.Findings, f => f.Rule == "set" && f.Text.StartsWith("Z9 is said to be cut", StringComparison.Ordinal));
        Assert.Empty(again.Ways[0].Pieces);

        var (other, taken) = Measured(High(3, 150));
        Assert.Contains(other.Findings, f => f.Rule == "set" && f.Text.Contains("more than half a course off", StringComparison.Ordinal));
        Assert.Equal("As planned.", taken.Ways[0].Words);
    }

    [Fact]
    public void Courses_below_the_starting_line_are_still_to_come_at_the_heights_planned()
    {
        var (whole, all) = Measured(High(4, 6));
        var (plan, again) = Measured(High(4, 6) with { From = 2 });
        Assert.Equal((1, 2), (all.From, again.From));
        Assert.Equal(all.Ways.Select(way => (way.Words, way.BackAt)), again.Ways.Select(way => (way.Words, way.BackAt)));
        foreach (var way in again.Ways)
        {
            Assert.Equal((1, way.Marks[0].Planned, way.Marks[0].Planned), (way.Marks[0].Course, way.Marks[0].Left, way.Marks[0].Right));
            Assert.Equal(Outlines(plan.Runs[0].Faces[0].Pieces.Where(piece => piece.Course == 1)), Outlines(way.Pieces.Where(piece => piece.Course == 1)));
        }

        // Its pieces need tiles yet, and those tiles are not gone.
        var lowest = plan.Runs[0].Faces[0].Pieces.Count(piece => piece.Course == 1);
        Assert.InRange(plan.AgainOrders[0].Needed - whole.AgainOrders[0].Needed, 1, lowest);
        Assert.True(plan.AgainOrders[0].Left >= whole.AgainOrders[0].Left);

        // What is cut for it is used; for what is set nothing can wait to be set.
        var (low, set) = (plan.Runs[0].Faces[0].Pieces.First(piece => piece.Course == 1).Id, plan.Runs[0].Faces[0].Pieces.First(piece => piece.Course == 3).Id);
        var (said, cut) = Measured(High(4, 6) with { From = 2, Cut = [low, set] });
        Assert.Equal($"{low} fits as it is.", Assert.Single(cut.Cut).Words);
        Assert.Contains(said.Findings, f => f.Rule == "set" && f.Text.StartsWith(set + " is said to be cut and not yet set", StringComparison.Ordinal));
    }

    [Fact]
    public void Set_from_a_course_above_the_last_is_said_and_all_below_taken_as_set()
    {
        var (plan, again) = Measured(new SetSoFar("wall", 3, null, null) with { From = 5 });
        Assert.Contains(plan.Findings, f => f.Rule == "set" && f.Text.Contains("course 5", StringComparison.Ordinal));
        Assert.Equal(1, again.From);
    }

    [Fact]
    public void Read_at_the_right_alone_it_stands_so_at_the_left_too()
    {
        var (_, again) = Measured(new("wall", 3, null, Top(3) + Mm(6)));
        Assert.Equal((Mm(6), Mm(6)), (again.OffLeft, again.OffRight));
    }

    [Fact]
    public void A_plan_of_which_only_what_is_set_has_changed_is_the_plan_from_the_beginning()
    {
        var job = Job(null, null);
        Job With(params SetSoFar[] set) => job with { Runs = [job.Runs[0] with { Set = set.ToSequence() }] };
        var plan = Planner.Plan(job);
        foreach (var next in new[] { With(High(3, 6)), With(new SetSoFar("wall", 99, null, null) { Cut = ["Z9"] }), With(High(4, -6) with { From = 2 }), job })
        {
            var steps = Planner.Steps(JobCheck.Steps(next, large: true).Last()!, plan).ToList();
            Assert.DoesNotContain(steps, step => step.Text.Contains("looking for a first place", StringComparison.Ordinal));
            plan = steps[^1].Plan!;
            var whole = Planner.Plan(next);
            Assert.Equal((whole.Findings, whole.Again, whole.AgainOrders, whole.Cutting, whole.Order), (plan.Findings, plan.Again, plan.AgainOrders, plan.Cutting, plan.Order));
            Assert.Equal(whole.Runs[0].Request, plan.Runs[0].Request);
            Assert.Equal(next, plan.Job);
        }

        // With another tape the search begins anew.
        Assert.Contains(Planner.Steps(JobCheck.Steps(job with { Tape = Tape.Sixteenths }, large: true).Last()!, plan), step => step.Text.Contains("looking for a first place", StringComparison.Ordinal));
    }

    private static Plan Fresh(Sequence<Want>? wants = null, JointRange? joint = null) => Planner.Plan(Job(wants, joint));

    private static Job Job(Sequence<Want>? wants, JointRange? joint) =>
        OneWall.Job(Mm(1530), Mm(2400), Mm(3), Mm(200), joint ?? Joints, Tape.Millimetres, wants, bond: new BondRequest.Running(Lay.Level, 1, 2, Stepping.BackAndForth));

    private static (Plan Plan, AgainFace Again) Measured(SetSoFar set, Sequence<Want>? wants = null, JointRange? joint = null)
    {
        var job = Job(wants, joint);
        var plan = Planner.Plan(job with { Runs = [job.Runs[0] with { Set = [set] }] });
        return (plan, Assert.Single(plan.Again));
    }

    private static SetSoFar High(int course, int by, Sequence<Want>? wants = null) => new("wall", course, Top(course, wants) + Mm(by), null);

    private static Length Top(int course, Sequence<Want>? wants = null) => Fresh(wants).Runs[0].Faces[0].Pieces.First(piece => piece.Course == course).Cell.Top;

    private static double Planned(Plan plan, int course) => plan.Runs[0].Faces[0].Pieces.First(piece => piece.Course == course).Cell.Top.Steps / 3200.0;

    private static IEnumerable<string> Outlines(IEnumerable<Engine.Pieces.Piece> pieces) => pieces.OrderBy(piece => piece.Id, StringComparer.Ordinal).Select(piece => $"{piece.Id} {piece.Course} {string.Join(' ', piece.Outline.Points)}");
}
