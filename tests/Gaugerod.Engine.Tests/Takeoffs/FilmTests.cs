using Gaugerod.Engine.Takeoffs;

namespace Gaugerod.Engine.Tests.Takeoffs;

public sealed class FilmTests
{
    private const double SquareFoot = 0.09290304, Mil = 0.0254;

    // Source: 1 US gallon is 231 in3, which is 1604.2 ft2 a mil thick.
    [Theory]
    [InlineData(1, 1604.2)]
    [InlineData(30, 53.5)]
    [InlineData(29.2, 55)]
    [InlineData(14.6, 110)]
    [InlineData(64.2, 25)]
    public void A_gallon_covers_1604_square_feet_over_its_wet_mils(double mils, double squareFeet) =>
        Assert.Equal(squareFeet, Film.Gallon * Film.Covers(mils * Mil) / SquareFoot, squareFeet * 2e-3);

    // Worked by hand: 25 mils dry of what is half water go on 50 mils wet, 32.1 ft2 a gallon.
    [Fact]
    public void What_dries_away_goes_on_top()
    {
        var wet = Film.Wet(25 * Mil, 0.5);
        Assert.Equal(50 * Mil, wet, 1e-9);
        Assert.Equal(32.1, Film.Gallon * Film.Covers(wet) / SquareFoot, 0.05);
        Assert.Equal(1, Film.Litres(1, 1));
    }
}
