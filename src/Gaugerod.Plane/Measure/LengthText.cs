namespace Gaugerod.Plane.Measure;

/// <summary>Reads and writes lengths, in one place for every field, file and sheet. Never the thread's culture.</summary>
public static class LengthText
{
    /// <summary>The longest text that is read, in characters.</summary>
    public const int LongestText = 64;

    /// <summary>The greatest length that is read, either way: 1000 m.</summary>
    public static Length Greatest { get; } = Length.FromMillimetres(1_000_000);

    /// <summary>Reads a length as a person types it. A bare number is in the job's unit.</summary>
    /// <remarks>
    /// <list type="bullet">
    /// <item>Units: <c>mm cm m in ft</c>, the marks <c>' "</c> and their curly and prime forms, <c>''</c> for inches.</item>
    /// <item>Fractions: <c>40 1/2</c>, <c>40-1/2</c>, <c>40½</c>. One without a unit means inches, in a metric job too.
    /// <c>8'-4"</c> is eight feet four; <c>12-7</c> is a difference.</item>
    /// <item>Decimals: a point always. A comma unless it could mark thousands: <c>102,8</c> and <c>1,028 m</c> are read,
    /// <c>1,028</c> is refused with both readings.</item>
    /// <item>Sums: <c>+ - x * ÷</c>, and <c>/</c> where it is not a fraction's line (spaces round it make it division).
    /// One side of <c>x</c> is a count. Where numbers without a unit could take either of two units, the sum is refused.</item>
    /// <item>Below zero is read; whether that makes sense is for the caller to say.</item>
    /// </list>
    /// What falls between two steps (1/3 in, or many decimals) is taken to the nearest step, at most 0.00016 mm away.
    /// Takes time in proportion to the text and throws for no text but null.
    /// </remarks>
    /// <param name="text">At most <see cref="LongestText"/> characters.</param>
    /// <param name="unit">The job's unit.</param>
    public static LengthReading Read(string text, LengthUnit unit)
    {
        ArgumentNullException.ThrowIfNull(text);
        return LengthTextReader.Read(text, unit);
    }

    /// <summary>Writes a length to the nearest mark of the tape, with its unit: <c>40 1/2 in</c>, <c>1028 mm</c>.</summary>
    /// <remarks>Inch marks that are a whole number of 1/128 in are shown as reduced fractions, all others as decimals.</remarks>
    public static string Nearest(Length length, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(tape);
        return LengthTextWriter.WithUnit(tape.Nearest(length), tape);
    }

    /// <summary>
    /// As <see cref="Nearest"/>, but finer where the tape would hide a part: to 1/128 in, else 0.0001 in; to 0.01 mm. For a
    /// message in which a length and its limit must not look alike.
    /// </summary>
    public static string Finer(Length length, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(tape);
        if (tape.Nearest(length) == length) return Nearest(length, tape);
        if (tape.Unit == LengthUnit.Millimetre) return $"{length.Millimetres.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture)} mm";
        var fine = new Tape(LengthUnit.Inch, Length.FromInches(0, 1, 128));
        return fine.Nearest(length) == length
            ? Nearest(length, fine)
            : $"{(length.Steps / (decimal)Length.StepsPerInch).ToString("0.####", System.Globalization.CultureInfo.InvariantCulture)} in";
    }

    /// <summary>As <see cref="Finer"/>, but in millimetres to the last step where that would be read as another length.</summary>
    public static string Exact(Length length, Tape tape)
    {
        var said = Finer(length, tape);
        return Read(said, tape.Unit) is LengthReading.Understood { Value: var read } && read == length ? said : ExactMillimetres(length) + " mm";
    }

    /// <summary>Writes a length to the last mark below it, for a cut that must fit a gap. Below zero it goes down too.</summary>
    public static string Down(Length length, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(tape);
        return LengthTextWriter.WithUnit(tape.Down(length), tape);
    }

    /// <summary>As <see cref="Down"/>, but what is less than a mark is said to be under it and never to be nothing: <c>under 1 mm</c>.</summary>
    public static string Narrowest(Length length, Tape tape) => IsUnderAMark(length, tape) ? $"under {Nearest(tape.Mark, tape)}" : Down(length, tape);

    /// <summary>As <see cref="Narrowest"/> without the unit.</summary>
    public static string NarrowestBare(Length length, Tape tape) => IsUnderAMark(length, tape) ? $"under {NearestBare(tape.Mark, tape)}" : DownBare(length, tape);

    /// <summary>As <see cref="Nearest"/> without the unit, for tables that name it once: <c>40 1/2</c>, <c>1028</c>.</summary>
    public static string NearestBare(Length length, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(tape);
        return LengthTextWriter.Bare(tape.Nearest(length), tape);
    }

    /// <summary>As <see cref="Down"/> without the unit.</summary>
    public static string DownBare(Length length, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(tape);
        return LengthTextWriter.Bare(tape.Down(length), tape);
    }

    /// <summary>Writes a length to the nearest mark in feet and inches: <c>8' 4 5/16"</c>, <c>8' 0"</c>, <c>4 5/16"</c> under a foot.</summary>
    /// <exception cref="ArgumentException">The tape does not count inches.</exception>
    public static string FeetNearest(Length length, Tape tape)
    {
        ThrowIfNotInches(tape);
        return LengthTextWriter.Feet(tape.Nearest(length), tape);
    }

    /// <summary>As <see cref="FeetNearest"/>, to the last mark below.</summary>
    /// <exception cref="ArgumentException">The tape does not count inches.</exception>
    public static string FeetDown(Length length, Tape tape)
    {
        ThrowIfNotInches(tape);
        return LengthTextWriter.Feet(tape.Down(length), tape);
    }

    /// <summary>Writes a length in millimetres exactly, without the unit, for files: <c>1028.7</c>. At most seven decimals, a point, no thousands mark.</summary>
    public static string ExactMillimetres(Length length) =>
        length.Millimetres.ToString("0.#######", System.Globalization.CultureInfo.InvariantCulture);

    private static bool IsUnderAMark(Length length, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(tape);
        return length > Length.Zero && length < tape.Mark;
    }

    private static void ThrowIfNotInches(Tape tape)
    {
        ArgumentNullException.ThrowIfNull(tape);
        if (tape.Unit != LengthUnit.Inch) throw new ArgumentException("Feet are shown from a tape in inches.", nameof(tape));
    }
}
