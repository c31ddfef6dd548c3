using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Dimensions along the foot and the left side of a face, and the places of its lines to snap.</summary>
internal sealed class FaceDimensions(FacePicture picture, Pen pen, PieceNumbers numbers, Figures figures)
{
    /// <summary>How far left of the face the chain of tiles stands: room for a small cut's figure beside it, read level.</summary>
    private const double Chain = 16;

    private readonly Frame _bounds = picture.Bounds;
    private readonly FaceMap _map = picture.Map;

    /// <summary>How far the dimensions reach to the left of the face, and the lines' figures to its right.</summary>
    public const double Left = Chain + 16, Right = 30;

    public void Draw(Engine.Planning.RunPlan run)
    {
        Foot();
        LeftSide();
        Snapped(run, run.Lines.Where(l => string.Equals(l.Face, picture.Plan.Face.Name, StringComparison.Ordinal)).ToArray());
    }

    private void Foot()
    {
        var field = picture.Plan.Face.Field.Outer.Bounds;
        var y = _bounds.Bottom + 6;
        var row = Chained(level: true);
        if (row.Count > 0) Dimension([.. row.Select(p => Span(p, level: true))], (a, b, words, spill) => Measures.Level(pen, X(a), X(b), y, words, spill));
        if (row.Count > 0)
        {
            pen.Text(_bounds.Right + 3.5, y - 0.4, Row(row), 7, ink: Ink.Quiet);
            pen.Text(_bounds.Right + 3.5, y + 2.6, Foot(row) + " up", 7, ink: Ink.Quiet);
            numbers.Keep(new(_bounds.Right + 3, y - 3, Right - 4, 7));
        }

        numbers.Keep(Measures.Level(pen, X(field.Left), X(field.Right), y + 6.5, $"tiled {figures.Near(field.Width)}"));
        var outline = picture.Plan.Face.Outline.Bounds;
        if (outline.Width != field.Width) numbers.Keep(Measures.Level(pen, X(outline.Left), X(outline.Right), y + 12, $"wall {figures.Near(outline.Width)}"));
    }

    /// <summary>The tiles along the longest row or stack; none where a pattern has neither.</summary>
    private IReadOnlyList<Piece> Chained(bool level) => picture.Plan.Pieces.Any(piece => piece.Frame is not null) ? [] : TileChain.Longest(picture.Plan.Pieces, level);

    /// <summary>A row by its first and last numbered pieces: <c>row B46 to B48</c>.</summary>
    private static string Row(IReadOnlyList<Piece> row)
    {
        var cut = row.Where(p => p.Kind != PieceKind.Full).Select(p => p.Id).ToArray();
        return cut.Length switch { 0 => "the row that stands", 1 => $"the row of {cut[0]},", _ => $"the row {cut[0]} to {cut[^1]}," };
    }

    private string Foot(IReadOnlyList<Piece> row) => figures.Near(row.Min(p => p.Outline.Bounds.Bottom));

    private void LeftSide()
    {
        var field = picture.Plan.Face.Field.Outer.Bounds;
        var x = _bounds.X - Chain;
        var stack = Chained(level: false);
        if (stack.Count > 0) Dimension([.. stack.Select(p => Span(p, level: false))], (a, b, words, spill) => Measures.Upright(pen, x, Y(b), Y(a), words, spill));
        numbers.Keep(Measures.Upright(pen, x - 6, Y(field.Top), Y(field.Bottom), $"tiled {figures.Near(field.Height)}"));
        var outline = picture.Plan.Face.Outline.Bounds;
        if (outline.Height != field.Height) numbers.Keep(Measures.Upright(pen, x - 12, Y(outline.Top), Y(outline.Bottom), $"wall {figures.Near(outline.Height)}"));
    }

