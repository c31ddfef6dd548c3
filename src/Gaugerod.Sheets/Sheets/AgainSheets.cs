using Gaugerod.Engine.Planning;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>The rest of a face of which something is set: ways to go on, every mark anew, what is cut otherwise.</summary>
internal static class AgainSheets
{
    public static void Add(SheetBook book, AgainFace again)
    {
        var figures = book.Figures;
        var flow = book.Flow($"Measured again: {again.Face}", $"Where the courses of {again.Face} that are still to be set stand, the joint that takes up what came out otherwise, and what becomes of the cuts.");
        flow.Add(Block.Words(AgainWords.Stands(again, figures.Tape), flow.Width, bold: true, after: 2));
        for (var i = 0; i < again.Ways.Count; i++) AddWay(flow, again, again.Ways[i], i, figures);
        AddCut(flow, again, figures);
        foreach (var order in book.Plan.AgainOrders)
        {
            flow.Add(Block.Words(AgainWords.Tiles(order), flow.Width, bold: order.Short > 0));
        }
    }

    private static void AddWay(Flow flow, AgainFace again, AgainWay way, int index, Figures figures)
    {
        var (head, rows) = Table.Of(
            [new("Course", 20, Right: true, Bold: true), new("Lower side, left", 34, Right: true, Bold: true), new("right", 26, Right: true, Bold: true), new("As planned", 30, Right: true), new("Off the plan", 30, Right: true)],
            way.Marks.Select(mark => (IReadOnlyList<string>)[Figures.Number(mark.Course), figures.Near(mark.Left), figures.Near(mark.Right), figures.Near(mark.Planned), AgainWords.OffPlan(mark.Left - mark.Planned, figures.Tape)]), flow.Width);
        flow.Add(
            Block.Together(Block.Heading(AgainWords.Title(again, index), flow.Width), Block.Words($"{way.Words} {AgainWords.Comes(way)}", flow.Width, after: 1.5), Block.Words(AgainWords.Heights, flow.Width, ink: Ink.Quiet, after: 1.5), head),
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
            pieces.Select(piece => (IReadOnlyList<string>)[piece.Id, Figures.Number(piece.Course), figures.Cut(piece.Outline.Bounds.Width), figures.Cut(piece.Outline.Bounds.Height), AgainWords.Cuts(piece, figures.Tape)]), flow.Width);
        flow.Add(Block.Together(Block.Heading("Cut otherwise than planned, the best way followed", flow.Width), head), rows, head);
        flow.Add(Block.Gap(4));
    }
}
