using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A trim line by line: its joints beside the field's, what to cut and from which piece of stock, and what other ways would cost.</summary>
internal static class TrimSheets
{
    private const double Row = 6, Cell = 22;

    public static void Add(SheetBook book, TrimProduct product)
    {
        var lines = book.Plan.Trims.Lines.Where(line => string.Equals(line.Product, product.Name, StringComparison.Ordinal)).ToList();
        if (lines.Count == 0) return;
        var flow = book.Flow($"Trims: {product.Name}", $"Lines of {product.Name}: where their joints fall, the pieces to cut and which stock they come from.");
        if (product.IsWorked)
        {
            foreach (var line in lines) Worked(flow, line, product);
            return;
        }

        flow.Add(Block.Words(Count(book, product), flow.Width, after: 1.5));
        flow.Add(Block.Words($"{TrimWords.Key} Marks beneath a strip: the joints of the field. A small number: which {Unit(product)} of stock it comes from.{(lines.Exists(line => line.Returns.Count > 0) ? " Broken outline: a return, folded out from the end it goes round." : "")}", flow.Width, ink: Ink.Quiet, after: 3));
        foreach (var line in lines) Line(flow, line, lines, product, book.Figures);
    }

    private static string Unit(TrimProduct product) => product.ByBar ? "bar" : "piece";

    private static string Count(SheetBook book, TrimProduct product)
    {
        var figures = book.Figures;
        var words = $"{product.Name}: {figures.Near(product.Stock)} × {figures.Near(product.Width)}, joints of {figures.NearWithUnit(product.Joint)}.";
        if (book.Plan.Trims.Stocks.FirstOrDefault(stock => string.Equals(stock.Product, product.Name, StringComparison.Ordinal)) is not { } stock) return words;
        var least = stock.Bought == stock.LowerBound ? "no fewer would do" : $"{Figures.Number(stock.LowerBound)} might do";
        var corners = string.Concat(stock.CornerPieces.Select(piece => $" {Figures.Number(piece.Count)} × {TrimWords.Of(piece.Kind, piece.RoundWalls)}."));
        return $"{words} {Figures.Count(stock.Bought, Unit(product), Unit(product) + "s")} of stock; {least}.{corners}";
    }

    private static void Line(Flow flow, PlannedTrim line, List<PlannedTrim> lines, TrimProduct product, Figures figures)
    {
        var name = TrimWords.Where(line);
        if (line.Pieces.Count == 0)
        {
            flow.Add(Block.Together(Block.Heading(name, flow.Width), Block.Words("No piece fits here: see the findings.", flow.Width, after: 3)));
            return;
        }

        var scale = FaceMap.ScaleFor(TrimStrip.Across(line, product), product.Width, flow.Width, 14, from: 5);
        var said = Block.Words($"{figures.CutWithUnit(line.Length)} long in {Figures.Count(line.Pieces.Count, "piece", "pieces")}; joints asked for: {TrimWords.Of(line.Joints)}. Strip at 1:{Figures.Number(scale)}.", flow.Width, after: 1.5);
        flow.Add(Block.Together(Block.Heading(name, flow.Width), said, TrimStrip.Of(line, product, scale, flow.Width)), Pieces(line, lines, product, flow.Width, figures), Block.Heading(name + ", continued", flow.Width), whole: true);
        flow.Add(Block.Gap(2));
        Ways(flow, line, name, figures);
        flow.Add(Block.Gap(5));
    }

