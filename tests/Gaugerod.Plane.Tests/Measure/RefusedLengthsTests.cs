using Gaugerod.Plane.Measure;

namespace Gaugerod.Plane.Tests.Measure;

/// <summary>What is not read, and what is said about it. Nothing is guessed.</summary>
public class RefusedLengthsTests
{
    [Theory]
    [InlineData("1,028", "1,028 written so that its comma can be read one way only", "1.028 mm or 1028 mm")]
    [InlineData("1,028 mm", "1,028 written so that its comma can be read one way only", "1.028 mm or 1028 mm")]
    [InlineData("1,028 cm", "1,028 written so that its comma can be read one way only", "1.028 cm or 1028 cm")]
    [InlineData("96/2", "÷ to divide, or a fraction with its unit", "96 ÷ 2 or 96/2 in")]
    [InlineData("1200 x 1/2", "a unit that says which number is the length", "1200 mm x 1/2 or 1200 x 1/2 in")]
    [InlineData("40 1/2 + 2", "a unit after every number of the sum", "40 1/2 + 2 mm or 40 1/2 + 2 in")]
    [InlineData("120+3 cm", "a unit after every number of the sum", "120 mm+3 cm or 120 cm+3 cm")]
    [InlineData("1 m 28", "a unit after 28", "1 m 28 cm or 1 m 28 mm")]
    public void Two_readings_in_a_metric_job_are_both_named(string text, string expected, string readings) =>
        BothReadings(text, LengthUnit.Millimetre, expected, readings);

    [Theory]
    [InlineData("1,028", "1,028 written so that its comma can be read one way only", "1.028 in or 1028 in")]
    [InlineData("40 -1/2", "a hyphen without spaces to join, or a minus sign to take away", "40 1/2 or 40 \u2212 1/2")]
    [InlineData("40- 1/2", "a hyphen without spaces to join, or a minus sign to take away", "40 1/2 or 40 \u2212 1/2")]
    [InlineData("3' - 4\"", "a hyphen without spaces to join, or a minus sign to take away", "3' 4\" or 3' \u2212 4\"")]
    [InlineData("3' -4 1/2", "a hyphen without spaces to join, or a minus sign to take away", "3' 4 1/2 or 3' \u2212 4 1/2 in")]
    [InlineData("3' - 4", "a hyphen without spaces to join, or a minus sign to take away", "3' 4 or 3' \u2212 4 in")]
    [InlineData("3' + 2", "a unit after every number of the sum", "3' + 2 in or 3' + 2 ft")]
    [InlineData("1028 mm + 35", "a unit after every number of the sum", "1028 mm + 35 in or 1028 mm + 35 mm")]
    public void Two_readings_in_a_job_in_inches_are_both_named(string text, string expected, string readings) =>
        BothReadings(text, LengthUnit.Inch, expected, readings);

    [Theory]
    [InlineData("3' 14\"", "less than 12 in after the ft", "4' 2\"")]
    [InlineData("-3' 14\" + 1", "less than 12 in after the ft", "-4' 2\" + 1")]
    [InlineData("3' 12", "less than 12 in after the ft", "4' 0\"")]
    [InlineData("1 m 120 cm", "less than 100 cm after the m", "2200 mm")]
    [InlineData("12 7", "one number, or a unit or sign between 12 and 7", "12' 7\"")]
    [InlineData("1 028", "one number, or a unit or sign between 1 and 028", "1028")]
    [InlineData("40 3/2", "a fraction under 1 in place of 3/2", "41 1/2")]
    [InlineData("40 4/2", "a fraction under 1 in place of 4/2", "42")]
    [InlineData("40\" 1/2", "a unit after 1/2", "40 1/2 in")]
    [InlineData("1,234.5 mm", "a number with one decimal mark and no others", "1234.5 mm")]
    [InlineData("1.234,5 mm", "a number with one decimal mark and no others", "1234.5 mm")]
    [InlineData("1,000,000 mm", "a number with one decimal mark and no others", "1000000 mm")]
    [InlineData("1028 nm", "a number with a unit: mm, cm, m, in or ft", "1028 mm")]
    [InlineData("40 inchs", "a number with a unit: mm, cm, m, in or ft", "40 inch")]
    [InlineData("3 tf 4", "a number with a unit: mm, cm, m, in or ft", "3 ft 4")]
    [InlineData("3' 4 mm", "one kind of unit, or a sign between", "3' + 4 mm")]
    [InlineData("7.8030000000000002", "at most 12 figures after the point", "7.803")]
    [InlineData("198.19799999999998 mm", "at most 12 figures after the point", "198.198 mm")]
    [InlineData("3.5' 4\"", "a whole number of ft where a smaller unit follows", "3.5' + 4\"")]
    public void A_slip_is_answered_with_what_comes_nearest(string text, string expected, string nearest)
    {
        Assert.Equal(new LengthReading.Refused(text, expected, nearest), LengthText.Read(text, LengthUnit.Inch));
        Assert.IsType<LengthReading.Understood>(LengthText.Read(nearest, LengthUnit.Inch));
    }

