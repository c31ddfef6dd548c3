using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>
/// A point drain in a floor of 900 by 900: a crossing of joints, or a tile's middle, on its middle. Judged from the tiles'
/// outlines as they lie, to a hundredth of a millimetre: nearer than anyone can set a tile.
/// </summary>
public sealed class HoleWantTests
{
    private const double Hair = 33;

    private static readonly Length Joint = Mm(3);

    private static readonly Point Middle = At(450, 450);

    public static TheoryData<string> Bonds => ["grid", "upright", "running", "third", "herringbone", "herringbone 45", "grid 45", "hexagon"];

    [Theory]
    [MemberData(nameof(Bonds))]
    public void A_crossing_of_joints_that_must_stand_on_the_drain_does(string bond)
    {
        var plan = Planned(bond, CentreOn.Joint, must: true);

        Assert.True(IsCrossing(plan), "no crossing of joints stands on the drain");
        Told(plan, held: true);
    }

    [Theory]
    [MemberData(nameof(Bonds))]
    public void A_tile_whose_middle_must_stand_on_the_drain_does(string bond)
    {
        var plan = Planned(bond, CentreOn.Tile, must: true);

        Assert.True(IsMiddle(plan), "no tile's middle stands on the drain");
        Told(plan, held: true);
    }

    [Theory]
    [MemberData(nameof(Bonds))]
    public void Where_either_will_do_one_of_them_stands_there(string bond)
    {
        var plan = Planned(bond, CentreOn.Either, must: true);

        Assert.True(IsMiddle(plan) || IsCrossing(plan), "neither stands on the drain");
        Told(plan, held: true);
    }

    [Theory]
    [InlineData("grid", 430, 461)]
    [InlineData("running", 389, 520)]
    [InlineData("herringbone", 401, 377)]
    public void The_drain_need_not_be_in_the_middle_of_the_floor(string bond, long x, long y)
    {
        var plan = Planned(bond, CentreOn.Joint, must: true, At(x, y));

        Assert.True(IsCrossing(plan, At(x, y)), "no crossing of joints stands on the drain");
        Told(plan, held: true);
    }

    /// <summary>Two drains that no lattice joins: one is met, and the other told as one want missed, not as two.</summary>
    [Theory]
    [InlineData("grid")]
    [InlineData("running")]
    [InlineData("herringbone")]
    public void A_drain_missed_both_ways_is_one_want_missed(string bond)
    {
        var job = Job(bond, CentreOn.Joint, must: true, Middle);
        var other = new Hole("second", At(221, 233), Mm(40));
        job = job with
        {
            Faces = [job.Faces[0] with { Holes = [job.Faces[0].Holes[0], other] }],
            Runs = [job.Runs[0] with { Wants = [job.Runs[0].Wants[0], new Want.HoleOn("floor", "second", CentreOn.Joint, Must: false, 7)] }],
        };
        var plan = OneWall.Plan(job);

        Assert.True(IsCrossing(plan));
        Assert.False(IsCrossing(plan, At(221, 233)));
        Assert.Equal([true, false], plan.Best.Wants.Select(want => want.Held));
        Assert.Equal((0, 1), (plan.Best.Score.MustsMissed, plan.Best.Score.WantsMissed));
    }

    [Fact]
    public void A_wish_for_the_drain_is_weighed_against_slivers_and_cuts_like_any_other()
    {
        var plan = Planned("grid", CentreOn.Joint, must: false);

        Assert.True(IsCrossing(plan));
        Told(plan, held: true);
    }

    [Fact]
    public void A_hole_that_is_not_there_or_not_in_the_tile_is_refused()
    {
        var job = Job("grid", CentreOn.Joint, must: true, Middle);
        var beside = job with { Faces = [job.Faces[0] with { Holes = [job.Faces[0].Holes[0] with { Centre = At(-300, 20) }] }] };
        var none = job with { Faces = [job.Faces[0] with { Holes = [] }] };

        Assert.Equal(("runs[0].wants[0].hole", "\"drain\", which lies where no tile is"), Said(beside));
        Assert.Equal(("runs[0].wants[0].hole", "\"drain\""), Said(none));

        static (string, string) Said(Job job) => Assert.Single(JobCheck.Check(job)) is var fault ? (fault.Path, fault.Found) : default;
    }

