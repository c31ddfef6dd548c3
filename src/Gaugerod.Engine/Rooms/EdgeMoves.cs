using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>
/// Moves every side of a ring to its left by what it takes; neighbours meet where their moved lines cross. What falls
/// between two steps comes back to the grid in <see cref="Grid"/>.
/// </summary>
internal static class EdgeMoves
{
    /// <summary>Roots are taken this much finer than a step, so that their own rounding does not show.</summary>
    private const int Finer = 1024;

    /// <summary>Neighbours that bend less than one in this, and take differently, meet in a jog: their moved lines cross far off.</summary>
    private const int GentleBend = 4;

    private readonly record struct Meeting(Point End, Point Start);

    /// <summary>The moved sides in order, without those that came to nothing; null, with remarks, when the sides take too much.</summary>
    public static Sequence<MovedSide>? Move(DrawnRing drawn, bool tileInside, Func<int, Take> takes, Remarks remarks)
    {
        var (points, sides, inward) = Run(drawn, tileInside, takes);
        var n = points.Length;
        var meetings = new Meeting[n];
        for (var i = 0; i < n; i++)
        {
            var before = (i + n - 1) % n;
            meetings[i] = Meet(points[before], points[i], points[(i + 1) % n], inward[before], inward[i]);
        }

        var moved = new List<MovedSide>();
        for (var i = 0; i < n; i++)
        {
            var (here, next, after) = (meetings[i], meetings[(i + 1) % n], (i + 1) % n);
            if (Segments.Dot(here.Start, next.End, points[i], points[after]) < 0)
            {
                TooMuch(drawn, [sides[(i + n - 1) % n], sides[i], sides[after]], remarks);
                return null;
            }

            if (here.Start != next.End) moved.Add(new(here.Start, next.End, sides[i]));

            // The jog is the side of whatever stands out further.
            if (next.End != next.Start) moved.Add(new(next.End, next.Start, inward[i] > inward[after] ? sides[i] : sides[after]));
        }

        return Checked(drawn, tileInside, Joined(moved), remarks);
    }

    private static (Point[] Points, Side[] Sides, Length[] Inward) Run(DrawnRing drawn, bool tileInside, Func<int, Take> takes)
    {
        var n = drawn.Sides.Count;
        var order = Enumerable.Range(0, n);
        var inward = order.Select(i => takes(i).Inward).ToArray();
        if (tileInside) return ([.. drawn.Ring.Points], [.. drawn.Sides], inward);

        // Round a hole the tile is to the left when it is run clockwise: the last side first, from its far end.
        return ([drawn.Ring.Points[0], .. drawn.Ring.Points.Skip(1).Reverse()], [.. drawn.Sides.Reverse()], [.. inward.Reverse()]);
    }

    private static Meeting Meet(Point before, Point corner, Point after, Length takesBefore, Length takesAfter)
    {
        var cross = Segments.Cross(before, corner, corner, after);
        var dot = Segments.Dot(before, corner, corner, after);
        if (cross == 0 && takesBefore == takesAfter)
        {
            var straight = Shift(corner, before, corner, takesBefore);
            return new(straight, straight);
        }

        if (takesBefore != takesAfter && dot > 0 && Int128.Abs(cross) * GentleBend < dot)
        {
            return new(Shift(corner, before, corner, takesBefore), Shift(corner, corner, after, takesAfter));
        }

        // Two lines, each told by its distance from the corner: solved by Cramer's rule.
        var (one, other) = (Reach(before, corner, takesBefore), Reach(corner, after, takesAfter));
        var (dx1, dy1) = ((corner.X - before.X).Steps, (corner.Y - before.Y).Steps);
        var (dx2, dy2) = ((after.X - corner.X).Steps, (after.Y - corner.Y).Steps);
        var point = corner.Moved(
            Grid.Nearest((one * dx2) - (other * dx1), cross * Finer),
            Grid.Nearest((one * dy2) - (other * dy1), cross * Finer));
        return new(point, point);
    }

    /// <summary>A point moved to the left of the way from <paramref name="a"/> to <paramref name="b"/>.</summary>
    private static Point Shift(Point point, Point a, Point b, Length by)
    {
        var reach = Reach(a, b, by);
        var length = Segments.Dot(a, b, a, b) * Finer;
        return point.Moved(Grid.Nearest(-reach * (b.Y - a.Y).Steps, length), Grid.Nearest(reach * (b.X - a.X).Steps, length));
    }

    /// <summary>A distance times the length of the way from <paramref name="a"/> to <paramref name="b"/>, in parts of <see cref="Finer"/>.</summary>
    private static Int128 Reach(Point a, Point b, Length distance)
    {
        var (dx, dy) = (Int128.Abs((b.X - a.X).Steps), Int128.Abs((b.Y - a.Y).Steps));
        if (dx == 0 || dy == 0) return distance.Steps * (dx + dy) * Finer;
        var scaled = (Int128)distance.Steps * Finer;
        var root = Root((UInt128)(scaled * scaled) * (UInt128)((dx * dx) + (dy * dy)));
        return distance.IsNegative ? -root : root;
    }

    private static Int128 Root(UInt128 square)
    {
        if (square == 0) return 0;
        var root = (UInt128)Math.Sqrt((double)square) + 1;
        while (true)
        {
            var better = (root + (square / root)) >> 1;
            if (better >= root && root * root <= square) return (Int128)root;
            root = better < root ? better : root - 1;
        }
    }

    /// <summary>Sides that run straight on from a side of the same name become one.</summary>
    private static Sequence<MovedSide> Joined(List<MovedSide> sides)
    {
        var joined = new List<MovedSide>();
        foreach (var side in sides)
        {
            if (joined.Count > 0 && GoesOn(joined[^1], side)) joined[^1] = joined[^1] with { To = side.To };
            else joined.Add(side);
        }

        if (joined.Count > 1 && GoesOn(joined[^1], joined[0]))
        {
            joined[0] = joined[0] with { From = joined[^1].From };
            joined.RemoveAt(joined.Count - 1);
        }

        return joined.ToSequence();
    }

    private static bool GoesOn(MovedSide one, MovedSide next) =>
        string.Equals(one.Side.Name, next.Side.Name, StringComparison.Ordinal)
        && Segments.Turn(one.From, one.To, next.To) == 0
        && Segments.Dot(one.From, one.To, next.From, next.To) > 0;

    private static Sequence<MovedSide>? Checked(DrawnRing drawn, bool tileInside, Sequence<MovedSide> sides, Remarks remarks)
    {
        if (sides.Count < 3)
        {
            TooMuch(drawn, drawn.Sides, remarks);
            return null;
        }

        var ring = OpeningChecks.RingOf(sides);
        if (RingChecks.FirstCrossing(ring) is var (first, second))
        {
            TooMuch(drawn, [sides[first].Side, sides[second].Side], remarks);
            return null;
        }

        if (ring.DoubledArea > 0 == tileInside) return sides;
        TooMuch(drawn, drawn.Sides, remarks);
        return null;
    }

    private static void TooMuch(DrawnRing drawn, IEnumerable<Side> sides, Remarks remarks)
    {
        var names = string.Join(", ", sides.Select(s => $"'{s.Name}'").Distinct(StringComparer.Ordinal));
        remarks.Refuse(
            drawn.Path, $"joints, covers and trims at the edges {names} that together take more than there is", $"some tile left on '{drawn.Name}' between its edges",
            "smaller covers, joints or trims there, or a step so small left out of the outline");
    }
}
