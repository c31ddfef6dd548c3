using CsCheck;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using NetTopologySuite.Geometries;
using Point = Gaugerod.Plane.Shapes.Point;

namespace Gaugerod.Plane.Tests.Shapes;

/// <summary>NetTopologySuite is the referee: small whole numbers are exact in its doubles.</summary>
public sealed class RingChecksTests
{
    private static readonly Gen<Point> Points = Gen.Select(Gen.Long[-6, 6], Gen.Long[-6, 6]).Select(t => Point.FromSteps(t.Item1, t.Item2));
    private static readonly Gen<Ring> Rings = Points.Array[3, 7].Where(p => p.Zip(p.Skip(1).Append(p[0])).All(s => s.First != s.Second)).Select(p => new Ring(p.ToSequence()));

    [Fact]
    public void A_ring_is_simple_when_the_referee_says_so() =>
        Rings.Each(ring => Assert.Equal(Shell(ring).IsSimple && Shape(ring).IsValid, RingChecks.IsSimple(ring)), iter: 4_000);

    [Fact]
    public void A_point_lies_where_the_referee_says() => Gen.Select(Rings.Where(RingChecks.IsSimple), Points).Each(
        (ring, point) =>
        {
            var at = new NetTopologySuite.Geometries.Point(point.X.Steps, point.Y.Steps);
            var expected = Shell(ring).Intersects(at) ? Whereabouts.OnLine : Shape(ring).Contains(at) ? Whereabouts.Inside : Whereabouts.Outside;
            Assert.Equal(expected, RingChecks.Locate(ring, point));
        },
        iter: 4_000);

    [Fact]
    public void One_ring_lies_inside_another_when_the_referee_says_so() =>
        Gen.Select(Rings.Where(RingChecks.IsSimple), Rings.Where(RingChecks.IsSimple).Select(r => new Ring(r.Points.Select(p => Point.FromSteps(p.X.Steps * 4, p.Y.Steps * 4)).ToSequence())))
            .Each(
                (inner, outer) => Assert.Equal(Shape(outer).Contains(Shape(inner)) && !Shell(outer).Intersects(Shell(inner)), RingChecks.LiesInside(inner, outer)), iter: 1_000);

    [Fact]
    public void Lines_cross_where_the_referee_says_to_half_a_step() => Points.Array[4].Where(p => p[0] != p[1] && p[2] != p[3]).Each(
        p =>
        {
            var (one, other) = (Line(p[0], p[1]), Line(p[2], p[3]));
            Assert.Equal(one.Intersects(other), Segments.Meet(p[0], p[1], p[2], p[3]));
            if (Segments.Crossing(p[0], p[1], p[2], p[3]) is not { } crossing) return;
            var expected = one.Intersection(other).Coordinate;
            Assert.InRange(crossing.X.Steps - expected.X, -0.5 - 1e-9, 0.5 + 1e-9);
            Assert.InRange(crossing.Y.Steps - expected.Y, -0.5 - 1e-9, 0.5 + 1e-9);
        },
        iter: 4_000);

    [Theory]
    [InlineData(7, 2, 4)]
    [InlineData(-7, 2, -3)]
    [InlineData(7, -2, -3)]
    [InlineData(5, 3, 2)]
    [InlineData(-5, 3, -2)]
    public void What_falls_between_two_steps_goes_to_the_nearest_and_from_the_middle_up(long numerator, long denominator, long steps) =>
        Assert.Equal(steps, Grid.Nearest(numerator, denominator).Steps);

    private static LinearRing Shell(Ring ring) => new([.. ring.Points.Append(ring.Points[0]).Select(At)]);

    private static NetTopologySuite.Geometries.Polygon Shape(Ring ring) => new(Shell(ring));

    private static LineString Line(Point a, Point b) => new([At(a), At(b)]);

    private static Coordinate At(Point p) => new(p.X.Steps, p.Y.Steps);
}
