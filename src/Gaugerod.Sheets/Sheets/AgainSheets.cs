using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>The rest of a face of which something is set: ways to go on, every mark anew, what is cut otherwise.</summary>
internal static class AgainSheets
{
    public static void Add(SheetBook book, AgainFace again)
    {
        var figures = book.Figures;
        var flow = book.Flow($"Measured again: {again.Face}", $"Where the courses of {again.Face} that are still to be set stand, the joint that takes up what came out otherwise, and what becomes of the cuts.");
        flow.Add(Block.Words(Stands(again, figures), flow.Width, bold: true, after: 2));
        for (var i = 0; i < again.Ways.Count; i++) AddWay(flow, again, again.Ways[i], i, figures);
        AddCut(flow, again, figures);
        foreach (var order in book.Plan.AgainOrders)
        {
            var need = $"{order.Product}: the rest takes {Figures.Count(order.Needed, "tile", "tiles")}, and {Figures.Number(order.Left)} of those bought are neither set nor cut.";
            flow.Add(Block.Words(order.Short > 0 ? $"{need} You are short {Figures.Count(order.Short, "tile", "tiles")}." : need, flow.Width, bold: order.Short > 0));
        }
    }

    private static string Stands(AgainFace again, Figures figures)
    {
        if (again.Courses == 0) return "Nothing is set yet.";
        var (left, right) = (Off(again.OffLeft, figures), Off(again.OffRight, figures));
        return $"{Figures.Count(again.Courses, "course is", "courses are")} set. The top of the last one stands " + (again.OffLeft == again.OffRight ? $"{left}." : $"{left} at the left and {right} at the right.");
    }

    private static string Off(Length off, Figures figures) => off == Length.Zero ? "as planned" : $"{figures.NearWithUnit(off.Abs())} {(off > Length.Zero ? "high" : "low")}";

    // What the tape does not show is not said.
    private static string Bare(Length off, Figures figures) => off.Abs() * 2 < figures.Tape.Mark ? "" : Off(off, figures);

    private static void AddWay(Flow flow, AgainFace again, AgainWay way, int index, Figures figures)
    {
        var lost = way.Missed.Count == 0 ? "Nothing that was asked for is lost." : string.Join(" ", way.Missed);
        var cuts = way.Changed.Count == 0 ? "Every piece is cut as planned." : $"{Figures.Count(way.Changed.Count, "piece is", "pieces are")} cut otherwise than planned.";
        var title = again.Ways.Count == 1 ? "Go on so" : index == 0 ? "Best" : $"Or, {Figures.Number(index + 1)}";
        var (head, rows) = Table.Of(
            [new("Course", 20, Right: true, Bold: true), new("Lower side, left", 34, Right: true, Bold: true), new("right", 26, Right: true, Bold: true), new("As planned", 30, Right: true), new("Off the plan", 30, Right: true)],
            way.Marks.Select(mark => (IReadOnlyList<string>)[Figures.Number(mark.Course), figures.Near(mark.Left), figures.Near(mark.Right), figures.Near(mark.Planned), Bare(mark.Left - mark.Planned, figures)]), flow.Width);
        flow.Add(
            Block.Together(Block.Heading(title, flow.Width), Block.Words($"{way.Words} {cuts} {lost}", flow.Width, after: 1.5), Block.Words("Heights above the face's lower left corner.", flow.Width, ink: Ink.Quiet, after: 1.5), head),
            rows, head);
        flow.Add(Block.Gap(4));
    }

    private static void AddCut(Flow flow, AgainFace again, Figures figures)
    {
        if (again.Cut.Count > 0)
        {
            flow.Add(Block.Heading("Cut already", flow.Width));
            foreach (var cut in again.Cut) flow.Add(Block.Words(cut.Words, flow.Width));
            flow.Add(Block.Gap(4));
        }

        var first = again.Ways[0];
        var pieces = first.Pieces.Where(piece => first.Changed.Contains(piece.Id, StringComparer.Ordinal)).ToList();
        if (pieces.Count == 0) return;
        var (head, rows) = Table.Of(
            [new("Piece", 22, Bold: true), new("Course", 20, Right: true), new("Width", 30, Right: true), new("Height", 30, Right: true), new("Cuts, each kept from the factory side across", 80)],
            pieces.Select(piece => (IReadOnlyList<string>)[piece.Id, Figures.Number(piece.Course), figures.Cut(piece.Outline.Bounds.Width), figures.Cut(piece.Outline.Bounds.Height), piece.Kind == PieceKind.Full ? "none: a whole tile" : string.Join("; ", piece.Cuts.Select(cut => Said(cut, figures)))]), flow.Width);
        flow.Add(Block.Together(Block.Heading("Cut otherwise than planned, the best way followed", flow.Width), head), rows, head);
        flow.Add(Block.Gap(4));
    }

    private static string Said(CutMark cut, Figures figures)
    {
        var side = cut.Away switch { TileSide.Left => "left", TileSide.Right => "right", TileSide.Top => "top", _ => "bottom" };
        var (first, last) = (figures.Cut(cut.First), figures.Cut(cut.Last));
        return string.Equals(first, last, StringComparison.Ordinal) ? $"{side} {first}" : $"{side} {first} to {last}";
    }
}
