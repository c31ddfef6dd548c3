using Gaugerod.Plane.Measure;

namespace Gaugerod.Plane.Tests.Measure;

/// <summary>
/// The forms a length takes on site. Sources: the inch is 25.4 mm exactly (international yard and pound agreement,
/// 1959); a foot is 12 in; how the forms are spelled is common practice, no source.
/// </summary>
public class ReadingLengthsTests
{
    [Theory]
    [InlineData("1028", "1028")]
    [InlineData("1028 mm", "1028")]
    [InlineData("1028mm", "1028")]
    [InlineData("1028 MM", "1028")]
    [InlineData("102.8 cm", "1028")]
    [InlineData("102,8 cm", "1028")]
    [InlineData("102,8", "102.8")]
    [InlineData("1.028 m", "1028")]
    [InlineData("1,028 m", "1028")]
    [InlineData("1 m 28 mm", "1028")]
    [InlineData("1 m 2 cm 8 mm", "1028")]
    [InlineData("0,125", "0.125")]
    [InlineData(",5", "0.5")]
    [InlineData("1234,500", "1234.5")]
    [InlineData("40 1/2", "1028.7")]
    [InlineData("3'4 1/2", "1028.7")]
    [InlineData("½", "12.7")]
    [InlineData("-12", "-12")]
    [InlineData("1200+35", "1235")]
    [InlineData("1200 \u2212 35", "1165")]
    [InlineData("1200-35", "1165")]
    [InlineData("96 / 2", "48")]
    [InlineData("96 ÷ 2", "48")]
    [InlineData("300 * 4 + 3 x 3", "1209")]
    [InlineData("2 x 3 1/2", "177.8")]
    [InlineData("1/2 mm", "0.5")]
    [InlineData("1000 m", "1000000")]
    [InlineData("\u00a01028\u202fmm ", "1028")]
    public void A_metric_job_reads(string text, string millimetres) => Reads(text, LengthUnit.Millimetre, millimetres);

    [Theory]
    [InlineData("40 1/2", "1028.7")]
    [InlineData("40-1/2", "1028.7")]
    [InlineData("40 - 1/2", "1003.3")]
    [InlineData("40\u22121/2", "1003.3")]
    [InlineData("40½", "1028.7")]
    [InlineData("40 ½", "1028.7")]
    [InlineData("40-½", "1028.7")]
    [InlineData("40 1/2\"", "1028.7")]
    [InlineData("40.5in", "1028.7")]
    [InlineData("40.5 in.", "1028.7")]
    [InlineData("40,5 inches", "1028.7")]
    [InlineData("3' 4-1/2\"", "1028.7")]
    [InlineData("3'4 1/2", "1028.7")]
    [InlineData("3ft 4.5in", "1028.7")]
    [InlineData("3 feet 4½ inches", "1028.7")]
    [InlineData("3′4½″", "1028.7")]
    [InlineData("3’ 4½”", "1028.7")]
    [InlineData("3’ 4”", "1016")]
    [InlineData("3'4''", "1016")]
    [InlineData("3'-4 1/2\"", "1028.7")]
    [InlineData("3'-4-1/2\"", "1028.7")]
    [InlineData("3' 1/2\"", "927.1")]
    [InlineData("3'-1/2", "927.1")]
    [InlineData("3' - 1'", "609.6")]
    [InlineData("3'-1'", "609.6")]
    [InlineData("3'", "914.4")]
    [InlineData("3.5'", "1066.8")]
    [InlineData("3 1/2'", "1066.8")]
    [InlineData("1/2\"", "12.7")]
    [InlineData(".5\"", "12.7")]
    [InlineData("-1/8", "-3.175")]
    [InlineData("-3' 4\"", "-1016")]
    [InlineData("⅛", "3.175")]
    [InlineData("3 ⅞", "98.425")]
    [InlineData("¹⁵⁄₁₆", "23.8125")]
    [InlineData("4⅟16", "103.1875")]
    [InlineData("4 ¹⁄16", "103.1875")]
    [InlineData("1 1/128", "25.5984375")]
    [InlineData("96/2", "1219.2")]
    [InlineData("96 / 2", "1219.2")]
    [InlineData("96÷2", "1219.2")]
    [InlineData("1200+35", "31369")]
    [InlineData("12-7", "127")]
    [InlineData("12 1/8 x 8", "2463.8")]
    [InlineData("3'4 x 2", "2032")]
    [InlineData("3'4x2", "2032")]
    [InlineData("2 x 3 1/2", "177.8")]
    [InlineData("1/2 x 3 in", "38.1")]
    [InlineData("8 x 12 + 7 x 1/8", "2460.625")]
    [InlineData("1028 mm", "1028")]
    [InlineData("3' + 10 mm", "924.4")]
    public void A_job_in_inches_reads(string text, string millimetres) => Reads(text, LengthUnit.Inch, millimetres);

    [Fact]
    public void A_third_of_an_inch_goes_to_the_nearest_step() =>
        Assert.Equal(new LengthReading.Understood(Length.FromSteps(27093)), LengthText.Read("1/3", LengthUnit.Inch));

    [Fact]
    public void A_sum_is_exact_to_its_end() =>
        Assert.Equal(new LengthReading.Understood(Length.FromInches(1)), LengthText.Read("1/3 + 1/3 + 1/3", LengthUnit.Inch));

    [Theory]
    [InlineData("2400 1/2", "60972.7", "2400.5")]
    [InlineData("40½", "1028.7", "40.5")]
    [InlineData("1/2", "12.7", "0.5")]
    [InlineData("-1/8", "-3.175", "-0.125")]
    [InlineData("2 1/2 x 2", "127", "5")]
    [InlineData("20 mm + 1/2", "32.7", null)]
    public void A_fraction_without_a_unit_in_a_metric_job_is_inches_and_says_what_it_would_be_in_millimetres(string text, string millimetres, string? meant)
    {
        var read = Assert.IsType<LengthReading.Understood>(LengthText.Read(text, LengthUnit.Millimetre));
        Assert.True(read.FractionAsInches);
        Assert.Equal(millimetres, LengthText.ExactMillimetres(read.Value));
        Assert.Equal(meant, read.InMillimetres is { } length ? LengthText.ExactMillimetres(length) : null);
    }

    [Theory]
    [InlineData("40 1/2 in", LengthUnit.Millimetre)]
    [InlineData("3' 4 1/2", LengthUnit.Millimetre)]
    [InlineData("40 in + 1/2", LengthUnit.Millimetre)]
    [InlineData("2400.5", LengthUnit.Millimetre)]
    [InlineData("1/2 mm", LengthUnit.Millimetre)]
    [InlineData("40 1/2", LengthUnit.Inch)]
    public void Where_the_inch_is_stated_or_the_job_is_in_inches_there_is_nothing_to_say(string text, LengthUnit unit) =>
        Assert.False(Assert.IsType<LengthReading.Understood>(LengthText.Read(text, unit)).FractionAsInches);

    private static void Reads(string text, LengthUnit unit, string millimetres)
    {
        var value = Assert.IsType<LengthReading.Understood>(LengthText.Read(text, unit)).Value;
        Assert.Equal(decimal.Parse(millimetres, System.Globalization.CultureInfo.InvariantCulture), value.Millimetres);
    }
}
