using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What to cut, by saw setting, then what is marked by hand.</summary>
internal static class CutSheets
{
    private const double FenceWidth = 54, Cell = 22, Row = 6.6;

    public static void Add(SheetBook book, ProductCutting cutting, IReadOnlyDictionary<string, PieceOnFace> pieces)
    {
        if (cutting.Settings.Count == 0 && cutting.ByHand.Count == 0) return;
        var flow = book.Flow($"Cut list: {cutting.Product}", $"Pieces of {cutting.Product} to cut, by saw setting, then pieces marked by hand.");
        Settings(flow, book, cutting);
        ByHand(flow, book.Figures, cutting, pieces);
    }

    private static void Settings(Flow flow, SheetBook book, ProductCutting cutting)
    {
        if (cutting.Settings.Count == 0) return;
        var blocks = cutting.Settings.SelectMany(s => Setting(s, flow.Width, book.Figures)).ToList();
        var key = Block.Words("The fence stands this far from the blade; the factory side goes against the fence. A piece with two cuts stands under both. Tick each as it is cut.", flow.Width, ink: Ink.Quiet, after: 1);
        flow.Add(Block.Together(Block.Heading("By saw setting", flow.Width), key), blocks, Block.Heading("By saw setting, continued", flow.Width));
        flow.Add(Block.Gap(5));
    }

    /// <summary>One setting; a long one goes on in a second block with the fence said again.</summary>
    private static IEnumerable<Block> Setting(SawSetting setting, double width, Figures figures)
    {
        var columns = (int)((width - FenceWidth) / Cell);
        const int rows = 8;
        foreach (var (part, i) in setting.Pieces.Chunk(columns * rows).Select((p, i) => (p, i)))
        {
            var height = Math.Max(11.2, (((part.Length + columns - 1) / columns) * Row) + 4);
            yield return new(height, (pen, x, y) =>
            {
                pen.Text(x + 1, y + 7.8, figures.Cut(setting.Fence), 20, bold: true);
                pen.Text(x + 29, y + 4.6, figures.Unit + (i > 0 ? ", continued" : ""), 8, ink: Ink.Quiet);
                pen.Text(x + 29, y + 8.4, "along the " + (setting.Across ? "width" : "height"), 8, ink: Ink.Quiet);
                for (var n = 0; n < part.Length; n++) Tick(pen, x + FenceWidth + (n % columns * Cell), y + 2.6 + (n / columns * Row), part[n]);
                pen.Line(x, y + height, x + width, y + height, Stroke.Rule);
            });
        }
    }

    private static void Tick(Pen pen, double x, double y, string id)
    {
        Measures.TickBox(pen, x, y, 4);
        pen.Text(x + 5.4, y + 3.6, id, 12, bold: true);
    }

    private static void ByHand(Flow flow, Figures figures, ProductCutting cutting, IReadOnlyDictionary<string, PieceOnFace> pieces)
    {
        var hand = cutting.ByHand.Where(pieces.ContainsKey).Select(id => pieces[id]).ToArray();
        if (hand.Length == 0) return;
        var width = flow.Width;
        var key = Block.Words(CutWords.Key, width, ink: Ink.Quiet, after: 1.5);
        var tapers = hand.Where(p => IsPlainTaper(p.Piece)).Select(p => Taper(p, width, figures)).ToList();
        var cards = hand.Where(p => !IsPlainTaper(p.Piece)).Chunk(2).Select(pair => Pair(pair, width, figures)).ToList();
        var again = Block.Heading("Marked by hand, continued", width);
        flow.Add(Block.Together(Block.Heading("Marked by hand", width), key), [.. tapers, .. cards], again);
    }

    private static bool IsPlainTaper(Piece piece) => piece.Kind == PieceKind.Taper && piece.Cuts.Count == 1;

    private static Block Taper(PieceOnFace of, double width, Figures figures)
    {
        var (piece, words) = (of.Piece, CutWords.Of(of, figures));
        var height = Math.Max(7.4, Pen.ParagraphHeight(words, 11, bold: false, width - 52) + 2.4);
        return new(height, (pen, x, y) =>
        {
            Tick(pen, x + 1, y + 1.7, piece.Id);
            pen.Text(x + 30, y + 5.2, FacePicture.NameOf(piece.Kind), 9, ink: Ink.Quiet);
            pen.Paragraph(x + 52, y + 1.2, width - 52, words, 11);
            pen.Line(x, y + height, x + width, y + height, Stroke.Rule);
        });
    }

    private static Block Pair(PieceOnFace[] pair, double width, Figures figures)
    {
        const double gap = 6;
        var half = (width - gap) / 2;
        var height = pair.Max(p => CardHeight(p, half, figures));
        return new(height, (pen, x, y) =>
        {
            for (var i = 0; i < pair.Length; i++) Card(pen, pair[i], new(x + (i * (half + gap)), y, half, height), figures);
            pen.Line(x, y + height, x + width, y + height, Stroke.Rule);
        });
    }

    private const double SketchWidth = 46;

    private static double CardHeight(PieceOnFace of, double width, Figures figures) =>
        Math.Max(3 + PieceSketch.HeightOf(of, SketchWidth, 45, figures), 14 + Pen.ParagraphHeight(CutWords.Of(of, figures), 9.5, bold: false, width - SketchWidth - 2));

    private static void Card(Pen pen, PieceOnFace of, Frame room, Figures figures)
    {
        var piece = of.Piece;
        PieceSketch.Draw(pen, of, new(room.X, room.Y + 1.5, SketchWidth, PieceSketch.HeightOf(of, SketchWidth, 45, figures)), figures);
        var x = room.X + SketchWidth + 2;
        Tick(pen, x, room.Y + 3, piece.Id);
        pen.Text(x + 5.4, room.Y + 10.4, $"{FacePicture.NameOf(piece.Kind)}, {piece.Face}", 8, ink: Ink.Quiet);
        pen.Paragraph(x, room.Y + 12.4, room.Width - SketchWidth - 2, CutWords.Of(of, figures), 9.5);
    }
}
