using System.Globalization;
using System.Text;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Formats;

/// <summary>Writes a drawing as SVG 1.1: true to size in millimetres, the same text for the same drawing everywhere.</summary>
public static class SvgWriter
{
    /// <summary>
    /// The drawing as an SVG document. Every mark carries its meaning as a class (<c>fill-straight</c>, <c>line-snapline</c>,
    /// <c>ink-quiet</c>) beside its look, and a named area its name as <c>data-name</c>.
    /// </summary>
    public static string Write(Drawing drawing) => Steps(drawing).Last()!;

    /// <summary>As <see cref="Write"/>, a mark at a time, so that the caller may do something else between: nothing until the last.</summary>
    public static IEnumerable<string?> Steps(Drawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        return MarkByMark(drawing);
    }

    private static IEnumerable<string?> MarkByMark(Drawing drawing)
    {
        var svg = new StringBuilder();
        var (width, height) = (Number(drawing.Width), Number(drawing.Height));
        svg.Append(CultureInfo.InvariantCulture, $"""<svg xmlns="http://www.w3.org/2000/svg" width="{width}mm" height="{height}mm" viewBox="0 0 {width} {height}" role="img" xml:lang="en" lang="en" font-family="Inter, Helvetica, Arial, sans-serif">""");
        svg.Append('\n');
        svg.Append(CultureInfo.InvariantCulture, $"<title>{Escape(drawing.Title)}</title>\n<desc>{Escape(drawing.Description)}</desc>\n");
        Patterns(svg, drawing);
        svg.Append(CultureInfo.InvariantCulture, $"""<rect class="sheet" width="{width}" height="{height}" fill="#ffffff"/>""").Append('\n');
        foreach (var mark in drawing.Marks)
        {
            switch (mark)
            {
                case Mark.Area area: Area(svg, area); break;
                case Mark.Line line: Line(svg, line); break;
                case Mark.Text text: Text(svg, text); break;
                default: throw new InvalidOperationException("A mark this writer does not know.");
            }

            yield return null;
        }

        yield return svg.Append("</svg>\n").ToString();
    }

    private static void Patterns(StringBuilder svg, Drawing drawing)
    {
        var used = drawing.Marks.OfType<Mark.Area>().Select(a => a.Fill).Distinct().Order().Where(f => Look.HatchOf(f) is not null).ToArray();
        if (used.Length == 0) return;
        svg.Append("<defs>\n");
        foreach (var fill in used)
        {
            var hatch = Look.HatchOf(fill)!;
            var (s, d) = (Number(hatch.Spacing), hatch.Dash is { } dash ? Number(2 * dash) : Number(hatch.Spacing));
            var lines = $"M0 {Number(hatch.Spacing / 2)}H{Number(hatch.Dash ?? hatch.Spacing)}" + (hatch.Crossed ? $"M{Number(hatch.Spacing / 2)} 0V{s}" : "");
            svg.Append(CultureInfo.InvariantCulture, $"""<pattern id="hatch-{Name(fill)}" patternUnits="userSpaceOnUse" width="{d}" height="{s}" patternTransform="rotate({Number(-hatch.Angle)})">""");
            svg.Append(CultureInfo.InvariantCulture, $"""<path d="{lines}" stroke="{Look.HatchColour.Hex}" stroke-width="{Number(Look.HatchWidth)}" fill="none"/></pattern>""").Append('\n');
        }

        svg.Append("</defs>\n");
    }

    private static void Area(StringBuilder svg, Mark.Area area)
    {
        var path = new StringBuilder();
        foreach (var ring in area.Rings) path.Append(Path(ring)).Append('Z');
        var name = area.Name is null ? "" : $" data-name=\"{Escape(area.Name)}\"";
        var fill = Look.Of(area.Fill)?.Hex ?? "none";
        var stroke = area.Edge is { } edge ? Stroked(edge) : "";
        svg.Append(CultureInfo.InvariantCulture, $"""<path class="fill-{Name(area.Fill)}"{name} d="{path}" fill="{fill}" fill-rule="evenodd"{stroke}/>""").Append('\n');
        if (Look.HatchOf(area.Fill) is null) return;
        svg.Append(CultureInfo.InvariantCulture, $"""<path class="hatch" d="{path}" fill="url(#hatch-{Name(area.Fill)})" fill-rule="evenodd"/>""").Append('\n');
    }

    private static void Line(StringBuilder svg, Mark.Line line) =>
        svg.Append(CultureInfo.InvariantCulture, $"""<path class="line-{Name(line.Stroke)}" d="{Path(line.Spots)}" fill="none"{Stroked(line.Stroke)}/>""").Append('\n');

    private static void Text(StringBuilder svg, Mark.Text text)
    {
        var anchor = text.Anchor switch { Anchor.Middle => " text-anchor=\"middle\"", Anchor.End => " text-anchor=\"end\"", _ => "" };
        var (x, y) = (Number(text.At.X), Number(text.At.Y));
        var turned = text.Turned == 0 ? "" : $" transform=\"rotate({Number(-text.Turned)} {x} {y})\"";
        var weight = text.Bold ? " font-weight=\"700\"" : "";
        svg.Append(CultureInfo.InvariantCulture, $"""<text class="ink-{Name(text.Ink)}" x="{x}" y="{y}" font-size="{Number(text.Size * Lettering.Point)}" fill="{Look.Of(text.Ink).Hex}"{weight}{anchor}{turned} font-variant-numeric="tabular-nums">{Escape(text.Words)}</text>""").Append('\n');
    }

    private static string Stroked(Stroke stroke)
    {
        var nib = Look.Of(stroke);
        var dashes = nib.Dashes.Length == 0 ? "" : $" stroke-dasharray=\"{string.Join(' ', nib.Dashes.Select(Number))}\"";
        return $" stroke=\"{nib.Colour.Hex}\" stroke-width=\"{Number(nib.Width)}\" stroke-linejoin=\"round\"{dashes}";
    }

    private static string Path(Sequence<Spot> spots) =>
        "M" + string.Join('L', spots.Select(s => $"{Number(s.X)} {Number(s.Y)}"));

    private static string Name<T>(T meaning)
        where T : struct, Enum => meaning.ToString().ToLowerInvariant();

    /// <summary>To a thousandth of a millimetre: finer than any pen, and the same digits on every machine.</summary>
    private static string Number(double value)
    {
        var text = Math.Round(value, 3, MidpointRounding.AwayFromZero).ToString("0.###", CultureInfo.InvariantCulture);
        return string.Equals(text, "-0", StringComparison.Ordinal) ? "0" : text;
    }

    private static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length);
        foreach (var letter in text)
        {
            switch (letter)
            {
                case '&': escaped.Append("&amp;"); break;
                case '<': escaped.Append("&lt;"); break;
                case '>': escaped.Append("&gt;"); break;
                case '"': escaped.Append("&quot;"); break;
                case < ' ': escaped.Append(' '); break;
                default: escaped.Append(letter); break;
            }
        }

        return escaped.ToString();
    }
}
