namespace Gaugerod.Plane.Measure;

/// <summary>A fraction of whole numbers in lowest terms, so that sums of typed lengths stay exact to the end.</summary>
/// <remarks>Throws <see cref="OverflowException"/> past 38 digits; the reader turns that into a refusal.</remarks>
internal readonly record struct LengthTextRatio
{
    internal LengthTextRatio(Int128 numerator, Int128 denominator)
    {
        var divisor = GreatestDivisor(Int128.Abs(numerator), denominator);
        (Numerator, Denominator) = (numerator / divisor, denominator / divisor);
    }

    internal Int128 Numerator { get; }

    internal Int128 Denominator { get; }

    internal bool IsZero => Numerator == 0;

    internal bool IsUnderOne => Numerator < Denominator;

    internal bool IsWhole => Denominator == 1;

    /// <summary>The nearest whole number; from the middle, the one further from zero.</summary>
    internal Int128 Rounded()
    {
        var magnitude = ((Int128.Abs(Numerator) * 2) + Denominator) / (Denominator * 2);
        return Numerator < 0 ? -magnitude : magnitude;
    }

    public static LengthTextRatio operator +(LengthTextRatio a, LengthTextRatio b) =>
        new((a.Numerator * b.Denominator) + (b.Numerator * a.Denominator), a.Denominator * b.Denominator);

    public static LengthTextRatio operator -(LengthTextRatio a) => new(-a.Numerator, a.Denominator);

    public static LengthTextRatio operator *(LengthTextRatio a, LengthTextRatio b) =>
        new(a.Numerator * b.Numerator, a.Denominator * b.Denominator);

    /// <summary>Divides by a number above zero.</summary>
    public static LengthTextRatio operator /(LengthTextRatio a, LengthTextRatio b) =>
        new(a.Numerator * b.Denominator, a.Denominator * b.Numerator);

    private static Int128 GreatestDivisor(Int128 a, Int128 b)
    {
        while (b != 0) (a, b) = (b, a % b);
        return a;
    }
}
