using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Sharing;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>Finds a use for pieces that were cut before the plan changed.</summary>
internal static class AgainCut
{
    /// <summary>What can be done with each.</summary>
    /// <param name="cut">The pieces cut, as planned.</param>
    /// <param name="rest">The pieces still to be set.</param>
    /// <param name="isAsPlanned">Whether one of these is cut as planned.</param>
    /// <param name="product">The tile.</param>
    public static Sequence<CutAlready> Uses(IReadOnlyList<Piece> cut, Sequence<Piece> rest, Func<Piece, bool> isAsPlanned, Product product)
    {
        var open = rest.Where(piece => piece.Kind != PieceKind.Full && !isAsPlanned(piece)).ToList();
        var uses = new List<CutAlready>();
        foreach (var piece in cut)
        {
            if (rest.FirstOrDefault(p => string.Equals(p.Id, piece.Id, StringComparison.Ordinal)) is { } own && isAsPlanned(own))
            {
                uses.Add(new(piece.Id, true, null, $"{piece.Id} fits as it is."));
                continue;
            }

            // Its own place first, then the one that wastes least of it.
            var goes = open.Where(other => Gives(piece, other, product)).OrderByDescending(other => string.Equals(other.Id, piece.Id, StringComparison.Ordinal)).ThenByDescending(Area).ThenBy(other => other.Id, StringComparer.Ordinal).FirstOrDefault();
            if (goes is null)
            {
                uses.Add(new(piece.Id, false, null, $"{piece.Id} no longer fits anywhere."));
                continue;
            }

            open.Remove(goes);
            uses.Add(new(piece.Id, false, goes.Id, string.Equals(goes.Id, piece.Id, StringComparison.Ordinal) ? $"{piece.Id} is too large now: saw it again." : $"{piece.Id} no longer fits where it was planned; {goes.Id} can be sawn from it."));
        }

        return uses.ToSequence();
    }

    /// <summary>Whether one piece can be sawn from another: no larger either way, with no factory side the other has lost.</summary>
    private static bool Gives(Piece cut, Piece wanted, Product product)
    {
        var stock = BenchPiece.StockOf(product, cut);
        var (from, to) = (BenchPiece.Of(product, cut, stock), BenchPiece.Of(product, wanted, stock));
        if (from.Cutout.Shape is not null) return false;
        return stock.Ways(to.Cutout).Any(way => way.Lies.Blank is var blank
            && blank.Width <= from.Cutout.Blank.Width && blank.Height <= from.Cutout.Blank.Height && (blank.Kept & ~from.Cutout.Blank.Kept) == Sides.None);
    }

    private static double Area(Piece piece) => (double)piece.Outline.DoubledArea;
}
