using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Which pieces come from one tile, where they lie in it, and in which order it is cut.</summary>
internal static class SharedTileSheets
{
    private const int Across = 4;
    private const double Gap = 6;

    private static readonly char[] s_digits = [.. "0123456789"];

    /// <summary>Above a tile stand its name and the numbers of its cuts.</summary>
    private const double Above = 6.3 + SharedTilePicture.Margin;

    public static void Add(SheetBook book, ProductCutting cutting, Product product)
    {
        var shared = cutting.Tiles.Where(t => t.Pieces.Count > 1).ToArray();
        var corners = RoundCorners.Of(cutting, book.Plan.Runs);
        if (shared.Length == 0 && corners.Count == 0) return;
        var flow = book.Flow($"Shared tiles: {cutting.Product}", $"Tiles of {cutting.Product} that give several pieces each, where the pieces lie in the tile, and the cuts in order.");
        var width = (flow.Width - (Gap * (Across - 1))) / Across;
        var tall = Math.Min(52, (width - 6) * product.Height.Steps / product.Width.Steps);
        var last = CutOrder.Of(book.Plan.Job, cutting).Later.SelectMany(waits => waits.Pieces.Select(piece => (piece, waits.For))).ToDictionary(of => of.piece, of => of.For, StringComparer.Ordinal);
        var rows = shared.Chunk(Across).Select(row => new Block(tall + Above + 5.5 + (3.8 * row.Max(Lines)), (pen, x, y) =>
        {
            for (var i = 0; i < row.Length; i++) Card(pen, row[i], product, new(x + (i * (width + Gap)), y, width, tall + Above), book.Figures, last.ContainsKey);
        })).ToList();
        var words = Block.Words(
            $"{Figures.Count(shared.Length, "tile gives", "tiles give")} {Figures.Number(shared.Sum(t => t.Pieces.Count))} pieces. Cut in the order of the ringed numbers, each at the end of its cut; the fence stands at the figure, against the side that is named. Broken hatch is left over. Every other cut piece takes a tile of its own. {Proof(cutting)} {Ways(cutting)}".TrimEnd() + Waits(shared, last),
            flow.Width, after: 3);
        if (shared.Length > 0) flow.Add(Block.Together(Block.Heading("From which tile the pieces come", flow.Width), words), rows, Block.Heading("From which tile the pieces come, continued", flow.Width));
        if (book.Plan.Order.FirstOrDefault(line => string.Equals(line.Item, cutting.Product, StringComparison.Ordinal)) is { Freedom.Length: > 0 } order) flow.Add(Block.Words(order.Freedom, flow.Width, 8.5, after: 2));
        Kept(flow, cutting, book);
        Round(flow, corners);
    }

    /// <summary>Whose pieces are not cut with the others.</summary>
    private static string Waits(IEnumerable<CutTile> shared, Dictionary<string, string> last)
    {
        var waiting = shared.SelectMany(tile => tile.Pieces).Where(piece => last.ContainsKey(piece.Id)).GroupBy(piece => last[piece.Id], StringComparer.Ordinal).ToList();
        return string.Concat(waiting.Select(pieces => pieces.Count() == 1
            ? $" ▲ Piece {Ids(pieces)} waits for {pieces.Key}: cut the others of its tile now, lay the part it is in by, and cut it last."
            : $" ▲ Pieces {Ids(pieces)} wait for {pieces.Key}: cut the others of their tiles now, lay the parts they are in by, and cut them last."));

        // As one counts, A9 before A10.
        static string Ids(IEnumerable<PieceInTile> pieces) => NameList.Of([.. pieces.Select(piece => piece.Id).OrderBy(id => id.TrimEnd(s_digits).Length).ThenBy(id => id.TrimEnd(s_digits), StringComparer.Ordinal).ThenBy(id => id.Length).ThenBy(id => id, StringComparer.Ordinal)]);
    }

    /// <summary>What the other way would cost, so that a setter may choose.</summary>
    private static string Ways(ProductCutting cutting)
    {
        if (cutting.Fewest is not { } fewest || cutting.Simple is not { } simple) return "";
        if (fewest == simple) return $"Fewest tiles and simple at the saw come to the same: {Cost(fewest)}.";
        return $"{(cutting.FewestIsProved ? "Fewest tiles" : "Fewest tiles found")}: {Cost(fewest)}. Simple at the saw, where no part waits but a corner piece between its own two cuts: {Cost(simple)}.";

        static string Cost(CuttingCost cost) =>
            Figures.Count(cost.Tiles, "tile", "tiles")
            + (cost.Cuts == 0 ? "" : $", {Figures.Count(cost.Settings, "setting", "settings")} of the fence, {Figures.Count(cost.Cuts, "cut", "cuts")}, {cost.LaidBy switch { 0 => "no part laid by", 1 => "a part laid by once", _ => $"a part laid by {Figures.Number(cost.LaidBy)} times" }}");
    }

