using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Patterns;

/// <summary>Between which lengths the narrowest legs at some lines lie, under all of some ways to move the bond at once.</summary>
/// <remarks>
/// The argument (docs/patterns.md): a tile that is cut under one of the ways is cut within where the line runs through the tile
/// let out, and from there the tile has no less depth than the tile let in, which it holds. Along the line that depth is a
/// concave function, so it is least at an end. Where the line runs through the tile let in too, the tile's leg is no
/// less than that one's. A tile that only some of the ways cut has a leg in a range of its own, or none.
/// </remarks>
internal sealed class LegRanges
{
    // What doubles may lose between two ways to reckon one leg.
    private const double Bit = 1e-6;

    private readonly FieldLine[] _lines;
    private readonly TileShape[] _shapes;
    private readonly FacingPair[] _pairs;
    private readonly int[] _asked;

    // At each line: the least of the legs that every way has, and the ranges of those that some ways have.
    private readonly double[] _least;
    private readonly List<(double Least, double Most)>[] _perhaps;

    /// <param name="lines">All lines.</param>
    /// <param name="shapes">The tiles of the motif.</param>
    /// <param name="pairs">The sides that face each other.</param>
    /// <param name="asked">The lines that are asked about.</param>
    public LegRanges(FieldLine[] lines, TileShape[] shapes, FacingPair[] pairs, IEnumerable<int> asked)
    {
        (_lines, _shapes, _least, _perhaps) = (lines, shapes, new double[lines.Length], Array.ConvertAll(lines, _ => new List<(double, double)>()));
        _asked = [.. asked.Distinct().Order()];
        _pairs = [.. pairs.Where(pair => _asked.Contains(pair.One) || _asked.Contains(pair.Other))];
    }

    /// <summary>Reckons; says how many tiles near lines were looked at.</summary>
    /// <param name="shifts">The ways.</param>
    /// <param name="in">For each tile of the motif, as how far each of its sides is let out, what lets it in.</param>
    /// <param name="out">The same, what lets it out.</param>
    public long Reckon(in Shifts shifts, double[][] @in, double[][] @out)
    {
        var work = 0L;
        foreach (var index in _asked)
        {
            var line = _lines[index];
            var (moved, reach) = Moved(line, shifts);
            var tiles = line.Between(PatternCutter.Hair - moved - reach, reach - PatternCutter.Hair - moved);
            work += tiles.Length;
            _perhaps[index].Clear();
            _least[index] = double.MaxValue;
            foreach (ref readonly var near in tiles)
            {
                if (MayCut(line, near, shifts, @out[near.Tile]) is not { } chord) continue;
                var (least, most, isSure) = Range(line, near, chord, shifts, @in[near.Tile], @out[near.Tile]);
                if (isSure) _least[index] = Math.Min(_least[index], least);
                else _perhaps[index].Add((least, most));
            }
        }

        foreach (var pair in _pairs)
        {
            var (one, other) = (_lines[pair.One], _lines[pair.Other]);
            foreach (var (nearOne, nearOther) in pair.Tiles)
            {
                if (MayCut(one, nearOne, shifts, @out[nearOne.Tile]) is not { } chord || MayCut(other, nearOther, shifts, @out[nearOther.Tile]) is not { } facing) continue;
                if (FacingCuts.Gap(one.Line, chord, other.Line, facing) is not { } gap) continue;
                _perhaps[pair.One].Add((gap, pair.Widest));
                _perhaps[pair.Other].Add((gap, pair.Widest));
            }
        }

        return work;
    }

    /// <summary>Whether the narrowest legs at two sets of lines differ by more than so much under every way.</summary>
    /// <param name="one">The first lines.</param>
    /// <param name="most">What their narrowest leg is under no way over.</param>
    /// <param name="other">The other lines.</param>
    /// <param name="otherMost">The same of these.</param>
    /// <param name="by">How much.</param>
    public bool Differ(int[] one, double most, int[] other, double otherMost, double by)
    {
        foreach (var (least, top) in Ranges(one, most))
        {
            foreach (var (otherLeast, otherTop) in Ranges(other, otherMost))
            {
                if (Math.Max(least - otherTop, otherLeast - top) <= by + Bit) return false;
            }
        }

        return true;
    }

    /// <summary>Where the narrowest leg at some lines may lie: it is one of those that all ways have, or one that some have.</summary>
    private IEnumerable<(double Least, double Most)> Ranges(int[] lines, double most)
    {
        yield return (lines.Select(line => _least[line]).Append(most).Min(), most);
        foreach (var line in lines)
        {
            foreach (var (least, top) in _perhaps[line])
            {
                if (least < most) yield return (least, Math.Min(top, most));
            }
        }
    }

    /// <summary>How much further into the field the middle way takes a tile, and by how much any of the ways differs.</summary>
    private static (double Moved, double Reach) Moved(FieldLine line, in Shifts shifts) =>
        ((shifts.Y * line.Line.AlongX) - (shifts.X * line.Line.AlongY), shifts.Reach(-line.Line.AlongY, line.Line.AlongX));

    /// <summary>Where a line may run through a tile under one of the ways; null where it cuts it under none.</summary>
    private Chord? MayCut(FieldLine line, in NearTile near, in Shifts shifts, double[] @out)
    {
        var (moved, reach) = Moved(line, shifts);
        ref readonly var span = ref line.Spans[near.Tile];
        if (span.Least + near.Inwards + moved - reach >= -PatternCutter.Hair || span.Most + near.Inwards + moved + reach <= PatternCutter.Hair) return null;
        var chord = _shapes[near.Tile].Through(line.Line, near.X + shifts.X, near.Y + shifts.Y, @out);
        return chord.To - chord.From > PatternCutter.Hair ? chord : null;
    }

    private (double Least, double Most, bool IsSure) Range(FieldLine line, in NearTile near, in Chord chord, in Shifts shifts, double[] @in, double[] @out)
    {
        var (shape, x, y) = (_shapes[near.Tile], near.X + shifts.X, near.Y + shifts.Y);
        var sure = shape.Through(line.Line, x, y, @in);
        var isSure = sure.To - sure.From > PatternCutter.Hair;
        if (line.Squares.Length > 0)
        {
            // At a chord of an arc that follows no side of the tile there is no leg; at others it is no longer than the tile is deep.
            if (line.Squares[near.Tile] is not { } into) return (double.MaxValue, double.MaxValue, IsSure: true);
            var left = ArcLegs.Left(line.Line, chord, shape, into, x, y).Least - shifts.Reach(into.X, into.Y);
            // Beside a round it may be that no neck is left.
            if (line.IsRound) return (Math.Max(left, Legs.Neck), double.MaxValue, false);
            return (Math.Max(left, 0), shape.Reach(into.X, into.Y) + shape.Reach(-into.X, -into.Y), isSure);
        }

        var least = Math.Min(shape.Leg(line.Line, x, y, new(chord.From, chord.From), @in), shape.Leg(line.Line, x, y, new(chord.To, chord.To), @in));
        if (sure.To > sure.From) least = Math.Max(least, shape.Leg(line.Line, x, y, sure, @in));
        return (Math.Max(least, 0), isSure ? double.MaxValue : shape.Leg(line.Line, x, y, chord, @out), isSure);
    }
}
