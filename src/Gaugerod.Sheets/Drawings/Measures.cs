namespace Gaugerod.Sheets.Drawings;

/// <summary>Dimension lines, scale bars and boxes to tick.</summary>
internal static class Measures
{
    private const double Tick = 1.3;
    private const double Size = 8;

    /// <summary>Where the figure goes when the line is too short for it.</summary>
    public enum Spill
    {
        /// <summary>Before the line: to its left, or below it.</summary>
        Before,

        /// <summary>After the line: to its right, or above it.</summary>
        After,

        /// <summary>On the other side of the line, as near as where it would have stood.</summary>
        Across,
    }

    /// <summary>A level dimension; gives what its figure covers.</summary>
    public static Frame Level(Pen pen, double x1, double x2, double y, string figure, Spill spill = Spill.After, double size = Size, bool onPaper = false)
    {
        pen.Line(x1, y, x2, y, Stroke.Dimension);
        Slash(pen, x1, y);
        Slash(pen, x2, y);
        var box = Pen.BoxAround(new(0, 0), figure, size, bold: false, upright: false);
        var middle = box.Width + 1 <= x2 - x1 ? (x1 + x2) / 2
            : spill == Spill.Before ? x1 - (box.Width / 2) - 1 : x2 + (box.Width / 2) + 1;
        var inside = box.Width + 1 <= x2 - x1;
        var at = inside ? new Spot(middle, y - (box.Height / 2) - 0.3)
            : spill == Spill.Across ? new((x1 + x2) / 2, y + (box.Height / 2) + 0.5) : new(middle, y);
        pen.TextAround(at, figure, size, onPaper: onPaper);
        return Pen.BoxAround(at, figure, size, bold: false, upright: false);
    }

    /// <summary>An upright dimension, read from the right; gives what its figure covers.</summary>
    public static Frame Upright(Pen pen, double x, double top, double bottom, string figure, Spill spill = Spill.After, double size = Size, bool onPaper = false)
    {
        pen.Line(x, top, x, bottom, Stroke.Dimension);
        Slash(pen, x, top);
        Slash(pen, x, bottom);
        var box = Pen.BoxAround(new(0, 0), figure, size, bold: false, upright: true);
        var inside = box.Height + 1 <= bottom - top;
        var middle = inside ? (top + bottom) / 2
            : spill == Spill.Before ? bottom + (box.Height / 2) + 1 : top - (box.Height / 2) - 1;
        var at = inside ? new Spot(x - (box.Width / 2) - 0.3, middle)
            : new(x, middle);
        if (!inside && spill == Spill.Across) return Beside(pen, x + 0.8, (top + bottom) / 2, figure, size);
        pen.TextAround(at, figure, size, upright: true, onPaper: onPaper);
        return Pen.BoxAround(at, figure, size, bold: false, upright: true);
    }

    /// <summary>A short upright line's figure to its right, read level, in as many lines as it takes to stay narrow.</summary>
    private static Frame Beside(Pen pen, double x, double middle, string figure, double size)
    {
        const double narrow = 12.5;
        var lines = Lettering.Wrap(Fractions.Set(figure), size, bold: false, narrow);
        var row = Lettering.Cap(size) + 1.0;
        var covered = new Frame(x, middle - (lines.Count * row / 2), 0, lines.Count * row);
        for (var i = 0; i < lines.Count; i++)
        {
            var width = Pen.BoxAround(default, lines[i], size, bold: false, upright: false).Width;
            pen.TextAround(new(x + (width / 2), covered.Y + ((i + 0.5) * row)), lines[i], size);
            covered = covered with { Width = Math.Max(covered.Width, width) };
        }

        return covered;
    }

    /// <summary>A bar of a true length on paper, with its length beside it: what a print is checked by.</summary>
    public static void CheckBar(Pen pen, double x, double y, double length, string words)
    {
        pen.Line(x, y, x + length, y, Stroke.Bar);
        pen.Line(x, y - 1.6, x, y + 1.6, Stroke.Bar);
        pen.Line(x + length, y - 1.6, x + length, y + 1.6, Stroke.Bar);
        pen.Text(x + length + 2, y + 0.9, words, 7, ink: Ink.Quiet);
    }

    /// <summary>A bar of alternating parts that stand for so much of the wall each.</summary>
    public static void ScaleBar(Pen pen, double x, double y, double part, int parts, Func<int, string> figure)
    {
        for (var i = 0; i < parts; i++)
        {
            pen.Area(new Frame(x + (i * part), y - 1, part, 2), i % 2 == 0 ? Fill.Ink : Fill.Paper, Stroke.Dimension);
        }

        for (var i = 0; i <= parts; i++) pen.Text(x + (i * part), y - 2, figure(i), 7, anchor: Anchor.Middle);
    }

    /// <summary>A box to tick.</summary>
    public static void TickBox(Pen pen, double x, double top, double side = 3.6) =>
        pen.Area(new Frame(x, top, side, side), Fill.Paper, Stroke.TickBox);

    private static void Slash(Pen pen, double x, double y) =>
        pen.Line(x - (Tick * 0.6), y + (Tick * 0.6), x + (Tick * 0.6), y - (Tick * 0.6), Stroke.Dimension);
}
