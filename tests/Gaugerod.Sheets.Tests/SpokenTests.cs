using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets.Tests;

/// <summary>Lengths as one calls them across a room.</summary>
public sealed class SpokenTests
{
    [Theory]
    [InlineData(4, 3, 8, "4 and 3 eighths")]
    [InlineData(0, 3, 8, "3 eighths")]
    [InlineData(11, 1, 2, "11 and 1 half")]
    [InlineData(11, 1, 4, "11 and 1 quarter")]
    [InlineData(11, 3, 4, "11 and 3 quarters")]
    [InlineData(2, 1, 16, "2 and 1 sixteenth")]
    [InlineData(12, 0, 1, "12")]
    public void Inches_are_said_with_their_fractions_in_words(int inches, int over, int under, string said) =>
        Assert.Equal(said, Spoken.Length(Length.FromInches(inches, over, under), Tape.Sixteenths));

    [Fact]
    public void Millimetres_are_said_bare_and_a_piece_letter_by_letter()
    {
        Assert.Equal("112 by 300", Spoken.Size(Length.FromMillimetres(112), Length.FromMillimetres(300), Tape.Millimetres));
        Assert.Equal("4 and 3 eighths by 12 inches", Spoken.Size(Length.FromInches(4, 3, 8), Length.FromInches(12), Tape.Sixteenths));
        Assert.Equal("A 14", Spoken.Name("A14"));
        Assert.Equal("B A 3", Spoken.Name("BA3"));
    }
}
