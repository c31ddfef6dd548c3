using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What to cut, by saw setting, then what is marked by hand.</summary>
internal static class CutSheets
{
    private const double FenceWidth = 54, Cell = 22, Row = 6.6;

    public static void Add(SheetBook book, ProductCutting all, IReadOnlyDictionary<string, PieceOnFace> pieces)
    {
        if (all.Settings.Count == 0 && all.ByHand.Count == 0) return;
        var (cutting, later) = CutOrder.Of(book.Plan.Job, all);
        var flow = book.Flow($"Cut list: {cutting.Product}", $"Pieces of {cutting.Product} to cut, by saw setting, then pieces marked by hand.");
        flow.Add(Block.Words(Count(all, later, pieces), flow.Width, after: 2));
        Settings(flow, book, cutting, pieces);
        ByHand(flow, book.Figures, cutting, pieces);
        foreach (var waits in later) Later(flow, book, all with { Settings = waits.Settings, ByHand = waits.ByHand }, waits, pieces);
    }

    /// <summary>What waits is kept under a heading of its own, so that nobody cuts it with the rest.</summary>
    private static void Later(Flow flow, SheetBook book, ProductCutting cutting, CutLater waits, IReadOnlyDictionary<string, PieceOnFace> pieces)
    {
        flow.Add(Block.Gap(4));
        flow.Add(Block.Together(Block.Heading($"Cut last: waits for {waits.For}", flow.Width), Block.Words($"▲ Measure again when {waits.For} is in, then cut. Keep their tiles, and the rests of tiles that are shared, apart until then.", flow.Width, bold: true, after: 1.5)));
        Settings(flow, book, cutting, pieces);
        ByHand(flow, book.Figures, cutting, pieces);
    }

    private static string Count(ProductCutting cutting, IReadOnlyCollection<CutLater> later, IReadOnlyDictionary<string, PieceOnFace> pieces)
    {
        var all = cutting.Settings.SelectMany(s => s.Pieces).Concat(cutting.ByHand).Distinct(StringComparer.Ordinal).Where(pieces.ContainsKey).Select(id => pieces[id].Piece).ToArray();
        var drilled = all.Count(piece => piece.IsOnlyDrilled);
        var words = $"{Figures.Count(all.Length, "piece", "pieces")} to cut";
        var last = string.Concat(later.Select(waits => $" {Figures.Count(waits.Pieces.Count(), "piece waits", "pieces wait")} for {waits.For} and stand last."));
        return (drilled == 0 ? words + "." : $"{words}: {Figures.Number(all.Length - drilled)} at an edge, {Figures.Number(drilled)} only drilled.") + last;
    }

    private static void Settings(Flow flow, SheetBook book, ProductCutting cutting, IReadOnlyDictionary<string, PieceOnFace> pieces)
    {
        if (cutting.Settings.Count == 0) return;
        var blocks = cutting.Settings.SelectMany(s => Setting(s, flow.Width, book, pieces)).ToList();
        var key = Block.Words("The fence stands this far from the blade; the factory side goes against the fence. Width and height are the tile's as it stands on the wall. A piece with two cuts stands under both. Tick each as it is cut." + (cutting.Tiles.Any(t => t.Box is not null) ? " A small number: the box its tile is taken from." : ""), flow.Width, ink: Ink.Quiet, after: 1);
        flow.Add(Block.Together(Block.Heading("By saw setting", flow.Width), key), blocks, Block.Heading("By saw setting, continued", flow.Width));
        flow.Add(Block.Gap(5));
    }

    /// <summary>One setting; a long one goes on in a second block with the fence said again.</summary>
    private static IEnumerable<Block> Setting(SawSetting setting, double width, SheetBook book, IReadOnlyDictionary<string, PieceOnFace> pieces)
    {
        var figures = book.Figures;
        var columns = (int)((width - FenceWidth) / Cell);
        const int rows = 8;
        foreach (var (part, i) in setting.Pieces.Chunk(columns * rows).DefaultIfEmpty([]).Select((p, i) => (p, i)))
        {
            var parts = i == 0 && setting.Parts.Count > 0 ? $"Parts {(setting.Parts.Count == 1 ? "tile" : "tiles")} {string.Join(", ", setting.Parts.Select(number => Figures.Number(number)))}: see the shared tiles." : "";
            parts = $"{Shorter(setting, part, book, pieces)} {parts}".Trim();
            var height = Math.Max(11.2, (((part.Length + columns - 1) / columns) * Row) + 4) + (parts.Length > 0 ? 4.5 : 0);
            yield return new(height, (pen, x, y) =>
            {
                pen.Text(x + 1, y + 7.8, figures.Cut(setting.Fence), 20, bold: true);
                pen.Text(x + 29, y + 4.6, figures.Unit + (i > 0 ? ", continued" : ""), 8, ink: Ink.Quiet);
                pen.Text(x + 29, y + 8.4, "along the " + (setting.Across ? "width" : "height"), 8, ink: Ink.Quiet);
                for (var n = 0; n < part.Length; n++) Tick(pen, x + FenceWidth + (n % columns * Cell), y + 2.6 + (n / columns * Row), part[n], pieces.GetValueOrDefault(part[n])?.Box);
                if (parts.Length > 0) pen.Text(x + FenceWidth, y + height - 2, parts, 8, ink: Ink.Quiet);
                pen.Line(x, y + height, x + width, y + height, Stroke.Rule);
            });
        }
    }

