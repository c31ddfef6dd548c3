using System.Numerics;
using CsCheck;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using Point = Gaugerod.Plane.Shapes.Point;

namespace Gaugerod.Plane.Tests.Shapes;

/// <summary>Arcs against the circle itself, in closed form: its middle by a determinant in whole numbers, sagitta r (1 - cos a/2), area pi r squared.</summary>
public sealed class ArcTests
{
    private const double Lost = 320;

    // Radii from 2 mm to 100 m, evenly by their order of size.
    private static readonly Gen<(Point From, Point Through, Point To)> Places =
        from x in Gen.Long[-100_000_000, 100_000_000]
        from y in Gen.Long[-100_000_000, 100_000_000]
        from size in Gen.Double[3.8, 8.5]
        from start in Gen.Double[0, 2 * Math.PI]
        from sweep in Gen.Double[0.05, 6.2]
        from part in Gen.Double[0.1, 0.9]
        from back in Gen.Bool
        let way = back ? -sweep : sweep
        select (On(x, y, Math.Pow(10, size), start), On(x, y, Math.Pow(10, size), start + (way * part)), On(x, y, Math.Pow(10, size), start + way));

    [Fact]
    public void The_chords_of_an_arc_nowhere_stand_off_it_by_more_than_is_said() => Places.Each(
        (from, through, to) =>
        {
            if (Arc.Of(from, through, to) is not { } arc || arc.Radius > 330_000_000) return;
            var (x, y, radius) = Circle(from, through, to);
            List<Point> corners = [from, .. arc.Corners(), to];

            Assert.Equal(arc.Chords + 1, corners.Count);
            Assert.All(corners, corner => Assert.InRange(Math.Sqrt(Square(corner.X.Steps - x, corner.Y.Steps - y)), radius - 1, radius + 1));
            for (var i = 0; i + 1 < corners.Count; i++)
            {
                var (a, b) = (corners[i], corners[i + 1]);
                var middle = Math.Sqrt(Square(((a.X.Steps + b.X.Steps) / 2.0) - x, ((a.Y.Steps + b.Y.Steps) / 2.0) - y));
                Assert.InRange(radius - middle, -1, Lost);
            }
        },
        iter: 2000);

    [Fact]
    public void An_arc_goes_the_way_that_its_point_says() => Places.Each(
        (from, through, to) =>
        {
            if (Arc.Of(from, through, to) is not { } arc) return;
            List<Point> corners = [from, .. arc.Corners(), to];
            Assert.InRange(Enumerable.Range(0, corners.Count - 1).Min(i => Off(through, corners[i], corners[i + 1])), 0, Lost + 1);
        },
        iter: 500);

    [Fact]
    public void One_chord_fewer_would_not_do() => Places.Each(
        (from, through, to) =>
        {
            if (Arc.Of(from, through, to) is not { } arc || arc.Chords < 2) return;
            var (_, _, radius) = Circle(from, through, to);
            var longer = Math.Abs(arc.Sweep) / (arc.Chords - 1);
            Assert.True(longer > (Math.PI / 4) - 1e-6 || radius * (1 - Math.Cos(longer / 2)) > Lost - 2);
        },
        iter: 500);

    /// <summary>A band as wide as the error, all round: 2 pi r times 0.1 mm, and a step for the corners' rounding.</summary>
    [Theory]
    [InlineData(60, 55)]
    [InlineData(300, 122)]
    [InlineData(1000, 223)]
    [InlineData(20_000, 995)]
    public void A_full_round_has_the_area_of_its_circle_but_for_the_band_that_the_error_leaves(long radius, int chords)
    {
        var (left, right) = (Mm(-radius, 0), Mm(radius, 0));
        var (low, high) = (Arc.Of(left, Mm(0, -radius), right)!, Arc.Of(right, Mm(0, radius), left)!);
        var ring = new Ring([left, .. low.Corners(), right, .. high.Corners()]);
        var (r, area) = (radius * 3200.0, (double)ring.DoubledArea / 2);

        Assert.InRange(ring.Points.Count, chords, chords + 1);
        Assert.InRange((Math.PI * r * r) - area, -2 * Math.PI * r, 2 * Math.PI * r * Lost);
    }

    [Fact]
    public void A_quarter_through_its_middle_has_its_corner_as_its_middle()
    {
        // 3-4-5 triangles: (300, 400), (400, 300) and (500, 0) stand 500 from the origin.
        var arc = Arc.Of(Mm(500, 0), Mm(400, 300), Mm(300, 400))!;
        Assert.Equal(1_600_000, arc.Radius, 1e-6);
        Assert.Equal(Math.Acos(0.6), arc.Sweep, 1e-12);
    }

    [Fact]
    public void Three_places_on_a_straight_line_make_no_arc()
    {
        Assert.Null(Arc.Of(Mm(0, 0), Mm(100, 50), Mm(200, 100)));
        Assert.Null(Arc.Of(Mm(0, 0), Mm(0, 0), Mm(200, 100)));
        Assert.Null(Arc.Of(Mm(0, 0), Mm(50, 60), Mm(0, 0)));
    }

    private static Point Mm(long x, long y) => Point.FromSteps(x * 3200, y * 3200);

    private static Point On(long x, long y, double radius, double angle) =>
        Point.FromSteps(x + (long)Math.Round(radius * Math.Cos(angle)), y + (long)Math.Round(radius * Math.Sin(angle)));

    private static double Square(double x, double y) => (x * x) + (y * y);

    private static double Off(Point point, Point a, Point b)
    {
        var (dx, dy) = ((double)(b.X - a.X).Steps, (double)(b.Y - a.Y).Steps);
        var (x, y) = ((double)(point.X - a.X).Steps, (double)(point.Y - a.Y).Steps);
        var part = Math.Clamp(((x * dx) + (y * dy)) / Square(dx, dy), 0, 1);
        return Math.Sqrt(Square(x - (part * dx), y - (part * dy)));
    }

    /// <summary>The circle through three places: the determinant in whole numbers of any size.</summary>
    private static (double X, double Y, double Radius) Circle(Point a, Point b, Point c)
    {
        BigInteger ax = a.X.Steps, ay = a.Y.Steps, bx = b.X.Steps, by = b.Y.Steps, cx = c.X.Steps, cy = c.Y.Steps;
        var whole = 2 * ((ax * (by - cy)) + (bx * (cy - ay)) + (cx * (ay - by)));
        var (a2, b2, c2) = ((ax * ax) + (ay * ay), (bx * bx) + (by * by), (cx * cx) + (cy * cy));
        var x = (a2 * (by - cy)) + (b2 * (cy - ay)) + (c2 * (ay - by));
        var y = (a2 * (cx - bx)) + (b2 * (ax - cx)) + (c2 * (bx - ax));
        var (mx, my) = (Part(x, whole), Part(y, whole));
        return (mx, my, Math.Sqrt(Square(a.X.Steps - mx, a.Y.Steps - my)));
    }

    private static double Part(BigInteger over, BigInteger under)
    {
        var whole = BigInteger.DivRem(over, under, out var rest);
        return (double)whole + ((double)rest / (double)under);
    }
}
