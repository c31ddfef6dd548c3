using System.Runtime.InteropServices;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>
/// One place where an edge may cut tiles. As the tiling is moved by u the leg there grows (tile after the edge) or shrinks
/// (tile before it) step for step, falls off at the tile's side, and begins anew a repeat later: a saw's tooth.
/// </summary>
/// <param name="At">Where the edge is, less what the course adds to u.</param>
/// <param name="TileAfter">Whether tile lies on the side of the larger numbers.</param>
/// <param name="Face">The face's place on the run.</param>
/// <param name="Edge">The edge's place on the face.</param>
internal readonly record struct Tooth(long At, bool TileAfter, int Face, int Edge);

/// <summary>The least of a face's legs at a move, and at least how many tiles are slivers.</summary>
/// <param name="Leg">The leg; <see cref="long.MaxValue"/> for none.</param>
/// <param name="Slivers">At least so many tiles have a leg under the limit.</param>
internal readonly record struct FaceLeast(long Leg, int Slivers);

/// <summary>The teeth along one axis, and the moves at which something happens to them.</summary>
/// <param name="size">A tile's size along the axis.</param>
/// <param name="period">A tile and its joint.</param>
/// <param name="faces">How many faces the run has.</param>
/// <param name="relax">Legs up to this are taken for none; see <see cref="Relax"/>.</param>
internal sealed class Sawtooth(long size, long period, int faces, long relax)
{
    private readonly List<Tooth> _teeth = [];
    private readonly List<long> _moves = [];
    private readonly ToothRow[] _grow = Rows(faces);
    private readonly ToothRow[] _shrink = Rows(faces);
    private readonly (ToothRow Grow, ToothRow Shrink) _perhaps = (new(), new());

    public IReadOnlyList<Tooth> Teeth => _teeth;

    public void Clear()
    {
        _teeth.Clear();
        _perhaps.Grow.Clear();
        _perhaps.Shrink.Clear();
        for (var f = 0; f < faces; f++)
        {
            _grow[f].Clear();
            _shrink[f].Clear();
        }
    }

    /// <summary>Adds the teeth of one edge: the outermost of all the rows that begin alike.</summary>
    /// <param name="least">Its least place.</param>
    /// <param name="most">Its most; the same where the edge is square to the courses.</param>
    /// <param name="tileAfter">Whether tile lies on the side of the larger numbers.</param>
    /// <param name="face">The face's place on the run.</param>
    /// <param name="edge">The edge's place on the face.</param>
    /// <param name="tiles">At least so many tiles are cut here and at no edge else; zero when that is not sure.</param>
    public void Add(long least, long most, bool tileAfter, int face, int edge, int tiles)
    {
        if (least == most)
        {
            Add(least, tileAfter, face, edge, tiles, 0);
            return;
        }

        // The shortest legs are where the edge comes furthest into the tiles. The longest tells of all the others, unless
        // the edge passes a tile's side between.
        var one = Math.Min(1, tiles);
        Add(tileAfter ? most : least, tileAfter, face, edge, one, 0);
        Add(tileAfter ? least : most, tileAfter, face, edge, tiles - one, most - least);
    }

    /// <summary>Adds a tooth whose leg is not sure to count: it promises nothing and only gives moves to look at.</summary>
    public void AddMoves(long at, bool tileAfter, int face, int edge)
    {
        var tooth = new Tooth(Grid.Mod(at, period), tileAfter, face, edge);
        _teeth.Add(tooth);
        if (tileAfter) _perhaps.Grow.Add(Grid.Mod(tooth.At - size, period), 0, 0);
        else _perhaps.Shrink.Add(tooth.At, 0, 0);
    }

    private void Add(long at, bool tileAfter, int face, int edge, int tiles, long over)
    {
        var tooth = new Tooth(Grid.Mod(at, period), tileAfter, face, edge);
        _teeth.Add(tooth);
        // A growing tooth is known by where it starts, a shrinking one by where it ends: there its leg is nothing.
        if (tileAfter) _grow[face].Add(Grid.Mod(tooth.At - size, period), tiles, over);
        else _shrink[face].Add(tooth.At, tiles, over);
    }

    /// <summary>Makes the teeth ready to be asked.</summary>
    public void Sort()
    {
        for (var f = 0; f < faces; f++)
        {
            _grow[f].Sort();
            _shrink[f].Sort();
        }

        _perhaps.Grow.Sort();
        _perhaps.Shrink.Sort();
    }

    /// <summary>
    /// The narrowest leg on a face at a move, and what is surely a sliver. All teeth are one tile long and steep alike, so
    /// the smallest growing leg is that of the tooth which started last, the smallest shrinking one that of the tooth
    /// which ends next.
    /// </summary>
    public FaceLeast Least(int face, long u, long sliver)
    {
        var grown = _grow[face].Before(u - relax, period) + relax;
        var shrunk = _shrink[face].After(u + relax, period) + relax;
        var least = Math.Min(grown, shrunk);
        if (least >= size) return new(long.MaxValue, 0);
        // With limits let out nothing is sure of a tile.
        var slivers = least >= sliver ? 0
            : relax > 0 ? 1
            : Math.Max(1, _grow[face].SliversBefore(u, sliver, period) + _shrink[face].SliversAfter(u, sliver, period));
        return new(least, slivers);
    }

