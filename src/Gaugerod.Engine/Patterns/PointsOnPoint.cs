namespace Gaugerod.Engine.Patterns;

/// <summary>
/// Points of a bond that a want would see on a place of a face: each repeats with the lattice, so few moves of less than a
/// repeat bring one of them there. Where <see cref="PointsOnLine"/> leaves lines of places, this leaves places alone.
/// </summary>
internal sealed class PointsOnPoint
{
    private readonly (double X, double Y)[] _moves;

    private PointsOnPoint((double X, double Y)[] moves) => _moves = moves;

    /// <summary>The moves within one step of the lattice each way, sorted.</summary>
    public IReadOnlyList<(double X, double Y)> Moves => _moves;

    /// <summary>Gathers the moves that bring one of some points to a place.</summary>
    /// <param name="x">The place, to the right, as the bond lies.</param>
    /// <param name="y">The place, up.</param>
    /// <param name="points">The points of one repeat.</param>
    /// <param name="domain">The moves that differ.</param>
    public static PointsOnPoint Of(double x, double y, IEnumerable<(double X, double Y)> points, OffsetDomain domain)
    {
        // A move at the rim of all moves lays the same tiles as its like across: both are kept, told to a hair.
        const double Rim = 1e-3;
        var moves = new List<(double X, double Y)>();
        foreach (var point in points)
        {
            var (first, second) = domain.Parts(x - point.X, y - point.Y);
            foreach (var i in Whole(first))
            {
                foreach (var j in Whole(second))
                {
                    moves.Add((x - point.X - (i * domain.A.X) - (j * domain.B.X), y - point.Y - (i * domain.A.Y) - (j * domain.B.Y)));
                }
            }
        }

        return new([.. moves.Distinct().OrderBy(move => move.X).ThenBy(move => move.Y)]);

        static IEnumerable<double> Whole(double part)
        {
            var (floor, rest) = (Math.Floor(part), part - Math.Floor(part));
            yield return floor;
            if (rest < Rim) yield return floor - 1;
            if (rest > 1 - Rim) yield return floor + 1;
        }
    }

    /// <summary>Whether one of some ways to move the bond brings a point to the place.</summary>
    public bool MayHold(in Shifts shifts)
    {
        foreach (var (x, y) in _moves)
        {
            // A parallelogram is what lies between two pairs of lines: those along its two ways.
            var (dx, dy) = (x - shifts.X, y - shifts.Y);
            if (Within(dx, dy, 1, 0, shifts) && Within(dx, dy, 0, 1, shifts)
                && Within(dx, dy, -shifts.OneY, shifts.OneX, shifts) && Within(dx, dy, -shifts.OtherY, shifts.OtherX, shifts)) return true;
        }

        return false;
    }

    private static bool Within(double dx, double dy, double x, double y, in Shifts shifts)
    {
        var length = Math.Sqrt((x * x) + (y * y));
        return Math.Abs((dx * x) + (dy * y)) <= (shifts.Reach(x / Math.Max(length, 1), y / Math.Max(length, 1)) + PointsOnLine.Tolerance) * Math.Max(length, 1);
    }
}
