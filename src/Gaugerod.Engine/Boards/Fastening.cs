namespace Gaugerod.Engine.Boards;

/// <summary>The screws of a sheet set out on a grid from its edges.</summary>
internal static class Fastening
{
    /// <summary>How many screws one sheet takes.</summary>
    /// <param name="width">How wide the sheet is, any unit.</param>
    /// <param name="length">How long it is, the same unit.</param>
    /// <param name="apart">How far two screws may stand apart at the most; more than zero.</param>
    /// <param name="inset">How far the outer ones stand from the edge; zero or more, less than half of either side.</param>
    public static int Screws(double width, double length, double apart, double inset) => Along(width, apart, inset) * Along(length, apart, inset);

    /// <summary>How many stand in one row.</summary>
    public static int Along(double side, double apart, double inset) => (int)Math.Ceiling((side - (2 * inset)) / apart * (1 - 1e-12)) + 1;
}
