using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>What lies between the pieces of a field.</summary>
/// <param name="Area">In mm²: what of the field no piece covers. Crossings are counted once.</param>
/// <param name="Length">In mm: half of what the pieces' sides measure along joints, so that each joint is counted once, from crossing to crossing.</param>
internal readonly record struct JointSpace(double Area, double Length)
{
    private const double Step = 3200;

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

    // A side of a piece that lies on the field's edge stands in no joint.
    private static double Around(Ring outline, Polygon field)
    {
        var (points, sum) = (outline.Points, 0.0);
        for (var i = 0; i < points.Count; i++)
        {
            var (from, to) = (points[i], points[(i + 1) % points.Count]);
            if (IsOn(field.Outer, from, to) || field.Inner.Any(hole => IsOn(hole, from, to))) continue;
            var (dx, dy) = ((double)(to.X - from.X).Steps, (double)(to.Y - from.Y).Steps);
            sum += Math.Sqrt((dx * dx) + (dy * dy));
        }

        return sum;
    }

    private static bool IsOn(Ring ring, Point from, Point to)
    {
        var points = ring.Points;
        for (var i = 0; i < points.Count; i++)
        {
            var (a, b) = (points[i], points[(i + 1) % points.Count]);
            if (IsBeside(a, b, from) && IsBeside(a, b, to)) return true;
        }

        return false;
    }

    // Cuts come back to the grid: a corner may stand a step off a slanting edge, never more than two.
    private static bool IsBeside(Point a, Point b, Point at)
    {
        var (ux, uy) = ((double)(b.X - a.X).Steps, (double)(b.Y - a.Y).Steps);
        var (px, py) = ((double)(at.X - a.X).Steps, (double)(at.Y - a.Y).Steps);
        var length = Math.Sqrt((ux * ux) + (uy * uy));
        var along = ((px * ux) + (py * uy)) / length;
        return Math.Abs((px * uy) - (py * ux)) / length <= 2 && along >= -2 && along <= length + 2;
    }
}
