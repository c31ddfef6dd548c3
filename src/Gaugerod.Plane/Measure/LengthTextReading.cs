namespace Gaugerod.Plane.Measure;

/// <summary>What came of reading a length.</summary>
public abstract record LengthReading
{
    private LengthReading()
    {
    }

    /// <summary>It was understood.</summary>
    /// <param name="Value">The length.</param>
    public sealed record Understood(Length Value) : LengthReading
    {
        /// <summary>
        /// Whether a fraction without a unit was taken as inches though the job is in millimetres. It is the rule, and the
        /// usual slip of somebody who means half a millimetre: whoever asks should say what was read.
        /// </summary>
        public bool FractionAsInches { get; init; }

        /// <summary>What the same figures are in millimetres; null unless <see cref="FractionAsInches"/> and nothing in the text has a unit.</summary>
        public Length? InMillimetres { get; init; }
    }

    /// <summary>It was refused; nothing was guessed.</summary>
    /// <param name="Found">What stood there.</param>
    /// <param name="Expected">What could stand there.</param>
    /// <param name="Nearest">What was probably meant, or both readings where it is ambiguous; null when nothing comes near.</param>
    public sealed record Refused(string Found, string Expected, string? Nearest) : LengthReading;
}
