using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Patterns;

/// <summary>
/// What the lines of a run do to the tiles, for some ways to move the bond at once. For one way alone the legs are the true
/// ones; for more, only tiles that every one of the ways has cut there count, and their legs are no less than under any of
/// the ways.
/// </summary>
/// <remarks>
/// The argument (docs/patterns.md): a tile moved by any of the ways lies in the tile let out on every side by as far as
/// the ways reach that way, and holds the tile let in as much. Where a line runs through the tile let in, it runs through
/// it under every way; and the depth of the tile let out is no less than its depth under any.
/// </remarks>
internal sealed class Reckoning
{
    private readonly FieldLine[] _lines;
    private readonly TileShape[] _shapes;
    private readonly double[][] _in;
    private readonly double[][] _out;
    private readonly double _sliver;
    private readonly FacingPair[] _pairs;
    private readonly LegRanges _ranges;
    private readonly double[] _slotLeast;
    private readonly bool[] _slotCut, _slotSliver;
    private readonly (int Face, int Tile, double X, double Y)[] _where;
    private readonly List<int> _cut = [];
    private readonly FieldLine[] _rounds;
    private readonly double[] _necks;

    /// <param name="lines">The lines.</param>
    /// <param name="shapes">The tiles of the motif.</param>
    /// <param name="slots">How many tiles any line may run through.</param>
    /// <param name="sliver">A leg narrower than this is a sliver, unless half of its tile or more is left.</param>
    /// <param name="asked">The lines whose legs are asked for at the least too.</param>
    public Reckoning(FieldLine[] lines, TileShape[] shapes, int slots, double sliver, IEnumerable<int> asked)
    {
        (_lines, _shapes, _sliver) = (lines, shapes, sliver);
        _pairs = FacingPair.Among(lines);
        _ranges = new(lines, shapes, _pairs, asked);
        _in = Array.ConvertAll(shapes, shape => new double[shape.Sides]);
        _out = Array.ConvertAll(shapes, shape => new double[shape.Sides]);
        (_slotLeast, _slotCut, _slotSliver) = (new double[slots], new bool[slots], new bool[slots]);
        _rounds = [.. lines.Where(line => line.IsRound)];
        _necks = new double[_rounds.SelectMany(line => line.Tiles).Select(near => near.Neck + 1).DefaultIfEmpty(0).Max()];
        _where = new (int Face, int Tile, double X, double Y)[slots];
        foreach (var line in lines)
        {
            foreach (ref readonly var near in line.Tiles.AsSpan()) _where[near.Slot] = (line.Face, near.Tile, near.X, near.Y);
        }

        (Least, LeastShare, Taken) = (new double[lines.Length], new double[lines.Length], new double[lines.Length]);
    }

    /// <summary>For each line the narrowest leg of a tile cut there; the greatest number where none is.</summary>
    public double[] Least { get; }

    /// <summary>Where the narrowest legs at the lines that are asked about lie; only of more than one way.</summary>
    public LegRanges Ranges => _ranges;

    /// <summary>For each line the narrowest leg as a share of its tile's depth there; the greatest number where none is cut.</summary>
    public double[] LeastShare { get; }

    /// <summary>For each line the most that is taken off a tile's depth there; zero where none is cut.</summary>
    public double[] Taken { get; }

    /// <summary>How many tiles are cut at a side.</summary>
    public int Cuts => _cut.Count;

    /// <summary>The tiles that are cut at a side: their face, their place in the motif and where they lie before the bond is moved.</summary>
    public IEnumerable<(int Face, int Tile, double X, double Y)> CutTiles => _cut.Select(slot => _where[slot]);

    /// <summary>How many tiles near lines were looked at in all.</summary>
    public long Work { get; private set; }

    /// <summary>The narrowest leg at any side; the greatest number when nothing is cut.</summary>
    public double Smallest
    {
        get
        {
            var least = double.MaxValue;
            foreach (var slot in _cut) least = Math.Min(least, _slotLeast[slot]);
            return least;
        }
    }

