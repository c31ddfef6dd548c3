using CsCheck;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using NetTopologySuite;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Implementation;
using Point = Gaugerod.Plane.Shapes.Point;
using Shape = NetTopologySuite.Geometries.Polygon;

namespace Gaugerod.Plane.Tests.Shapes;

/// <summary>
/// What a box leaves of an area, judged by NetTopologySuite (OverlayNG). Corners stand on a coarse grid, so that corners on
/// the box's sides, corners that touch its corners and sides along its sides come up again and again. A grid square is
/// many steps wide: a crossing that comes to the nearest step moves a slanted side by a step at the most.
/// </summary>
public sealed class BoxClipTests
{
    private const long Square = 27_720;

    private static readonly GeometryFactory s_factory = new NtsGeometryServices(
        CoordinateArraySequenceFactory.Instance, PrecisionModel.Floating.Value, 0, GeometryOverlay.NG, new CoordinateEqualityComparer()).CreateGeometryFactory();

    private static Gen<Ring> Rings(int least, int most, int corners, bool square = false) =>
        (from xs in Gen.Long[least, most].Array[3, corners]
         from ys in Gen.Long[least, most].Array[corners]
         select Make(xs, ys, square)).Where(ring => ring.Points.Count >= 3 && ring.DoubledArea != 0 && RingChecks.IsSimple(ring)).Select(ring => ring.CounterClockwise());

    private static readonly Gen<Gaugerod.Plane.Shapes.Polygon> Areas =
        from outer in Gen.OneOf(Rings(0, 12, 7), Rings(0, 12, 7, square: true), Gen.Const(Ring.Of(Of(0, 0, 12, 12))))
        from holes in Gen.OneOf(Rings(2, 5, 5), Rings(7, 10, 5), Rings(2, 5, 6, square: true)).Array[0, 2]
        select new Gaugerod.Plane.Shapes.Polygon(outer, Apart(holes, outer).ToSequence());

    private static readonly Gen<Box> Boxes =
        from x in Gen.Select(Gen.Long[0, 11], Gen.Long[1, 8])
        from y in Gen.Select(Gen.Long[0, 11], Gen.Long[1, 8])
        select Of(x.Item1, y.Item1, x.Item1 + x.Item2, y.Item1 + y.Item2);

    [Fact]
    public void A_box_leaves_of_an_area_what_the_referee_says() => Gen.Select(Areas, Boxes).Each(
        (area, box) =>
        {
            var rings = BoxClip.Clip(Tagged(area), box);
            var both = Of(area).Intersection(Of(new Gaugerod.Plane.Shapes.Polygon(Ring.Of(box), [])));
            var parts = Enumerable.Range(0, both.NumGeometries).Select(both.GetGeometryN).OfType<Shape>().Where(part => !part.IsEmpty).ToList();
            var mine = Parts(rings);

            Assert.Equal(parts.Count, mine.Count);
            Assert.All(mine, part => Assert.True(part.IsValid, part.ToString()));
            Geometry left = s_factory.CreateMultiPolygon([.. parts]);
            foreach (var part in mine) left = left.SymmetricDifference(part);
            Assert.InRange(left.Area, 0, parts.Sum(Slanted) + mine.Sum(Slanted));
            foreach (var ring in rings) CheckTags(ring, area, box);
        },
        iter: 20_000);

    [Fact]
    public void A_hole_that_touches_the_box_with_one_corner_stays_a_hole()
    {
        var diamond = new Ring([P(3, 4), P(5, 3), P(6, 5), P(4, 6)]);
        var rings = BoxClip.Clip(Tagged(new(Ring.Of(Of(0, 0, 12, 12)), [diamond])), Of(1, 1, 6, 9));

        Assert.Equal([-1, 1], rings.Select(ring => Int128.Sign(new Ring(ring.Select(c => c.Point).ToSequence()).DoubledArea)).Order());
    }