    private static void Told(RunPlan plan, bool held)
    {
        Assert.Equal(held, Assert.Single(plan.Best.Wants).Held);
        Assert.Equal(0, plan.Best.Score.MustsMissed);
    }

    private static RunPlan Planned(string bond, CentreOn on, bool must, Point? at = null) => OneWall.Plan(Job(bond, on, must, at ?? Middle));

    private static Job Job(string bond, CentreOn on, bool must, Point at)
    {
        BondRequest made = bond switch
        {
            "grid" => new BondRequest.Grid(Lay.Level),
            "upright" => new BondRequest.Running(Lay.Upright, 1, 2, Stepping.OneWay),
            "running" => new BondRequest.Running(Lay.Level, 1, 2, Stepping.BackAndForth),
            "third" => new BondRequest.Running(Lay.Level, 1, 3, Stepping.OneWay),
            "herringbone" => new BondRequest.Herringbone(1),
            "herringbone 45" => new BondRequest.Herringbone(1) { Turn = Angle.FromThousandths(45_000) },
            "grid 45" => new BondRequest.Grid(Lay.Level) { Turn = Angle.FromThousandths(45_000) },
            _ => new BondRequest.Hexagon(PointedUp: true, null),
        };
        // A herringbone's plank is twice as long as it is wide, and a joint; a regular hexagon of 120 across is 138.56 from point to point.
        var (width, height) = bond.StartsWith("herringbone", StringComparison.Ordinal) ? (Mm(203), Mm(100))
            : bond == "hexagon" ? (Mm(120), Length.FromSteps(443_405)) : (Mm(200), Mm(100));
        var job = OneWall.Job(Mm(900), Mm(900), Mm(5), width, new(Joint, Joint, Joint), Tape.Millimetres, [new Want.HoleOn("floor", "drain", on, must, 5)], bond: made, depth: height);
        var floor = job.Faces[0] with { Name = "floor", Holes = [new("drain", at, Mm(40))] };
        return job with { Faces = [floor], Runs = [job.Runs[0] with { Faces = ["floor"] }] };
    }

    /// <summary>Whether a corner of a tile, let out by half a joint from both its sides, stands on the place: the joints' middles cross there.</summary>
    private static bool IsCrossing(RunPlan plan, Point? at = null) => Tiles(plan).Any(tile => Enumerable.Range(0, tile.Count).Any(i =>
    {
        var (before, here, after) = (tile[(i + tile.Count - 1) % tile.Count], tile[i], tile[(i + 1) % tile.Count]);
        var half = Joint.Steps / 2.0;
        return Math.Abs(Outside(before, here, at ?? Middle) - half) <= Hair && Math.Abs(Outside(here, after, at ?? Middle) - half) <= Hair;
    }));

    private static bool IsMiddle(RunPlan plan) => Tiles(plan).Any(tile =>
        Math.Abs(tile.Average(p => (double)p.X.Steps) - Middle.X.Steps) <= Hair && Math.Abs(tile.Average(p => (double)p.Y.Steps) - Middle.Y.Steps) <= Hair);

    private static List<Sequence<Point>> Tiles(RunPlan plan) => [.. plan.Faces[0].Pieces.Select(piece => piece.Laid.CounterClockwise().Points)];

    /// <summary>How far a place lies outside a tile's side, square to it.</summary>
    private static double Outside(Point a, Point b, Point place)
    {
        var (dx, dy) = ((double)(b.X - a.X).Steps, (double)(b.Y - a.Y).Steps);
        return ((dy * (place.X - a.X).Steps) - (dx * (place.Y - a.Y).Steps)) / Math.Sqrt((dx * dx) + (dy * dy));
    }
}
