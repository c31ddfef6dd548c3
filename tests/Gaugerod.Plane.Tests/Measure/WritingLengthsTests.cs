using Gaugerod.Plane.Measure;

namespace Gaugerod.Plane.Tests.Measure;

public class WritingLengthsTests
{
    private static readonly Tape ThirtySeconds = new(LengthUnit.Inch, Length.FromInches(0, 1, 32));
    private static readonly Tape Tenths = new(LengthUnit.Inch, Length.FromInches(0, 1, 10));
    private static readonly Tape HalfMillimetres = new(LengthUnit.Millimetre, Length.FromSteps(1600));

    // A reading of 7.97 in to a sixteenth carries to the next inch: worked by hand, 7.97 x 16 = 127.52, and 128/16 = 8.
    [Fact]
    public void Sixteenths_carry_to_the_next_inch()
    {
        Assert.Equal("8 in", LengthText.Nearest(Read("7.97 in"), Tape.Sixteenths));
        Assert.Equal("7 31/32 in", LengthText.Nearest(Read("7.97 in"), ThirtySeconds));
    }

    // Worked by hand: 95.99 x 16 = 1535.84, so 96 in.
    [Fact]
    public void Inches_carry_to_the_next_foot() => Assert.Equal("8' 0\"", LengthText.FeetNearest(Read("95.99 in"), Tape.Sixteenths));

    // Source: a published mathematics exercise for trades on feet, inches and fractions: 73.0185 in is 6 ft 1 1/32 in.
    [Fact]
    public void An_exercise_in_feet_and_fractions_comes_out()
    {
        Assert.Equal("6' 1 1/32\"", LengthText.FeetNearest(Read("73.0185 in"), ThirtySeconds));
        Assert.Equal("6' 1\"", LengthText.FeetNearest(Read("73.0185 in"), Tape.Sixteenths));
    }

    // Worked by hand: 4.33 x 16 = 69.28 and 4.33 x 32 = 138.56, so 5/16 and 11/32 over 4 in.
    [Fact]
    public void Feet_inches_and_a_reduced_fraction()
    {
        Assert.Equal("8' 4 5/16\"", LengthText.FeetNearest(Read("100.33 in"), Tape.Sixteenths));
        Assert.Equal("8' 4 11/32\"", LengthText.FeetNearest(Read("100.33 in"), ThirtySeconds));
        Assert.Equal("100 5/16 in", LengthText.Nearest(Read("100.33 in"), Tape.Sixteenths));
    }

    // 600 mm / 25.4 = 23.622 in, the inch being 25.4 mm exactly; 0.622 x 16 = 9.95.
    [Fact]
    public void Six_hundred_millimetres_on_an_inch_tape() =>
        Assert.Equal("23 5/8 in", LengthText.Nearest(Read("600 mm"), Tape.Sixteenths));

    [Theory]
    [InlineData("40 1/2", "40 1/2 in", "40 1/2 in", "3' 4 1/2\"")]
    [InlineData("40 8/16", "40 1/2 in", "40 1/2 in", "3' 4 1/2\"")]
    [InlineData("-1/8", "-1/8 in", "-1/8 in", "-1/8\"")]
    [InlineData("0", "0 in", "0 in", "0\"")]
    [InlineData("12 5/16", "12 5/16 in", "12 5/16 in", "1' 0 5/16\"")]
    [InlineData("11 127/128", "12 in", "11 15/16 in", "1' 0\"")]
    [InlineData("-11 127/128", "-12 in", "-12 in", "-1' 0\"")]
    [InlineData("3/64", "1/16 in", "0 in", "1/16\"")]
    [InlineData("-1/64", "0 in", "-1/16 in", "0\"")]
    public void On_a_tape_in_sixteenths(string length, string nearest, string down, string feet)
    {
        Assert.Equal(nearest, LengthText.Nearest(Read(length), Tape.Sixteenths));
        Assert.Equal(down, LengthText.Down(Read(length), Tape.Sixteenths));
        Assert.Equal(feet, LengthText.FeetNearest(Read(length), Tape.Sixteenths));
        Assert.Equal(nearest, LengthText.NearestBare(Read(length), Tape.Sixteenths) + " in");
        Assert.Equal(down, LengthText.DownBare(Read(length), Tape.Sixteenths) + " in");
    }

    [Theory]
    [InlineData("1028.5 mm", "1029 mm", "1028 mm", "1028.5 mm", "1028.5")]
    [InlineData("1028 mm", "1028 mm", "1028 mm", "1028.0 mm", "1028")]
    [InlineData("-0.5 mm", "-1 mm", "-1 mm", "-0.5 mm", "-0.5")]
    [InlineData("-0.2 mm", "0 mm", "-1 mm", "0.0 mm", "-0.2")]
    [InlineData("12.34 mm", "12 mm", "12 mm", "12.5 mm", "12.34")]
    [InlineData("1/128 in", "0 mm", "0 mm", "0.0 mm", "0.1984375")]
    public void On_a_tape_in_millimetres(string length, string nearest, string down, string halves, string exact)
    {
        Assert.Equal(nearest, LengthText.Nearest(Read(length), Tape.Millimetres));
        Assert.Equal(down, LengthText.Down(Read(length), Tape.Millimetres));
        Assert.Equal(halves, LengthText.Nearest(Read(length), HalfMillimetres));
        Assert.Equal(exact, LengthText.ExactMillimetres(Read(length)));
    }

    [Fact]
    public void Marks_that_are_no_binary_fraction_of_an_inch_are_decimals()
    {
        Assert.Equal("40.5 in", LengthText.Nearest(Read("40 1/2"), Tenths));
        Assert.Equal("40.0 in", LengthText.Nearest(Read("40"), Tenths));
        Assert.Equal("3' 4.5\"", LengthText.FeetNearest(Read("40 1/2"), Tenths));
    }

    [Fact]
    public void The_finest_inch_mark_is_a_hundred_and_twenty_eighth() =>
        Assert.Equal("1 127/128 in", LengthText.Nearest(Read("1 127/128"), new(LengthUnit.Inch, Length.FromInches(0, 1, 128))));

    [Fact]
    public void Feet_are_not_shown_from_a_metric_tape()
    {
        Assert.Throws<ArgumentException>(() => LengthText.FeetNearest(Length.Zero, Tape.Millimetres));
        Assert.Throws<ArgumentException>(() => LengthText.FeetDown(Length.Zero, Tape.Millimetres));
    }

    private static Length Read(string text) => Assert.IsType<LengthReading.Understood>(LengthText.Read(text, LengthUnit.Inch)).Value;

    /// <summary>Reckoned by hand: 300.4 mm; 40 5/128 in; 1 in less 1/81280 of it.</summary>
    [Theory]
    [InlineData(961_280, LengthUnit.Millimetre, "300.4 mm")]
    [InlineData(960_000, LengthUnit.Millimetre, "300 mm")]
    [InlineData(3_254_375, LengthUnit.Inch, "40 5/128 in")]
    [InlineData(3_251_200, LengthUnit.Inch, "40 in")]
    [InlineData(81_272, LengthUnit.Inch, "0.9999 in")]
    public void What_the_tape_would_hide_is_written_finer_where_two_lengths_must_not_look_alike(long steps, LengthUnit unit, string text) =>
        Assert.Equal(text, LengthText.Finer(Length.FromSteps(steps), unit == LengthUnit.Inch ? Tape.Sixteenths : Tape.Millimetres));
}
