namespace Gaugerod.Plane.Measure;

internal enum LengthTextTokenKind
{
    /// <summary>A number in figures, whole or decimal.</summary>
    Number,

    /// <summary>A fraction in one sign (½) or in raised and lowered figures.</summary>
    Fraction,
    Unit,
    Plus,

    /// <summary>A hyphen or dash: takes away, or joins <c>40-1/2</c> and <c>8'-4"</c>.</summary>
    Hyphen,

    /// <summary>The true minus sign, which only takes away.</summary>
    Minus,
    Times,
    Divide,

    /// <summary>A fraction's line or a division, by what stands round it.</summary>
    Slash,
    End,
}

/// <summary>One word or sign of a typed length.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Start">Where it begins in the text.</param>
/// <param name="End">Where it ends.</param>
/// <param name="Spaced">Whether a space stands before it.</param>
internal readonly record struct LengthTextToken(LengthTextTokenKind Kind, int Start, int End, bool Spaced)
{
    /// <summary>The value of a number or a fraction.</summary>
    internal LengthTextRatio Value { get; init; }

    /// <summary>Whether a number is written without point or comma.</summary>
    internal bool Whole { get; init; }

    /// <summary>Whether a number's comma may be a decimal comma or a thousands mark; its value is then the decimal reading.</summary>
    internal bool TwoWays { get; init; }

    /// <summary>The unit that a unit token names.</summary>
    internal LengthTextUnit Unit { get; init; }
}
