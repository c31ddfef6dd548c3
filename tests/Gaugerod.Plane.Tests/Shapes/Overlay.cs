using Gaugerod.Plane.Shapes;
using NetTopologySuite;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Implementation;
using Area = Gaugerod.Plane.Shapes.Polygon;
using Point = Gaugerod.Plane.Shapes.Point;
using Shape = NetTopologySuite.Geometries.Polygon;

namespace Gaugerod.Plane.Tests.Shapes;

/// <summary>NetTopologySuite with its newer overlay (OverlayNG), a general geometry library that judges our shapes from outside.</summary>
internal static class Overlay
{
    private static readonly GeometryFactory s_factory = new NtsGeometryServices(
        CoordinateArraySequenceFactory.Instance, PrecisionModel.Floating.Value, 0, GeometryOverlay.NG, new CoordinateEqualityComparer()).CreateGeometryFactory();

    public static Shape Of(Area area) => s_factory.CreatePolygon(Line(area.Outer), [.. area.Inner.Select(Line)]);

    public static Shape Of(Ring ring) => s_factory.CreatePolygon(Line(ring));

    public static Geometry Many(IEnumerable<Shape> parts) => s_factory.CreateMultiPolygon([.. parts]);

    /// <summary>The corners of the least convex outline around some places, counter-clockwise.</summary>
    public static (long X, long Y)[] Hull(IEnumerable<(long X, long Y)> places) =>
        s_factory.CreateMultiPointFromCoords([.. places.Select(p => new Coordinate(p.X, p.Y))]).ConvexHull() is Shape { IsEmpty: false } hull
            ? [.. hull.Shell.Coordinates.Skip(1).Select(c => ((long)c.X, (long)c.Y)).Reverse()]
            : [];

    /// <summary>The parts that two areas share; what they only touch along is none.</summary>
    public static List<Shape> Shared(Geometry one, Geometry other)
    {
        var both = one.Intersection(other);
        return [.. Enumerable.Range(0, both.NumGeometries).Select(both.GetGeometryN).OfType<Shape>().Where(part => !part.IsEmpty)];
    }

    /// <summary>The rings of a clip as areas, each outline with the holes in it.</summary>
    public static List<Shape> Parts(IReadOnlyList<TaggedCorner[]> rings)
    {
        var shapes = rings.Select(ring => (Ring: RingOf(ring), First: ring[0].Point)).ToList();
        var holes = shapes.Where(s => s.Ring.DoubledArea < 0).ToList();
        return [.. shapes.Where(s => s.Ring.DoubledArea > 0).Select(s => Of(new Area(
            s.Ring, holes.Where(h => RingChecks.Locate(s.Ring, h.First) == Whereabouts.Inside).Select(h => h.Ring).ToSequence())))];
    }

    /// <summary>The area in which some parts differ from others.</summary>
    public static double Apart(IEnumerable<Shape> some, IEnumerable<Shape> others)
    {
        var left = Many(some);
        foreach (var part in others) left = left.SymmetricDifference(part);
        return left.Area;
    }

    /// <summary>How far all the sides of a shape that are neither plumb nor level reach: only these are ever rounded.</summary>
    public static double Slanted(Shape shape)
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

    public static double Off(Point a, Point b, TaggedCorner corner) =>
        NetTopologySuite.Algorithm.DistanceComputer.PointToSegment(new(corner.X, corner.Y), At(a), At(b));

    public static Ring RingOf(TaggedCorner[] corners) => new(corners.Select(c => c.Point).ToSequence());

    private static LinearRing Line(Ring ring) => s_factory.CreateLinearRing([.. ring.Points.Append(ring.Points[0]).Select(At)]);

    private static Coordinate At(Point p) => new(p.X.Steps, p.Y.Steps);
}
