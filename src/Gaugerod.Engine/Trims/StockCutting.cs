using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Sharing;

namespace Gaugerod.Engine.Trims;

/// <summary>
/// Cuts the pieces of a trim from its stock. A whole piece takes one. Of the others a piece with a factory end is cut from that end of the
/// stock; what keeps none may come from between. A mitred piece is taken as long as its long point.
/// </summary>
internal static class StockCutting
{
    // A job's lines are few; so much looks far beyond what they need.
    private const long Work = 5_000_000;

    /// <summary>What is bought of a product; writes into the lines which piece of stock each piece comes from.</summary>
    public static TrimStock Cut(TrimProduct product, List<PlannedTrim> lines)
    {
        var own = Enumerable.Range(0, lines.Count).Where(i => string.Equals(lines[i].Product, product.Name, StringComparison.Ordinal)).ToList();
        var pieces = own.SelectMany(i => lines[i].Pieces.Select(piece => (Line: lines[i], Piece: piece))).ToList();
        var from = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (_, piece) in pieces.Where(p => p.Piece.Length == product.Stock)) from[piece.Id] = from.Count + 1;
        var (bought, least) = (from.Count, from.Count);
        var parts = pieces.Where(p => p.Piece.Length < product.Stock).ToList();
        if (parts.Count > 0)
        {
            // Only what is alike across its width may be turned end for end: on another the finished edge would come to the wrong side.
            var stock = new Stock(product.Stock.Steps, 1, product.Kerf.Steps, product.Kind is TrimKind.Liner or TrimKind.QuarterRound ? Turns.Half : Turns.None);
            var wanted = new Wanted(stock, parts.ConvertAll(p => new Blank(p.Piece.Length.Steps, 1, Sides.Bottom | Sides.Top | Kept(product, p.Line, p.Piece))));
            var search = new SharingSearch(wanted, Work);
            search.Run();
            var left = wanted.Members.Select(members => new Queue<int>(members)).ToArray();
            foreach (var fill in search.Best.Fills)
            {
                bought++;
                foreach (var kind in fill) from[parts[left[kind].Dequeue()].Piece.Id] = bought;
            }

            least += search.Best.Least;
        }

        foreach (var i in own) lines[i] = lines[i] with { Pieces = [.. lines[i].Pieces.Select(piece => piece with { Stock = from[piece.Id] })] };
        return new(product.Name, bought, least, own.Sum(i => lines[i].CornerPieces));
    }

    /// <summary>Which ends must be ends of the stock: those that show, and of a piece of tile its factory end at a joint.</summary>
    private static Sides Kept(TrimProduct product, PlannedTrim line, TrimPiece piece)
    {
        var (first, last) = (piece == line.Pieces[0], piece == line.Pieces[^1]);
        return (Keeps(piece.Begin, first ? line.Begin : null) ? Sides.Right : Sides.None) | (Keeps(piece.End, last ? line.End : null) ? Sides.Left : Sides.None);

        bool Keeps(PieceEnd end, TrimEnd? at) => end == PieceEnd.Factory && (at is { } known ? TrimCost.Shows(known) : !product.ByBar);
    }
}
