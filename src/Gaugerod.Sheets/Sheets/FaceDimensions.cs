using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Dimensions along the foot and the left side of a face, and the heights of its lines to snap.</summary>
internal sealed class FaceDimensions(FacePicture picture, Pen pen, PieceNumbers numbers, Figures figures)
{
    private readonly Frame _bounds = picture.Bounds;
    private readonly FaceMap _map = picture.Map;

    public void Draw(IEnumerable<SnapLine> lines)
    {
        Foot();
        LeftSide();
        Snapped(lines.Where(l => string.Equals(l.Face, picture.Plan.Face.Name, StringComparison.Ordinal)).ToArray());
    }

    private void Foot()
    {
        var field = picture.Plan.Face.Field.Outer.Bounds;
        var y = _bounds.Bottom + 6;
        var course = picture.Plan.Pieces.GroupBy(p => p.Course)
            .OrderByDescending(g => g.Max(p => p.Outline.Bounds.Right).Steps - g.Min(p => p.Outline.Bounds.Left).Steps).ThenBy(g => g.Key)
            .Select(g => g.OrderBy(p => p.Cell.Left.Steps).ToArray()).FirstOrDefault();
        if (course is not null) Chain(course.Select(p => Span(p, level: true)).ToArray(), (a, b, words, spill) => Measures.Level(pen, X(a), X(b), y, words, spill));
        numbers.Keep(Measures.Level(pen, X(field.Left), X(field.Right), y + 6, $"tiled {figures.Near(field.Width)}"));
        var outline = picture.Plan.Face.Outline.Bounds;
        if (outline.Width != field.Width) numbers.Keep(Measures.Level(pen, X(outline.Left), X(outline.Right), y + 12, $"wall {figures.Near(outline.Width)}"));
    }

    private void LeftSide()
    {
        var field = picture.Plan.Face.Field.Outer.Bounds;
        var x = _bounds.X - 6;
        var stack = picture.Plan.Pieces.GroupBy(p => p.Course).OrderBy(g => g.Key)
            .Select(g => g.MinBy(p => p.Cell.Left.Steps)!).ToArray();
        if (stack.Length > 0) Chain(stack.Select(p => Span(p, level: false)).ToArray(), (a, b, words, spill) => Measures.Upright(pen, x, Y(b), Y(a), words, spill));
        numbers.Keep(Measures.Upright(pen, x - 6, Y(field.Top), Y(field.Bottom), $"tiled {figures.Near(field.Height)}"));
        var outline = picture.Plan.Face.Outline.Bounds;
        if (outline.Height != field.Height) numbers.Keep(Measures.Upright(pen, x - 12, Y(outline.Top), Y(outline.Bottom), $"wall {figures.Near(outline.Height)}"));
    }

    /// <summary>First cut, the whole tiles between, last cut.</summary>
    private void Chain((Length From, Length To, bool Cut, string Words)[] spans, Func<Length, Length, string, Measures.Spill, Frame> draw)
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

    private void Snapped(SnapLine[] lines)
    {
        var floor = double.MaxValue;
        foreach (var line in lines.Where(l => l.Axis == Axis.Level).OrderBy(l => l.At.Steps))
        {
            var (_, end) = picture.Ends(line, 2.5);
            floor = Math.Min(end.Y, floor - 4.4);
            pen.Text(_bounds.Right + 3.5, floor + 1, figures.Near(line.At) + " up", 9, bold: true, ink: Ink.SnapLine);
        }

        var reached = double.MinValue;
        foreach (var line in lines.Where(l => l.Axis == Axis.Plumb).OrderBy(l => l.At.Steps))
        {
            var (top, _) = picture.Ends(line, 2.5);
            var words = figures.Near(line.At) + " from left";
            var half = Lettering.Width(Fractions.Set(words), 9, bold: true) / 2;
            var middle = Math.Max(top.X, reached + half + 2);
            reached = middle + half;
            pen.Text(middle, top.Y - 1, words, 9, bold: true, Anchor.Middle, ink: Ink.SnapLine);
        }
    }

    private double X(Length along) => _map.At(new(along, Length.Zero)).X;

    private double Y(Length up) => _map.At(new(Length.Zero, up)).Y;
}
