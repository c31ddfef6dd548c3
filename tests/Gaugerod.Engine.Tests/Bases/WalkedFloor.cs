using NetTopologySuite.Geometries;
using NetTopologySuite.Triangulate.Polygon;

namespace Gaugerod.Engine.Tests.Bases;

/// <summary>
/// A floor walked over by brute force: ways from corner to corner by NetTopologySuite's predicates, the floor cut into many small triangles by its
/// triangulator, the shortest way from three places of each. Nothing of the engine's is used.
/// </summary>
internal sealed class WalkedFloor
{
    private readonly Polygon _floor;
    private readonly Coordinate[] _corners;
    private readonly (Coordinate A, Coordinate B)[] _sides;
    private readonly (Coordinate A, Coordinate B)[] _drains;
    private readonly double[] _fromCorner;

    /// <param name="floor">The floor, in millimetres.</param>
    /// <param name="drains">Round drains and channels.</param>
    public WalkedFloor(Polygon floor, params (Coordinate A, Coordinate B)[] drains)
    {
        (_floor, _drains) = (floor, drains);
        var rings = floor.Holes.Prepend(floor.Shell).Select(ring => ring.Coordinates).ToList();
        _sides = [.. rings.SelectMany(ring => ring.Zip(ring.Skip(1)))];
        _corners = [.. rings.SelectMany(ring => ring.Skip(1))];
        _fromCorner = [.. _corners.Select(corner => drains.Select(drain => Nearest(drain, corner)).Where(on => Covers(on, corner)).Select(on => on.Distance(corner)).DefaultIfEmpty(double.PositiveInfinity).Min())];
        var ways = _corners.Select((_, i) => _corners.Select((other, j) => i < j && Covers(_corners[i], other)).ToArray()).ToArray();
        // So often that no shorter way is left (Bellman and Ford).
        for (var again = true; again;)
        {
            again = false;
            for (var i = 0; i < _corners.Length; i++)
            {
                for (var j = 0; j < _corners.Length; j++)
                {
                    if (!(i < j ? ways[i][j] : ways[j][i]) || _fromCorner[i] + _corners[i].Distance(_corners[j]) >= _fromCorner[j] - 1e-9) continue;
                    (_fromCorner[j], again) = (_fromCorner[i] + _corners[i].Distance(_corners[j]), true);
                }
            }
        }
    }

    public double Area => _floor.Area;

    /// <summary>Something added up over the floor, each triangle cut into 4 to so many powers.</summary>
    public double Sum(Func<Coordinate, double> what, int powers)
    {
        var sum = 0.0;
        foreach (var triangle in new ConstrainedDelaunayTriangulator(_floor).GetTriangles())
        {
            sum += Sum(triangle.GetCoordinate(0), triangle.GetCoordinate(1), triangle.GetCoordinate(2), powers);
        }

        return sum;

        double Sum(Coordinate a, Coordinate b, Coordinate c, int left)
        {
            var (ab, bc, ca) = (Between(a, b, 0.5), Between(b, c, 0.5), Between(c, a, 0.5));
            if (left > 0) return Sum(a, ab, ca, left - 1) + Sum(ab, b, bc, left - 1) + Sum(ca, bc, c, left - 1) + Sum(ab, bc, ca, left - 1);
            // Gauss's three places inside a triangle.
            var (middle, area) = (new Coordinate((a.X + b.X + c.X) / 3, (a.Y + b.Y + c.Y) / 3), Math.Abs(((b.X - a.X) * (c.Y - a.Y)) - ((c.X - a.X) * (b.Y - a.Y))) / 2);
            return area * (what(Between(middle, a, 0.5)) + what(Between(middle, b, 0.5)) + what(Between(middle, c, 0.5))) / 3;
        }
    }

    /// <summary>The shortest way from a place inside the floor, at no corner or side of it.</summary>
    public double Way(Coordinate place)
    {
        var least = _drains.Select(drain => Nearest(drain, place)).Where(on => Clear(place, on)).Select(on => on.Distance(place)).DefaultIfEmpty(double.PositiveInfinity).Min();
        for (var i = 0; i < _corners.Length; i++)
        {
            if (_fromCorner[i] + _corners[i].Distance(place) is var way && way < least && Clear(place, _corners[i])) least = way;
        }

        return least;
    }

    public double Farthest() => _fromCorner.Max();

    private bool Covers(Coordinate a, Coordinate b) => a.Distance(b) < 1e-9 || _floor.Covers(new LineString([a, b]));

    // From a place inside: whatever crosses no side stays inside to its end.
    private bool Clear(Coordinate place, Coordinate to)
    {
        foreach (var (a, b) in _sides)
        {
            var (one, other) = (Turn(place, to, a), Turn(place, to, b));
            if (one * other >= 0) continue;
            var (from, end) = (Turn(a, b, place), Turn(a, b, to));
            if (from * end < 0 && Math.Abs(end) > 1e-6 * a.Distance(b)) return false;
        }

        return true;
    }

    private static double Turn(Coordinate a, Coordinate b, Coordinate c) => ((b.X - a.X) * (c.Y - a.Y)) - ((b.Y - a.Y) * (c.X - a.X));

    private static Coordinate Nearest((Coordinate A, Coordinate B) drain, Coordinate place) =>
        drain.A.Equals2D(drain.B) ? drain.A : Between(drain.A, drain.B, Math.Clamp(new LineSegment(drain.A, drain.B).ProjectionFactor(place), 0, 1));

    private static Coordinate Between(Coordinate a, Coordinate b, double part) => new(a.X + (part * (b.X - a.X)), a.Y + (part * (b.Y - a.Y)));
}
