using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>One sheet while it is drawn.</summary>
/// <param name="Name">What stands in its head.</param>
/// <param name="Width">The paper's width, in millimetres.</param>
/// <param name="Height">The paper's height, in millimetres.</param>
internal sealed record SheetPage(string Name, double Width, double Height)
{
    public Pen Pen { get; } = new();

    /// <summary>What lies between head and foot.</summary>
    public Frame Content { get; init; }

    /// <summary>What the sheet shows, for a person who cannot see it.</summary>
    public string Description { get; set; } = "";

    /// <summary>The scale of its drawing, for the foot; null when nothing on it is to scale.</summary>
    public int? Scale { get; set; }
}

/// <summary>Gathers sheets, and puts head and foot on them when it is known how many there are.</summary>
internal sealed class SheetBook(Plan plan)
{
    private const double Side = 12;
    private const double Head = 17;

    private readonly List<SheetPage> _pages = [];

    public Plan Plan => plan;

    /// <summary>What stands in the foot in place of how sizes are given; null, the default, for that.</summary>
    public string? FootWords { get; init; }

    public Figures Figures { get; } = new(plan.Job.Tape);

    /// <summary>The job's note, where the foot of an upright sheet has no room for all of it; else null.</summary>
    public string? LongNote => plan.Job.Note is { } note && !string.IsNullOrWhiteSpace(note) && Shortened(note, 7.5, Paper(landscape: false).Width - (2 * Side)).EndsWith('…') ? note : null;

    private double Foot => string.IsNullOrWhiteSpace(plan.Job.Note) ? 14 : 18;

    public int Count => _pages.Count;

    /// <summary>The room between head and foot.</summary>
    public Frame ContentOf(bool landscape)
    {
        var (width, height) = Paper(landscape);
        return new(Side, Head, width - (2 * Side), height - Head - Foot);
    }

    public SheetPage Page(string name, bool landscape = false)
    {
        var (width, height) = Paper(landscape);
        var page = new SheetPage(name, width, height) { Content = ContentOf(landscape) };
        _pages.Add(page);
        return page;
    }

    /// <summary>A flow of blocks that begins on a new sheet and goes on over as many as it takes.</summary>
    public Flow Flow(string name, string description, int columns = 1, double gap = 8) => new(Next(name, description, columns, gap), () => Next(name, description, columns, gap));

    /// <summary>A flow that begins on what a drawing leaves of its sheet, and goes on over new ones.</summary>
    public Flow FlowBelow(SheetPage page, double top, string description) =>
        new(new Columns(page.Pen, page.Content with { Y = top, Height = page.Content.Bottom - top }, 1, 8) { IsRest = true }, () => Next(page.Name, description, 1, 8));

    /// <summary>Takes back the sheets after the first so many.</summary>
    public void KeepFirst(int count) => _pages.RemoveRange(count, _pages.Count - count);

    public Sequence<Drawing> Drawings()
    {
        for (var i = 0; i < _pages.Count; i++) HeadAndFoot(_pages[i], i + 1);
        return _pages.Select((p, i) => new Drawing(
            p.Width, p.Height, $"{plan.Job.Name}: {p.Name}, sheet {Figures.Number(i + 1)} of {Figures.Number(_pages.Count)}", p.Description, p.Pen.Marks)).ToSequence();
    }

    private Columns Next(string name, string description, int columns, double gap)
    {
        var page = Page(name);
        page.Description = description;
        return new(page.Pen, page.Content, columns, gap);
    }

    private (double Width, double Height) Paper(bool landscape)
    {
        var (width, height) = plan.Job.Paper == Engine.Planning.Paper.A4 ? (210.0, 297.0) : (215.9, 279.4);
        return landscape ? (height, width) : (width, height);
    }

    private void HeadAndFoot(SheetPage page, int number)
    {
        var (pen, right) = (page.Pen, page.Width - Side);
        var count = $"{Figures.Number(number)} of {Figures.Number(_pages.Count)}";
        pen.Text(Side, 11.2, Shortened(plan.Job.Name, 9.5, 78), 9.5, ink: Ink.Quiet);
        pen.Text(page.Width / 2, 11.2, page.Name, 11, bold: true, Anchor.Middle);
        pen.Text(right, 11.2, count, 9.5, bold: true, Anchor.End);
        pen.Line(Side, 13.4, right, 13.4, Stroke.Outline);
        var foot = page.Height - Foot + 3;
        pen.Line(Side, foot, right, foot, Stroke.Rule);
        var scale = page.Scale is { } s ? $"Scale 1:{Figures.Number(s)}. " : "";
        pen.Text(Side, foot + 3.8, FootWords ?? $"{scale}Sizes in {Figures.Units}, tape marked every {Figures.NearWithUnit(plan.Job.Tape.Mark)}. Cut sizes are rounded down to the mark, everything else to the nearest.", 7.5, ink: Ink.Quiet);
        if (!string.IsNullOrWhiteSpace(plan.Job.Note)) pen.Text(Side, foot + 7.6, Shortened(plan.Job.Note, 7.5, right - Side), 7.5, bold: true, ink: Ink.Quiet);
    }

    // One line, whatever breaks the words had. A note may be of any length: no more letters are looked at than could fit.
    private static string Shortened(string words, double size, double width)
    {
        const int MostLetters = 500;
        var line = string.Join(' ', words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        if (line.Length <= MostLetters && Lettering.Width(line, size, bold: true) <= width) return line;
        line = line[..Math.Min(line.Length, MostLetters)];
        while (line.Length > 1 && Lettering.Width(line + "…", size, bold: true) > width) line = line[..^1];
        return line.TrimEnd() + "…";
    }
}
