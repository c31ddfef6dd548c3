using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Gaugerod.Sheets.Formats;

/// <summary>Writes drawings as a PDF, one a page, true to size, with the fonts in it.</summary>
public static class PdfWriter
{
    private const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>The day every file says it was made: files of one plan are the same whenever they are written.</summary>
    private static readonly DateTime Made = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    /// <summary>
    /// The drawings as the bytes of a PDF. Each page is tagged as a figure with the drawing's description; printing
    /// programs are asked not to scale it.
    /// </summary>
    /// <exception cref="ArgumentException">There are no drawings.</exception>
    public static byte[] Write(Sequence<Drawing> pages, string title)
    {
        ArgumentNullException.ThrowIfNull(pages);
        ArgumentNullException.ThrowIfNull(title);
        if (pages.Count == 0) throw new ArgumentException("A PDF has at least one page.", nameof(pages));
        PdfFonts.Install();
        using var document = new PdfDocument();
        var tags = UAManager.ForDocument(document);
        document.Info.Title = title;
        document.Info.Creator = "Gaugerod";
        document.Info.CreationDate = Made;
        document.Info.ModificationDate = Made;
        document.Language = "en";
        document.ViewerPreferences.Elements.SetName("/PrintScaling", "/None");
        foreach (var drawing in pages) Page(document, tags, drawing);
        using var stream = new MemoryStream();
        document.Save(stream, closeStream: false);
        return PdfFinish.Of(stream.ToArray());
    }

    private static void Page(PdfDocument document, UAManager tags, Drawing drawing)
    {
        var page = document.AddPage();
        page.Width = XUnit.FromMillimeter(drawing.Width);
        page.Height = XUnit.FromMillimeter(drawing.Height);
        using var graphics = XGraphics.FromPdfPage(page);
        var whole = new XRect(0, 0, drawing.Width * PointsPerMillimetre, drawing.Height * PointsPerMillimetre);
        tags.StructureBuilder.BeginElement(PdfIllustrationElementTag.Figure, drawing.Title + ". " + drawing.Description, whole);
        foreach (var mark in drawing.Marks)
        {
            switch (mark)
            {
                case Mark.Area area: Area(graphics, area); break;
                case Mark.Line line: graphics.DrawLines(Pen(line.Stroke), Points(line.Spots)); break;
                case Mark.Text text: Text(graphics, text); break;
                default: throw new InvalidOperationException("A mark this writer does not know.");
            }
        }

        tags.StructureBuilder.End();
    }

    private static void Area(XGraphics graphics, Mark.Area area)
    {
        var path = new XGraphicsPath { FillMode = XFillMode.Alternate };
        foreach (var ring in area.Rings) path.AddPolygon(Points(ring));
        if (Look.Of(area.Fill) is { } fill) graphics.DrawPath(Brush(fill), path);
        if (Look.HatchOf(area.Fill) is { } hatch)
        {
            var pen = new XPen(Colour(Look.HatchColour), Look.HatchWidth * PointsPerMillimetre);
            foreach (var (from, to) in Hatching.Lines(area.Rings, hatch)) graphics.DrawLine(pen, Point(from), Point(to));
        }

        if (area.Edge is { } edge) graphics.DrawPath(Pen(edge), path);
    }

    private static void Text(XGraphics graphics, Mark.Text text)
    {
        var font = new XFont(PdfFonts.Family, text.Size, text.Bold ? XFontStyleEx.Bold : XFontStyleEx.Regular);
        var back = text.Anchor switch { Anchor.Middle => 0.5, Anchor.End => 1.0, _ => 0.0 };
        var at = Point(text.At);
        var start = new XPoint(at.X - (back * Lettering.Width(text.Words, text.Size, text.Bold) * PointsPerMillimetre), at.Y);
        var state = text.Turned == 0 ? null : graphics.Save();
        if (state is not null) graphics.RotateAtTransform(-text.Turned, at);
        graphics.DrawString(text.Words, font, Brush(Look.Of(text.Ink)), start);
        if (state is not null) graphics.Restore(state);
    }

    private static XPen Pen(Stroke stroke)
    {
        var nib = Look.Of(stroke);
        var pen = new XPen(Colour(nib.Colour), nib.Width * PointsPerMillimetre) { LineJoin = XLineJoin.Round };
        if (nib.Dashes.Length > 0) pen.DashPattern = [.. nib.Dashes.Select(d => d / nib.Width)];
        return pen;
    }

    private static XSolidBrush Brush(Colour colour) => new(Colour(colour));

    private static XColor Colour(Colour colour) => XColor.FromArgb(colour.Red, colour.Green, colour.Blue);

    private static XPoint[] Points(Sequence<Spot> spots) => [.. spots.Select(Point)];

    private static XPoint Point(Spot spot) => new(spot.X * PointsPerMillimetre, spot.Y * PointsPerMillimetre);
}
