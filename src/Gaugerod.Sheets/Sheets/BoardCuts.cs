using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What is cut out of each sheet of a board.</summary>
internal static class BoardCuts
{
    private const int Across = 3;

    public static void Add(SheetBook book, BoardStock stock, BoardProduct board)
    {
        var figures = book.Figures;
        var flow = book.Flow("Sheets of board", $"Which pieces come out of which sheet of {board.Name}.", Across);
        var width = flow.Width;
        var perStep = width / board.Length.Steps;
        var order = book.Plan.Order.FirstOrDefault(line => string.Equals(line.Item, board.Name, StringComparison.Ordinal));
        flow.Add(Block.Heading(board.Name, width));
        flow.Add(Block.Words($"{Figures.Count(stock.Sheets.Count, "sheet", "sheets")} of {figures.Near(board.Width)} × {figures.NearWithUnit(board.Length)}{(order is null ? "" : ": " + order.Basis)}. Numbered as they are hung. What is hatched is left.", width, 9, after: 2));
        if (book.Plan.Findings.FirstOrDefault(finding => finding.Rule is "caution-board") is { } caution && ReferenceEquals(stock, book.Plan.Boards.Stocks[0]))
        {
            flow.Add(Block.Together(Block.Words("▲ Caution, where board is cut and screwed", width, bold: true), Block.Words($"{caution.Text} Limit: {caution.Limit} ({caution.Source}).", width, 9, after: 3)));
        }

        foreach (var sheet in stock.Sheets) flow.Add(Picture(sheet, board, width, perStep));
    }

    private static Block Picture(BoardSheet sheet, BoardProduct board, double width, double perStep)
    {
        var height = board.Width.Steps * perStep;
        return new(height + 9, (pen, x, y) =>
        {
            pen.Text(x, y + 3.2, $"Sheet {Figures.Number(sheet.Number)}: {string.Join(", ", sheet.Pieces.Select(piece => piece.Id))}", 8.5, bold: true);
            var frame = new Frame(x, y + 5, width, height);
            pen.Area(frame, Fill.Offcut, Stroke.CutEdge);
            foreach (var piece in sheet.Pieces)
            {
                var at = On(piece.At, frame, perStep);
                pen.Area(at, Fill.Full, Stroke.CutEdge, piece.Id);
                var upright = at.Width < at.Height && at.Width < Lettering.Width(piece.Id, 9, bold: true) + 1;
                pen.TextAround(at.Middle, piece.Id, 9, bold: true, upright);
            }
        });
    }

    private static Frame On(Box box, Frame frame, double perStep) =>
        new(frame.X + (box.Left.Steps * perStep), frame.Bottom - (box.Top.Steps * perStep), box.Width.Steps * perStep, box.Height.Steps * perStep);
}
