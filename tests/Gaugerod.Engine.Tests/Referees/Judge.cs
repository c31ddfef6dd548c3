using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;
using NetTopologySuite;
using NetTopologySuite.Algorithm;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Implementation;
using NetTopologySuite.Geometries.Prepared;
using Polygon = NetTopologySuite.Geometries.Polygon;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>
/// A general geometry library as referee, with its newer overlay (OverlayNG). It reckons in doubles: whole steps are exact
/// in it, and crossings are good to far less than a step.
/// </summary>
internal sealed class Judge(Gaugerod.Plane.Shapes.Polygon field)
{
    public static readonly GeometryFactory Factory = new NtsGeometryServices(
        CoordinateArraySequenceFactory.Instance, PrecisionModel.Floating.Value, 0, GeometryOverlay.NG, new CoordinateEqualityComparer()).CreateGeometryFactory();

    private readonly IPreparedGeometry _prepared = PreparedGeometryFactory.Prepare(Shape(field.Outer, field.Inner));

    public Geometry Field => _prepared.Geometry;

    /// <summary>The parts of a tile that lie in the field.</summary>
    public List<Polygon> Parts(Box cell) => Parts(Shape(Ring.Of(cell), []));

    /// <summary>The parts of a tile of any shape that lie in the field.</summary>
    public List<Polygon> Parts(Polygon shape)
    {
        if (!_prepared.Intersects(shape)) return [];
        if (_prepared.Covers(shape)) return [shape];
        var both = shape.Intersection(Field);
        return [.. Enumerable.Range(0, both.NumGeometries).Select(both.GetGeometryN).OfType<Polygon>()];
    }

    /// <summary>What of the field lies in none of the tiles.</summary>
    public double JointArea(IEnumerable<Box> cells) =>
        Field.Difference(Factory.CreateMultiPolygon([.. cells.Select(cell => Shape(Ring.Of(cell), []))])).Area;

    public static Geometry Many(IEnumerable<Geometry> parts) =>
        Factory.CreateMultiPolygon([.. parts.SelectMany(part => Enumerable.Range(0, part.NumGeometries).Select(part.GetGeometryN)).OfType<Polygon>()]);

    public static Polygon Shape(Ring outer, Sequence<Ring> inner) => Factory.CreatePolygon(Line(outer), [.. inner.Select(Line)]);

    /// <summary>How far all the sides of a shape that are neither plumb nor level reach: only these are ever rounded.</summary>
    public static double SlantedLength(Geometry shape)
    {
        var length = 0.0;
        foreach (var (a, b) in Sides(shape))
        {
            if (a.X != b.X && a.Y != b.Y) length += a.Distance(b);
        }

        return length;
    }

    /// <summary>The sides of a polygon's outline and holes, run so that it lies to their left.</summary>
    public static IEnumerable<(Coordinate A, Coordinate B)> Sides(Geometry shape)
    {
        for (var g = 0; g < shape.NumGeometries; g++)
        {
            if (shape.GetGeometryN(g) is not Polygon polygon) continue;
            foreach (var line in polygon.InteriorRings.Prepend(polygon.ExteriorRing))
            {
                var (points, outer) = (line.Coordinates, ReferenceEquals(line, polygon.ExteriorRing));
                if (Orientation.IsCCW(points) != outer) Array.Reverse(points);
                for (var i = 0; i + 1 < points.Length; i++) yield return (points[i], points[i + 1]);
            }
        }
    }

    private static LinearRing Line(Ring ring) =>
        Factory.CreateLinearRing([.. ring.Points.Append(ring.Points[0]).Select(p => new Coordinate(p.X.Steps, p.Y.Steps))]);
}
