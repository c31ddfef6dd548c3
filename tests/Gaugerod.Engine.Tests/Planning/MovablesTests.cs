using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;
using Xunit.Abstractions;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>Things that are not built yet stand within their limits, at the joints, and stay there under the hand; judged by their measures and by the pieces.</summary>
public sealed class MovablesTests(ITestOutputHelper output)
{
    [Fact]
    public void Nothing_is_ever_moved_beyond_its_limits_or_into_a_stud() => MovableRoom.Any(1, 6).EachDear(
        room =>
        {
            var job = room.Open();
            if (JobCheck.Check(job).Count > 0) return;
            var plan = Planner.Plan(job);
            Assert.True(room.Allows(plan.Job), string.Join(' ', MovableRoom.Measures(plan.Job)));

            // Wherever it is held by hand, too.
            var run = plan.Runs[0];
            var slide = RodSlide.Of(plan.Job, run);
            foreach (var (right, up) in new[] { (37, -11), (-123, 64) })
            {
                var place = slide.Moved(slide.Moved(run.Best.Faces, Axis.Level, Mm(right), 0), Axis.Plumb, Mm(up), 0);
                var held = Planner.Plan(Held(job, slide.Held(place)));
                Assert.True(room.Allows(held.Job), string.Join(' ', MovableRoom.Measures(held.Job)));
            }
        },
        24);

    [Fact]
    public void The_place_that_was_found_held_by_hand_leaves_all_things_where_they_were()
    {
        var (kept, all) = (0, 0);
        MovableRoom.Any(1, 6).EachDear(
            room =>
            {
                var job = room.Open();
                if (JobCheck.Check(job).Count > 0) return;
                var plan = Planner.Plan(job);
                var held = Planner.Plan(Held(job, RodSlide.Of(plan.Job, plan.Runs[0]).Held(plan.Runs[0].Best.Faces)));
                Interlocked.Increment(ref all);
                var (was, now) = (MovableRoom.Measures(plan.Job), MovableRoom.Measures(held.Job));
                if (!was.SequenceEqual(now))
                {
                    output.WriteLine($"{string.Join(' ', was)} went to {string.Join(' ', now)}: {plan.Runs[0].Best.Score} / {held.Runs[0].Best.Score}");
                    return;
                }

                Interlocked.Increment(ref kept);
                Assert.Equal(plan.Runs[0].Best.Score, held.Runs[0].Best.Score);
            },
            40);
        output.WriteLine($"{kept} of {all} stayed");
        // Nothing is proved of other rooms: docs/patterns.md tells of a few.
        Assert.True(all >= 35, $"{all}");
        if (Cases.Seed == Cases.Everyday) Assert.Equal(all, kept);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(31, 17)]
    [InlineData(-140, 55)]
    public void Held_anywhere_a_niche_with_room_to_move_has_no_tile_cut_at_it(int right, int up)
    {
        // Its ranges are wider than a tile and its joint either way, and it may be two tiles wide and three high.
        var room = new MovableRoom(1500, 1800, (200, 100), new BondRequest.Grid(Lay.Level), [500, 900, 410, 310, 300, 600], [(105, 105), (60, 60), (10, 10), (10, 10), (60, 60), null], null);
        var job = room.Open();
        var plan = Planner.Plan(job);
        var slide = RodSlide.Of(plan.Job, plan.Runs[0]);
        var place = slide.Moved(slide.Moved(plan.Runs[0].Best.Faces, Axis.Level, Mm(right), 0), Axis.Plumb, Mm(up), 0);
        var held = Planner.Plan(Held(job, slide.Held(place)));

        Assert.True(room.Allows(held.Job));
        Assert.DoesNotContain(held.Runs[0].Faces[0].Pieces.SelectMany(piece => piece.Cuts), cut => cut.Faces.StartsWith("niche", StringComparison.Ordinal) || cut.Faces == "bench");
        // The place is the one that was held, by a whole number of tiles and joints.
        var (was, now) = (place[0], held.Runs[0].Best.Faces[0]);
        Assert.Equal(Length.Zero, Length.FromSteps(Math.Abs((was.X - now.X).Steps) % Mm(203).Steps));
        Assert.Equal(Length.Zero, Length.FromSteps(Math.Abs((was.Y - now.Y).Steps) % Mm(103).Steps));
    }

    [Fact]
    public void A_niche_between_studs_moves_no_further_than_they_let_it()
    {
        // 380 mm clear, a niche of 310: it may go 70 mm from stud to stud, and no further even where a joint is near.
        var room = new MovableRoom(1523, 2231, (297, 97), new BondRequest.Grid(Lay.Level), [717, 1130, 310, 430, 300, 400], [null, (30, 30), null, null, null, null], (680, 1060));
        var plan = Planner.Plan(room.Open());
        var box = plan.Job.Faces[0].Openings[0].Ring.Bounds;
        Assert.True(box.Left >= Mm(680) && box.Right <= Mm(1060), box.ToString());
        Assert.Equal(Mm(310), box.Width);
    }