    /// <summary>What comes as it is, many to a row; then what is cut, one to a row with its ends.</summary>
    private static List<Block> Pieces(PlannedTrim line, List<PlannedTrim> lines, TrimProduct product, double width, Figures figures)
    {
        var all = lines.SelectMany(of => of.Pieces.Select(piece => (piece.Id, piece.Stock)).Concat(of.Returns.Select(piece => (piece.Id, piece.Stock)))).ToLookup(piece => piece.Stock, piece => piece.Id);
        var whole = line.Pieces.Where(TrimWords.IsWhole).ToArray();
        var columns = (int)((width - Cell) / Cell);
        var rows = whole.Chunk(columns).Select((part, i) => new Block(Row, (pen, x, y) =>
        {
            if (i == 0) pen.Text(x, y + 4.2, "whole", 9, bold: true);
            for (var n = 0; n < part.Length; n++) CutSheets.Tick(pen, x + Cell + (n * Cell), y + 0.8, part[n].Id, part[n].Stock);
        })).ToList();
        rows.AddRange(line.Pieces.Where(piece => !TrimWords.IsWhole(piece)).Select(piece => Cut(piece.Id, piece.Stock, piece.Length, piece.MitreTakes, TrimWords.Ends(line, piece), width, figures, From(piece.Id, piece.Stock))));
        rows.AddRange(line.Returns.Select(piece => Cut(piece.Id, piece.Stock, piece.Length, piece.MitreTakes, TrimWords.Of(piece), width, figures, From(piece.Id, piece.Stock))));
        rows.AddRange(Corners(line, lines).Select(piece => new Block(Row, (pen, x, y) =>
        {
            CutSheets.Tick(pen, x, y + 0.8, piece.Id);
            pen.Text(x + 48, y + 4.4, $"{TrimWords.Of(piece)}, reaches {figures.NearWithUnit(piece.Reach)}, at the {(piece == line.AtEnd ? "left" : "right")} end", 8.5);
            pen.Line(x, y + Row, x + width, y + Row, Stroke.Rule);
        })));
        return rows;

        string From(string id, int stock)
        {
            var others = all[stock].Where(other => !string.Equals(other, id, StringComparison.Ordinal)).ToList();
            return $"{Unit(product)} {Figures.Number(stock)}" + (others.Count == 0 ? "" : ", with " + string.Join(", ", others));
        }
    }

    private static Block Cut(string id, int stock, Length length, Length mitreTakes, string ends, double width, Figures figures, string from) => new(Row, (pen, x, y) =>
    {
        CutSheets.Tick(pen, x, y + 0.8, id, stock);
        pen.Text(x + 44, y + 4.4, figures.Cut(length), 11, bold: true, Anchor.End);
        var mitre = mitreTakes > Length.Zero ? $", {figures.Cut(length - mitreTakes)} to the short point" : "";
        pen.Text(x + 48, y + 4.4, ends + mitre, 8.5);
        pen.Text(x + width, y + 4.4, from, 8.5, anchor: Anchor.End, ink: Ink.Quiet);
        pen.Line(x, y + Row, x + width, y + Row, Stroke.Rule);
    });

    /// <summary>The corner pieces and stops that are listed with a line: each with the first that names it.</summary>
    private static IEnumerable<CornerPiece> Corners(PlannedTrim line, List<PlannedTrim> lines)
    {
        var before = lines.TakeWhile(other => !ReferenceEquals(other, line)).SelectMany(other => other.CornerPieces).Select(piece => piece.Id).ToHashSet(StringComparer.Ordinal);
        return line.CornerPieces.Where(piece => !before.Contains(piece.Id)).DistinctBy(piece => piece.Id, StringComparer.Ordinal);
    }

    private static void Ways(Flow flow, PlannedTrim line, string name, Figures figures)
    {
        var (head, rows) = Table.Of(
            [new("Ways to put the joints", 32, Bold: true), new("Pieces", 10, Right: true), new("Trimmed", 11, Right: true), new("Cuts", 9, Right: true), new("Least stagger", 18, Right: true), new("End pieces, left and right", 34, Right: true)],
            line.Ways.Select((way, i) => (string[])
            [
                TrimWords.Of(way.Joints) + (i == 0 ? ": taken" : ""), Figures.Number(way.Lengths.Count), Figures.Number(way.Trimmed), Figures.Number(way.Cuts),
                way.Stagger is { } stagger ? stagger == Length.Zero ? "0" : figures.Narrowest(stagger) : "none",
                way.Lengths.Count == 1 ? figures.Cut(way.Lengths[0]) : $"{figures.Cut(way.Lengths[^1])} and {figures.Cut(way.Lengths[0])}",
            ]), flow.Width, 8.5);
        flow.Add(head, rows, Block.Together(Block.Heading(name + ", continued", flow.Width), head), whole: true);
    }

    /// <summary>Where no trim stands: the tiles whose edge is worked.</summary>
    private static void Worked(Flow flow, PlannedTrim line, TrimProduct product)
    {
        var what = product.Kind == TrimKind.MitredEdge ? "Mitre the edge of these tiles" : "Cut the edge of these tiles back behind and ease it";
        var name = TrimWords.Where(line);
        var rows = line.Pieces.Chunk((int)(flow.Width / Cell)).Select(part => new Block(Row, (pen, x, y) =>
        {
            for (var n = 0; n < part.Length; n++) CutSheets.Tick(pen, x + (n * Cell), y + 0.8, part[n].Id);
        })).ToList();
        flow.Add(Block.Together(Block.Heading(name, flow.Width), Block.Words(what + ", from the line's right end.", flow.Width, after: 1.5)), rows, Block.Heading(name + ", continued", flow.Width));
        flow.Add(Block.Gap(5));
    }
}
