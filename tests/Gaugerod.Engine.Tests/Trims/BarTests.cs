using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using static Gaugerod.Engine.Tests.Trims.TrimmedWall;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>Bars sawn from stock and mitred at the corners of a field. Sources: trigonometry by hand, and NetTopologySuite (see <see cref="TrimReferee"/>).</summary>
public sealed class BarTests
{
    private static readonly TrimProduct s_bar = Bullnose with { Kind = TrimKind.Profile, ByBar = true, Stock = Mm(2500), Width = Mm(20), Joint = Length.Zero };

    /// <summary>The wall is 2,000 by 1,000 mm with joints of 3 at its left and its foot. To the long points the bars are as long as the wall's own sides, and the mitre takes the bar's width of each.</summary>
    [Fact]
    public void At_a_square_corner_a_bar_is_as_long_as_the_wall_to_its_long_point_and_its_width_shorter_to_the_other()
    {
        var plan = Plan(new([At(0, 0), At(2000, 0), At(2000, 1000), At(0, 1000)]), [new("foot", EdgeKind.Floor), Barred("right"), Barred("head"), new("left", EdgeKind.InsideCorner)]);
        var (right, head) = (One(plan, "right"), One(plan, "head"));
        Assert.Equal((Mm(997), Mm(20), MitreHand.Left), (right.Length, right.MitreTakes, right.Hand!.Value));
        Assert.Equal((Mm(1997), Mm(20), MitreHand.Right), (head.Length, head.MitreTakes, head.Hand!.Value));
        // 997 and 1,997 and a saw's 2 are more than 2,500.
        Assert.Equal((2, 2), (plan.Trims.Stocks[0].Bought, plan.Trims.Stocks[0].LowerBound));
    }

    /// <summary>Corners of 135 degrees: the bar between them is 300 √2 = 424.26 mm to its long points; each mitre is at 22 1/2 degrees and takes 20 tan 22.5° = 8.28 mm.</summary>
    [Fact]
    public void At_a_corner_of_135_degrees_each_mitre_takes_the_bar_s_width_by_the_tangent_of_half_the_bend()
    {
        var plan = Plan(new([At(0, 0), At(2000, 0), At(2000, 700), At(1700, 1000), At(0, 1000)]), [new("foot", EdgeKind.Floor), Barred("right"), Barred("slope"), Barred("head"), new("left", EdgeKind.InsideCorner)]);
        var (right, slope, head) = (One(plan, "right"), One(plan, "slope"), One(plan, "head"));
        Near(424.264, slope.Length);
        Near(16.569, slope.MitreTakes);
        Near(697, right.Length);
        Near(1697, head.Length);
        Assert.All([right, head], piece => Near(8.284, piece.MitreTakes));
        Assert.Equal((MitreHand.Left, MitreHand.Both, MitreHand.Right), (right.Hand, slope.Hand, head.Hand));
        // 424.3, 697 and a saw's 2 leave room for no 1,697 in one bar of 2,500.
        Assert.Equal(2, plan.Trims.Stocks[0].Bought);
    }

    /// <summary>A step in the field: round a corner that points in, the long point lies on the field's side, and the bar is its width longer there.</summary>
    [Fact]
    public void Round_a_corner_that_points_into_the_field_the_long_point_is_on_the_field_s_side()
    {
        // A bench of 800 by 400 stands in the left corner: its top ends at its side, 23 mm above and beside it the tile begins.
        var plan = Plan(
            new([At(800, 0), At(2000, 0), At(2000, 1000), At(0, 1000), At(0, 400), At(800, 400)]),
            [new("foot", EdgeKind.Floor), new("right", EdgeKind.InsideCorner), new("head", EdgeKind.Ceiling), new("left", EdgeKind.InsideCorner), Barred("top"), Barred("side")]);
        var (top, side) = (One(plan, "top"), One(plan, "side"));
        // From a joint of 3 off the wall to the far side of the other bar, 20 past the bench; short by 20 along the bench.
        Assert.Equal((Mm(800 - 3 + 20), Mm(20)), (top.Length, top.MitreTakes));
        Assert.Equal((Mm(400 - 3 + 20), Mm(20)), (side.Length, side.MitreTakes));
    }

