using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Tests.Drawings;

public sealed class LetteringTests
{
    [Theory]
    [InlineData("4 1/2 in", "4\u00A0¹⁄₂\u00A0in")]
    [InlineData("40 15/16", "40\u00A0¹⁵⁄₁₆")]
    [InlineData("-3/8 in", "-³⁄₈\u00A0in")]
    [InlineData("3' 4 1/2\"", "3' 4\u00A0¹⁄₂\"")]
    [InlineData("1028 mm", "1028\u00A0mm")]
    [InlineData("6 in all", "6\u00A0in all")]
    [InlineData("6 inner", "6 inner")]
    [InlineData("A137.1/2012", "A137.1/2012")]
    [InlineData("1/2/3", "1/2/3")]
    [InlineData("page 3/", "page 3/")]
    public void Fractions_are_set_as_fractions_and_nothing_else_is(string typed, string set) => Assert.Equal(set, Fractions.Set(typed));

    [Fact]
    public void Figures_have_one_width_in_both_weights()
    {
        foreach (var face in new[] { TypeFace.Regular, TypeFace.Bold })
        {
            Assert.Single("0123456789".Select(face.Advance).Distinct());
        }
    }

    [Fact]
    public void Every_letter_the_sheets_need_is_in_the_font()
    {
        foreach (var letter in "0123456789⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉⁄×°±≤≥→·–—äöüßéèçşğıİÅøñ▲■○")
        {
            Assert.True(TypeFace.Regular.Has(letter), $"{letter} is missing");
            Assert.True(TypeFace.Bold.Has(letter), $"{letter} is missing in bold");
        }
    }

    [Fact]
    public void No_line_of_running_text_is_wider_than_its_column()
    {
        var lines = Lettering.Wrap("A long sentence about the first course and averylongwordthatcannotstandinacolumn of it.", 9, bold: false, 30);
        Assert.All(lines, l => Assert.True(Lettering.Width(l, 9) <= 30, l));
        Assert.True(lines.Count > 3);
    }

    // A word of 8,000 letters took half a minute and more when each line was measured letter by letter from its end; no line is wider than the column, nothing is lost.
    [Fact]
    public void A_word_without_end_is_broken_in_no_time_and_loses_no_letter()
    {
        var word = string.Concat(Enumerable.Repeat("mWil😀", 4000));
        var clock = System.Diagnostics.Stopwatch.StartNew();
        var lines = Lettering.Wrap(word, 9, bold: false, 30);
        Assert.True(clock.ElapsedMilliseconds < 1000, $"{clock.ElapsedMilliseconds} ms");
        Assert.Equal(word, string.Concat(lines));
        Assert.All(lines, line => Assert.True(Lettering.Width(line, 9) <= 30));
        Assert.All(lines, line => Assert.False(char.IsLowSurrogate(line[0])));
    }
}