    /// <summary>A side tagged as the box's lies on that side of it; a side tagged as the area's lies on that side of the area, to a step.</summary>
    private static void CheckTags(TaggedCorner[] ring, Gaugerod.Plane.Shapes.Polygon area, Box box)
    {
        var sides = Tagged(area).SelectMany(r => r.Select((c, i) => (c.Tag, A: c.Point, B: r[(i + 1) % r.Length].Point))).ToDictionary(s => s.Tag);
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            var held = a.Tag switch
            {
                BoxClip.Left => a.X == box.Left.Steps && b.X == a.X,
                BoxClip.Right => a.X == box.Right.Steps && b.X == a.X,
                BoxClip.Bottom => a.Y == box.Bottom.Steps && b.Y == a.Y,
                BoxClip.Top => a.Y == box.Top.Steps && b.Y == a.Y,
                _ => Off(sides[a.Tag], a) <= 1.5 && Off(sides[a.Tag], b) <= 1.5,
            };
            Assert.True(held, $"{a} to {b}");
        }
    }

    private static double Off((int Tag, Point A, Point B) side, TaggedCorner corner) =>
        NetTopologySuite.Algorithm.DistanceComputer.PointToSegment(new(corner.X, corner.Y), At(side.A), At(side.B));

    private static Ring Make(long[] xs, long[] ys, bool square)
    {
        // Stairs: each corner keeps one of the last one's two places, so every side is plumb or level.
        var points = square
            ? xs.SelectMany((x, i) => new[] { P(x, ys[i]), P(xs[(i + 1) % xs.Length], ys[i]) })
            : xs.Select((x, i) => P(x, ys[i]));
        var ring = points.ToList();
        ring = [.. ring.Where((p, i) => p != ring[(i + 1) % ring.Count])];
        return new(ring.ToSequence());
    }

    private static List<Ring> Apart(Ring[] holes, Ring outer)
    {
        var kept = new List<Ring>();
        foreach (var hole in holes)
        {
            if (RingChecks.LiesInside(hole, outer) && kept.All(k => RingChecks.FirstMeeting(k, hole) is null && RingChecks.Locate(k, hole.Points[0]) == Whereabouts.Outside && RingChecks.Locate(hole, k.Points[0]) == Whereabouts.Outside)) kept.Add(hole);
        }

        return kept;
    }

    private static TaggedCorner[][] Tagged(Gaugerod.Plane.Shapes.Polygon area)
    {
        var tag = 0;
        return [.. area.Inner.Select(hole => hole.Reversed()).Prepend(area.Outer)
            .Select(ring => ring.Points.Select(p => new TaggedCorner(p.X.Steps, p.Y.Steps, tag++)).ToArray())];
    }

    private static List<Shape> Parts(IReadOnlyList<TaggedCorner[]> rings)
    {
        var shapes = rings.Select(ring => (Ring: new Ring(ring.Select(c => c.Point).ToSequence()), First: ring[0].Point)).ToList();
        var holes = shapes.Where(s => s.Ring.DoubledArea < 0).ToList();
        return [.. shapes.Where(s => s.Ring.DoubledArea > 0).Select(s => Of(new Gaugerod.Plane.Shapes.Polygon(
            s.Ring, holes.Where(h => RingChecks.Locate(s.Ring, h.First) == Whereabouts.Inside).Select(h => h.Ring).ToSequence())))];
    }

    private static double Slanted(Shape shape)
    {
        var length = 0.0;
        foreach (var line in shape.InteriorRings.Prepend(shape.ExteriorRing))
        {
            for (var i = 0; i + 1 < line.NumPoints; i++)
            {
                var (a, b) = (line.GetCoordinateN(i), line.GetCoordinateN(i + 1));
                if (a.X != b.X && a.Y != b.Y) length += a.Distance(b);
            }
        }

        return length;
    }

    private static Shape Of(Gaugerod.Plane.Shapes.Polygon area) => s_factory.CreatePolygon(Line(area.Outer), [.. area.Inner.Select(Line)]);

    private static LinearRing Line(Ring ring) => s_factory.CreateLinearRing([.. ring.Points.Append(ring.Points[0]).Select(At)]);

    private static Coordinate At(Point p) => new(p.X.Steps, p.Y.Steps);

    private static Point P(long x, long y) => Point.FromSteps(x * Square, y * Square);

    private static Box Of(long left, long bottom, long right, long top) => new(P(left, bottom).X, P(left, bottom).Y, P(right, top).X, P(right, top).Y);
}
