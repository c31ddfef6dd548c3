using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>Where two moved lines meet: where the first ends and the second starts; one place, but for a jog.</summary>
internal readonly record struct MovedCorner(Point End, Point Start);

/// <summary>The line of a ring's side, to be moved to its left by what it takes.</summary>
/// <param name="From">Where the side begins, as measured.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Takes">How far it moves.</param>
/// <param name="Side">The side.</param>
/// <param name="IsChord">Whether it is one chord of an arc.</param>
internal readonly record struct MovedLine(Point From, Point To, Length Takes, Side Side, bool IsChord)
{
    /// <summary>Roots are taken this much finer than a step, so that their own rounding does not show.</summary>
    private const int Finer = 1024;

    /// <summary>Neighbours that bend less than one in this, and take differently, meet in a jog: their moved lines cross far off.</summary>
    private const int GentleBend = 4;

    /// <summary>Where two lines meet once they are moved; null where they run side by side.</summary>
    public static MovedCorner? Meet(MovedLine before, MovedLine after)
    {
        var cross = Segments.Cross(before.From, before.To, after.From, after.To);
        if (before.To == after.From)
        {
            var (corner, dot) = (before.To, Segments.Dot(before.From, before.To, after.From, after.To));
            if (cross == 0 && before.Takes == after.Takes)
            {
                var straight = Shift(corner, before.From, corner, before.Takes);
                return new(straight, straight);
            }

            if (before.Takes != after.Takes && dot > 0 && Int128.Abs(cross) * GentleBend < dot)
            {
                return new(Shift(corner, before.From, corner, before.Takes), Shift(corner, corner, after.To, after.Takes));
            }
        }

        if (cross == 0) return null;

        // Two lines, each told by its distance from where the first ends: solved by Cramer's rule.
        var apart = Segments.Cross(after.From, after.To, before.To, after.From) * Finer;
        var (one, other) = (Reach(before.From, before.To, before.Takes), Reach(after.From, after.To, after.Takes) + apart);
        var (dx1, dy1) = ((before.To.X - before.From.X).Steps, (before.To.Y - before.From.Y).Steps);
        var (dx2, dy2) = ((after.To.X - after.From.X).Steps, (after.To.Y - after.From.Y).Steps);
        var point = before.To.Moved(
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
}
