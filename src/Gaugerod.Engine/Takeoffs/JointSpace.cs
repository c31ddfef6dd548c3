using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>What lies between the pieces of a field.</summary>
/// <param name="Area">In mm²: what of the field no piece covers. Crossings are counted once.</param>
/// <param name="Length">In mm: half of what the pieces' sides measure along joints, so that each joint is counted once, from crossing to crossing.</param>
internal readonly record struct JointSpace(double Area, double Length)
{
    private const double Step = 3200;

    // Cuts come back to the grid: a corner may stand a step off a slanting edge, never more than two.
    private const double Near = 2;

    /// <summary>The joints of one field. Its edges are not among them: what stands there is sealed, trimmed or left open.</summary>
    public static JointSpace Of(Polygon field, IEnumerable<Piece> pieces)
    {
        var (left, sides) = (field.DoubledArea, 0.0);
        foreach (var piece in pieces)
        {
            left -= piece.Outline.DoubledArea;
            foreach (var hole in piece.Inner) left += hole.DoubledArea;
            sides += Around(piece.Outline, field);
        }

        return new((double)left / 2 / (Step * Step), sides / 2 / Step);
    }

    private static double Around(Ring outline, Polygon field)
    {
        var (points, sum) = (outline.Points, 0.0);
        for (var i = 0; i < points.Count; i++) sum += Off(points[i], points[(i + 1) % points.Count], field);
        return sum;
    }

    /// <summary>How much of a side stands in a joint: what of it does not lie on the field's edge.</summary>
    private static double Off(Point from, Point to, Polygon field)
    {
        var on = new List<(double From, double To)>();
        Along(field.Outer);
        foreach (var hole in field.Inner) Along(hole);
        var (dx, dy) = ((double)(to.X - from.X).Steps, (double)(to.Y - from.Y).Steps);
        var (length, reached, off) = (Math.Sqrt((dx * dx) + (dy * dy)), 0.0, 0.0);
        foreach (var (begins, ends) in on.OrderBy(part => part.From))
        {
            off += Math.Max(0, begins - reached);
            reached = Math.Max(reached, ends);
        }

        return (off + Math.Max(0, 1 - reached)) * length;

        void Along(Ring ring)
        {
            for (var i = 0; i < ring.Points.Count; i++)
            {
                if (Beside(ring.Points[i], ring.Points[(i + 1) % ring.Points.Count], from, to) is { } part) on.Add(part);
            }
        }
    }

    /// <summary>From where to where a side lies along an edge, in parts of the side; null where it does not.</summary>
    private static (double From, double To)? Beside(Point a, Point b, Point from, Point to)
    {
        var (ux, uy) = ((double)(b.X - a.X).Steps, (double)(b.Y - a.Y).Steps);
        var length = Math.Sqrt((ux * ux) + (uy * uy));
        var (px, py, qx, qy) = ((double)(from.X - a.X).Steps, (double)(from.Y - a.Y).Steps, (double)(to.X - a.X).Steps, (double)(to.Y - a.Y).Steps);
        var across = Within(((px * uy) - (py * ux)) / length, ((qx * uy) - (qy * ux)) / length, -Near, Near);
        var along = Within(((px * ux) + (py * uy)) / length, ((qx * ux) + (qy * uy)) / length, -Near, length + Near);
        var (begins, ends) = (Math.Max(across.From, along.From), Math.Min(across.To, along.To));
        return begins < ends ? (begins, ends) : null;
    }

    // Where on the way from one number to another it lies between two.
    private static (double From, double To) Within(double first, double last, double least, double most)
    {
        if (Math.Abs(last - first) < 1e-9) return first >= least && first <= most ? (0, 1) : (1, 0);
        var (one, other) = ((least - first) / (last - first), (most - first) / (last - first));
        return (Math.Max(0, Math.Min(one, other)), Math.Min(1, Math.Max(one, other)));
    }
}
