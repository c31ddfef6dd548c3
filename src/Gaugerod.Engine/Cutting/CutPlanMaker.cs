using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Cutting;

/// <summary>Gathers the tiles of a cut plan, numbers them, and says what they cost.</summary>
/// <param name="product">The tile.</param>
/// <param name="pieces">All its pieces, as one reads them.</param>
/// <param name="fences">What the fence is set to.</param>
internal sealed class CutPlanMaker(Product product, Sequence<Piece> pieces, Fences fences)
{
    private readonly Dictionary<string, Piece> _byId = pieces.ToDictionary(piece => piece.Id, StringComparer.Ordinal);
    private readonly List<(int First, Func<int, CutTile> Lay)> _tiles = [];
    private readonly List<PairingProof> _pairings = [];
    private readonly List<WeighingProof> _weighings = [];
    private readonly List<CutTile> _laid = [];
    private int _alone;
    private (Sequence<SawSetting> Settings, Sequence<string> ByHand)? _atSaw;

    /// <summary>The least number of tiles known so far.</summary>
    public int Least { get; private set; }

    /// <summary>What the plan costs: the settings are those it lists, the cuts those against them.</summary>
    public CuttingCost Cost(Tape tape)
    {
        var cuts = _laid.SelectMany(tile => tile.Cuts).Count() + _laid.Where(tile => tile.Cuts.Count == 0).SelectMany(Alone).Sum(piece => piece.Cuts.Count);
        var laidBy = _laid.Sum(tile => Math.Max(0, tile.Cuts.Select(cut => cut.Fence).Distinct().Count() - 1));
        var left = _laid.SelectMany(tile => tile.Left).Count(fences.IsKept);
        return new(_laid.Count, AtSaw(tape).Settings.Count, laidBy, cuts, left);

        IEnumerable<Piece> Alone(CutTile tile) => tile.Pieces.Select(piece => _byId[piece.Id]).Where(piece => piece.Kind != PieceKind.Full && SawSettings.AgainstAFence(piece, tape));
    }

    /// <summary>A piece that takes a tile to itself in any plan.</summary>
    public void Alone(int at, BenchPiece piece)
    {
        _tiles.Add((at, number => new(number, [InTile.Place(piece.Piece, piece.Quarters)])));
        _alone++;
        Least++;
    }

    /// <summary>Pieces that share tiles, exchanged until the aims are served; null whenever a little work is done.</summary>
    public IEnumerable<ProductCutting?> Share(Bench bench, SharedTiles shared, int[] places, CuttingAims aims)
    {
        IReadOnlyList<IReadOnlyList<int>> tiles = shared.Tiles;
        foreach (var sofar in new Rearranging(bench, aims.Order).Steps(shared.Tiles))
        {
            tiles = sofar;
            yield return null;
        }

        _tiles.AddRange(tiles.Select(tile => (places[tile.Min()], (Func<int, CutTile>)(number => bench.Lay(number, [.. tile.Order()])))));
        _pairings.AddRange(shared.Pairings);
        if (shared.Weighing is { } weighing) _weighings.Add(weighing);
        Least += shared.Least;
    }

    /// <summary>Lays out all tiles, one at a time, numbered as one reads their first pieces; done before cost or plan are asked.</summary>
    public IEnumerable<bool> LayOut()
    {
        foreach (var (_, lay) in _tiles.OrderBy(tile => tile.First))
        {
            _laid.Add(lay(_laid.Count + 1));
            yield return true;
        }
    }

    /// <summary>The plan.</summary>
    public ProductCutting Made(Tape tape)
    {
        var tiles = _laid;
        var (settings, byHand) = AtSaw(tape);
        return new(product.Name, tiles.ToSequence(), tiles.Count, Least, _pairings.ToSequence(), settings, byHand) { Weighings = _weighings.ToSequence(), Alone = _alone };
    }

    private (Sequence<SawSetting> Settings, Sequence<string> ByHand) AtSaw(Tape tape) => _atSaw ??= SawSettings.Of(product, pieces, _laid, tape, fences);
}
