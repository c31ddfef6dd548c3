using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Whether a box of letters lies wholly within an area on the paper.</summary>
internal static class Region
{
    public static bool Holds(Sequence<Sequence<Spot>> rings, Frame box)
    {
        foreach (var corner in box.Corners())
        {
            if (!Holds(rings, corner)) return false;
        }

        foreach (var ring in rings)
        {
            for (var i = 0; i < ring.Count; i++)
            {
                if (Crosses(ring[i], ring[(i + 1) % ring.Count], box)) return false;
            }
        }

        return true;
    }

    private static bool Holds(Sequence<Sequence<Spot>> rings, Spot spot)
    {
        var inside = false;
        foreach (var ring in rings)
        {
            for (var i = 0; i < ring.Count; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Count]);
                if (a.Y > spot.Y != b.Y > spot.Y && spot.X < a.X + ((b.X - a.X) * (spot.Y - a.Y) / (b.Y - a.Y))) inside = !inside;
            }
        }

        return inside;
    }

    /// <summary>Whether any of a side lies in the box (Liang and Barsky's parameters).</summary>
    public static bool Crosses(Spot a, Spot b, Frame box)
    {
        var (from, to) = (0.0, 1.0);
        return Clip(a.X, b.X - a.X, box.X, box.Right, ref from, ref to) && Clip(a.Y, b.Y - a.Y, box.Y, box.Bottom, ref from, ref to) && from < to;
    }

    private static bool Clip(double start, double run, double least, double most, ref double from, ref double to)
    {
        if (Math.Abs(run) < 1e-12) return start > least && start < most;
        var (one, other) = ((least - start) / run, (most - start) / run);
        from = Math.Max(from, Math.Min(one, other));
        to = Math.Min(to, Math.Max(one, other));
        return from < to;
    }
}
