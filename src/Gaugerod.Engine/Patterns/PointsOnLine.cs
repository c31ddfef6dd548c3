using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Patterns;

/// <summary>
/// Points of a bond that a want would see on a line: each repeats with the lattice, so the bond moved in many ways has one
/// of them there. A way holds when it moves a point by just as far, square to the line, as the point stands off it, and the
/// point then stands where the line is tiled: a tile that nobody sees stands on no line.
/// </summary>
internal sealed class PointsOnLine
{
    /// <summary>A hundredth of a millimetre: nearer than anyone can set a tile.</summary>
    public const double Tolerance = 32;

    private readonly EdgeLine _line;
    private readonly (double From, double To)[] _tiled;
    private readonly double[] _offs, _alongs, _kept;

    private PointsOnLine(in EdgeLine line, (double From, double To)[] tiled, double[] offs, double[] alongs)
    {
        (_line, _tiled, _offs, _alongs) = (line, tiled, offs, alongs);
        var kept = new List<double>();
        foreach (var off in offs)
        {
            if (kept.Count == 0 || off - kept[^1] > 1) kept.Add(off);
        }

        _kept = [.. kept];
    }

    /// <summary>The direction square to the line, to the right; of length 1 with <see cref="SquareY"/>.</summary>
    public double SquareX => -_line.AlongY;

    /// <summary>The same, up.</summary>
    public double SquareY => _line.AlongX;

    /// <summary>How far a move must take the bond square to the line: each another way to hold, sorted.</summary>
    public ReadOnlySpan<double> Offs => _kept;

    /// <summary>Gathers the points that a move by less than a repeat may bring to the line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="tiled">The stretches of it on which a point may stand, by how far along they begin and end.</param>
    /// <param name="points">The points of one repeat.</param>
    /// <param name="a">The first step of the lattice.</param>
    /// <param name="b">The second.</param>
    public static PointsOnLine Of(EdgeLine line, (double From, double To)[] tiled, IEnumerable<(double X, double Y)> points, (long X, long Y) a, (long X, long Y) b)
    {
        var (inA, inB) = ((a.Y * line.AlongX) - (a.X * line.AlongY), (b.Y * line.AlongX) - (b.X * line.AlongY));
        var (onA, onB) = ((a.X * line.AlongX) + (a.Y * line.AlongY), (b.X * line.AlongX) + (b.Y * line.AlongY));
        // The moves are parts of the two steps: so far they take a point into the field, and along.
        var inwards = (From: Math.Min(inA, 0) + Math.Min(inB, 0) - Tolerance, To: Math.Max(inA, 0) + Math.Max(inB, 0) + Tolerance);
        var along = (
            From: tiled.Select(on => on.From).DefaultIfEmpty().Min() - Math.Max(onA, 0) - Math.Max(onB, 0),
            To: tiled.Select(on => on.To).DefaultIfEmpty().Max() - Math.Min(onA, 0) - Math.Min(onB, 0));
        var whole = (inA * onB) - (inB * onA);
        var found = new List<(double Off, double Along)>();
        foreach (var (x, y) in points)
        {
            // A repeat (i, j) of the point stands off the line by off - i inA - j inB, and along it by on + i onA + j onB.
            var (off, on) = (-line.Inwards(x, y), line.Along(x, y));
            var (first, last) = (double.MaxValue, double.MinValue);
            foreach (var into in new[] { off - inwards.To, off - inwards.From })
            {
                foreach (var to in new[] { along.From - on, along.To - on })
                {
                    var i = ((into * onB) - (inB * to)) / whole;
                    (first, last) = (Math.Min(first, i), Math.Max(last, i));
                }
            }

            for (var i = Math.Ceiling(first); i <= last; i++)
            {
                var (offI, onI) = (off - (i * inA), on + (i * onA));
                var (least, most) = (double.NegativeInfinity, double.PositiveInfinity);
                Within(inB, offI - inwards.To, offI - inwards.From, ref least, ref most);
                Within(onB, along.From - onI, along.To - onI, ref least, ref most);
                for (var j = Math.Ceiling(least); j <= most; j++) found.Add((offI - (j * inB), onI + (j * onB)));
            }
        }

        found.Sort();
        return new(line, tiled, [.. found.Select(point => point.Off)], [.. found.Select(point => point.Along)]);
    }

    /// <summary>Whether one of some ways to move the bond brings a point to the line.</summary>
    public bool MayHold(in Shifts shifts)
    {
        var (moved, reach) = ((shifts.X * SquareX) + (shifts.Y * SquareY), shifts.Reach(SquareX, SquareY) + Tolerance);
        var (on, either) = ((shifts.X * _line.AlongX) + (shifts.Y * _line.AlongY), shifts.Reach(_line.AlongX, _line.AlongY));
        var from = Array.BinarySearch(_offs, moved - reach);
        for (var i = from < 0 ? ~from : from; i < _offs.Length && _offs[i] <= moved + reach; i++)
        {
            foreach (var (begins, ends) in _tiled)
            {
                if (_alongs[i] + on >= begins - either && _alongs[i] + on <= ends + either) return true;
            }
        }

        return false;
    }

    /// <summary>Of the moves square to the line that may hold some of the ways, the one nearest to the middle way's; null where there is none.</summary>
    public double? Nearest(in Shifts shifts)
    {
        var (moved, on) = ((shifts.X * SquareX) + (shifts.Y * SquareY), (shifts.X * _line.AlongX) + (shifts.Y * _line.AlongY));
        var reach = shifts.Reach(SquareX, SquareY);
        var from = Array.BinarySearch(_offs, moved - reach);
        double? nearest = null;
        for (var i = from < 0 ? ~from : from; i < _offs.Length && _offs[i] <= moved + reach; i++)
        {
            if (nearest is { } off && Math.Abs(_offs[i] - moved) >= Math.Abs(off - moved)) continue;
            foreach (var (begins, ends) in _tiled)
            {
                if (_alongs[i] + on >= begins && _alongs[i] + on <= ends) nearest = _offs[i];
            }
        }

        return nearest;
    }

    /// <summary>Narrows from least to most to where so many times a step lies between two ends.</summary>
    private static void Within(double step, double from, double to, ref double least, ref double most)
    {
        const double Level = 1e-9;
        if (Math.Abs(step) < Level)
        {
            if (from > 0 || to < 0) most = double.NegativeInfinity;
            return;
        }

        var (one, other) = (from / step, to / step);
        (least, most) = (Math.Max(least, Math.Min(one, other)), Math.Min(most, Math.Max(one, other)));
    }
}
