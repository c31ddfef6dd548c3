using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A line of trim laid level with the field below it, its beginning to the right, the field's joints marked beneath.</summary>
internal static class TrimStrip
{
    private const double Above = 4.6, Marks = 3.4, After = 3, Size = 8, Least = 2;

    /// <summary>How long a line is with what stands at its ends.</summary>
    public static Length Across(PlannedTrim line, TrimProduct product) => Beyond(line, atLeft: false, product) + line.Length + Beyond(line, atLeft: true, product);

    public static Block Of(PlannedTrim line, TrimProduct product, int scale, double width)
    {
        // A narrow trim is drawn wide enough to be seen; its length is to scale.
        var wide = Math.Max(Least, FaceMap.OnPaper(product.Width, scale));
        var stretch = wide / Math.Max(0.001, FaceMap.OnPaper(product.Width, scale));
        return new(Above + wide + Marks + After, (pen, x, y) =>
        {
            var right = x + ((width + FaceMap.OnPaper(Across(line, product), scale)) / 2) - FaceMap.OnPaper(Beyond(line, atLeft: false, product), scale);
            var field = y + Above + wide;
            foreach (var part in WallTrims.Of([line]))
            {
                if (part.Piece is not { } piece) continue;
                var ring = piece.Outline.Points.Select(point => Laid(line, point, scale) is var (along, off) ? new Spot(right - along, field - (off * stretch)) : default).ToSequence();
                pen.Area(ring, TrimPicture.FillOf(part), TrimPicture.EdgeOf(part), piece.Id);
                Name(piece.Id, right - FaceMap.OnPaper(piece.To, scale), right - FaceMap.OnPaper(piece.From, scale));
            }

            // Of what stands at an end its leg along this line is seen; what goes round it is folded out.
            End(line.AtBegin, -Beyond(line, atLeft: false, product));
            End(line.AtEnd, line.Length + product.Joint);
            foreach (var turned in line.Returns)
            {
                var (from, to) = turned.AtLeft ? (line.Length, line.Length + turned.Length) : (-turned.Length, Length.Zero);
                pen.Area(new Frame(right - FaceMap.OnPaper(to, scale), field - wide, FaceMap.OnPaper(turned.Length, scale), wide), Fill.Paper, Stroke.Ghost, turned.Id);
                Name(turned.Id, right - FaceMap.OnPaper(to, scale), right - FaceMap.OnPaper(from, scale));
            }

            foreach (var joint in line.Beside)
            {
                var at = right - FaceMap.OnPaper(joint, scale);
                pen.Line(at, field + 0.6, at, field + Marks, Stroke.TileEdge);
            }

            void End(CornerPiece? corner, Length at)
            {
                if (corner is null) return;
                var (from, to) = (right - FaceMap.OnPaper(at + corner.Reach, scale), right - FaceMap.OnPaper(at, scale));
                pen.Area(new Frame(from, field - wide, to - from, wide), Fill.Paper, Stroke.FixtureEdge, corner.Id);
                Name(corner.Id, from, to);
            }

            void Name(string id, double from, double to)
            {
                if (Lettering.Width(id, Size, bold: true) + 1 <= to - from) pen.Text((from + to) / 2, y + Above - 1.2, id, Size, bold: true, Anchor.Middle);
            }
        });
    }

    /// <summary>How far what stands at an end, or goes round it, reaches beyond the line.</summary>
    private static Length Beyond(PlannedTrim line, bool atLeft, TrimProduct product)
    {
        var turned = line.Returns.Where(turned => turned.AtLeft == atLeft).Select(turned => turned.Length).DefaultIfEmpty().Max();
        return (atLeft ? line.AtEnd : line.AtBegin) is { } corner ? corner.Reach + product.Joint : turned;
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