    /// <summary>How many tiles are left with a sliver.</summary>
    public int Slivers
    {
        get
        {
            var count = 0;
            foreach (var slot in _cut)
            {
                if (_slotSliver[slot]) count++;
            }

            return count;
        }
    }

    /// <summary>Reckons.</summary>
    public void Reckon(in Shifts shifts)
    {
        foreach (var slot in _cut) _slotCut[slot] = false;
        _cut.Clear();
        for (var tile = 0; tile < _shapes.Length; tile++)
        {
            for (var k = 0; k < _shapes[tile].Sides; k++)
            {
                var (x, y) = _shapes[tile].Outwards(k);
                _out[tile][k] = shifts.Reach(x, y);
                _in[tile][k] = -_out[tile][k];
            }
        }

        Array.Fill(_necks, double.MaxValue);
        foreach (var line in _rounds) FindNecks(line, shifts);
        for (var i = 0; i < _lines.Length; i++) Reckon(i, shifts);
        foreach (var pair in _pairs) Narrow(pair, shifts);
        if (!shifts.IsOne) Work += _ranges.Reckon(shifts, _in, _out);
    }

    /// <summary>Legs that a facing cut in the same tile makes narrower.</summary>
    private void Narrow(FacingPair pair, in Shifts shifts)
    {
        var (one, other) = (_lines[pair.One], _lines[pair.Other]);
        foreach (var (nearOne, nearOther) in pair.Tiles)
        {
            if (Sure(one, nearOne, shifts) is not { } chord || Sure(other, nearOther, shifts) is not { } facing) continue;
            // Of many ways only this is known: the strip is nowhere wider than the sides stand apart.
            if ((shifts.IsOne ? FacingCuts.Leg(one.Line, chord, other.Line, facing) : pair.Widest) is not { } gap) continue;
            Record(pair.One, nearOne, gap);
            Record(pair.Other, nearOther, gap);
        }
    }

    private Chord? Sure(FieldLine line, in NearTile near, in Shifts shifts)
    {
        var moved = (shifts.Y * line.Line.AlongX) - (shifts.X * line.Line.AlongY);
        var reach = shifts.Reach(-line.Line.AlongY, line.Line.AlongX);
        ref readonly var span = ref line.Spans[near.Tile];
        if (span.Least + near.Inwards + moved + reach >= -PatternCutter.Hair || span.Most + near.Inwards + moved - reach <= PatternCutter.Hair) return null;
        var sure = _shapes[near.Tile].Through(line.Line, near.X + shifts.X, near.Y + shifts.Y, _in[near.Tile]);
        return sure.To - sure.From > PatternCutter.Hair ? sure : null;
    }

    private void Record(int index, in NearTile near, double leg)
    {
        var depth = _lines[index].Depth(near.Tile);
        Least[index] = Math.Min(Least[index], leg);
        LeastShare[index] = Math.Min(LeastShare[index], leg / depth);
        Cut(near.Slot, leg, leg < Math.Min(_sliver, depth / 2));
    }

