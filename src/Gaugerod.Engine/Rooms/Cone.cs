using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>What of a floor falls to its drain from a round edge, and so as a cone and not as a plane.</summary>
/// <param name="Drain">The drain's name.</param>
/// <param name="Middle">Where it is.</param>
/// <param name="Rim">Half its diameter.</param>
/// <param name="Rounds">The names of the arcs.</param>
/// <param name="Edge">The edge it falls from, counter-clockwise, between two folds or all round.</param>
/// <param name="Farthest">How far the farthest place of the whole floor is from the drain.</param>
public sealed record Cone(string Drain, Point Middle, Length Rim, Sequence<string> Rounds, Sequence<Point> Edge, Length Farthest)
{
    /// <summary>The cone under some sides of an outline; null where they are straight.</summary>
    internal static Cone? Of(Ring outline, FloorSides sides, Hole drain)
    {
        if (sides.Rounds.Count == 0) return null;
        var edge = Enumerable.Range(sides.First, sides.Count + 1).Select(i => outline.Points[i % outline.Points.Count]).ToSequence();
        var farthest = outline.Points.Max(point => Nearby.Distance(Nearby.Of(point), Nearby.Of(drain.Centre)));
        return new(drain.Name, drain.Centre, Grid.HalfDown(drain.Diameter), sides.Rounds, edge, Grid.Nearest(farthest));
    }
}