    /// <summary>Where sizes share a setting: by how much the larger ones come out short, so that nobody takes it for a slip.</summary>
    private static string Shorter(SawSetting setting, IEnumerable<string> part, SheetBook book, IReadOnlyDictionary<string, PieceOnFace> pieces)
    {
        var most = part.Where(pieces.ContainsKey).Select(id => setting.Short(pieces[id].Piece, book.Plan.Job.Tape, book.Plan.Job.Cutting.Fence)).Append(Length.Zero).Max();
        return most == Length.Zero ? "" : $"Sizes share this setting: some come out up to {book.Figures.NearWithUnit(most)} short.";
    }

    /// <summary>A box to tick with what it stands for, and a small number after it.</summary>
    public static void Tick(Pen pen, double x, double y, string id, int? box = null)
    {
        Measures.TickBox(pen, x, y, 4);
        pen.Text(x + 5.4, y + 3.6, id, 12, bold: true);
        if (box is { } number) pen.Text(x + 6.2 + Lettering.Width(id, 12, bold: true), y + 3.6, Figures.Number(number), 8, ink: Ink.Quiet);
    }

    private static void ByHand(Flow flow, Figures figures, ProductCutting cutting, IReadOnlyDictionary<string, PieceOnFace> pieces)
    {
        var hand = cutting.ByHand.Where(pieces.ContainsKey).Select(id => pieces[id]).ToArray();
        if (hand.Length == 0) return;
        var width = flow.Width;
        var key = Block.Words(CutWords.Key, width, ink: Ink.Quiet, after: 1.5);
        var tapers = hand.Where(p => IsPlainTaper(p.Piece)).Chunk(2).Select(pair => Pair(pair, width, TaperWidth, figures)).ToList();
        var cards = hand.Where(p => !IsPlainTaper(p.Piece)).Chunk(2).Select(pair => Pair(pair, width, SketchWidth, figures)).ToList();
        var again = Block.Heading("Marked by hand, continued", width);
        flow.Add(Block.Together(Block.Heading("Marked by hand", width), key), [.. tapers, .. cards], again);
    }

    private static bool IsPlainTaper(Piece piece) => piece.Kind == PieceKind.Taper && piece.Cuts.Count == 1;

    private static Block Pair(PieceOnFace[] pair, double width, double sketch, Figures figures)
    {
        const double gap = 6;
        var half = (width - gap) / 2;
        var height = pair.Max(p => CardHeight(p, half, sketch, figures));
        return new(height, (pen, x, y) =>
        {
            for (var i = 0; i < pair.Length; i++) Card(pen, pair[i], new(x + (i * (half + gap)), y, half, height), sketch, figures);
            pen.Line(x, y + height, x + width, y + height, Stroke.Rule);
        });
    }

    private const double SketchWidth = 46, TaperWidth = 34, Tallest = 45;

    /// <summary>How high a sketch may be: less where only a taper is shown.</summary>
    private static double Most(double sketch) => sketch < SketchWidth ? 30 : Tallest;

    private static double CardHeight(PieceOnFace of, double width, double sketch, Figures figures) =>
        Math.Max(3 + PieceSketch.HeightOf(of, sketch, Most(sketch), figures), 14 + Pen.ParagraphHeight(CutWords.Of(of, figures), 9.5, bold: false, width - sketch - 2));

    private static void Card(Pen pen, PieceOnFace of, Frame room, double sketch, Figures figures)
    {
        var piece = of.Piece;
        PieceSketch.Draw(pen, of, new(room.X, room.Y + 1.5, sketch, PieceSketch.HeightOf(of, sketch, Most(sketch), figures)), figures);
        var x = room.X + sketch + 2;
        Tick(pen, x, room.Y + 3, piece.Id);
        pen.Text(x + 5.4, room.Y + 10.4, $"{PieceWords.Of(piece.Kind)}, {piece.Face}" + (of.Box is { } box ? $", box {Figures.Number(box)}" : ""), 8, ink: Ink.Quiet);
        pen.Paragraph(x, room.Y + 12.4, room.Width - sketch - 2, CutWords.Of(of, figures), 9.5);
    }
}