    /// <summary>First cut, the whole tiles between, last cut.</summary>
    private void Dimension((Length From, Length To, bool Cut, string Words)[] spans, Func<Length, Length, string, Measures.Spill, Frame> draw)
    {
        var (first, last) = (spans[0], spans[^1]);
        var (from, to) = (first.Cut ? 1 : 0, last.Cut && spans.Length > 1 ? spans.Length - 2 : spans.Length - 1);
        if (first.Cut) numbers.Keep(draw(first.From, first.To, first.Words, Measures.Spill.Across));
        if (last.Cut && spans.Length > 1) numbers.Keep(draw(last.From, last.To, last.Words, Measures.Spill.Across));
        if (to < from) return;
        var count = to - from + 1;
        var whole = figures.Near(spans[to].To - spans[from].From);
        numbers.Keep(draw(spans[from].From, spans[to].To, $"{whole}  ({Figures.Number(count)} {(count == 1 ? "tile" : "tiles")})", Measures.Spill.Across));
    }

    private (Length From, Length To, bool Cut, string Words) Span(Piece piece, bool level)
    {
        var box = piece.Outline.Bounds;
        var sides = level ? (TileSide.Left, TileSide.Right) : (TileSide.Bottom, TileSide.Top);
        var cut = piece.Cuts.Where(c => c.Away == sides.Item1 || c.Away == sides.Item2).ToArray();
        var (from, to, cell) = level ? (box.Left, box.Right, piece.Cell.Width) : (box.Bottom, box.Top, piece.Cell.Height);
        var words = cut.Length == 1 && !figures.SameCut(cut[0].First, cut[0].Last)
            ? $"{figures.Cut(cut[0].Least)} to {figures.Cut(cut[0].Most)}"
            : figures.Cut(to - from);
        return (from, to, to - from < cell || cut.Length > 0, words);
    }

    private void Snapped(Engine.Planning.RunPlan run, SnapLine[] lines)
    {
        var face = picture.Plan.Face;
        var labels = lines.Where(l => l.Axis == Axis.Level)
            .Select(l => (l.At, Words: figures.Near(l.At) + " up", Under: LinePlace.FromStruck(face, l.At, figures) is { } from ? from + " level line" : "", Ink: Ink.SnapLine)).ToList();
        if (face.LevelLine is { } struck && struck > face.Outline.Bounds.Bottom && struck < face.Outline.Bounds.Top)
        {
            labels.Add((struck, figures.Near(struck) + " up", "struck level line", Ink.Body));
            pen.Line(_bounds.Right, Y(struck), _bounds.Right + 2.5, Y(struck), Stroke.Outline);
            pen.Line(_bounds.X - 2.5, Y(struck), _bounds.X, Y(struck), Stroke.Outline);
        }

        var floor = double.MaxValue;
        foreach (var label in labels.OrderBy(l => l.At.Steps))
        {
            floor = Math.Min(Y(label.At), floor - (label.Under.Length > 0 ? 7.6 : 4.4));
            pen.Text(_bounds.Right + 3.5, floor + 1, label.Words, 9, bold: true, ink: label.Ink);
            pen.Text(_bounds.Right + 3.5, floor + 4.2, label.Under, 7, ink: label.Ink);
            numbers.Keep(new(_bounds.Right + 3, floor - 2, Right - 4, label.Under.Length > 0 ? 7 : 3.6));
        }

        var reached = double.MinValue;
        foreach (var line in lines.Where(l => l.Axis == Axis.Plumb).OrderBy(l => l.At.Steps))
        {
            var (top, _) = picture.Ends(line, 2.5);
            var words = LinePlace.Of(line, run, figures).Words;
            var half = Lettering.Width(Fractions.Set(words), 8.5, bold: true) / 2;
            var middle = Math.Max(top.X, reached + half + 2);
            reached = middle + half;
            pen.Text(middle, Math.Min(top.Y, _bounds.Y) - 1, words, 8.5, bold: true, Anchor.Middle, ink: Ink.SnapLine);
        }
    }

    private double X(Length along) => _map.At(new(along, Length.Zero)).X;

    private double Y(Length up) => _map.At(new(Length.Zero, up)).Y;
}
