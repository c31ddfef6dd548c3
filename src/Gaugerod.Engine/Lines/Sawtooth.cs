using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Lines;

/// <summary>
/// One place where an edge may cut tiles. As the tiling is moved by u the leg there grows (tile after the edge) or shrinks
/// (tile before it) step for step, falls off at the tile's side, and begins anew a repeat later: a saw's tooth.
/// </summary>
/// <param name="At">Where the edge is, less what the course adds to u.</param>
/// <param name="TileAfter">Whether tile lies on the side of the larger numbers.</param>
/// <param name="Face">The face's place on the run.</param>
internal readonly record struct Tooth(long At, bool TileAfter, int Face);

/// <summary>The teeth along one axis, and the moves at which something happens to them.</summary>
/// <param name="size">A tile's size along the axis.</param>
/// <param name="period">A tile and its joint.</param>
/// <param name="relax">Legs up to this are taken for none; see <see cref="RunModel.Relax"/>.</param>
internal sealed class Sawtooth(long size, long period, long relax)
{
    private readonly List<Tooth> _teeth = [];

    public IReadOnlyList<Tooth> Teeth => _teeth;

    public void Clear() => _teeth.Clear();

    /// <summary>Adds a tooth unless the same one is there.</summary>
    public void Add(long at, bool tileAfter, int face)
    {
        var tooth = new Tooth(Grid.Mod(at, period), tileAfter, face);
        if (!_teeth.Contains(tooth)) _teeth.Add(tooth);
    }

    /// <summary>The leg at a tooth when the tiling is moved by u; <see cref="long.MaxValue"/> when nothing is cut there.</summary>
    public long Leg(Tooth tooth, long u)
    {
        var into = tooth.At - u;
        if (into < 0) into += period;
        if (into <= 0 || into >= size) return long.MaxValue;
        var leg = tooth.TileAfter ? size - into : into;
        return leg <= relax ? long.MaxValue : leg;
    }

    /// <summary>The narrowest leg by face at a move; u is zero or more and less than the period.</summary>
    public void Least(long u, Span<long> byFace)
    {
        byFace.Fill(long.MaxValue);
        foreach (var tooth in System.Runtime.InteropServices.CollectionsMarshal.AsSpan(_teeth))
        {
            var leg = Leg(tooth, u);
            if (leg < byFace[tooth.Face]) byFace[tooth.Face] = leg;
        }
    }

    /// <summary>
    /// Moves that may be best: where a tile's side meets an edge and a step to either side of it; between two such, where the
    /// smallest growing leg equals the smallest shrinking one; and where a leg is just one of some sizes.
    /// </summary>
    /// <remarks>
    /// Between two neighbouring breaks every leg is a straight line of slope one or minus one, so the smallest of them is
    /// largest where the two kinds meet, or at an end. A count changes only at a break or where a leg passes a size.
    /// </remarks>
    public SortedSet<long> Moves(IEnumerable<long> sizes)
    {
        var breaks = new SortedSet<long>();
        foreach (var tooth in _teeth)
        {
            breaks.Add(tooth.At);
            breaks.Add(Grid.Mod(tooth.At - size, period));
        }

        var moves = new SortedSet<long> { 0 };
        var sorted = breaks.ToArray();
        for (var i = 0; i < sorted.Length; i++)
        {
            var (from, to) = (sorted[i], i + 1 < sorted.Length ? sorted[i + 1] : sorted[0] + period);
            for (var off = -1; off <= 1; off++) Add(moves, from + off);
            if (to - from < 2) continue;
            var (grows, shrinks) = (long.MaxValue, long.MaxValue);
            foreach (var tooth in _teeth)
            {
                var leg = Leg(tooth, Grid.Mod(from + 1, period));
                if (tooth.TileAfter) grows = Math.Min(grows, leg);
                else shrinks = Math.Min(shrinks, leg);
            }

            if (grows == long.MaxValue || shrinks == long.MaxValue || shrinks <= grows) continue;
            var meet = from + 1 + ((shrinks - grows) / 2);
            if (meet >= to) continue;
            Add(moves, meet);
            if (meet + 1 < to) Add(moves, meet + 1);
        }

        foreach (var wanted in sizes.Distinct())
        {
            if (wanted <= 0 || wanted > size) continue;
            foreach (var tooth in _teeth) Add(moves, tooth.TileAfter ? tooth.At - size + wanted : tooth.At - wanted);
        }

        return moves;
    }

    /// <summary>Moves at which two legs and a saw's kerf just make a tile, and a step beyond.</summary>
    public SortedSet<long> PairMoves(long kerf)
    {
        var moves = new SortedSet<long>();
        for (var i = 0; i < _teeth.Count; i++)
        {
            for (var j = i; j < _teeth.Count; j++)
            {
                if (_teeth[i].TileAfter != _teeth[j].TileAfter) continue;
                var twice = _teeth[i].At + _teeth[j].At - size + (_teeth[i].TileAfter ? -kerf : kerf);
                foreach (var start in new[] { twice, twice + period })
                {
                    for (var off = -1; off <= 1; off++) Add(moves, Grid.FloorDiv(start, 2) + off);
                }
            }
        }

        return moves;
    }

    /// <summary>Moves at which the leg at one tooth equals the leg at another that runs the other way, or differs from it by just so much.</summary>
    /// <param name="difference">The difference; zero for equal legs only.</param>
    public SortedSet<long> EqualMoves(long difference)
    {
        var moves = new SortedSet<long>();
        long[] apart = difference == 0 ? [0] : [-difference, 0, difference];
        foreach (var one in _teeth.Where(tooth => tooth.TileAfter))
        {
            foreach (var other in _teeth.Where(tooth => !tooth.TileAfter))
            {
                foreach (var off in apart)
                {
                    var twice = one.At + other.At - size + off;
                    for (var half = 0; half <= 1; half++)
                    {
                        Add(moves, Grid.FloorDiv(twice + (half * period), 2));
                        Add(moves, Grid.FloorDiv(twice + (half * period) + 1, 2));
                    }
                }
            }
        }

        return moves;
    }

    private void Add(SortedSet<long> moves, long move) => moves.Add(Grid.Mod(move, period));
}
