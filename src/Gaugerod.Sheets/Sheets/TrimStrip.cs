using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A line of trim laid level with the field below it, its beginning to the right, the field's joints marked beneath.</summary>
internal static class TrimStrip
{
    private const double Above = 4.6, Marks = 3.4, After = 3, Size = 8, Least = 2;

    public static Block Of(PlannedTrim line, TrimProduct product, int scale, double width)
    {
        // A narrow trim is drawn wide enough to be seen; its length is to scale.
        var wide = Math.Max(Least, FaceMap.OnPaper(product.Width, scale));
        var stretch = wide / Math.Max(0.001, FaceMap.OnPaper(product.Width, scale));
        return new(Above + wide + Marks + After, (pen, x, y) =>
        {
            var right = x + ((width + FaceMap.OnPaper(line.Length, scale)) / 2);
            var field = y + Above + wide;
            foreach (var piece in line.Pieces)
            {
                var ring = piece.Outline.Points.Select(point => Laid(line, point, scale) is var (along, off) ? new Spot(right - along, field - (off * stretch)) : default).ToSequence();
                pen.Area(ring, Fill.Fixture, TrimPicture.EdgeOf(piece), piece.Id);
                var (from, to) = (right - FaceMap.OnPaper(piece.To, scale), right - FaceMap.OnPaper(piece.From, scale));
                if (Lettering.Width(piece.Id, Size, bold: true) + 1 <= to - from) pen.Text((from + to) / 2, y + Above - 1.2, piece.Id, Size, bold: true, Anchor.Middle);
            }

            foreach (var joint in line.Beside)
            {
                var at = right - FaceMap.OnPaper(joint, scale);
                pen.Line(at, field + 0.6, at, field + Marks, Stroke.TileEdge);
            }
        });
    }

    /// <summary>How far along a line a place lies, and how far from its side that faces the field, on the paper.</summary>
    private static (double Along, double Off) Laid(PlannedTrim line, Point point, int scale)
    {
        double X(Point to) => FaceMap.OnPaper(to.X - line.From.X, scale);
        double Y(Point to) => FaceMap.OnPaper(to.Y - line.From.Y, scale);
        var (dx, dy) = (X(line.To), Y(line.To));
        var length = Math.Sqrt((dx * dx) + (dy * dy));
        return (((X(point) * dx) + (Y(point) * dy)) / length, ((X(point) * dy) - (Y(point) * dx)) / length);
    }
}