    private void Reckon(int index, in Shifts shifts)
    {
        var line = _lines[index];
        var edge = line.Line;
        var moved = (shifts.Y * edge.AlongX) - (shifts.X * edge.AlongY);
        var reach = shifts.Reach(-edge.AlongY, edge.AlongX);
        var (over, under) = (-PatternCutter.Hair - reach - moved, PatternCutter.Hair + reach - moved);
        var (least, share, taken) = (double.MaxValue, double.MaxValue, 0.0);
        var tiles = line.Between(under, over);
        Work += tiles.Length;
        foreach (ref readonly var near in tiles)
        {
            ref readonly var span = ref line.Spans[near.Tile];
            if (span.Least + near.Inwards >= over || span.Most + near.Inwards <= under) continue;
            var shape = _shapes[near.Tile];
            var (x, y) = (near.X + shifts.X, near.Y + shifts.Y);
            var sure = shape.Through(edge, x, y, _in[near.Tile]);
            if (sure.To - sure.From <= PatternCutter.Hair) continue;
            var (leg, depth) = line.Squares.Length > 0 ? AtArc(line, near, sure, shape, x, y, shifts) : (0, span.Most - span.Least);
            if (line.Squares.Length == 0)
            {
                var @out = _out[near.Tile];
                leg = shape.Leg(edge, x, y, shifts.IsOne ? sure : shape.Through(edge, x, y, @out), @out);
            }
            else if (leg == double.MaxValue)
            {
                if (line.Edge >= 0) Cut(near.Slot, leg, isSliver: false);
                continue;
            }

            least = Math.Min(least, leg);
            share = Math.Min(share, leg / depth);
            taken = Math.Max(taken, depth - leg);
            if (line.Edge >= 0) Cut(near.Slot, leg, leg < Math.Min(_sliver, depth / 2));
        }

        (Least[index], LeastShare[index], Taken[index]) = (least, share, taken);
    }

    /// <summary>At a chord of an arc: what is left square to the tile's side that the chord follows, and the tile's depth that way; the greatest number where there is no leg.</summary>
    private (double Leg, double Depth) AtArc(FieldLine line, in NearTile near, in Chord sure, TileShape shape, double x, double y, in Shifts shifts)
    {
        if (line.Squares[near.Tile] is not { } into) return (double.MaxValue, 0);
        var (reach, depth) = (shifts.Reach(into.X, into.Y), shape.Reach(into.X, into.Y) + shape.Reach(-into.X, -into.Y));
        var left = ArcLegs.Left(line.Line, sure, shape, into, x, y);
        if (line.IsRound) return (_necks[near.Neck] >= Legs.Neck ? left.Least + reach : double.MaxValue, depth);
        if (shifts.IsOne) return (Legs.Of(left.Least, left.Most) ?? double.MaxValue, depth);
        var wider = ArcLegs.Left(line.Line, shape.Through(line.Line, x, y, _out[near.Tile]), shape, into, x, y);
        // Where some of the ways may have it run out to nothing, it is as wide as it is at the most.
        return ((wider.Least > reach ? left.Least : wider.Most) + reach, depth);
    }

    /// <summary>The least that a round may leave of tiles under any of the ways.</summary>
    private void FindNecks(FieldLine line, in Shifts shifts)
    {
        var edge = line.Line;
        var moved = (shifts.Y * edge.AlongX) - (shifts.X * edge.AlongY);
        var reach = shifts.Reach(-edge.AlongY, edge.AlongX);
        var (over, under) = (reach - PatternCutter.Hair - moved, PatternCutter.Hair - reach - moved);
        var tiles = line.Between(under, over);
        Work += tiles.Length;
        foreach (ref readonly var near in tiles)
        {
            ref readonly var span = ref line.Spans[near.Tile];
            if (near.Neck < 0 || span.Least + near.Inwards >= over || span.Most + near.Inwards <= under) continue;
            var shape = _shapes[near.Tile];
            var (x, y) = (near.X + shifts.X, near.Y + shifts.Y);
            var chord = shape.Through(edge, x, y, _out[near.Tile]);
            if (chord.To - chord.From <= PatternCutter.Hair || line.Squares[near.Tile] is not { } into) continue;
            _necks[near.Neck] = Math.Min(_necks[near.Neck], ArcLegs.Left(edge, chord, shape, into, x, y).Least - shifts.Reach(into.X, into.Y));
        }
    }

    private void Cut(int slot, double leg, bool isSliver)
    {
        if (_slotCut[slot])
        {
            (_slotLeast[slot], _slotSliver[slot]) = (Math.Min(_slotLeast[slot], leg), _slotSliver[slot] | isSliver);
            return;
        }

        (_slotCut[slot], _slotLeast[slot], _slotSliver[slot]) = (true, leg, isSliver);
        _cut.Add(slot);
    }
}
