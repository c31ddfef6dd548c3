using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>A line that a region lies to the left of.</summary>
/// <param name="From">A place on it.</param>
/// <param name="To">Another, on the way.</param>
/// <param name="Inwards">How far to the left of it the region begins, in steps; less than zero to the right.</param>
internal readonly record struct Bound(Point From, Point To, double Inwards);

/// <summary>What of a box lies to the left of some lines.</summary>
internal static class ConvexRegion
{
    /// <summary>Its corners, counter-clockwise, in steps; none where nothing is left.</summary>
    public static IReadOnlyList<(double X, double Y)> Of(Box box, IEnumerable<Bound> bounds)
    {
        var region = box.Corners().Select(p => (X: (double)p.X.Steps, Y: (double)p.Y.Steps)).ToList();
        foreach (var bound in bounds)
        {
            var (run, rise) = ((double)(bound.To.X - bound.From.X).Steps, (double)(bound.To.Y - bound.From.Y).Steps);
            var length = Math.Sqrt((run * run) + (rise * rise));
            double Left((double X, double Y) p) => (((run * (p.Y - bound.From.Y.Steps)) - (rise * (p.X - bound.From.X.Steps))) / length) - bound.Inwards;
            var kept = new List<(double X, double Y)>();
            for (var i = 0; i < region.Count; i++)
            {
                var (a, b) = (region[i], region[(i + 1) % region.Count]);
                var (before, after) = (Left(a), Left(b));
                if (before >= 0) kept.Add(a);
                if (before < 0 != after < 0) kept.Add((a.X + ((b.X - a.X) * before / (before - after)), a.Y + ((b.Y - a.Y) * before / (before - after))));
            }

            region = kept;
        }

        return region;
    }

    /// <summary>The same on whole steps; null where nothing is left.</summary>
    public static (long X, long Y)[]? OnGrid(Box box, IEnumerable<Bound> bounds)
    {
        var corners = Of(box, bounds).Select(p => (X: Grid.Nearest(p.X).Steps, Y: Grid.Nearest(p.Y).Steps)).Distinct().ToArray();
        return corners.Length < 3 || new Ring(corners.Select(p => Point.FromSteps(p.X, p.Y)).ToSequence()).DoubledArea <= 0 ? null : corners;
    }
}
