namespace Gaugerod.Plane.Shapes;

/// <summary>Where a point lies.</summary>
public enum Whereabouts
{
    /// <summary>Outside.</summary>
    Outside,

    /// <summary>On the line itself.</summary>
    OnLine,

    /// <summary>Inside.</summary>
    Inside,
}

/// <summary>Exact answers about rings. Every pair of sides is looked at, which is quick for the rings of a room.</summary>
public static class RingChecks
{
    /// <summary>
    /// The first two sides, counted from zero, that share more than the corner between them; null when the ring is
    /// simple. A side without length counts as meeting the next.
    /// </summary>
    public static (int First, int Second)? FirstCrossing(Ring ring)
    {
        ArgumentNullException.ThrowIfNull(ring);
        var (points, n) = (ring.Points, ring.Points.Count);
        if (n < 3) return (0, 0);
        for (var i = 0; i < n; i++)
        {
            var (a, b, c) = (points[i], points[(i + 1) % n], points[(i + 2) % n]);
            var turnsBack = Segments.Turn(a, b, c) == 0 && Segments.Dot(a, b, b, c) <= 0;
            if (turnsBack) return (i, (i + 1) % n);
            for (var j = i + 2; j < n; j++)
            {
                if (i == 0 && j == n - 1) continue;
                if (Segments.Meet(a, b, points[j], points[(j + 1) % n])) return (i, j);
            }
        }

        return null;
    }

    /// <summary>Whether no side meets another except at the corner between them.</summary>
    public static bool IsSimple(Ring ring) => FirstCrossing(ring) is null;

    /// <summary>The first side of each of two rings, counted from zero, that share a point; null when the rings' lines do not meet.</summary>
    public static (int One, int Other)? FirstMeeting(Ring one, Ring other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        for (var i = 0; i < one.Points.Count; i++)
        {
            for (var j = 0; j < other.Points.Count; j++)
            {
                var (a, b) = (one.Points[i], one.Points[(i + 1) % one.Points.Count]);
                var (c, d) = (other.Points[j], other.Points[(j + 1) % other.Points.Count]);
                if (Segments.Meet(a, b, c, d)) return (i, j);
            }
        }

        return null;
    }

    /// <summary>Where a point lies against a simple ring, whichever way it runs.</summary>
    public static Whereabouts Locate(Ring ring, Point point)
    {
        ArgumentNullException.ThrowIfNull(ring);
        var inside = false;
        for (var i = 0; i < ring.Points.Count; i++)
        {
            var (a, b) = (ring.Points[i], ring.Points[(i + 1) % ring.Points.Count]);
            if (Segments.Holds(a, b, point)) return Whereabouts.OnLine;

            // A level ray to the right: count the sides it passes through, lower ends in and upper ends out.
            if (a.Y > point.Y == b.Y > point.Y) continue;
            var pointIsLeft = Segments.Turn(a, b, point) > 0 == b.Y > a.Y;
            if (pointIsLeft) inside = !inside;
        }

        return inside ? Whereabouts.Inside : Whereabouts.Outside;
    }

    /// <summary>Whether one simple ring lies inside another and nowhere touches it.</summary>
    public static bool LiesInside(Ring inner, Ring outer) =>
        FirstMeeting(inner, outer) is null && Locate(outer, inner.Points[0]) == Whereabouts.Inside;
}