    /// <summary>
    /// Moves that may be best, in order: where a tile's side meets an edge and a step to either side of it; between two such,
    /// where the smallest growing leg equals the smallest shrinking one; and where a leg is just one of some sizes.
    /// </summary>
    /// <remarks>
    /// Between two neighbouring breaks every leg is a straight line of slope one or minus one, so the smallest of them is
    /// largest where the two kinds meet, or at an end. A count changes only at a break or where a leg passes a size.
    /// </remarks>
    public long[] Moves(ReadOnlySpan<long> sizes, Action<List<long>>? more = null)
    {
        _moves.Clear();
        foreach (ref readonly var tooth in CollectionsMarshal.AsSpan(_teeth))
        {
            _moves.Add(tooth.At);
            _moves.Add(Grid.Mod(tooth.At - size, period));
        }

        var breaks = Distinct();
        _moves.Add(0);
        for (var i = 0; i < breaks.Length; i++)
        {
            var (from, to) = (breaks[i], i + 1 < breaks.Length ? breaks[i + 1] : breaks[0] + period);
            for (var off = -1; off <= 1; off++) Add(from + off);
            if (to - from >= 2) Meet(from, to);
        }

        foreach (var wanted in sizes)
        {
            if (wanted <= 0 || wanted > size) continue;
            foreach (ref readonly var tooth in CollectionsMarshal.AsSpan(_teeth))
            {
                Add(tooth.TileAfter ? tooth.At - size + wanted : tooth.At - wanted);
            }
        }

        more?.Invoke(_moves);
        return Distinct();
    }

    /// <summary>Moves at which two legs and a saw's kerf just make a tile, and a step to either side.</summary>
    public void PairMoves(long kerf, List<long> moves)
    {
        for (var i = 0; i < _teeth.Count; i++)
        {
            for (var j = i; j < _teeth.Count; j++)
            {
                if (_teeth[i].TileAfter != _teeth[j].TileAfter) continue;
                var twice = _teeth[i].At + _teeth[j].At - size + (_teeth[i].TileAfter ? -kerf : kerf);
                for (var off = -2; off <= 2; off += 2) Halves(twice + off, moves);
            }
        }
    }

    /// <summary>Moves at which the leg at one tooth equals the leg at another that runs the other way, or differs from it by just so much.</summary>
    /// <param name="one">Which teeth; only growing ones count.</param>
    /// <param name="other">Which others; only shrinking ones count.</param>
    /// <param name="difference">The difference; zero for equal legs only.</param>
    /// <param name="moves">Where to put them.</param>
    public void EqualMoves(Func<Tooth, bool> one, Func<Tooth, bool> other, long difference, List<long> moves)
    {
        foreach (var grows in _teeth.Where(tooth => tooth.TileAfter && one(tooth)))
        {
            foreach (var shrinks in _teeth.Where(tooth => !tooth.TileAfter && other(tooth)))
            {
                var twice = grows.At + shrinks.At - size;
                Halves(twice, moves);
                if (difference == 0) continue;
                Halves(twice - difference, moves);
                Halves(twice + difference, moves);
            }
        }
    }

    private void Meet(long from, long to)
    {
        var (grown, shrunk) = (long.MaxValue, long.MaxValue);
        for (var f = 0; f < faces; f++)
        {
            grown = Math.Min(grown, _grow[f].Before(from + 1, period));
            shrunk = Math.Min(shrunk, _shrink[f].After(from + 1, period));
        }

        Meet(from, to, grown, shrunk);
        var (growing, shrinking) = (_perhaps.Grow.Before(from + 1, period), _perhaps.Shrink.After(from + 1, period));
        if (growing < grown) Meet(from, to, growing, shrunk);
        if (shrinking < shrunk) Meet(from, to, grown, shrinking);
        if (growing < grown && shrinking < shrunk) Meet(from, to, growing, shrinking);
    }

    private void Meet(long from, long to, long grown, long shrunk)
    {
        if (grown >= size || shrunk >= size || shrunk <= grown) return;
        var meet = from + 1 + ((shrunk - grown) / 2);
        if (meet < to) Add(meet);
        if (meet + 1 < to) Add(meet + 1);
    }

    /// <summary>Both moves that are half of a sum, a half step to either side.</summary>
    private void Halves(long twice, List<long> moves)
    {
        for (var half = 0; half <= 1; half++)
        {
            moves.Add(Grid.Mod(Grid.FloorDiv(twice + (half * period), 2), period));
            moves.Add(Grid.Mod(Grid.FloorDiv(twice + (half * period) + 1, 2), period));
        }
    }

    private void Add(long move) => _moves.Add(Grid.Mod(move, period));

    /// <summary>The moves gathered, in order and each once; the list is left empty.</summary>
    private long[] Distinct()
    {
        _moves.Sort();
        var kept = new List<long>(_moves.Count);
        foreach (var move in _moves)
        {
            if (kept.Count == 0 || kept[^1] != move) kept.Add(move);
        }

        _moves.Clear();
        return [.. kept];
    }

    private static ToothRow[] Rows(int faces)
    {
        var rows = new ToothRow[faces];
        for (var f = 0; f < faces; f++) rows[f] = new();
        return rows;
    }
}
