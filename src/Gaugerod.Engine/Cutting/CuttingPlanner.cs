using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Cutting;

/// <summary>Decides which tile every piece of a product is cut from. The rules, and what is proved of the count, stand in docs/cutting.md.</summary>
internal static class CuttingPlanner
{
    /// <summary>How much work the search for fewer tiles may do, in blanks tried and places looked at.</summary>
    private const long Work = 10_000_000;

    /// <summary>How many tiles pieces take when only those with one cut share, two and two: quick, and never fewer than planned.</summary>
    /// <param name="product">The tile.</param>
    /// <param name="pieces">Its pieces.</param>
    public static int Count(Product product, IReadOnlyList<Piece> pieces)
    {
        var paired = PairedStrips.Of(product, pieces);
        return paired.Partner.Length - (paired.Partner.Count(other => other != Pairing.Alone) / 2);
    }

    /// <summary>Plans the cutting of one product.</summary>
    /// <param name="product">The tile.</param>
    /// <param name="pieces">All its pieces, of every run and face, as one reads them; tiles are numbered in this order.</param>
    /// <param name="tape">The tape that fences are set by.</param>
    /// <param name="aims">What is asked of it; null for the usual.</param>
    /// <exception cref="ArgumentException">A piece is of another product, or its cell is not of this tile's size.</exception>
    public static ProductCutting Plan(Product product, Sequence<Piece> pieces, Tape tape, CuttingAims? aims = null) =>
        Steps(product, pieces, tape, aims ?? CuttingAims.Usual).Last()!;

    /// <summary>As the other, step by step: null whenever a little work is done, the plan at the last.</summary>
    public static IEnumerable<ProductCutting?> Steps(Product product, Sequence<Piece> pieces, Tape tape, CuttingAims aims)
    {
        foreach (var piece in pieces)
        {
            if (!string.Equals(piece.Product, product.Name, StringComparison.Ordinal)) throw new ArgumentException($"Piece {piece.Id} is of {piece.Product}, not of {product.Name}.", nameof(pieces));
        }

        var fences = new Fences(product, pieces.Where(piece => SawSettings.AgainstAFence(piece, tape)), tape, aims);
        var (fewest, simple) = (new CutPlanMaker(product, pieces, fences), new CutPlanMaker(product, pieces, fences));
        foreach (var group in pieces.Select((piece, i) => (Piece: piece, At: i)).GroupBy(of => BenchPiece.TileOf(of.Piece)))
        {
            var stock = BenchPiece.StockOf(product, group.First().Piece);
            var all = group.Select(of => (of.At, OnBench: BenchPiece.Of(product, of.Piece, stock))).ToLookup(of => of.OnBench.MayShare(stock));
            foreach (var (at, alone) in all[false])
            {
                fewest.Alone(at, alone);
                simple.Alone(at, alone);
            }

            var sharing = all[true].ToList();
            if (sharing.Count == 0) continue;
            var own = sharing.ConvertAll(of => of.OnBench);
            int[] places = [.. sharing.Select(of => of.At)];
            var shared = SharedTiles.Paired(product, own);
            var bench = new Bench(stock, own, fences);
            yield return null;
            if (shared is null)
            {
                foreach (var _ in bench.Wanted.FindNests()) yield return null;
                foreach (var sofar in SharedTiles.Searched(bench, Work))
                {
                    shared = sofar;
                    yield return null;
                }
            }

            var apart = new SharedTiles([], 0, [], null);
            foreach (var sofar in BySetting(product, bench, fences, tape))
            {
                apart = sofar ?? apart;
                yield return null;
            }

            if (product.Snaps is not null) (shared, apart) = (shared!.Snapped(bench), apart.Snapped(bench));
            foreach (var sofar in fewest.Share(bench, shared!, places, aims)) yield return sofar;
            foreach (var sofar in simple.Share(bench, apart, places, aims)) yield return sofar;
        }

        foreach (var _ in fewest.LayOut().Concat(simple.LayOut())) yield return null;
        var (one, other) = (fewest.Cost(tape), simple.Cost(tape));
        var chosen = aims.IsSimple ? simple.Made(tape) with { LowerBound = fewest.Least } : fewest.Made(tape);
        yield return chosen with { Fewest = one, Simple = other };
    }

    /// <summary>Pieces share a tile only with those that are cut at the same settings, so that none waits for another; null until the last.</summary>
    private static IEnumerable<SharedTiles?> BySetting(Product product, Bench bench, Fences fences, Tape tape)
    {
        var tiles = new List<IReadOnlyList<int>>();
        foreach (var alike in Enumerable.Range(0, bench.Pieces.Count).GroupBy(i => Settings(bench.Pieces[i].Piece), StringComparer.Ordinal))
        {
            int[] own = [.. alike];
            if (alike.Key.Length == 0 || own.Length == 1)
            {
                tiles.AddRange(own.Select(i => (IReadOnlyList<int>)[i]));
                continue;
            }

            BenchPiece[] few = [.. own.Select(i => bench.Pieces[i])];
            var shared = SharedTiles.Paired(product, few);
            if (shared is null)
            {
                foreach (var sofar in SharedTiles.Searched(new(bench.Stock, few, fences), Work / 100))
                {
                    shared = sofar;
                    yield return null;
                }
            }

            tiles.AddRange(shared!.Tiles.Select(tile => (IReadOnlyList<int>)[.. tile.Select(i => own[i])]));
            yield return null;
        }

        yield return new(tiles, 0, [], null);

        string Settings(Piece piece) => SawSettings.AgainstAFence(piece, tape)
            ? string.Join(' ', piece.Cuts.Select(cut => fences.For(cut.Least).Steps).Distinct().Order())
            : "";
    }
}
