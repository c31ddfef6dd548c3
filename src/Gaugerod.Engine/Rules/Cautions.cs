using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>What can hurt the person who does the job. Said once a job; local rules and the products' instructions go before.</summary>
internal static class Cautions
{
    /// <summary>
    /// What one person lifts at most in the best posture: 23 kg, the load constant of the NIOSH lifting equation (from
    /// memory; to be found in NIOSH publication 94-110).
    /// </summary>
    internal const int LiftGrams = 23_000;

    // Porcelain, 2.4 g/cm3: common practice, no source.
    private const decimal GramsPerCubicMillimetre = 0.0024m;

    private const decimal GramsPerPound = 453.59237m;

    internal static Sequence<Finding> Findings(Tape tape, Sequence<Product> products)
    {
        ArgumentNullException.ThrowIfNull(tape);
        ArgumentNullException.ThrowIfNull(products);
        return
        [
            Note("caution-dust", "Cutting tile, board or mortar sets silica dust free. Cut wet with water on the blade as the saw's maker says, draw the air off indoors, do not sweep dry. Follow the local rules.",
                "50 µg/m³ of air over 8 hours, action from 25 µg/m³", "29 CFR 1926.1153 (United States)"),
            Note("caution-electricity", "A wet saw brings water to mains current. Feed it through a ground-fault breaker (GFCI, RCD), hang a drip loop in its cord, keep plugs off the floor. Leave wiring to a licensed electrician and follow the local rules.",
                "", "29 CFR 1926.404(b)(1)(ii) (United States); drip loop: common practice, no source"),
            Note("caution-saw", "Keep the blade's guard on; wear eye and ear protection, nothing loose near the blade.", "", "29 CFR 1926.702(i) (United States) for the guard; the rest common practice, no source"),
            Note("caution-cement", "Wet mortar and grout burn skin and eyes. Wear gloves, eye protection and knee pads, rinse at once, and follow the product's safety sheet.",
                "pH over 12", "cement suppliers' safety pages"),
            Note("caution-old-work", "What is torn out may hold asbestos (old floors, their glue, plaster) or lead (paint, glaze). Do not sand, scrape or break it before it is tested; follow the local rules and leave its removal to licensed trades.",
                "", "40 CFR 745 for lead paint before 1978 (United States); asbestos: from memory, 40 CFR 61 subpart M"),
            .. products.Select(p => Lifting(tape, p)),
        ];
    }

    /// <summary>About what a box weighs, in grams, taken as porcelain; null when the thickness is not known.</summary>
    internal static decimal? BoxGrams(Product product) => product.Thickness == Length.Zero
        ? null
        : product.Width.Millimetres * product.Height.Millimetres * product.Thickness.Millimetres * GramsPerCubicMillimetre * product.PerBox;

    private static Finding Lifting(Tape tape, Product product)
    {
        const string Source = "NIOSH lifting equation, load constant (from memory: NIOSH publication 94-110); weight reckoned as porcelain of 2.4 g/cm³, common practice, no source";
        var (limit, text) = ($"{Weight(LiftGrams, tape)} in the best posture", "Tile boxes are heavy. Lift close to the body with the legs, in twos or with a barrow; read the weight on the box.");
        if (BoxGrams(product) is not { } grams) return new(FindingLevel.Note, "caution-lifting", product.Name, text, limit, "not known without the thickness", Source);
        if (grams > LiftGrams) text = "A box weighs more than one person should lift. Lift in twos, use a barrow, or carry fewer tiles; read the weight on the box.";
        return new(FindingLevel.Note, "caution-lifting", product.Name, text, limit, $"about {Weight(grams, tape)} a box", Source);
    }

    private static string Weight(decimal grams, Tape tape)
    {
        var (amount, unit) = tape.Unit == LengthUnit.Inch ? (grams / GramsPerPound, "lb") : (grams / 1000, "kg");
        return string.Create(CultureInfo.InvariantCulture, $"{decimal.Round(amount, 0, MidpointRounding.AwayFromZero):0} {unit}");
    }

    private static Finding Note(string rule, string text, string limit, string source) =>
        new(FindingLevel.Note, rule, "the job", text, limit, "", source);
}
