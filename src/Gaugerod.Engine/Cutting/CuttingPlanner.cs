using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Cutting;

/// <summary>
/// Decides which tile every piece of a product is cut from. Two pieces with one cut each may share a tile; every other
/// piece takes one to itself. The rules, and why the count is the least under them, stand in docs/cutting.md.
/// </summary>
internal static class CuttingPlanner
{
    /// <summary>Plans the cutting of one product.</summary>
    /// <param name="product">The tile.</param>
    /// <param name="pieces">All its pieces, of every run and face, as one reads them; tiles are numbered in this order.</param>
    /// <param name="tape">The tape that fences are set by.</param>
    /// <exception cref="ArgumentException">A piece is of another product, or its cell is not of this tile's size.</exception>
    public static ProductCutting Plan(Product product, Sequence<Piece> pieces, Tape tape)
    {
        var quarters = new int[pieces.Count];
        var partner = new int[pieces.Count];
        var (onWidth, onHeight) = (new List<int>(), new List<int>());
        var eitherWay = product.TurnsAQuarter;
        var alone = 0;
        for (var i = 0; i < quarters.Length; i++)
        {
            var piece = pieces[i];
            if (!string.Equals(piece.Product, product.Name, StringComparison.Ordinal))
            {
                throw new ArgumentException($"Piece {piece.Id} is of {piece.Product}, not of {product.Name}.", nameof(pieces));
            }

            quarters[i] = InTile.Quarters(product, piece);
            partner[i] = Pairing.Alone;
            if (!HasOneCut(piece))
            {
                alone++;
                continue;
            }

            (eitherWay || InTile.IsAcross(Kept(piece, quarters[i])) ? onWidth : onHeight).Add(i);
        }

        // Only a square tile that may be turned a quarter lets a piece cut along its width share with one cut along its height.
        var proofs = new List<PairingProof>();
        Share(eitherWay ? "width or height" : "width", onWidth, product.Width);
        Share("height", onHeight, product.Height);
        var tiles = Tiles(pieces, quarters, partner);
        var (settings, byHand) = SawSettings.Of(product, pieces, tape);
        return new(product.Name, tiles, tiles.Count, alone + proofs.Sum(p => p.Tiles), proofs.ToSequence(), settings, byHand);

        void Share(string pool, List<int> members, Length length)
        {
            if (members.Count == 0) return;
            var strips = members.Select(i => Strip(pieces[i], quarters[i])).ToArray();
            var paired = Pairing.Find(pool, strips, length, product.Kerf, product.Turning != Turning.None);
            for (var k = 0; k < strips.Length; k++)
            {
                if (paired.Partner[k] is var other && other != Pairing.Alone) partner[members[k]] = members[other];
            }

            proofs.Add(paired.Proof);
        }
    }

    private static bool HasOneCut(Piece piece) =>
        piece.OfRectangle && piece.Kind is (PieceKind.Straight or PieceKind.Taper) && piece.Cuts.Count == 1;

    private static TileSide Kept(Piece piece, int quarters) => InTile.Turned(InTile.Opposite(piece.Cuts[0].Away), quarters);

    private static Strip Strip(Piece piece, int quarters) =>
        new(InTile.Need(piece, piece.Cuts[0]), Kept(piece, quarters) is TileSide.Left or TileSide.Bottom);

    private static Sequence<CutTile> Tiles(Sequence<Piece> pieces, int[] quarters, int[] partner)
    {
        var tiles = new List<CutTile>(pieces.Count);
        for (var i = 0; i < partner.Length; i++)
        {
            var other = partner[i];
            if (other != Pairing.Alone && other < i) continue;
            var first = InTile.Place(pieces[i], quarters[i]);
            tiles.Add(new(tiles.Count + 1, other == Pairing.Alone ? [first] : [first, Across(i, other)]));
        }

        return tiles.ToSequence();

        // The first lies as it is set; its partner is turned until it keeps the end across from it.
        PieceInTile Across(int first, int second)
        {
            var end = InTile.Opposite(Kept(pieces[first], quarters[first]));
            var turn = InTile.Between(Kept(pieces[second], quarters[second]), end);
            return InTile.Place(pieces[second], (quarters[second] + turn) % 4);
        }
    }
}
