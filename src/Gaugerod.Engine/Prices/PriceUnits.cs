namespace Gaugerod.Engine.Prices;

/// <summary>The words for what a price is for, and what one is in another.</summary>
public static class PriceUnits
{
    /// <summary>A foot, in metres.</summary>
    public const decimal MetresInFoot = 0.3048m;

    private static readonly (PriceUnit Unit, string Word, string[] Also)[] s_words =
    [
        (PriceUnit.Box, "box", ["boxes", "carton", "cartons", "ctn"]), (PriceUnit.Each, "each", ["ea", "piece", "pieces", "pc", "pcs", "bar", "tile"]),
        (PriceUnit.SquareMetre, "m2", ["m²", "sqm", "sq m"]), (PriceUnit.SquareFoot, "ft2", ["ft²", "sqft", "sq ft", "sf"]),
        (PriceUnit.Metre, "m", ["lm", "metre", "meter"]), (PriceUnit.Foot, "ft", ["lf", "lft", "foot", "feet"]), (PriceUnit.Hour, "hour", ["h", "hr", "hours"]),
        (PriceUnit.Pack, "pack", ["packs", "bag", "bags", "bucket", "tube", "roll"]), (PriceUnit.Lump, "lump", ["lump sum", "sum"]),
    ];

    /// <summary>All words, in the order they are offered in.</summary>
    public static IEnumerable<string> All => s_words.Select(one => one.Word);

    /// <summary>The word for one.</summary>
    public static string Word(PriceUnit unit) => s_words.First(one => one.Unit == unit).Word;

    /// <summary>A quantity with its unit, for people: <c>3.2 m²</c>, <c>8.5 h</c>, <c>9 × box of 10</c>, <c>114</c>; nothing for all of it.</summary>
    /// <param name="number">The quantity, in words.</param>
    /// <param name="unit">The unit's word, or what one is called.</param>
    public static string Say(string number, string unit) => unit switch
    {
        "m2" => number + " m²",
        "ft2" => number + " ft²",
        "m" or "ft" => $"{number} {unit}",
        "hour" => number + " h",
        "each" => number,
        "lump" when string.Equals(number, "1", StringComparison.Ordinal) => "",
        _ => $"{number} × {unit}",
    };

    /// <summary>What a word says, the usual other words for it among them, in small letters or capitals; null for none.</summary>
    public static PriceUnit? Read(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        var plain = word.Trim().TrimEnd('.');
        foreach (var (unit, own, also) in s_words)
        {
            if (string.Equals(own, plain, StringComparison.OrdinalIgnoreCase) || also.Contains(plain, StringComparer.OrdinalIgnoreCase)) return unit;
        }

        return null;
    }

    /// <summary>Whether it measures an area.</summary>
    public static bool IsArea(PriceUnit unit) => unit is PriceUnit.SquareMetre or PriceUnit.SquareFoot;

    /// <summary>Whether it measures a length.</summary>
    public static bool IsLength(PriceUnit unit) => unit is PriceUnit.Metre or PriceUnit.Foot;

    /// <summary>Square metres or metres in the unit asked for, not rounded.</summary>
    internal static decimal In(PriceUnit unit, decimal metric) => unit switch
    {
        PriceUnit.SquareFoot => metric / (MetresInFoot * MetresInFoot),
        PriceUnit.Foot => metric / MetresInFoot,
        _ => metric,
    };
}
