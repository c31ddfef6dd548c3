using System.Text;
using Gaugerod.Sheets.Formats;
using UglyToad.PdfPig;

namespace Gaugerod.Sheets.Tests.Formats;

public sealed class PdfWriterTests
{
    private static readonly byte[] Pdf = PdfWriter.Write([Swatches.Page()], "Swatches");

    /// <summary>Referee: poppler's pdftoppm at 254 dots an inch, ten to the millimetre.</summary>
    [Fact]
    public void A_bar_of_100_mm_measures_100_mm_on_the_printed_page()
    {
        var span = Tool.InFolder(folder =>
        {
            var file = Path.Combine(folder, "page.pdf");
            File.WriteAllBytes(file, Pdf);
            Assert.Equal(0, Tool.Run("pdftoppm", "-r", "254", "-gray", "-singlefile", file, Path.Combine(folder, "page")).Exit);
            var page = Tool.Grey.Read(Path.Combine(folder, "page.pgm"));
            Assert.InRange(page.Width, 2099, 2101);
            Assert.InRange(page.Height, 2969, 2971);
            return page.DarkSpan((int)(Swatches.BarY * 10) + 10, 0, 1300);
        });

        // The end strokes are 0.3 mm wide, half of it outside on either side.
        Assert.InRange(span - 3, 999, 1001);
    }

    [Fact]
    public void PdfPig_and_pdftotext_read_the_words_and_the_fractions()
    {
        using var document = PdfDocument.Open(Pdf);
        var page = document.GetPage(1).Text.Normalize(NormalizationForm.FormKC);
        Assert.Contains("4 1\u20442 in", page, StringComparison.Ordinal);
        Assert.Contains("1028 mm", page, StringComparison.Ordinal);

        var text = Tool.InFolder(folder =>
        {
            var file = Path.Combine(folder, "page.pdf");
            File.WriteAllBytes(file, Pdf);
            return Tool.Run("pdftotext", "-layout", file, "-").Output.Normalize(NormalizationForm.FormKC);
        });
        Assert.Contains("4 1\u20442 in", text, StringComparison.Ordinal);
        Assert.Contains("11 15\u204416", text, StringComparison.Ordinal);
        Assert.Contains("A12", text, StringComparison.Ordinal);
    }

    /// <summary>Referee: qpdf.</summary>
    [Fact]
    public void The_file_is_sound() => Tool.InFolder(folder =>
    {
        var file = Path.Combine(folder, "page.pdf");
        File.WriteAllBytes(file, Pdf);
        var (exit, output) = Tool.Run("qpdf", "--check", file);
        Assert.Equal(0, exit);
        Assert.DoesNotContain("WARNING", output, StringComparison.OrdinalIgnoreCase);
        return exit;
    });

    [Fact]
    public void It_is_tagged_titled_and_not_to_be_scaled() => Tool.InFolder(folder =>
    {
        var file = Path.Combine(folder, "page.pdf");
        File.WriteAllBytes(file, Pdf);
        var info = Tool.Run("pdfinfo", file).Output;
        Assert.Matches(@"Tagged:\s+yes", info);
        Assert.Matches(@"Title:\s+Swatches", info);
        var objects = Tool.Run("qpdf", "--qdf", "--object-streams=disable", file, "-").Output;
        Assert.Contains("/PrintScaling /None", objects, StringComparison.Ordinal);
        Assert.Contains("/Lang", objects, StringComparison.Ordinal);
        Assert.Contains("/Alt (Swatches & bars.", objects, StringComparison.Ordinal);
        return 0;
    });

    [Fact]
    public void The_same_drawing_gives_the_same_bytes() =>
        Assert.Equal(Pdf, PdfWriter.Write([Swatches.Page()], "Swatches"));
}
