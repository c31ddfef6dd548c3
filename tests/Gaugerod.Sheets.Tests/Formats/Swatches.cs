using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Tests.Formats;

/// <summary>One of everything a sheet can hold, and a bar of 100 mm alone in its row.</summary>
internal static class Swatches
{
    public const double BarX = 20, BarY = 250;

    public static Drawing Page()
    {
        var pen = new Pen();
        pen.Text(15, 18, "Swatches: 4 1/2 in, 1028 mm, ×″′ → ≤ ≥", 12, bold: true);
        var fills = Enum.GetValues<Fill>();
        for (var i = 0; i < fills.Length; i++)
        {
            var (x, y) = (15 + (i % 5 * 37), 26 + (i / 5 * 30));
            pen.Area(new Frame(x, y, 32, 20), fills[i], Stroke.CutEdge, fills[i].ToString());
            pen.Text(x, y + 24, fills[i].ToString(), 8);
        }

        var ring = new Frame(15, 120, 40, 25).Corners();
        pen.Area([ring, Pen.Circle(new(35, 132), 6)], Fill.Hole, Stroke.CutEdge, "A1");
        var strokes = Enum.GetValues<Stroke>();
        for (var i = 0; i < strokes.Length; i++)
        {
            pen.Line(70, 122 + (i * 5), 130, 122 + (i * 5), strokes[i]);
            pen.Text(134, 123 + (i * 5), strokes[i].ToString(), 8, ink: Ink.Quiet);
        }

        Measures.Level(pen, 20, 60, 200, "15 3/4");
        Measures.Level(pen, 75, 79, 200, "11 15/16");
        Measures.Upright(pen, 190, 150, 190, "40 1/2");
        Measures.ScaleBar(pen, 20, 220, 20, 4, i => i.ToString(System.Globalization.CultureInfo.InvariantCulture));
        Measures.TickBox(pen, 120, 215);
        pen.Text(126, 218, "A12", 14, bold: true);
        pen.TextAround(new(160, 217), "turned", 9, upright: true, ink: Ink.SnapLine);
        Measures.CheckBar(pen, BarX, BarY, 100, "100 mm");
        return new(210, 297, "Swatches & bars", "One of every fill, line and text; <invented> for the tests.", pen.Marks);
    }
}
