namespace Gaugerod.Plane.Measure;

/// <summary>
/// A length, kept as a whole number of steps of 1/3200 mm. 0.01 mm is 32 steps and 1/128 in is 635, so neither the
/// metric nor the inch tape is ever rounded, and the middle of two 1/64 in marks is still a whole step.
/// </summary>
/// <remarks>
/// The default value is <see cref="Zero"/>. Arithmetic is exact and checked: what does not fit throws
/// <see cref="OverflowException"/> (a <c>long</c> holds 2.8 billion km). There is no implicit way in from a number
/// nor out to one. Immutable and safe to share between threads.
/// </remarks>
public readonly record struct Length : IComparable<Length>
{
    /// <summary>How many steps make a millimetre.</summary>
    public const long StepsPerMillimetre = 3200;

    /// <summary>How many steps make an inch: 25.4 times <see cref="StepsPerMillimetre"/>, exactly.</summary>
    public const long StepsPerInch = 81280;

    private Length(long steps) => Steps = steps;

    /// <summary>No length at all.</summary>
    public static Length Zero => default;

    /// <summary>The length in steps of 1/3200 mm.</summary>
    public long Steps { get; }

    /// <summary>The length in millimetres, exactly: a step is 0.0003125 mm.</summary>
    public decimal Millimetres => Steps / (decimal)StepsPerMillimetre;

    /// <summary>Whether the length is less than nothing.</summary>
    public bool IsNegative => Steps < 0;

    /// <summary>A length of so many steps of 1/3200 mm.</summary>
    public static Length FromSteps(long steps) => new(steps);

    /// <summary>A length of so many whole millimetres.</summary>
    public static Length FromMillimetres(long millimetres) => new(millimetres * StepsPerMillimetre);

    /// <summary>
    /// A length of so many inches and parts of an inch, such as 3 and 5/8. The part must fall on a whole step: any
    /// denominator that divides 81280 does, among them 2, 4, 8, 16, 32, 64, 128, 5 and 10.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">The part does not fall on a whole step.</exception>
    public static Length FromInches(long whole, long numerator = 0, long denominator = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(denominator, 1);
        var part = numerator * StepsPerInch;
        return part % denominator == 0
            ? new((whole * StepsPerInch) + (part / denominator))
            : throw new ArgumentOutOfRangeException(nameof(denominator), denominator, "This part of an inch falls between two steps.");
    }

    /// <summary>The smaller of two lengths.</summary>
    public static Length Min(Length a, Length b) => a.Steps <= b.Steps ? a : b;

    /// <summary>The larger of two lengths.</summary>
    public static Length Max(Length a, Length b) => a.Steps >= b.Steps ? a : b;

    /// <summary>The length without its sign.</summary>
    public Length Abs() => new(Math.Abs(Steps));

    /// <inheritdoc />
    public int CompareTo(Length other) => Steps.CompareTo(other.Steps);

    /// <summary>The length in millimetres, for the debugger; text for people is written elsewhere.</summary>
    public override string ToString() => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{Millimetres:0.#######} mm");

    /// <summary>Adds two lengths.</summary>
    public static Length operator +(Length a, Length b) => new(a.Steps + b.Steps);

    /// <summary>Takes one length from another.</summary>
    public static Length operator -(Length a, Length b) => new(a.Steps - b.Steps);

    /// <summary>The length the other way.</summary>
    public static Length operator -(Length a) => new(-a.Steps);

    /// <summary>So many times a length.</summary>
    public static Length operator *(Length a, long times) => new(a.Steps * times);

    /// <summary>Whether one length is less than another.</summary>
    public static bool operator <(Length a, Length b) => a.Steps < b.Steps;

    /// <summary>Whether one length is more than another.</summary>
    public static bool operator >(Length a, Length b) => a.Steps > b.Steps;

    /// <summary>Whether one length is at most another.</summary>
    public static bool operator <=(Length a, Length b) => a.Steps <= b.Steps;

    /// <summary>Whether one length is at least another.</summary>
    public static bool operator >=(Length a, Length b) => a.Steps >= b.Steps;
}
