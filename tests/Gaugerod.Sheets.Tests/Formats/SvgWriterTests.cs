using System.Globalization;
using System.Xml.Linq;
using Gaugerod.Sheets.Formats;
using Gaugerod.Testing;

namespace Gaugerod.Sheets.Tests.Formats;

public sealed class SvgWriterTests
{
    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void The_swatches_are_the_same_text_under_any_culture(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new(culture);
        try
        {
            Golden.Matches("sheets/swatches.svg", SvgWriter.Write(Swatches.Page()));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void It_is_well_formed_and_says_what_it_shows()
    {
        var svg = XDocument.Parse(SvgWriter.Write(Swatches.Page())).Root!;
        XNamespace ns = "http://www.w3.org/2000/svg";
        Assert.Equal("Swatches & bars", svg.Element(ns + "title")!.Value);
        Assert.Contains("<invented>", svg.Element(ns + "desc")!.Value, StringComparison.Ordinal);
        Assert.Equal("210mm", svg.Attribute("width")!.Value);
        Assert.Contains(svg.Elements(ns + "path"), p => (string?)p.Attribute("data-name") == "A1");
    }

    /// <summary>Referee: librsvg's rsvg-convert, by way of poppler at 254 dots an inch, ten to the millimetre.</summary>
    [Fact]
    public void A_bar_of_100_mm_measures_100_mm_in_the_picture()
    {
        var span = Tool.InFolder(folder =>
        {
            var (svg, pdf, pgm) = (Path.Combine(folder, "a.svg"), Path.Combine(folder, "a.pdf"), Path.Combine(folder, "a"));
            File.WriteAllText(svg, SvgWriter.Write(Swatches.Page()));
            Assert.Equal(0, Tool.Run("rsvg-convert", "-f", "pdf", "-o", pdf, svg).Exit);
            Assert.Equal(0, Tool.Run("pdftoppm", "-r", "254", "-gray", "-singlefile", pdf, pgm).Exit);
            var page = Tool.Grey.Read(pgm + ".pgm");
            Assert.InRange(page.Width, 2099, 2101);
            return page.DarkSpan((int)(Swatches.BarY * 10) + 10, 0, 1300);
        });

        Assert.InRange(span - 3, 999, 1001);
    }
}
