namespace Gaugerod.Engine.Prices;

/// <summary>
/// A number that is not known better: no less than the low, no more than the high, most likely between them. Nothing is said of how probable any of
/// them is. One that is known has all three alike.
/// </summary>
/// <param name="Low">The least.</param>
/// <param name="Likely">What is reckoned with; from the low to the high.</param>
/// <param name="High">The most.</param>
public readonly record struct Spread(decimal Low, decimal Likely, decimal High)
{
    /// <summary>Nought, and known.</summary>
    public static Spread Zero => default;

    /// <summary>Whether its low and its high differ.</summary>
    public bool IsRange => Low != High;

    /// <summary>A number that is known.</summary>
    public static Spread Of(decimal known) => new(known, known, known);

    /// <summary>A range whose likely number is its middle.</summary>
    public static Spread Of(decimal low, decimal high) => new(low, (low + high) / 2, high);

    /// <summary>Lows with lows and highs with highs.</summary>
    public static Spread operator +(Spread one, Spread other) => new(one.Low + other.Low, one.Likely + other.Likely, one.High + other.High);

    /// <summary>Each of the three, changed.</summary>
    public Spread Each(Func<decimal, decimal> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        return new(change(Low), change(Likely), change(High));
    }

    /// <summary>Lows with lows and highs with highs, brought together.</summary>
    public Spread With(Spread other, Func<decimal, decimal, decimal> join)
    {
        ArgumentNullException.ThrowIfNull(join);
        return new(join(Low, other.Low), join(Likely, other.Likely), join(High, other.High));
    }
}
