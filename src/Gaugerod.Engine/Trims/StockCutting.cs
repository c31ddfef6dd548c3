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
        // What goes on round an end keeps no end of its own: one is mitred, the other is out of sight.
        var pieces = own.SelectMany(i => lines[i].Pieces.Select(piece => (piece.Id, piece.Length, Kept: Kept(product, lines[i], piece))).Concat(lines[i].Returns.Select(piece => (piece.Id, piece.Length, Kept: Sides.None)))).ToList();
        var from = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var piece in pieces.Where(p => p.Length == product.Stock)) from[piece.Id] = from.Count + 1;
        var (bought, least) = (from.Count, from.Count);
        var parts = pieces.Where(p => p.Length < product.Stock).ToList();
        if (parts.Count > 0)
        {
            // Only what is alike across its width may be turned end for end: on another the finished edge would come to the wrong side.
            var stock = new Stock(product.Stock.Steps, 1, product.Kerf.Steps, product.Kind is TrimKind.Liner or TrimKind.QuarterRound ? Turns.Half : Turns.None);
            var wanted = new Wanted(stock, parts.ConvertAll(p => new Blank(p.Length.Steps, 1, Sides.Bottom | Sides.Top | p.Kept)));
            var search = new SharingSearch(wanted, Work);
            search.Run();
            var left = wanted.Members.Select(members => new Queue<int>(members)).ToArray();
            foreach (var fill in search.Best.Fills)
            {
                bought++;
                foreach (var kind in fill) from[parts[left[kind].Dequeue()].Id] = bought;
            }

            least += search.Best.Least;
        }

        foreach (var i in own)
        {
            lines[i] = lines[i] with
            {
                Pieces = [.. lines[i].Pieces.Select(piece => piece with { Stock = from[piece.Id] })], Returns = [.. lines[i].Returns.Select(piece => piece with { Stock = from[piece.Id] })],
            };
        }

        return new(product.Name, bought, least, [.. Counted(own.Select(i => lines[i]))]);
    }

    private static IEnumerable<CornerPieceCount> Counted(IEnumerable<PlannedTrim> lines)
    {
        var ends = lines.SelectMany(line => new[] { (Piece: line.AtBegin, AtLeft: false), (Piece: line.AtEnd, AtLeft: true) }).Where(end => end.Piece is not null).DistinctBy(end => end.Piece!.Id, StringComparer.Ordinal);
        return ends.GroupBy(end => (end.Piece!.Kind, end.Piece.RoundWalls)).OrderBy(group => group.Key)
            .Select(group => new CornerPieceCount(group.Key.Kind, group.Key.RoundWalls, group.Key.Kind == CornerPieceKind.Stop ? group.Count(end => end.AtLeft) : 0, group.Count()));
    }

    /// <summary>Which ends must be ends of the stock: those that show, and of a piece of tile its factory end at a joint.</summary>
    private static Sides Kept(TrimProduct product, PlannedTrim line, TrimPiece piece)
    {
        var (first, last) = (piece == line.Pieces[0], piece == line.Pieces[^1]);
        return (Keeps(piece.Begin, first ? line.Begin : null) ? Sides.Right : Sides.None) | (Keeps(piece.End, last ? line.End : null) ? Sides.Left : Sides.None);

        bool Keeps(PieceEnd end, TrimEnd? at) => end == PieceEnd.Factory && (at is { } known ? TrimCost.Shows(known) : !product.ByBar);
    }
}
