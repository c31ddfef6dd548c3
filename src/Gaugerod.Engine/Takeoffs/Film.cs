namespace Gaugerod.Engine.Takeoffs;

/// <summary>What is rolled or brushed on: how much makes how thick a film.</summary>
internal static class Film
{
    /// <summary>A US gallon, in litres.</summary>
    public const double Gallon = 3.785411784;

    /// <summary>How thick it must go on wet to dry to a film, in the unit of the film.</summary>
    /// <param name="dry">The film when dry; more than zero.</param>
    /// <param name="solids">What of it does not dry away, by volume: more than 0, at most 1.</param>
    public static double Wet(double dry, double solids) => dry / solids;

    /// <summary>What an area takes, in litres: a millimetre on a square metre is a litre.</summary>
    /// <param name="squareMetres">The area; zero or more.</param>
    /// <param name="wetMillimetres">How thick it goes on; zero or more.</param>
    public static double Litres(double squareMetres, double wetMillimetres) => squareMetres * wetMillimetres;

    /// <summary>What a litre covers, in square metres.</summary>
    public static double Covers(double wetMillimetres) => 1 / wetMillimetres;
}
