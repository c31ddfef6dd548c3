using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>The placing chosen, the others that were worth a look, and why.</summary>
internal static class ProposalSheets
{
    public static void Add(SheetBook book, RunPlan run)
    {
        var figures = book.Figures;
        var flow = book.Flow($"Proposals: {run.Request.Name}", $"The best placing of the run {run.Request.Name}, {Figures.Count(run.Alternatives.Count, "alternative", "alternatives")}, and why.");
        var rows = run.IsBorder
            ? run.Strips.Select(strip => Row(strip.Best, strip.Faces[0].Face.Name, figures))
            : new[] { run.Best }.Concat(run.Alternatives).Select((p, i) => Row(p, i == 0 ? "Best" : Figures.Number(i + 1), figures));
        var (head, body) = Table.Of(
            [new("", run.IsBorder ? 23 : 11, Bold: true), new("Smallest cut", 17, Right: true, Bold: true), new("Slivers", 14, Right: true), new("Cut tiles", 13, Right: true), new("Tiles", 12, Right: true), new("Wants missed", 15, Right: true), new("Joint", 13, Right: true), new("A tile's corner at, right × up", 34), new("Why", run.IsBorder ? 58 : 70)],
            rows, flow.Width);
        flow.Add(Block.Together(Block.Heading(run.IsBorder ? "Strip by strip" : "Best and others", flow.Width), Block.Words("Compared in this order: " + string.Join(", ", run.Request.Order.Select(Name)) + ". Cut tiles are those cut at an edge; the cut list also holds those that are only drilled. Tiles to buy are reckoned quickly here, with only straight pieces sharing" + (book.Plan.TilesOf(run) is { } tiles && tiles < run.Best.Score.Tiles ? $"; the cut plan of the best takes {Figures.Number(tiles)}." : "."), flow.Width, ink: Ink.Quiet, after: 1.5), head), body, head);
        flow.Add(Block.Gap(5));
        if (run.Best.Wants.Count > 0)
        {
            var wants = run.Best.Wants.Select(w => (IReadOnlyList<string>)[Met(w), w.Want.Must ? "must" : "wish", w.Text + HeldJoint.Words(w, run, figures)]);
            var (wantHead, wantRows) = Table.Of([new("", 18, Bold: true), new("", 16), new("What was asked, and how it came out", 150)], wants, flow.Width);
            flow.Add(Block.Together(Block.Heading("Wants of the best", flow.Width), wantHead), wantRows, wantHead);
            flow.Add(Block.Gap(5));
        }

        AddRanges(flow, run, figures);
        flow.Add(Block.Together(Block.Heading("Proof", flow.Width), Block.Words(run.Proof.Words, flow.Width), Block.Words($"{Figures.Number(run.Proof.Examined)} placings were reckoned out in full.", flow.Width, ink: Ink.Quiet)));
    }

    private static string Met(WantOutcome want) => want switch { { Held: false } => "MISSED", { Sure: Sureness.AtRisk } => "at risk", _ => "met" };

    private static void AddRanges(Flow flow, RunPlan run, Figures figures)
    {
        if (run.Ranges.Count == 0) return;
        var rows = run.Ranges.Select(range => (IReadOnlyList<string>)[EdgeWords.Of(range.Face, range.Edge), figures.Narrowest(range.Smallest), Figures.Number(range.Tiles), figures.Near(range.GiveOrTake), figures.Near(range.AtWorst)]);
        var (head, body) = Table.Of(
            [new("Edge", 74), new("Smallest cut", 22, Right: true), new("Tiles from the line", 30, Right: true), new("Give or take", 22, Right: true, Bold: true), new("At worst", 22, Right: true)], rows, flow.Width);
        flow.Add(
            Block.Together(
                Block.Heading("How sure the cuts are", flow.Width),
                Block.Words("Readings, snapped lines, tiles and joints are all a little off. Set from the snapped line with spacers alone, nineteen cuts in twenty come out within what is given or taken. Set to the rod's marks nothing adds up: measure each cut at its place before it is sawn.", flow.Width, ink: Ink.Quiet, after: 1.5), head),
            body, head);
        flow.Add(Block.Gap(5));
    }

    private static IReadOnlyList<string> Row(Proposal p, string name, Figures figures) =>
    [
        name,
        figures.Narrowest(p.Score.SmallestCut),
        Figures.Number(p.Score.Slivers),
        Figures.Number(p.Score.Cuts),
        Figures.Number(p.Score.Tiles),
        Figures.Number(p.Score.WantsMissed),
        figures.Near(p.Placing.Joint),
        $"{figures.Near(p.Placing.X)} × {figures.Near(p.Placing.Y)}",
        p.Why,
    ];

    private static string Name(Criterion criterion) => criterion switch
    {
        Criterion.Musts => "musts missed",
        Criterion.Wishes => "wishes missed",
        Criterion.Slivers => "slivers",
        Criterion.Smallest => "smallest cut",
        Criterion.Mirror => "unequal mirrored cuts",
        Criterion.Cuts => "cut tiles",
        _ => "tiles to buy",
    };
}
