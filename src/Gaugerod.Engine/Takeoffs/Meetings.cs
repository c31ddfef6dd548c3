using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>Where pieces of one face stand beside each other across a joint.</summary>
internal static class Meetings
{
    private const double Step = 3200;

    /// <summary>How long, in mm, each joint between two pieces is, side by side. What is shorter than the joint is wide is a crossing and none.</summary>
    /// <param name="pieces">The pieces of one field.</param>
    /// <param name="joint">The joint's width.</param>
    public static IReadOnlyList<double> Of(IReadOnlyList<Piece> pieces, Length joint)
    {
        var (found, reach) = (new List<double>(), joint + Length.FromMillimetres(1));
        var sorted = pieces.OrderBy(piece => piece.Outline.Bounds.Left).ToList();
        for (var i = 0; i < sorted.Count; i++)
        {
            var one = sorted[i].Outline;
            for (var k = i + 1; k < sorted.Count && sorted[k].Outline.Bounds.Left <= one.Bounds.Right + reach; k++)
            {
                var other = sorted[k].Outline;
                if (other.Bounds.Bottom > one.Bounds.Top + reach || other.Bounds.Top + reach < one.Bounds.Bottom) continue;
                if (Beside(one, other, joint) is var length && length > joint.Steps / Step) found.Add(length);
            }
        }

        return found;
    }

    /// <summary>How many crossings the joints have: places where corners of pieces come together, within a joint's width of each other.</summary>
    public static int Crossings(Polygon field, IReadOnlyList<Piece> pieces, Length joint)
    {
        // Two corners of one crossing are no further apart than its diagonal.
        var reach = (joint.Steps * 1.5) + 64;
        var corners = pieces.SelectMany(piece => piece.Outline.Points.Select(at => (Piece: piece, At: at))).Where(corner => !IsOnEdge(corner.At, field)).OrderBy(corner => corner.At.X).ToList();
        var of = Enumerable.Range(0, corners.Count).ToArray();
        for (var i = 0; i < corners.Count; i++)
        {
            for (var k = i + 1; k < corners.Count && (corners[k].At.X - corners[i].At.X).Steps <= reach; k++)
            {
                if (Math.Abs((corners[k].At.Y - corners[i].At.Y).Steps) <= reach && corners[k].Piece != corners[i].Piece) of[Root(k)] = Root(i);
            }
        }

        // A corner by itself is where a piece was cut round something: nothing crosses there.
        return Enumerable.Range(0, corners.Count).GroupBy(Root).Count(group => group.Count() > 1);

        int Root(int at)
        {
            while (of[at] != at) at = of[at];
            return at;
        }
    }

    /// <summary>How many stand along joints, one at the least in each, no further apart than said.</summary>
    public static int Along(IEnumerable<double> joints, Length every) => joints.Sum(length => (int)Math.Ceiling(length * Step / every.Steps * (1 - 1e-9)));

    private static double Beside(Ring one, Ring other, Length joint)
    {
        var sum = 0.0;
        for (var i = 0; i < one.Points.Count; i++)
        {
            for (var k = 0; k < other.Points.Count; k++)
            {
                sum += Overlap(one.Points[i], one.Points[(i + 1) % one.Points.Count], other.Points[k], other.Points[(k + 1) % other.Points.Count], (joint.Steps * 1.25) + 64);
            }
        }

        return sum / Step;
    }

    // How far two sides that run against each other lie side by side, no further apart than the joint.
    private static double Overlap(Point a, Point b, Point c, Point d, double apart)
    {
        var (ux, uy) = ((double)(b.X - a.X).Steps, (double)(b.Y - a.Y).Steps);
        var length = Math.Sqrt((ux * ux) + (uy * uy));
        var (px, py, qx, qy) = ((double)(c.X - a.X).Steps, (double)(c.Y - a.Y).Steps, (double)(d.X - a.X).Steps, (double)(d.Y - a.Y).Steps);
        var (across, beyond) = (((px * uy) - (py * ux)) / length, ((qx * uy) - (qy * ux)) / length);
        if (Math.Min(across, beyond) < -64 || Math.Max(across, beyond) > apart) return 0;
        var (from, to) = (((qx * ux) + (qy * uy)) / length, ((px * ux) + (py * uy)) / length);
        return Math.Max(0, Math.Min(to, length) - Math.Max(from, 0));
    }

    private static bool IsOnEdge(Point at, Polygon field) => IsOn(at, field.Outer) || field.Inner.Any(hole => IsOn(at, hole));

    private static bool IsOn(Point at, Ring ring)
    {
        for (var i = 0; i < ring.Points.Count; i++)
        {
            var (a, b) = (ring.Points[i], ring.Points[(i + 1) % ring.Points.Count]);
            var (ux, uy, px, py) = ((double)(b.X - a.X).Steps, (double)(b.Y - a.Y).Steps, (double)(at.X - a.X).Steps, (double)(at.Y - a.Y).Steps);
            var length = Math.Sqrt((ux * ux) + (uy * uy));
            var along = ((px * ux) + (py * uy)) / length;
            if (Math.Abs(((px * uy) - (py * ux)) / length) <= 2 && along >= -2 && along <= length + 2) return true;
        }

        return false;
    }
}