    [Fact]
    public void On_100_walls_with_cut_off_corners_every_bar_is_as_long_as_its_side_and_each_mitre_takes_its_share()
    {
        var gen =
            from size in Gen.Select(Gen.Int[1200, 2400], Gen.Int[1200, 2000])
            from cut in Gen.Select(Gen.Int[150, 450], Gen.Int[150, 450]).Array[4]
            from keeps in Gen.Bool.Array[4]
            from width in Gen.Int[8, 40]
            // Without a joint two pieces of a line share their corners as two mitres do.
            from joint in Gen.Int[1, 3]
            from stock in Gen.Int[600, 3000]
            select (Ring: Cut(size.Item1, size.Item2, cut, keeps), Bar: s_bar with { Width = Mm(width), Joint = Mm(joint), Stock = Mm(stock), Least = Mm(40) });
        gen.Each(drawn =>
        {
            var (points, bar) = (drawn.Ring.Points, drawn.Bar);
            var plan = Plan(drawn.Ring, [.. points.Select((_, i) => Trimmed($"side {i + 1}", bar, TrimJoints.Free))], bar);
            for (var i = 0; i < points.Count; i++)
            {
                var line = plan.Trims.Lines.Single(trim => trim.Edge == $"side {i + 1}");
                var (before, from, to, after) = (points[(i + points.Count - 1) % points.Count], points[i], points[(i + 1) % points.Count], points[(i + 2) % points.Count]);
                Near(Size(from, to), line.Length);
                Near(Takes(before, from, to, bar.Width), line.Pieces.Count > 1 ? line.Pieces[0].MitreTakes : line.Pieces[0].MitreTakes - Length.FromSteps((long)(3200 * Takes(from, to, after, bar.Width))));
                if (line.Pieces.Count > 1) Near(Takes(from, to, after, bar.Width), line.Pieces[^1].MitreTakes);
            }
        });
    }

    private static double Takes(Point before, Point at, Point after, Length width)
    {
        var bend = Math.Atan2((after.Y - at.Y).Steps, (after.X - at.X).Steps) - Math.Atan2((at.Y - before.Y).Steps, (at.X - before.X).Steps);
        return width.Steps / 3200.0 * Math.Tan((((bend + (4 * Math.PI)) % (2 * Math.PI))) / 2);
    }

    private static double Size(Point from, Point to) => Math.Sqrt(Math.Pow((to.X - from.X).Steps, 2) + Math.Pow((to.Y - from.Y).Steps, 2)) / 3200;

    /// <summary>A rectangle, some of its corners cut off.</summary>
    private static Ring Cut(int width, int height, (int X, int Y)[] cut, bool[] keeps)
    {
        var corners = new[] { (0, 0), (width, 0), (width, height), (0, height) };
        var points = new List<Point>();
        for (var i = 0; i < 4; i++)
        {
            var (x, y) = corners[i];
            var (inX, inY) = (x == 0 ? cut[i].X : -cut[i].X, y == 0 ? cut[i].Y : -cut[i].Y);
            if (keeps[i]) points.Add(At(x, y));
            else points.AddRange(i % 2 == 0 ? [At(x, y + inY), At(x + inX, y)] : [At(x + inX, y), At(x, y + inY)]);
        }

        return new(points.ToSequence());
    }

    // A corner is a step off at most, and two of them lie at a line's ends.
    private static void Near(double millimetres, Length length) => Assert.InRange(length.Steps - (millimetres * 3200), -6, 6);

    private static TrimPiece One(Plan plan, string edge) => Assert.Single(plan.Trims.Lines.Single(line => line.Edge == edge).Pieces);

    private static Edge Barred(string name) => Trimmed(name, s_bar, TrimJoints.Unbroken);

    private static Plan Plan(Ring ring, Sequence<Edge> edges, TrimProduct? bar = null)
    {
        var job = Job(ring, edges, [], bar ?? s_bar, new("tile", Mm(197), Mm(197), Mm(8)), Mm(3), new BondRequest.Grid(Lay.Level));
        Assert.Empty(JobCheck.Check(job));
        var plan = Planner.Plan(job);
        TrimReferee.Look(job, plan);
        return plan;
    }

    private static Point At(long x, long y) => new(Mm(x), Mm(y));
}