    /// <summary>The offcuts that are worth keeping when all is cut, the largest first.</summary>
    private static void Kept(Flow flow, ProductCutting cutting, SheetBook book)
    {
        var keep = book.Plan.Job.Cutting.Keep;
        var left = cutting.Tiles.SelectMany(tile => tile.Left.Select(box => (tile.Number, Box: box)))
            .Where(of => Length.Min(of.Box.Width, of.Box.Height) >= keep)
            .OrderByDescending(of => (double)of.Box.Width.Steps * of.Box.Height.Steps).ThenBy(of => of.Number).ToList();
        if (left.Count == 0) return;
        const int most = 40;
        var named = left.Take(most).Select(of => $"{book.Figures.Cut(of.Box.Width)} × {book.Figures.Cut(of.Box.Height)} from tile {Figures.Number(of.Number)}");
        var more = left.Count > most ? $"; and {Figures.Number(left.Count - most)} smaller" : "";
        flow.Add(Block.Gap(3));
        flow.Add(Block.Together(
            Block.Heading("Offcuts to keep", flow.Width),
            Block.Words($"{Figures.Count(left.Count, "offcut", "offcuts")} of {book.Figures.NearWithUnit(keep)} or more both ways, width × height as the tile lies: {string.Join("; ", named)}{more}.", flow.Width, 8.5, after: 2)));
    }

    /// <summary>Two to a row: where each course goes on round a corner of the room.</summary>
    private static void Round(Flow flow, IReadOnlyList<RoundCorner> corners)
    {
        if (corners.Count == 0) return;
        const double row = 5;
        var half = flow.Width / 2;
        var rows = corners.Select(RoundCorners.Words).Chunk(2).Select(pair => new Block(row, (pen, x, y) =>
        {
            for (var i = 0; i < pair.Length; i++) pen.Text(x + (i * half), y + 3.6, pair[i], 9);
        })).ToList();
        var words = Block.Words("The courses run through the corners of the room as if there were none: the piece at the end of a course goes on as the first on the next wall.", flow.Width, after: 2);
        flow.Add(Block.Gap(4));
        flow.Add(Block.Together(Block.Heading("Round the corners", flow.Width), words), rows, Block.Heading("Round the corners, continued", flow.Width));
    }

    private static string Proof(ProductCutting cutting) => cutting.Proved
        ? $"The cut plan takes {Figures.Count(cutting.Bought, "tile", "tiles")}; no plan under the same rules takes fewer."
        : $"The cut plan takes {Figures.Count(cutting.Bought, "tile", "tiles")}; no plan under the same rules takes fewer than {Figures.Number(cutting.LowerBound)}.";

    private static int Lines(CutTile tile) => tile.Pieces.Count + (tile.Nests ? 1 : tile.Cuts.Count);

    private static void Card(Pen pen, CutTile tile, Product product, Frame room, Figures figures, Func<string, bool> isLast)
    {
        Measures.TickBox(pen, room.X, room.Y + 1.4, 4);
        pen.Text(room.X + 5.4, room.Y + 5, $"Tile {Figures.Number(tile.Number)}" + (tile.Box is { } box ? $", box {Figures.Number(box)}" : ""), 10, bold: true);
        var perStep = Math.Min((room.Width - 6) / product.Width.Steps, (room.Height - Above) / product.Height.Steps);
        var frame = new Frame(room.X, room.Y + Above, product.Width.Steps * perStep, product.Height.Steps * perStep);
        new SharedTilePicture(pen, frame, perStep, new(room.X - 3.8, room.Y + 6.2, room.Width + 5.6, room.Height - 6.2 + 1)).Draw(tile);
        var y = frame.Bottom + 4.2;
        foreach (var piece in tile.Pieces)
        {
            pen.Text(room.X, y, $"{piece.Id}: {Size(piece, figures)}{Turn(piece.Turned)}{(isLast(piece.Id) ? ", cut last" : "")}", 8, bold: true);
            y += 3.8;
        }

        var order = tile.Nests ? ["cut along the marks"] : tile.Cuts.Select((cut, i) => $"{Figures.Number(i + 1)}: fence {figures.Cut(cut.Fence)}, {Against(cut)}");
        foreach (var words in order)
        {
            pen.Text(room.X, y, words, 8, ink: Ink.Quiet);
            y += 3.8;
        }
    }

    /// <summary>Which side of what lies on the bench goes against the fence; a side that was cut before is said to be one.</summary>
    private static string Against(SawCut cut) => (cut.Upright, cut.FromFar) switch { (true, false) => "left side", (true, true) => "right side", (false, false) => "lower side", _ => "upper side" };

    private static string Size(PieceInTile piece, Figures figures) => $"{figures.Cut(piece.At.Bounds.Width)} × {figures.Cut(piece.At.Bounds.Height)}";

    private static string Turn(int quarters) => quarters switch { 0 => "", 2 => ", ½ turn", _ => ", ¼ turn" };
}
