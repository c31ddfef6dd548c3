namespace Gaugerod.Engine.Prices;

/// <summary>The mark before the parts of one.</summary>
public enum DecimalMark
{
    /// <summary>A point.</summary>
    Point,

    /// <summary>A comma.</summary>
    Comma,
}

/// <summary>What came of reading a price, a quantity or a pace.</summary>
public abstract record PriceReading
{
    private PriceReading()
    {
    }

    /// <summary>It was read.</summary>
    /// <param name="Value">The number or the range.</param>
    /// <param name="Sign">The sign or the code of a currency that stood beside it; empty for none.</param>
    public sealed record Understood(Spread Value, string Sign) : PriceReading;

    /// <summary>It was not; nothing was guessed.</summary>
    /// <param name="Expected">What could stand there.</param>
    /// <param name="Nearest">What was probably meant; null where that is not plain.</param>
    public sealed record Refused(string Expected, string? Nearest) : PriceReading;
}
