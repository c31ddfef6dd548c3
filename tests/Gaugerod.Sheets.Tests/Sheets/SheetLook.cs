using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>What letters cover on the paper, reckoned from the font's own widths.</summary>
internal static class SheetLook
{
    public static IEnumerable<Mark.Text> Texts(Drawing page) => page.Marks.OfType<Mark.Text>();

    /// <summary>The box of the letters, from the baseline to the top of a capital.</summary>
    public static Frame Box(Mark.Text text)
    {
        var width = Lettering.Width(text.Words, text.Size, text.Bold);
        var cap = Lettering.Cap(text.Size);
        var back = text.Anchor switch { Anchor.Middle => width / 2, Anchor.End => width, _ => 0 };
        return text.Turned == 0
            ? new(text.At.X - back, text.At.Y - cap, width, cap)
            : new(text.At.X - cap, text.At.Y - (width - back), cap, width);
    }

    /// <summary>A page's words as one reads them in the file, fractions as typed.</summary>
    public static string Words(Drawing page) => string.Join('\n', Texts(page).Select(t => Plain(t.Words)));

    public static string Plain(string words) => words.Normalize(System.Text.NormalizationForm.FormKC).Replace('\u2044', '/');
}
