using Gaugerod.Engine.Bases;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A straightedge on its two rests where it shows the most, seen from the side, heights enlarged.</summary>
internal static class FlatSections
{
    private const double High = 7, Size = 8, Side = 34;

    public static void Add(Flow flow, FlatFace flat, Figures figures)
    {
        var blocks = flat.Gaps.Select((gap, i) => (Gap: gap, Numbers: FlatPicture.Numbers(flat, i))).Where(one => one.Gap.Worst > Length.Zero && one.Numbers.Length > 0)
            .Select(one => Section(one.Gap, one.Numbers, figures, flow.Width)).ToList();
        if (blocks.Count == 0) return;
        flow.Add(Block.Heading("Where each is worst, from the side, heights enlarged", flow.Width), blocks);
        flow.Add(Block.Gap(4));
    }

    private static Block Section(WorstGap gap, string number, Figures figures, double width) => new(High + 15, (pen, x, y) =>
    {
        var isHump = gap.Hump > gap.Hollow;
        var (left, wide) = (x + Side, width - Side - 12);
        var along = wide / (double)gap.Places[^1].Along.Millimetres;
        var up = High / (double)gap.Worst.Millimetres;
        // The straightedge, or the string, is level here; the face goes below it, or over it.
        var line = y + 4 + (isHump ? High : 0);
        var spots = gap.Places.Select(place => new Spot(left + (along * (double)place.Along.Millimetres), line + ((isHump ? -up : up) * (double)place.By.Millimetres))).ToList();
        Sequence<Spot> ring = [.. spots, new(spots[^1].X, y + High + 8), new(spots[0].X, y + High + 8)];
        pen.Area(ring, Fill.Wall, Stroke.Outline, "face");
        pen.Line(spots[0].X, line, spots[^1].X, line, Stroke.SnapLine);
        foreach (var spot in spots) pen.Area(Pen.Circle(spot, 0.6), Fill.Ink);
        var worst = gap.Places.Select((place, i) => (place.By, i)).MaxBy(place => place.By).i;
        var figure = (isHump ? "hump " : "hollow ") + figures.Fine(gap.Worst);
        var box = Pen.BoxAround(default, figure, Size, bold: true, upright: false);
        pen.Line(spots[worst].X, line, spots[worst].X, spots[worst].Y, Stroke.Bar);
        pen.TextAround(new(spots[worst].X + (box.Width / 2) + 1.5, line + ((isHump ? -1 : 1) * High / 2)), figure, Size, bold: true, onPaper: true);
        pen.Text(x, y + 6, number, 9, bold: true);
        pen.Text(x, y + 10.5, $"from [{figures.Near(gap.From.X)}, {figures.Near(gap.From.Y)}]", Size);
        pen.Text(x, y + 14.5, $"to [{figures.Near(gap.To.X)}, {figures.Near(gap.To.Y)}]", Size);
        Measures.Level(pen, spots[0].X, spots[^1].X, y + High + 12.5, figures.Near(gap.Places[^1].Along));
    });
}
