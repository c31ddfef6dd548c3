using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Patterns;

/// <summary>A tile that a line may run through, somewhere as the bond is moved by less than a repeat.</summary>
/// <param name="Tile">Its place in the motif.</param>
/// <param name="Slot">Which tile of the run it is.</param>
/// <param name="X">How far right of the motif's own place it lies, before the bond is moved.</param>
/// <param name="Y">How far above it.</param>
/// <param name="Inwards">How much further into the field that is.</param>
/// <param name="Neck">At a round, which neck beside it this tile's is, of all in the run; -1 where there is none.</param>
internal readonly record struct NearTile(int Tile, int Slot, double X, double Y, double Inwards, int Neck = -1);

/// <summary>A side of a field, or a line across it that a want asks about, with the tiles near it.</summary>
/// <param name="Face">The face's place on the run.</param>
/// <param name="Edge">The side's place among the face's edges; -1 for a line that is no side.</param>
/// <param name="Line">Where it lies, as the bond lies.</param>
/// <param name="Spans">For each tile of the motif in its own place: how far into the field from the line its corners lie, least and most.</param>
/// <param name="Tiles">The tiles near it, the one that begins least far into the field first.</param>
internal sealed record FieldLine(int Face, int Edge, EdgeLine Line, (double Least, double Most)[] Spans, NearTile[] Tiles)
{
    /// <summary>Of a chord of an arc, for each tile of the motif: into it, square to the side that the chord follows, or null; empty for any other line.</summary>
    public (double X, double Y)?[] Squares { get; init; } = [];

    /// <summary>Whether it is a chord of a round that tile lies outside of.</summary>
    public bool IsRound { get; init; }

    /// <summary>How the edges of its face make legs; null for a line that is no side.</summary>
    public EdgeLegs? Legs { get; init; }

    /// <summary>For each tile of the motif in its own place: from where to where along the line it reaches.</summary>
    public (double Least, double Most)[] Alongs { get; init; } = [];

    /// <summary>The depth of the deepest tile of the motif, square to the line.</summary>
    public double GreatestDepth { get; } = Spans.Max(span => span.Most - span.Least);

    // How far into the field from the line each tile begins, before the bond is moved.
    private readonly double[] _begins = Array.ConvertAll(Tiles, near => Spans[near.Tile].Least + near.Inwards);

    /// <summary>The tiles that begin less far into the field than one depth, and may end further than another: of many repeats only these.</summary>
    public ReadOnlySpan<NearTile> Between(double ends, double begins)
    {
        // A little more at both ends: whether a tile is met is for others to say, to the last bit.
        const double Bit = 1e-3;
        var from = Array.BinarySearch(_begins, ends - GreatestDepth - Bit);
        if (from < 0) from = ~from;
        var to = from;
        while (to < _begins.Length && _begins[to] < begins + Bit) to++;
        return Tiles.AsSpan(from, to - from);
    }

    /// <summary>How deep a tile of the motif is, square to the line.</summary>
    public double Depth(int tile) => Spans[tile].Most - Spans[tile].Least;

    /// <summary>Gathers the tiles near a line.</summary>
    /// <param name="face">The face's place on the run.</param>
    /// <param name="edge">The side's place among the face's edges.</param>
    /// <param name="line">The line.</param>
    /// <param name="bond">The bond.</param>
    /// <param name="slots">Numbers the tiles.</param>
    /// <param name="off">How far off the line a tile may begin and still be near it; else only those are that it may run through.</param>
    public static FieldLine Of(int face, int edge, EdgeLine line, Bond bond, TileSlots slots, long off = 0)
    {
        var repeats = new Repeats(bond.Lattice, bond.Motif);
        var across = Spanned(bond, (x, y) => line.Inwards(x, y));
        var along = Spanned(bond, (x, y) => line.Along(x, y));

        // The bond is moved by up to one of each step of its lattice: what touches the line then lay that much before it.
        var ((ax, ay), (bx, by)) = (repeats.At(1, 0), repeats.At(0, 1));
        var (endX, endY) = (line.X + (line.AlongX * line.Length), line.Y + (line.AlongY * line.Length));
        var (left, right) = Before(Math.Min(line.X, endX), Math.Max(line.X, endX), ax, bx);
        var (bottom, top) = Before(Math.Min(line.Y, endY), Math.Max(line.Y, endY), ay, by);
        var (inA, inB) = (Inwards(line, ax, ay), Inwards(line, bx, by));
        var (onA, onB) = (On(line, ax, ay), On(line, bx, by));
        var tiles = new List<NearTile>();
        foreach (var (i, j) in repeats.Touching((long)left - 1 - off, (long)bottom - 1 - off, (long)right + 2 + off, (long)top + 2 + off))
        {
            var (x, y) = repeats.At(i, j);
            var (inwards, on) = (Inwards(line, x, y), On(line, x, y));
            for (var tile = 0; tile < across.Length; tile++)
            {
                if (across[tile].Least + inwards + Less(inA, inB) >= off || across[tile].Most + inwards + More(inA, inB) <= 0) continue;
                if (along[tile].Least + on + Less(onA, onB) >= line.Length || along[tile].Most + on + More(onA, onB) <= 0) continue;
                tiles.Add(new(tile, slots.Of(face, i, j, tile), x, y, inwards));
            }
        }

        return new(face, edge, line, across, [.. tiles.OrderBy(near => across[near.Tile].Least + near.Inwards)]) { Alongs = along };
    }

    private static double Inwards(in EdgeLine line, double x, double y) => (y * line.AlongX) - (x * line.AlongY);

    private static double On(in EdgeLine line, double x, double y) => (x * line.AlongX) + (y * line.AlongY);

    private static double Less(double one, double other) => Math.Min(one, 0) + Math.Min(other, 0);

    private static double More(double one, double other) => Math.Max(one, 0) + Math.Max(other, 0);

    private static (double From, double To) Before(double from, double to, double one, double other) => (from - More(one, other), to - Less(one, other));

    private static (double Least, double Most)[] Spanned(Bond bond, Func<double, double, double> measure) =>
        [.. bond.Motif.Select(tile => tile.Shape.Points.Select(point => measure(point.X.Steps, point.Y.Steps)).ToArray()).Select(far => (far.Min(), far.Max()))];
}

/// <summary>Numbers the necks that rounds may leave of tiles.</summary>
internal sealed class NeckSlots
{
    private readonly Dictionary<(int Slot, int Round, int Way), int> _slots = [];

    public NearTile[] Of(FieldLine line, int round, TileShape[] shapes) => Array.ConvertAll(line.Tiles, near =>
    {
        if (line.Squares[near.Tile] is not { } square) return near;
        var neck = (near.Slot, round, ArcLegs.Way(shapes[near.Tile], square));
        if (!_slots.TryGetValue(neck, out var slot)) _slots[neck] = slot = _slots.Count;
        return near with { Neck = slot };
    });
}

/// <summary>Numbers the tiles of a run that any line may run through.</summary>
internal sealed class TileSlots
{
    private readonly Dictionary<(int Face, long I, long J, int Tile), int> _slots = [];

    public int Count => _slots.Count;

    public int Of(int face, long i, long j, int tile)
    {
        if (!_slots.TryGetValue((face, i, j, tile), out var slot)) _slots[(face, i, j, tile)] = slot = _slots.Count;
        return slot;
    }
}
