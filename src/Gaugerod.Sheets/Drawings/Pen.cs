using Gaugerod.Plane;

namespace Gaugerod.Sheets.Drawings;

/// <summary>Lays marks down. One pen draws one sheet; fractions in what it writes are set as fractions.</summary>
internal sealed class Pen
{
    private readonly List<Mark> _marks = [];

    public Sequence<Mark> Marks => _marks.ToSequence();

    public void Area(Sequence<Spot> ring, Fill fill, Stroke? edge = null, string? name = null) =>
        _marks.Add(new Mark.Area([ring], fill, edge, name));

    public void Area(IEnumerable<Sequence<Spot>> rings, Fill fill, Stroke? edge = null, string? name = null) =>
        _marks.Add(new Mark.Area(rings.ToSequence(), fill, edge, name));

    public void Area(Frame frame, Fill fill, Stroke? edge = null, string? name = null) => Area(frame.Corners(), fill, edge, name);

    public void Line(double x1, double y1, double x2, double y2, Stroke stroke) => Line(new(x1, y1), new(x2, y2), stroke);

    public void Line(Spot from, Spot to, Stroke stroke) => _marks.Add(new Mark.Line([from, to], stroke));

    public void Line(Sequence<Spot> spots, Stroke stroke) => _marks.Add(new Mark.Line(spots, stroke));

    /// <summary>Writes on a baseline.</summary>
    public void Text(
        double x, double y, string words, double size, bool bold = false, Anchor anchor = Anchor.Start, double turned = 0, Ink ink = Ink.Body)
    {
        if (words.Length > 0) _marks.Add(new Mark.Text(new(x, y), Fractions.Set(words), size, bold, anchor, turned, ink));
    }

    /// <summary>Writes with the middle of the figures at a spot, on white where asked.</summary>
    public void TextAround(Spot middle, string words, double size, bool bold = false, bool upright = false, Ink ink = Ink.Body, bool onPaper = false)
    {
        var set = Fractions.Set(words);
        var drop = Lettering.Cap(size) / 2;
        if (onPaper) Area(BoxAround(middle, set, size, bold, upright), Fill.Paper);
        var at = upright ? new Spot(middle.X + drop, middle.Y) : new Spot(middle.X, middle.Y + drop);
        _marks.Add(new Mark.Text(at, set, size, bold, Anchor.Middle, upright ? 90 : 0, ink));
    }

    /// <summary>What text around a spot covers, with a little air.</summary>
    public static Frame BoxAround(Spot middle, string words, double size, bool bold, bool upright)
    {
        var (along, across) = (Lettering.Width(Fractions.Set(words), size, bold) + 0.8, Lettering.Cap(size) + 1.0);
        var (width, height) = upright ? (across, along) : (along, across);
        return new(middle.X - (width / 2), middle.Y - (height / 2), width, height);
    }

    /// <summary>Running text from a top line down; gives the height it took.</summary>
    public double Paragraph(double x, double top, double width, string words, double size, bool bold = false, Ink ink = Ink.Body)
    {
        var lines = Lettering.Wrap(Fractions.Set(words), size, bold, width);
        for (var i = 0; i < lines.Count; i++)
        {
            Text(x, top + Lettering.Cap(size) + (i * Lettering.Leading(size)) + (0.15 * size * Lettering.Point), lines[i], size, bold, ink: ink);
        }

        return HeightOf(lines.Count, size);
    }

    /// <summary>How high a paragraph will be.</summary>
    public static double ParagraphHeight(string words, double size, bool bold, double width) =>
        HeightOf(Lettering.Wrap(Fractions.Set(words), size, bold, width).Count, size);

    /// <summary>A circle, as a ring of 48 straight parts.</summary>
    public static Sequence<Spot> Circle(Spot middle, double radius) => Enumerable.Range(0, 48)
        .Select(i => new Spot(middle.X + (radius * Math.Cos(Math.Tau * i / 48)), middle.Y + (radius * Math.Sin(Math.Tau * i / 48))))
        .ToSequence();

    private static double HeightOf(int lines, double size) => lines * Lettering.Leading(size);
}
