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
/// <param name="Off">By how much cuts there may come out smaller.</param>
internal readonly record struct Tooth(long At, bool TileAfter, int Face, int Edge, long Off);

/// <summary>The least of a face's legs at a move, and at least how many tiles are slivers.</summary>
/// <param name="Leg">The leg; <see cref="long.MaxValue"/> for none.</param>
/// <param name="Slivers">At least so many tiles have a leg under the limit.</param>
/// <param name="Judged">The least of the legs less by how much cuts at their edges may come out smaller; <see cref="long.MaxValue"/> for none.</param>
internal readonly record struct FaceLeast(long Leg, int Slivers, long Judged);

/// <summary>The teeth along one axis, and the moves at which something happens to them.</summary>
/// <param name="size">A tile's size along the axis.</param>
/// <param name="period">A tile and its joint.</param>
/// <param name="faces">How many faces the run has.</param>
/// <param name="relax">Legs up to this are taken for none; see <see cref="Relax"/>.</param>
/// <param name="off">By how much cuts may come out smaller.</param>
internal sealed partial class Sawtooth(long size, long period, int faces, long relax, OffAtEdges off)
{
    private readonly List<Tooth> _teeth = [];
    private readonly List<long> _moves = [];
    private readonly ToothLane[][] _lanes = [.. Enumerable.Range(0, faces).Select(face => off.Of(face).Select(each => new ToothLane(each, size, period)).ToArray())];
    private readonly ToothLane[] _perhaps = [.. Enumerable.Range(0, faces).SelectMany(off.Of).Distinct().Select(each => new ToothLane(each, size, period))];

    public IReadOnlyList<Tooth> Teeth => _teeth;

    public void Clear()
    {
        _teeth.Clear();
        foreach (var lane in _perhaps) lane.Clear();
        foreach (var lanes in _lanes)
        {
            foreach (var lane in lanes) lane.Clear();
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
        var tooth = new Tooth(Grid.Mod(at, period), tileAfter, face, edge, off.At(face, edge));
        _teeth.Add(tooth);
        Lane(_perhaps, tooth).Add(tooth, 0, 0);
    }

    private void Add(long at, bool tileAfter, int face, int edge, int tiles, long over)
    {
        var tooth = new Tooth(Grid.Mod(at, period), tileAfter, face, edge, off.At(face, edge));
        _teeth.Add(tooth);
        Lane(_lanes[face], tooth).Add(tooth, tiles, over);
    }

    private static ToothLane Lane(ToothLane[] lanes, in Tooth tooth)
    {
        foreach (var lane in lanes)
        {
            if (lane.Off == tooth.Off) return lane;
        }

        throw new InvalidOperationException("A tooth in no lane.");
    }

    /// <summary>Makes the teeth ready to be asked.</summary>
    public void Sort()
    {
        foreach (var lane in _perhaps) lane.Sort();
        foreach (var lanes in _lanes)
        {
            foreach (var lane in lanes) lane.Sort();
        }
    }

    /// <summary>
    /// The narrowest leg on a face at a move, and what is surely a sliver. All teeth are one tile long and steep alike, so
    /// the smallest growing leg is that of the tooth which started last, the smallest shrinking one that of the tooth
    /// which ends next.
    /// </summary>
    public FaceLeast Least(int face, long u, long sliver)
    {
        var (least, judged) = (long.MaxValue, long.MaxValue);
        foreach (var lane in _lanes[face])
        {
            var leg = Math.Min(lane.Grown(u - relax), lane.Shrunk(u + relax)) + relax;
            if (leg >= size) continue;
            least = Math.Min(least, leg);
            judged = Math.Min(judged, leg - lane.Off);
        }

        if (least == long.MaxValue) return new(long.MaxValue, 0, long.MaxValue);
        // With limits let out nothing is sure of a tile.
        var slivers = least >= sliver ? 0 : relax > 0 ? 1 : Math.Max(1, Slivers(face, u, sliver));
        return new(least, slivers, judged);
    }

    private int Slivers(int face, long u, long sliver)
    {
        var sum = 0;
        foreach (var lane in _lanes[face]) sum += lane.Slivers(u, sliver);
        return sum;
    }

    /// <summary>
    /// Moves that may be best, in order: where a tile's side meets an edge and a step to either side of it; between two such,
    /// where the smallest growing leg equals the smallest shrinking one; and where a leg is just one of some sizes.
    /// </summary>
    /// <remarks>
    /// Between two neighbouring breaks every leg is a straight line of slope one or minus one, so the smallest of them is
    /// largest where the two kinds meet, or at an end. A count changes only at a break or where a leg passes a size.
    /// </remarks>
    /// <param name="sizes">Sizes that are asked about.</param>
    /// <param name="smallest">A smallest cut that is known, as smallest cuts are compared; null for none.</param>
    /// <param name="more">Puts in more.</param>
    public long[] Moves(ReadOnlySpan<long> sizes, long? smallest, Action<List<long>>? more = null)
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
            for (var hair = -1; hair <= 1; hair++) Add(from + hair);
            if (to - from >= 2) Meet(from, to);
        }

        foreach (ref readonly var tooth in CollectionsMarshal.AsSpan(_teeth))
        {
            foreach (var wanted in sizes) Reach(tooth, wanted);
            if (smallest is { } known) Reach(tooth, known + tooth.Off);
        }

        more?.Invoke(_moves);
        return Distinct();
    }

    /// <summary>Adds the move at which a tooth's leg is just so long.</summary>
    private void Reach(in Tooth tooth, long wanted)
    {
        if (wanted > 0 && wanted <= size) Add(tooth.TileAfter ? tooth.At - size + wanted : tooth.At - wanted);
    }

    private void Meet(long from, long to)
    {
        var (grown, shrunk) = (long.MaxValue, long.MaxValue);
        foreach (var lanes in _lanes) Narrowest(lanes, from + 1, ref grown, ref shrunk);
        Meet(from, to, grown, shrunk);
        var (growing, shrinking) = (long.MaxValue, long.MaxValue);
        Narrowest(_perhaps, from + 1, ref growing, ref shrinking);
        if (growing < grown) Meet(from, to, growing, shrunk);
        if (shrinking < shrunk) Meet(from, to, grown, shrinking);
        if (growing < grown && shrinking < shrunk) Meet(from, to, growing, shrinking);
    }

    /// <summary>The smallest growing and the smallest shrinking leg at a move, as smallest cuts are compared.</summary>
    private void Narrowest(ToothLane[] lanes, long u, ref long grown, ref long shrunk)
    {
        foreach (var lane in lanes)
        {
            var (grows, shrinks) = (lane.Grown(u), lane.Shrunk(u));
            if (grows < size) grown = Math.Min(grown, grows - lane.Off);
            if (shrinks < size) shrunk = Math.Min(shrunk, shrinks - lane.Off);
        }
    }

    private void Meet(long from, long to, long grown, long shrunk)
    {
        if (grown == long.MaxValue || shrunk == long.MaxValue || shrunk <= grown) return;
        var meet = from + 1 + ((shrunk - grown) / 2);
        if (meet < to) Add(meet);
        if (meet + 1 < to) Add(meet + 1);
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
}