    [Fact]
    public void A_bench_front_comes_to_a_joint_so_that_no_tile_is_cut_beside_it()
    {
        var room = new MovableRoom(1100, 2000, (200, 100), new BondRequest.Grid(Lay.Level), [700, 1200, 150, 150, 430, 380], [null, null, null, null, (60, 60), (110, 110)], null);
        var plan = Planner.Plan(room.Open());
        Assert.DoesNotContain(plan.Runs[0].Faces[0].Pieces.SelectMany(piece => piece.Cuts), cut => cut.Faces.StartsWith("bench", StringComparison.Ordinal));
        Assert.Contains(plan.Findings, finding => finding.Rule == "moved" && finding.Where == "bench on wall" && finding.Text.Contains("from the left", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(90)]
    [InlineData(180)]
    [InlineData(270)]
    [InlineData(-90)]
    public void A_grid_turned_by_quarters_has_joints_to_bring_things_to(int degrees)
    {
        var bond = new BondRequest.Grid(Lay.Level) { Turn = Angle.FromDegrees(degrees) };
        var room = new MovableRoom(1500, 1800, (200, 100), bond, [500, 900, 310, 410, 300, 600], [(110, 110), (110, 110), (110, 110), (110, 110), (110, 110), null], null);
        var plan = Planner.Plan(room.Open());
        Assert.DoesNotContain(plan.Runs[0].Faces[0].Pieces.SelectMany(piece => piece.Cuts), cut => cut.Faces.StartsWith("niche", StringComparison.Ordinal) || cut.Faces == "bench");

        var slide = RodSlide.Of(plan.Job, plan.Runs[0]);
        var place = slide.Moved(slide.Moved(plan.Runs[0].Best.Faces, Axis.Level, Mm(43), 0), Axis.Plumb, Mm(-29), 0);
        var held = Planner.Plan(Held(room.Open(), slide.Held(place)));
        Assert.DoesNotContain(held.Runs[0].Faces[0].Pieces.SelectMany(piece => piece.Cuts), cut => cut.Faces.StartsWith("niche", StringComparison.Ordinal) || cut.Faces == "bench");
    }

    [Theory]
    [InlineData(1, 3, Stepping.OneWay, 90)]
    [InlineData(1, 4, Stepping.OneWay, -90)]
    [InlineData(1, 3, Stepping.BackAndForth, 90)]
    [InlineData(1, 3, Stepping.BackAndForth, 180)]
    [InlineData(1, 3, Stepping.BackAndForth, 270)]
    [InlineData(2, 5, Stepping.OneWay, 180)]
    public void A_running_bond_turned_by_quarters_is_the_straight_one_that_lays_the_same_tiles(int part, int of, Stepping stepping, int degrees)
    {
        foreach (var lay in new[] { Lay.Level, Lay.Upright })
        {
            var turned = new BondRequest.Running(lay, part, of, stepping) { Turn = Angle.FromDegrees(degrees) };
            var job = OneWall.Job(Mm(1400), Mm(1300), Mm(3), Mm(240), JointRange.Only(Mm(3)), Tape.Millimetres, bond: turned, depth: Mm(90));
            var laid = Planner.Plan(job with { Runs = [job.Runs[0] with { Place = new([Mm(317)], Mm(229), null) }] }).Runs[0];
            var straight = job.Runs[0] with { Bond = StraightenedBond.Of(turned)!, Place = StraightenedBond.Of(new([Mm(317)], Mm(229), null), turned, job.Products[0]) };
            var other = Planner.Plan(job with { Runs = [straight] }).Runs[0];
            // By the outlines of the pieces; a third of a tile is rounded to the step on either way.
            Assert.Equal(Outlines(other), Outlines(laid));
        }

        static List<string> Outlines(RunPlan plan) => [.. plan.Faces[0].Pieces.Select(piece => piece.Outline.Bounds)
            .Select(box => FormattableString.Invariant($"{box.Left.Millimetres:0.0} {box.Bottom.Millimetres:0.0} {box.Right.Millimetres:0.0} {box.Top.Millimetres:0.0}")).Order(StringComparer.Ordinal)];
    }

    [Fact]
    public void A_bond_turned_askew_says_that_things_were_left_as_asked()
    {
        var bond = new BondRequest.Grid(Lay.Level) { Turn = Angle.FromDegrees(45) };
        var room = new MovableRoom(1200, 1200, (200, 200), bond, [400, 600, 310, 210, 200, 400], [(50, 50), null, null, null, null, null], null);
        var plan = Planner.Plan(room.Open());
        Assert.Equal(MovableRoom.Measures(room.Open()), MovableRoom.Measures(plan.Job));
        Assert.Contains(plan.Findings, finding => finding.Rule == "moved" && finding.Text.Contains("left as asked", StringComparison.Ordinal));
    }

    private static Job Held(Job job, HeldPlace place) => job with { Runs = [job.Runs[0] with { Place = place }] };

    private static Length Mm(int mm) => Length.FromMillimetres(mm);
}
