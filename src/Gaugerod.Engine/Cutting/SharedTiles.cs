using Gaugerod.Engine.Sharing;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Cutting;

/// <summary>Which pieces share a tile, and why fewer tiles would not do.</summary>
/// <param name="Tiles">The pieces of each tile, as places on the bench.</param>
/// <param name="Least">The least number of tiles known.</param>
/// <param name="Pairings">The arguments, where pieces with one cut share.</param>
/// <param name="Weighing">The argument, where pieces of every kind share.</param>
internal sealed record SharedTiles(IReadOnlyList<IReadOnlyList<int>> Tiles, int Least, IReadOnlyList<PairingProof> Pairings, WeighingProof? Weighing)
{
    /// <summary>Pieces with one cut each, paired; null where the pairs found and the bound do not meet.</summary>
    public static SharedTiles? Paired(Rooms.Product product, IReadOnlyList<BenchPiece> pieces)
    {
        if (pieces.Any(piece => !PairedStrips.HasOneCut(piece.Piece))) return null;
        Pieces.Piece[] all = [.. pieces.Select(piece => piece.Piece)];
        var (found, bound) = (PairedStrips.Of(product, all), PairedStrips.Of(product, all, atTheMiddle: true));
        if (found.Tiles != bound.Tiles) return null;
        var tiles = new List<IReadOnlyList<int>>();
        for (var i = 0; i < all.Length; i++)
        {
            if (found.Partner[i] == Pairing.Alone) tiles.Add([i]);
            else if (found.Partner[i] > i) tiles.Add([i, found.Partner[i]]);
        }

        // Where no cut is a taper both say the same.
        var tapers = pieces.Any(piece => piece.Piece.Cuts[0].First != piece.Piece.Cuts[0].Last);
        return new(tiles, bound.Tiles, tapers ? bound.Proofs : found.Proofs, null);
    }

    /// <summary>Pieces of every kind, searched; null whenever a little work is done, the best at the last.</summary>
    /// <param name="bench">The pieces.</param>
    /// <param name="allowed">How much work may be done.</param>
    public static IEnumerable<SharedTiles?> Searched(Bench bench, long allowed)
    {
        var search = new SharingSearch(bench.Wanted, allowed);
        foreach (var _ in search.Steps()) yield return null;
        yield return Of(bench, search.Best);
    }

    /// <summary>The same without the tiles whose parts are too narrow to break off: their pieces go where they can, else alone.</summary>
    public SharedTiles Snapped(Bench bench)
    {
        var tiles = Tiles.Where(tile => bench.Cost(tile) is not null).Select(tile => tile.ToList()).ToList();
        foreach (var piece in Tiles.Where(tile => bench.Cost(tile) is null).SelectMany(tile => tile))
        {
            if (tiles.Find(tile => bench.Cost([.. tile, piece]) is not null) is { } room) room.Add(piece);
            else tiles.Add([piece]);
        }

        return this with { Tiles = tiles };
    }

    private static SharedTiles Of(Bench bench, Shares shares)
    {
        var members = Array.ConvertAll(bench.Wanted.Members, of => new Queue<int>(of));
        var tiles = shares.Fills.Select(fill => (IReadOnlyList<int>)[.. fill.Select(kind => members[kind].Dequeue())]).ToList();
        var kinds = bench.Wanted.Members.Select((of, kind) => new Weighed(of.Select(i => bench.Pieces[i].Piece.Id).ToSequence(), shares.Proof.Weights[kind])).ToSequence();
        return new(tiles, shares.Least, [], new(kinds, shares.Proof.Heaviest, shares.Proof.Tiles, shares.Least - shares.Proof.Tiles));
    }
}
