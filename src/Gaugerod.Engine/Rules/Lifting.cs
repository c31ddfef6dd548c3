using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>What one person lifts, against what boxes of tile and bags weigh.</summary>
internal static class Lifting
{
    // Porcelain, 2.4 g/cm3: common practice, no source.
    private const decimal GramsPerCubicMillimetre = 0.0024m;

    private const decimal GramsPerPound = 453.59237m;

    private const string Porcelain = "weight reckoned as porcelain of 2.4 g/cm³, common practice, no source";

    private static readonly Ruling s_limit = LimitTable.For(null, LimitKeys.LoadOfOne);

    /// <summary>What one person lifts at most in the best posture, in grams.</summary>
    internal static decimal Most { get; } = (decimal)s_limit.Most.Number * 1000;

    /// <summary>About what a box weighs, in grams, taken as porcelain; null when the thickness is not known.</summary>
    internal static decimal? BoxGrams(Product product) => product.Thickness == Length.Zero
        ? null
        : product.Width.Millimetres * product.Height.Millimetres * product.Thickness.Millimetres * GramsPerCubicMillimetre * product.PerBox;

    /// <summary>What a pack weighs by its own words, such as <c>50 lb bag</c>, in grams; null where they do not say.</summary>
    internal static decimal? PackGrams(string pack)
    {
        var words = pack.Split(' ', '\u00a0');
        for (var i = 0; i + 1 < words.Length; i++)
        {
            var unit = words[i + 1] switch { "lb" or "lbs" => GramsPerPound, "kg" => 1000, _ => 0 };
            if (unit > 0 && decimal.TryParse(words[i], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number is > 0 and < 10_000) return number * unit;
        }

        return null;
    }

    /// <summary>What there is to say of a tile's box.</summary>
    internal static Finding Of(Product product, Region? region, Tape tape)
    {
        var source = $"{Source(region)}; {Porcelain}";
        if (BoxGrams(product) is not { } grams) return new(FindingLevel.Note, "caution-lifting", product.Name, "Tile boxes are heavy. Lift close to the body with the legs, in twos or with a barrow; read the weight on the box.", Limit(tape), "not known without the thickness", source);
        return new(
            FindingLevel.Note, "caution-lifting", product.Name,
            grams > Most
                ? "A box weighs more than one person should lift. Lift in twos, use a barrow, or carry fewer tiles; read the weight on the box."
                : "Tile boxes are heavy. Lift close to the body with the legs, in twos or with a barrow; read the weight on the box.",
            Limit(tape), $"about {Weight(grams, tape)} a box", source);
    }

    /// <summary>What there is to say of a pack; null where its weight is not known, or one person lifts it.</summary>
    internal static Finding? Of(Supply supply, Region? region, Tape tape) => PackGrams(supply.Pack) is { } grams && grams > Most
        ? new(FindingLevel.Note, "caution-lifting", supply.Name, "A pack weighs more than one person should lift. Lift in twos, use a barrow, or have it sent in smaller packs.", Limit(tape), $"{Weight(grams, tape)} a pack", Source(region))
        : null;

    private static string Limit(Tape tape) => $"{Weight(Most, tape)} in the best posture";

    private static string Source(Region? region) => region is null or Region.America ? s_limit.Source
        : $"{s_limit.Source}; an American figure, the law of {RegionWords.Long(region.Value)} goes first and no figure of it is held here";

    private static string Weight(decimal grams, Tape tape)
    {
        var (amount, unit) = tape.Unit == LengthUnit.Inch ? (grams / GramsPerPound, "lb") : (grams / 1000, "kg");
        return string.Create(CultureInfo.InvariantCulture, $"{decimal.Round(amount, 0, MidpointRounding.AwayFromZero):0} {unit}");
    }
}