    [Theory]
    [InlineData("", "nothing", "a length, such as 40 1/2, 3' 4 1/2\" or 1028 mm")]
    [InlineData("  ", "nothing", "a length, such as 40 1/2, 3' 4 1/2\" or 1028 mm")]
    [InlineData("abc", "abc", "a number with a unit: mm, cm, m, in or ft")]
    [InlineData("\"", "\"", "a length, such as 40 1/2, 3' 4 1/2\" or 1028 mm")]
    [InlineData("-", "-", "a number after -")]
    [InlineData("12 +", "12 +", "a number after 12 +")]
    [InlineData("12 + x 3", "12 + x 3", "a number before x 3")]
    [InlineData("5/0", "5/0", "a number other than 0 to divide by")]
    [InlineData("5 ÷ 0", "5 ÷ 0", "a number other than 0 to divide by")]
    [InlineData("¹⁄₀", "¹⁄₀", "a number other than 0 to divide by")]
    [InlineData("1/2/24", "1/2/24", "one line in a fraction; write ÷ to divide it")]
    [InlineData("12 19", "12 19", "one number, or a unit or sign between 12 and 19")]
    [InlineData("2 6 1 4", "2 6 1 4", "one number, or a unit or sign between 2 and 6")]
    [InlineData("1..2", "1..2", "a number with one decimal mark and no others")]
    [InlineData("12,", "12,", "a number in place of 12,")]
    [InlineData("٤٠", "٤٠", "a length in the figures 0 to 9")]
    [InlineData("12 $", "12 $", "a length of numbers, units and the signs + - x ÷ /")]
    [InlineData("4\" 3'", "4\" 3'", "the larger unit first, each unit once")]
    [InlineData("3' 4'", "3' 4'", "the larger unit first, each unit once")]
    [InlineData("3' 4\" '", "3' 4\" '", "+, -, x or ÷ between 3' 4\" and '")]
    [InlineData("3' x 2'", "3' x 2'", "a count on one side of x; a length times a length is an area")]
    [InlineData("96 ÷ 3'", "96 ÷ 3'", "a count to divide by, not a length")]
    [InlineData("1001 m", "1001 m", "at most 1000 m (39370 1/16 in)")]
    [InlineData("39370.08 in", "39370.08 in", "at most 1000 m (39370 1/16 in)")]
    [InlineData("9999999999999", "9999999999999", "at most 1000 m (39370 1/16 in)")]
    [InlineData("999999999999x999999999999x999999999999x999999999999", "999999999999x999999999999x999999999999x999999999999", "at most 1000 m (39370 1/16 in)")]
    [InlineData("0.00001 mm", "0.00001 mm", "0, or a length of at least 0.0003 mm")]
    [InlineData("1/100000000000 mm", "1/100000000000 mm", "0, or a length of at least 0.0003 mm")]
    public void What_is_no_length_is_told_what_could_stand_there(string text, string found, string expected) =>
        Assert.Equal(new LengthReading.Refused(found, expected, null), LengthText.Read(text, LengthUnit.Inch));

    [Fact]
    public void A_text_past_64_characters_is_not_gone_through() =>
        Assert.Equal(
            new LengthReading.Refused("1+1+1+1+1+1+1+1+1+1+…", "a length in at most 64 characters", null),
            LengthText.Read(string.Join('+', Enumerable.Repeat("1", 40)), LengthUnit.Inch));

    private static void BothReadings(string text, LengthUnit unit, string expected, string readings)
    {
        Assert.Equal(new LengthReading.Refused(text, expected, readings), LengthText.Read(text, unit));
        var values = readings.Split(" or ").Select(r => Assert.IsType<LengthReading.Understood>(LengthText.Read(r, unit)).Value);
        Assert.Equal(2, values.Distinct().Count());
    }
}
