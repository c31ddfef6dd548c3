using Gaugerod.Engine.Sharing;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Cutting;

/// <summary>Pieces of one tile on the bench, and what a tile that gives some of them costs.</summary>
internal sealed class Bench
{
    private readonly TileLayout _layout;
    private readonly TileFits _fits;
    private readonly Dictionary<UInt128, TileCost?> _costs = [];
    private readonly Fences _fences;

    /// <param name="stock">The tile.</param>
    /// <param name="pieces">The pieces, as one reads them.</param>
    /// <param name="fences">What the fence is set to.</param>
    public Bench(Stock stock, IReadOnlyList<BenchPiece> pieces, Fences fences)
    {
        (Stock, Pieces, _fences) = (stock, pieces, fences);
        Wanted = new(stock, [.. pieces.Select(piece => piece.Cutout)], nests: false);
        (_layout, _fits) = (new(Wanted), new(Wanted));
    }

    public Stock Stock { get; }

    public IReadOnlyList<BenchPiece> Pieces { get; }

    public Wanted Wanted { get; }

    /// <summary>Whether these pieces share a tile, as far as straight cuts go: sooner said than what it costs.</summary>
    public bool Share(List<int> group)
    {
        Span<int> kinds = stackalloc int[group.Count];
        return _fits.Fit(Kinds(group, kinds));
    }

    /// <summary>What a tile with these pieces costs; null where they share none.</summary>
    public TileCost? Cost(IReadOnlyList<int> group)
    {
        Span<int> room = stackalloc int[group.Count];
        var kinds = Kinds(group, room);

        // A tile of more than eight pieces is looked at anew each time.
        if (kinds.Length > 8) return Reckoned(kinds);
        UInt128 key = 0;
        foreach (var kind in kinds) key = (key << 16) | (uint)(kind + 1);
        if (!_costs.TryGetValue(key, out var cost)) _costs[key] = cost = Reckoned(kinds);
        return cost;
    }

    private Span<int> Kinds(IReadOnlyList<int> group, Span<int> kinds)
    {
        for (var i = 0; i < kinds.Length; i++) kinds[i] = Wanted.Of[group[i]];
        kinds.Sort();
        return kinds;
    }

    private TileCost? Reckoned(ReadOnlySpan<int> kinds)
    {
        if (!_fits.Fit(kinds)) return null;
        _layout.Lay(kinds.ToArray());
        if (kinds.Length > 1 && !_layout.Cuts.TrueForAll(BreaksClean)) return null;
        var fences = _layout.Cuts.Select(cut => _fences.For(Kept(cut))).Distinct().Count();
        var left = _layout.Left.Where(_fences.IsKept).ToList();
        var largest = left.Count == 0 ? 0 : left.Max(area => (double)area.Width * area.Height);
        return new(Math.Max(0, fences - 1), _layout.Cuts.Count, left.Count, largest);
    }

    /// <summary>Lays out a tile, its pieces as one reads them: as few turned as may be, the first not if that is the choice.</summary>
    /// <param name="number">The tile's number.</param>
    /// <param name="group">Its pieces.</param>
    public CutTile Lay(int number, IReadOnlyList<int> group)
    {
        int[] order = [.. group.OrderBy(i => Wanted.Of[i]).ThenBy(i => i)];
        _layout.Lay(Array.ConvertAll(order, i => Wanted.Of[i]));
        var natural = order.ToDictionary(i => Pieces[i].Piece.Id, i => (At: i, Pieces[i].Quarters), StringComparer.Ordinal);
        return Turns().Select(quarters => Turned(number, quarters, order))
            .Select(tile => tile with { Pieces = tile.Pieces.OrderBy(piece => natural[piece.Id].At).ToSequence() })
            .MinBy(tile => (tile.Pieces.Count(IsTurned), IsTurned(tile.Pieces[0])))!;

        bool IsTurned(PieceInTile piece) => piece.Turned != natural[piece.Id].Quarters;
    }

    private IEnumerable<int> Turns() => Stock.Turns switch { Sharing.Turns.None => [0], Sharing.Turns.Half => [0, 2], _ => [0, 1, 2, 3] };

    /// <summary>The tile as laid out last, turned as a whole.</summary>
    private CutTile Turned(int number, int quarters, int[] order)
    {
        var byHand = order.Length == 1 && Pieces[order[0]].Cutout.Shape is not null;
        return new(number, _layout.Blanks.Select(laid => Pieces[order[laid.Blank]].Lay(laid.Turned(quarters, Stock), Stock)).ToSequence())
        {
            Cuts = byHand ? [] : _layout.Cuts.Select(cut => Cut(cut.Turned(quarters, Stock))).ToSequence(),
            Left = _layout.Left.Select(area => BoxOf(area.Turned(quarters, Stock))).ToSequence(),
            Nests = _layout.Blanks.Exists(laid => laid.Nests),
        };
    }

    private SawCut Cut(Saw cut) => new(BoxOf(cut.Over), cut.Upright, Length.FromSteps(cut.At), _fences.For(Kept(cut)), cut.BladeBefore);

    // What falls off beside a blade is dust; without one it is a strip.
    private bool BreaksClean(Saw cut)
    {
        var (kept, whole) = (Kept(cut), cut.Upright ? cut.Over.Width : cut.Over.Height);
        return _fences.Parts(kept) && (whole - kept <= Stock.Kerf || _fences.Parts(whole - kept));
    }

    private static long Kept(Saw cut) => (cut.Upright, cut.BladeBefore) switch
    {
        (true, false) => cut.At - cut.Over.Left,
        (true, true) => cut.Over.Right - cut.At,
        (false, false) => cut.At - cut.Over.Bottom,
        _ => cut.Over.Top - cut.At,
    };

    private static Box BoxOf(Area area) => new(Length.FromSteps(area.Left), Length.FromSteps(area.Bottom), Length.FromSteps(area.Right), Length.FromSteps(area.Top));
}

/// <summary>What a tile costs at the saw.</summary>
/// <param name="LaidBy">How often a part of it is laid by until the fence stands elsewhere.</param>
/// <param name="Cuts">Its straight cuts.</param>
/// <param name="Left">Offcuts worth keeping.</param>
/// <param name="Largest">The area of the largest of them, in square steps.</param>
internal readonly record struct TileCost(int LaidBy, int Cuts, int Left, double Largest);
