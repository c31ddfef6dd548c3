using System.Globalization;
using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Sheets.Formats;
using Gaugerod.Sheets.Sheets;
using Gaugerod.Sheets.Tests.Formats;
using Gaugerod.Testing;

namespace Gaugerod.Sheets.Tests.Sheets;

public sealed class SheetFileTests
{
    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void The_sheets_are_the_same_under_any_culture(string culture)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new(culture);
        try
        {
            var pages = JobSheets.Pages(HandPlan.Shower());
            Golden.Matches("sheets/hand-start.svg", SvgWriter.Write(pages[0]));
            Golden.Matches("sheets/hand-cuts.svg", SvgWriter.Write(pages.First(p => p.Title.Contains("Cut list", StringComparison.Ordinal))));
            Golden.Matches("sheets/hand-words.txt", string.Join("\n\n", pages.Select(p => p.Title + "\n" + p.Description + "\n" + SheetLook.Words(p))) + "\n");
            Golden.Matches("sheets/hand-north.svg", SvgWriter.Write(FaceDrawings.Of(HandPlan.Shower()).Single(f => f.Face == "north").Drawing));
            Golden.Matches("sheets/hand-run.svg", SvgWriter.Write(RunDrawings.Of(HandPlan.Shower()).Single().Drawing));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    /// <summary>An invented wall with trims of every way to end: the wall, and the sheets of two of its trims.</summary>
    [Fact]
    public void The_sheets_of_a_trimmed_wall_are_as_accepted()
    {
        var pages = JobSheets.Pages(Samples.TrimmedWall);
        Golden.Matches("sheets/trims-wall.svg", SvgWriter.Write(pages.Single(page => page.Title.Contains(": Face: wall,", StringComparison.Ordinal))));
        Golden.Matches("sheets/trims-round.svg", SvgWriter.Write(pages.First(page => page.Title.Contains(": Trims: round, ", StringComparison.Ordinal))));
        Golden.Matches("sheets/trims-frame.svg", SvgWriter.Write(pages.First(page => page.Title.Contains(": Trims: frame, ", StringComparison.Ordinal))));
    }

    /// <summary>GOLDEN_ACCEPT=1 draws docs/picture.svg anew.</summary>
    [Fact]
    public void The_picture_in_the_readme_is_what_the_program_draws() =>
        Golden.Matches("../../docs/picture.svg", SvgWriter.Write(RunDrawings.Of(Samples.GuestShower).Single().Drawing));

    /// <summary>Referees: qpdf, and poppler's pdftotext and pdfinfo.</summary>
    [Theory]
    [InlineData(Paper.A4)]
    [InlineData(Paper.Letter)]
    public void The_printed_file_is_sound_and_holds_every_word(Paper paper) => Tool.InFolder(folder =>
    {
        var pages = JobSheets.Pages(HandPlan.Shower(paper));
        var file = Path.Combine(folder, "sheets.pdf");
        File.WriteAllBytes(file, SheetWriter.Pdf(pages, "Guest shower"));
        var (exit, check) = Tool.Run("qpdf", "--check", file);
        Assert.Equal(0, exit);
        Assert.DoesNotContain("WARNING", check, StringComparison.OrdinalIgnoreCase);
        Assert.Matches($@"Pages:\s+{pages.Count}\s", Tool.Run("pdfinfo", file).Output);
        for (var i = 0; i < pages.Count; i++)
        {
            var number = (i + 1).ToString(CultureInfo.InvariantCulture);
            var read = Letters(Tool.Run("pdftotext", "-raw", "-f", number, "-l", number, file, "-").Output);
            foreach (var text in SheetLook.Texts(pages[i]).Where(t => t.Turned == 0)) Assert.Contains(Letters(text.Words), read, StringComparison.Ordinal);
        }

        return exit;
    });

    /// <summary>Referee: poppler's pdftoppm; both bars on a face's sheet.</summary>
    [Fact]
    public void The_check_bars_on_a_face_s_sheet_measure_what_they_say() => Tool.InFolder(folder =>
    {
        var pages = JobSheets.Pages(HandPlan.Shower());
        var index = pages.ToList().FindIndex(p => p.Title.Contains("Face: north", StringComparison.Ordinal));
        var file = Path.Combine(folder, "sheet.pdf");
        File.WriteAllBytes(file, SheetWriter.Pdf([pages[index]], "North"));
        Assert.Equal(0, Tool.Run("pdftoppm", "-r", "254", "-gray", "-singlefile", file, Path.Combine(folder, "sheet")).Exit);
        var picture = Tool.Grey.Read(Path.Combine(folder, "sheet.pgm"));
        var spans = Enumerable.Range(0, picture.Height).Select(y => picture.DarkSpan(y, 115, 1160)).ToArray();
        Assert.Contains(spans, s => s - 3 is >= 999 and <= 1001);
        Assert.Contains(spans, s => s - 3 is >= 1015 and <= 1017);
        return 0;
    });

    private static string Letters(string words) => new(words.Normalize(NormalizationForm.FormKC).Where(c => !char.IsWhiteSpace(c)).ToArray());
}
