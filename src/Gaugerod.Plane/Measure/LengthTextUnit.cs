namespace Gaugerod.Plane.Measure;

/// <summary>A unit as it may stand behind a number.</summary>
internal enum LengthTextUnit
{
    None,
    Millimetre,
    Centimetre,
    Metre,
    Inch,
    Foot,
}

/// <summary>What the units are called and how long they are.</summary>
internal static class LengthTextUnits
{
    private static readonly (string Word, LengthTextUnit Unit)[] Words =
    [
        ("mm", LengthTextUnit.Millimetre), ("cm", LengthTextUnit.Centimetre), ("m", LengthTextUnit.Metre),
        ("in", LengthTextUnit.Inch), ("inch", LengthTextUnit.Inch), ("inches", LengthTextUnit.Inch),
        ("ft", LengthTextUnit.Foot), ("foot", LengthTextUnit.Foot), ("feet", LengthTextUnit.Foot),
    ];

    /// <summary>The unit a word names, in capitals or not; <see cref="LengthTextUnit.None"/> for any other word.</summary>
    internal static LengthTextUnit Named(ReadOnlySpan<char> word)
    {
        foreach (var (name, unit) in Words)
        {
            if (word.Equals(name, StringComparison.OrdinalIgnoreCase)) return unit;
        }

        return LengthTextUnit.None;
    }

    /// <summary>The unit's word that one slip of the finger turns into this one; null for none. <c>m</c> is too short to be missed.</summary>
    internal static string? NearestWord(string word)
    {
        foreach (var (name, _) in Words)
        {
            if (name.Length > 1 && word.Length > 1 && OneSlip(word, name)) return name;
        }

        return null;
    }

    internal static long Steps(LengthTextUnit unit) => unit switch
    {
        LengthTextUnit.Millimetre => Length.StepsPerMillimetre,
        LengthTextUnit.Centimetre => Length.StepsPerMillimetre * 10,
        LengthTextUnit.Metre => Length.StepsPerMillimetre * 1000,
        LengthTextUnit.Inch => Length.StepsPerInch,
        LengthTextUnit.Foot => Length.StepsPerInch * 12,
        _ => throw new ArgumentOutOfRangeException(nameof(unit), unit, "No unit, so no length."),
    };

    internal static bool IsImperial(LengthTextUnit unit) => unit is LengthTextUnit.Inch or LengthTextUnit.Foot;

    internal static string Word(LengthTextUnit unit) => unit switch
    {
        LengthTextUnit.Millimetre => "mm",
        LengthTextUnit.Centimetre => "cm",
        LengthTextUnit.Metre => "m",
        LengthTextUnit.Inch => "in",
        LengthTextUnit.Foot => "ft",
        _ => "",
    };

    internal static LengthTextUnit Of(LengthUnit unit) =>
        unit == LengthUnit.Inch ? LengthTextUnit.Inch : LengthTextUnit.Millimetre;

    // One letter wrong, missing, too many, or two neighbours exchanged.
    private static bool OneSlip(string typed, string name)
    {
        var same = 0;
        while (same < typed.Length && same < name.Length && char.ToLowerInvariant(typed[same]) == name[same]) same++;
        var a = typed.AsSpan(same);
        var b = name.AsSpan(same);
        if (a.Length == 0 || b.Length == 0) return a.Length + b.Length == 1;
        return Rest(a[1..], b[1..]) || Rest(a[1..], b) || Rest(a, b[1..])
            || (a.Length > 1 && b.Length > 1 && char.ToLowerInvariant(a[0]) == b[1] && char.ToLowerInvariant(a[1]) == b[0] && Rest(a[2..], b[2..]));

        static bool Rest(ReadOnlySpan<char> x, ReadOnlySpan<char> y) => x.Equals(y, StringComparison.OrdinalIgnoreCase);
    }
}
