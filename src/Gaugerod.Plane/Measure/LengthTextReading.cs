namespace Gaugerod.Plane.Measure;

/// <summary>What came of reading a length.</summary>
public abstract record LengthReading
{
    private LengthReading()
    {
    }

    /// <summary>It was understood.</summary>
    /// <param name="Value">The length.</param>
    public sealed record Understood(Length Value) : LengthReading;

    /// <summary>It was refused; nothing was guessed.</summary>
    /// <param name="Found">What stood there.</param>
    /// <param name="Expected">What could stand there.</param>
    /// <param name="Nearest">What was probably meant, or both readings where it is ambiguous; null when nothing comes near.</param>
    public sealed record Refused(string Found, string Expected, string? Nearest) : LengthReading;
}
