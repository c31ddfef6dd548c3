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

/// <summary>Reads and writes lengths, in one place for every field, file and sheet. Never the thread's culture.</summary>
public static class LengthText
{
    /// <summary>Reads a length as a person types it. A bare number is in the job's unit.</summary>
    public static LengthReading Read(string text, LengthUnit unit) => throw new NotSupportedException(text + unit);

    /// <summary>Writes a length to the nearest mark of the tape, with its unit: <c>40 1/2 in</c>, <c>1028 mm</c>.</summary>
    public static string Nearest(Length length, Tape tape) => throw new NotSupportedException();

    /// <summary>Writes a length to the last mark below it, for a cut that must fit a gap.</summary>
    public static string Down(Length length, Tape tape) => throw new NotSupportedException();
}
