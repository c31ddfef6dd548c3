namespace Gaugerod.Engine.Patterns;

/// <summary>
/// Points of a bond that a want would see on a line: each repeats with the lattice, so the bond moved in many ways has one
/// of them there. A way holds when it moves a point by just as far, square to the line, as the point stands off it.
/// </summary>
internal sealed class PointsOnLine
{
    /// <summary>A hundredth of a millimetre: nearer than anyone can set a tile.</summary>
    public const double Tolerance = 32;

    private readonly double[] _offs;

    /// <param name="squareX">The direction square to the line, to the right; of length 1 with <paramref name="squareY"/>.</param>
    /// <param name="squareY">The same, up.</param>
    /// <param name="offs">How far the line lies from a point that way, for every point that a move by less than a repeat may bring there.</param>
    private PointsOnLine(double squareX, double squareY, double[] offs) => (SquareX, SquareY, _offs) = (squareX, squareY, offs);

    public double SquareX { get; }

    public double SquareY { get; }

    /// <summary>How far a move must take the bond square to the line: each another way to hold, sorted.</summary>
    public ReadOnlySpan<double> Offs => _offs;

    /// <summary>Gathers the points that a move by less than a repeat may bring to the line.</summary>
    /// <param name="squareX">The direction square to the line, to the right.</param>
    /// <param name="squareY">The same, up.</param>
    /// <param name="at">Where the line lies that way.</param>
    /// <param name="points">The points of one repeat.</param>
    /// <param name="a">The first step of the lattice.</param>
    /// <param name="b">The second.</param>
    /// <param name="within">How far from the line, in repeats, points are looked for.</param>
    public static PointsOnLine Of(
        double squareX, double squareY, double at, IEnumerable<(double X, double Y)> points, (long X, long Y) a, (long X, long Y) b, int within)
    {
        var (stepA, stepB) = ((a.X * squareX) + (a.Y * squareY), (b.X * squareX) + (b.Y * squareY));
        var (least, most) = (Math.Min(stepA, 0) + Math.Min(stepB, 0), Math.Max(stepA, 0) + Math.Max(stepB, 0));
        var found = new List<double>();
        foreach (var (x, y) in points)
        {
            var off = at - ((x * squareX) + (y * squareY));
            for (var j = -within; j <= within; j++)
            {
                // With one step along the line nothing is gained by counting it.
                var rest = off - (j * stepB);
                if (Math.Abs(stepA) <= Tolerance)
                {
                    if (rest >= least - Tolerance && rest <= most + Tolerance) found.Add(rest);
                    continue;
                }

                var (one, other) = ((rest - least) / stepA, (rest - most) / stepA);
                var (first, last) = ((long)Math.Ceiling(Math.Min(one, other)), (long)Math.Floor(Math.Max(one, other)));
                for (var i = first; i <= last; i++) found.Add(rest - (i * stepA));
            }
        }

        found.Sort();
        var kept = new List<double>();
        foreach (var off in found)
        {
            if (kept.Count == 0 || off - kept[^1] > 1) kept.Add(off);
        }

        return new(squareX, squareY, [.. kept]);
    }

    /// <summary>Whether one of some ways to move the bond brings a point to the line.</summary>
    public bool MayHold(in Shifts shifts)
    {
        var (moved, reach) = ((shifts.X * SquareX) + (shifts.Y * SquareY), shifts.Reach(SquareX, SquareY) + Tolerance);
        var from = Array.BinarySearch(_offs, moved - reach);
        if (from < 0) from = ~from;
        return from < _offs.Length && _offs[from] <= moved + reach;
    }
}
