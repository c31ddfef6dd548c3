using Gaugerod.Plane.Shapes;
using NetTopologySuite.Geometries;

namespace Gaugerod.Engine.Tests;

/// <summary>A general geometry library that judges our shapes from outside. It reckons in doubles: whole steps are exact in it.</summary>
internal static class Referee
{
    public static NetTopologySuite.Geometries.Polygon Shape(Ring ring) => new(Shell(ring));

    public static NetTopologySuite.Geometries.Polygon Shape(Gaugerod.Plane.Shapes.Polygon polygon) =>
        new(Shell(polygon.Outer), [.. polygon.Inner.Select(Shell)]);

    private static LinearRing Shell(Ring ring) =>
        new([.. ring.Points.Append(ring.Points[0]).Select(p => new Coordinate(p.X.Steps, p.Y.Steps))]);
}
