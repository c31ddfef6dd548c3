using Gaugerod.Engine;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What is needed first, on one sheet: the run in a picture, the lines to snap, the first tile, what to buy, how good it is and how sure that is.</summary>
internal static class FirstSheet
{
    private const double Least = 52;

    private const int MostNamed = 6;

    public static void Add(SheetBook book, RunPlan run, bool withOrder)
    {
        var before = book.Count;
        var tries = Fitting(book, run, landscape: false).Concat(Fitting(book, run, landscape: true).Where(s => RunPicture.HeightAt(run, s) >= Least))
            .Select((scale, i) => (Scale: scale, Across: i >= Fitting(book, run, landscape: false).Count))
            .OrderBy(t => t.Scale).ThenBy(t => t.Across).ToList();
        foreach (var (scale, across) in tries.Append(tries.Find(t => !t.Across)))
        {
            book.KeepFirst(before);
            Compose(book, run, scale, across, withOrder);
            if (book.Count == before + 1) return;
        }
    }

    /// <summary>The scales the picture could have; when the words need more room the picture gives way first.</summary>
    private static List<int> Fitting(SheetBook book, RunPlan run, bool landscape)
    {
        var content = book.ContentOf(landscape);
        var scales = FaceMap.Ladder.Where(s => s >= 2 && RunPicture.WidthAt(run, s) <= content.Width && RunPicture.HeightAt(run, s) <= content.Height * 0.65).ToList();
        var enough = scales.Where(s => RunPicture.HeightAt(run, s) >= Least).ToList();
        return enough.Count > 0 ? enough : [scales.Count > 0 ? scales[0] : FaceMap.Ladder[^1]];
    }

    private static void Compose(SheetBook book, RunPlan run, int scale, bool landscape, bool withOrder)
    {
        var figures = book.Figures;
        var name = withOrder ? "Start here" : "Run: " + run.Request.Name;
        var first = FirstTile.All(run, figures);
        var page = book.Page(name, landscape);
        page.Scale = scale;
        page.Description = $"The run {run.Request.Name} unrolled at 1 to {Figures.Number(scale)}. {FirstTile.Said(first)} {Score(book.Plan, run, figures)} {run.Proof.Words}";
        var content = page.Content;
        var y = content.Y;
        y += page.Pen.Paragraph(content.X, y, content.Width, Title(book.Plan, run, withOrder), 14, bold: true) + 0.3;
        y += page.Pen.Paragraph(content.X, y, content.Width, Subtitle(book.Plan, run), 8.5, ink: Ink.Quiet);
        foreach (var stop in withOrder ? FindingsAlike.Together(book.Plan.Findings.Where(f => f.Level == FindingLevel.Stop)) : [])
        {
            y += page.Pen.Paragraph(content.X, y + 1, content.Width, $"■ STOP, {stop.Where}: {stop.Text} See the findings.", 10, bold: true) + 0.6;
        }

        var named = RunPicture.Draw(page.Pen, book.Plan, run, scale, content.X, y, content.Width, first, figures);
        if (!named) first = FirstTile.Black(first);
        y += RunPicture.HeightAt(run, scale) + 1;
        Words(book, run, first, withOrder, new(page.Pen, new(content.X, y, content.Width, content.Bottom - y), 1, 0) { IsRest = true }, name, page.Description);
    }

    private static void Words(SheetBook book, RunPlan run, IReadOnlyList<FirstTile> first, bool withOrder, Columns room, string name, string description)
    {
        var figures = book.Figures;
        var across = new Flow(room, () => Next(1));
        if (BuiltThings.Of(book.Plan, run) is { Count: > 0 } things) BuiltThings.Add(across, things);
        if (run.IsBorder)
        {
            BorderTable.Add(across, run, figures);
        }
        else
        {
            across.Add(Block.Together(Block.Heading("First tile", across.Width), Block.Words(first[0].Words, across.Width, 10, bold: true, after: 1.2)));
            Lines(across, run, figures, across.Width);
        }

        if (SettingOrder.Words(book.Plan.Job, run) is { } order) across.Add(Block.Words(order, across.Width, 8, after: 1));
        if (BattenWords.Of(book.Plan.Job, run) is { } ledge) across.Add(Block.Words(ledge, across.Width, 8, after: 1.5));
        var flow = new Flow(across.Rest(2, 8), () => Next(2));
        var width = flow.Width;
        if (withOrder)
        {
            var orders = book.Plan.Order.Select(o => Order(o, width, book.Plan.Job.Products.Any(tile => string.Equals(tile.Name, o.Item, StringComparison.Ordinal)))).Concat(book.Plan.Supplies.Select(line => Order(line, book.Plan.Job.Tape, width))).ToList();
            flow.Add(Block.Heading("Order", width), orders);
        }

        if (withOrder) flow.Break();
        flow.Add(Block.Together(Block.Heading("How it comes out", width), Block.Words(Score(book.Plan, run, figures), width, 9), Block.Words(run.Proof.Words, width, 8.5, ink: Ink.Quiet)));

        Columns Next(int columns)
        {
            var more = book.Page(name + ", continued");
            more.Description = description;
            return new(more.Pen, more.Content, columns, 8);
        }
    }

    private static void Lines(Flow flow, RunPlan run, Figures figures, double width)
    {
        if (run.Lines.Count == 0) return;
        var rows = run.Lines.Select(l => (Line: l, At: LinePlace.Of(l, run, figures)))
            .Select(l => (IReadOnlyList<string>)[l.Line.Face, l.Line.Axis == Axis.Level ? "level" : "plumb", l.At.Words, l.At.Else, Why(l.Line, run)]);
        rows = rows.Concat(run.Turned.Select(line => TurnedWords.Row(line, figures)));
        var (head, body) = Table.Of([new("Face", 19), new("Line", 12), new($"Where ({figures.Unit})", 63, Bold: true), new("From foot", 19), new("What for", 91)], rows, width, 8);
        flow.Add(Block.Together(Block.Heading("Lines to snap", width), head), body, head);
        flow.Add(Block.Gap(0.8));
        flow.Add(Block.Words("Left and right as seen from inside the room, from the left corner or end of the bare wall. From foot: from where that corner meets the floor.", width, 8, ink: Ink.Quiet, after: 1.5));
    }

