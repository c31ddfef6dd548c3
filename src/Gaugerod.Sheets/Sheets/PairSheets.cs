using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Which two pieces come from one tile, and where they lie in it.</summary>
internal static class PairSheets
{
    private const int Across = 5;
    private const double Gap = 5;

    public static void Add(SheetBook book, ProductCutting cutting, Product product)
    {
        var pairs = cutting.Tiles.Where(t => t.Pieces.Count > 1).ToArray();
        var corners = RoundCorners.Of(cutting, book.Plan.Runs);
        if (pairs.Length == 0 && corners.Count == 0) return;
        var flow = book.Flow($"Pairs: {cutting.Product}", $"Tiles of {cutting.Product} that give two pieces each, and where the pieces lie in the tile.");
        var width = (flow.Width - (Gap * (Across - 1))) / Across;
        var tall = Math.Min(44, (width - 6) * product.Height.Steps / product.Width.Steps);
        var rows = pairs.Chunk(Across).Select(row => new Block(tall + 21, (pen, x, y) =>
        {
            for (var i = 0; i < row.Length; i++) Card(pen, row[i], product, new(x + (i * (width + Gap)), y, width, tall + 21), book.Figures);
        })).ToList();
        var words = Block.Words($"{Figures.Count(pairs.Length, "tile gives", "tiles give")} two pieces each. Broken hatch is waste. Every other cut piece takes a tile of its own. {Proof(cutting)}", flow.Width, after: 3);
        if (pairs.Length > 0) flow.Add(Block.Together(Block.Heading("From which tile each pair comes", flow.Width), words), rows, Block.Heading("From which tile each pair comes, continued", flow.Width));
        Round(flow, corners);
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

    private static void Card(Pen pen, CutTile tile, Product product, Frame room, Figures figures)
    {
        Measures.TickBox(pen, room.X, room.Y + 1.4, 4);
        pen.Text(room.X + 5.4, room.Y + 5, $"Tile {Figures.Number(tile.Number)}" + (tile.Box is { } box ? $", box {Figures.Number(box)}" : ""), 10, bold: true);
        var perStep = Math.Min((room.Width - 6) / product.Width.Steps, (room.Height - 21) / product.Height.Steps);
        var frame = new Frame(room.X, room.Y + 7.5, product.Width.Steps * perStep, product.Height.Steps * perStep);
        pen.Area(frame, Fill.Offcut, Stroke.Ghost);
        foreach (var piece in tile.Pieces)
        {
            var ring = piece.At.Points.Select(p => new Spot(frame.X + (p.X.Steps * perStep), frame.Bottom - (p.Y.Steps * perStep))).ToSequence();
            pen.Area(ring, Fill.Straight, Stroke.CutEdge, piece.Id);
            Number(pen, piece.Id, ring);
        }

        for (var i = 0; i < tile.Pieces.Count; i++)
        {
            pen.Text(room.X, frame.Bottom + 4.2 + (i * 3.8), $"{tile.Pieces[i].Id}: {Size(tile.Pieces[i], product, figures)}{Turn(tile.Pieces[i].Turned)}", 8);
        }
    }

    /// <summary>The size a piece is cut to: the one that is less than the tile's.</summary>
    private static string Size(PieceInTile piece, Product product, Figures figures)
    {
        var box = piece.At.Bounds;
        return figures.Cut(box.Width < product.Width ? box.Width : box.Height);
    }

    private static string Turn(int quarters) => quarters switch { 0 => "", 2 => ", half round", _ => ", quarter" };

    private static void Number(Pen pen, string id, Sequence<Spot> ring)
    {
        var middle = Frame.Around(ring).Middle;
        foreach (var size in new[] { 9.0, 8, 7, 6.5 })
        {
            foreach (var upright in new[] { false, true })
            {
                if (!Region.Holds([ring], Pen.BoxAround(middle, id, size, bold: true, upright))) continue;
                pen.TextAround(middle, id, size, bold: true, upright, onPaper: true);
                return;
            }
        }
    }
}