    private static string Why(SnapLine line, RunPlan run) =>
        $"{line.Why} {LineReach.Words(line, LineFace.Of(run, line.Face))}".TrimEnd();

    private static Block Order(OrderLine order, double width, bool isTile)
    {
        var packs = order.Pack > 1
            ? $"{Figures.Count(order.Packs, "box", "boxes")} of {Figures.Number(order.Pack)}"
            : Figures.Count(order.Packs, order.Unit, order.Unit + "s");
        // A trim's pieces come out of the trim plan, and no box of them is blended.
        if (!isTile) return Block.Together(Block.Words($"{order.Item}: {packs}", width, 10.5, bold: true, after: 0.4), Block.Words($"{order.Basis.TrimEnd('.')}.", width, 9, after: 1.5));
        var parts = new List<string> { $"{Figures.Number(order.Planned)} for the cut plan", $"{Figures.Number(order.Breakage)} for breakage", $"{Figures.Number(order.Spares)} to leave with the client" };
        if (order.Flat > 0) parts.Add($"{Figures.Number(order.Flat)} as a flat share you asked for");
        var over = order.Over > 0 ? $" {Figures.Number(order.Over)} left over." : "";
        return Block.Together(
            Block.Words($"{order.Item}: {packs}", width, 10.5, bold: true, after: 0.4),
            Block.Words($"{string.Join(" + ", parts)} = {Figures.Count(order.Need, order.Unit, order.Unit + "s")}.{over} All of one lot and one caliber.", width, 9, after: 1.5));
    }

    private static Block Order(SupplyLine line, Tape tape, double width) => Block.Together(
        Block.Words($"{line.Supply.Name}: {SupplyWords.Packs(line)}", width, 10.5, bold: true, after: 0.4), Block.Words(SupplyWords.Basis(line, tape), width, 9, after: 1.5));

    private static string Title(Plan plan, RunPlan run, bool first) => first ? plan.Job.Name : $"{plan.Job.Name}: {run.Request.Name}";

    private static string Subtitle(Plan plan, RunPlan run)
    {
        var figures = new Figures(plan.Job.Tape);
        var product = plan.Job.Products.FirstOrDefault(p => string.Equals(p.Name, run.Request.Product, StringComparison.Ordinal));
        var tile = product is null ? run.Request.Product : $"{product.Name}, {figures.Near(product.Width)} × {figures.Near(product.Height)} {figures.Unit}";
        if (run.Request.Bond.With.Count > 0) tile += $", with {NameList.Of(run.Request.Bond.With)}";
        var others = plan.Runs.Any(other => !ReferenceEquals(other, run) && other.Faces.Any(face => run.Faces.Any(own => string.Equals(own.Face.Wall, face.Face.Wall, StringComparison.Ordinal))))
            ? " Fine outlines without fill are laid by other runs." : "";
        // A run that is called run 1 says so itself.
        var named = run.Request.Name.StartsWith("run", StringComparison.OrdinalIgnoreCase) ? Capital(run.Request.Name) : $"Run {run.Request.Name}";
        return $"{named}, unrolled left to right as seen from inside. Tile: {tile}. Joint: {figures.NearWithUnit(run.Best.Placing.Joint)}. Dash-dot lines are corners of the room; thick lines between black triangles are snapped.{others}";
    }

    internal static string Score(Plan plan, RunPlan run, Figures figures)
    {
        var score = run.Best.Score;
        var missed = score.WantsMissed == 0
            ? run.Best.Wants.Count switch { 0 => "Nothing special was asked.", 1 => "What was asked is met.", _ => $"All {Figures.Number(run.Best.Wants.Count)} wants are met." }
            : $"{Figures.Count(score.WantsMissed, "want", "wants")} missed" + (score.MustsMissed > 0 ? $", {Figures.Count(score.MustsMissed, "must", "musts")} among them." : ", no must among them.");
        var slivers = Figures.Count(score.Slivers, "sliver", "slivers");
        // Many take the picture's room; the findings name them.
        if (Slivers.Of(run.Faces.SelectMany(face => face.Pieces), run.Request.Bond, run.Request.Limits.Sliver, score.Slivers) is { Count: > 0 } named) slivers += named.Count <= MostNamed ? ": " + Slivers.Words(named) : ", named in the findings";
        // Of mosaic the chips are judged and the sheets are bought.
        var (judged, bought) = run.Request.Bond is Engine.Bonds.BondRequest.Mosaic ? ("chip", "sheet") : ("tile", "tile");
        return $"The smallest cut is {figures.NarrowestWithUnit(score.SmallestCut)}; {slivers}. {Capital(Figures.Count(score.Cuts, judged + " is", judged + "s are"))} cut at an edge{Drilled(run)}; the plan takes {Figures.Count(plan.TilesOf(run) ?? score.Tiles, bought, bought + "s")}. {missed}";
    }

    /// <summary>What the cut list holds beside the tiles cut at an edge, so that the two numbers agree.</summary>
    private static string Drilled(RunPlan run)
    {
        var drilled = run.Faces.SelectMany(f => f.Pieces).Count(piece => piece.IsOnlyDrilled);
        return drilled == 0 ? "" : $" and {Figures.Number(drilled)} only drilled";
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
