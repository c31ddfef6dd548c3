using System.Globalization;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads amounts that are no lengths: what a bag makes and what a bed weighs. A bare number is in cubic feet and pounds in a job in inches, else in litres and kilograms.</summary>
internal static class AmountText
{
    private const double LitresInFoot = 28.316846592, KilogramsInPound = 0.45359237, MetresInFoot = 0.3048;

    private static readonly (string Unit, double Times)[] Volumes =
    [
        ("ft3", LitresInFoot), ("ft³", LitresInFoot), ("cu ft", LitresInFoot), ("in3", LitresInFoot / 1728), ("in³", LitresInFoot / 1728),
        ("gal", LitresInFoot / 1728 * 231), ("fl oz", LitresInFoot / 1728 * 231 / 128), ("ml", 0.001), ("l", 1), ("litres", 1), ("liters", 1),
    ];

    private static readonly (string Unit, double Times)[] Lengths = [("ft", MetresInFoot), ("feet", MetresInFoot), ("yd", MetresInFoot * 3), ("m", 1)];

    private static readonly (string Unit, double Times)[] Areas = [("ft2", MetresInFoot * MetresInFoot), ("ft²", MetresInFoot * MetresInFoot), ("sq ft", MetresInFoot * MetresInFoot), ("m2", 1), ("m²", 1)];

    /// <summary>What a bag makes, in litres.</summary>
    public static double? Yield(Entry? entry, Values values) => Read(
        entry, values, Volumes, LitresInFoot, 1, 0.5, 2000,
        values.Unit == LengthUnit.Inch ? "what a bag makes, such as \"0.5 ft3\"" : "what a bag makes, such as \"14 l\"");

    /// <summary>What a pack makes, ready to use, in what its kind is measured in.</summary>
    public static double? Makes(Entry? entry, Values values, SupplyMeasure measure)
    {
        var inches = values.Unit == LengthUnit.Inch;
        return measure switch
        {
            SupplyMeasure.Length => Read(
                entry, values, Lengths, MetresInFoot, 1, 0.5, 10_000,
                inches ? "how much is on a pack, from 1.7 ft on, such as \"50 ft\"" : "how much is on a pack, from 0.5 m on, such as \"15 m\""),
            SupplyMeasure.Area => Area(entry, values),
            SupplyMeasure.Count => Read(entry, values, [], 1, 1, 1, 100_000, "how many are in a pack: a whole number, such as 200", whole: true),
            _ => Read(
                entry, values, Volumes, LitresInFoot, 1, 0.05, 2000,
                inches ? "what a pack makes, from 3.1 in3 to 70 ft3, such as \"0.66 ft3\" or \"437 in3\"" : "what a pack makes, from 0.05 to 2000 l, such as \"14 l\""),
        };
    }

    /// <summary>What a pack covers, in square metres.</summary>
    public static double? Area(Entry? entry, Values values) => Read(
        entry, values, Areas, MetresInFoot * MetresInFoot, 1, 0.05, 10_000,
        values.Unit == LengthUnit.Inch ? "what a pack covers, from 0.6 ft2 on, such as \"55 ft2\"" : "what a pack covers, from 0.05 m2 on, such as \"5 m2\"");

    /// <summary>How thick a film is, in millimetres; a bare number is in thousandths of an inch, or millimetres.</summary>
    public static double? Film(Entry? entry, Values values) => Read(
        entry, values, [("mil", 0.0254), ("mils", 0.0254), ("in", 25.4), ("\"", 25.4), ("mm", 1)], 0.0254, 1, 0.05, 10,
        values.Unit == LengthUnit.Inch ? "a film from 2 to 393 mil, such as \"25 mil\"" : "a film from 0.05 to 10 mm, such as \"0.6 mm\"");

    /// <summary>What a bag weighs, in kg.</summary>
    public static double? Weight(Entry? entry, Values values) => Read(
        entry, values, [("lb", KilogramsInPound), ("lbs", KilogramsInPound), ("kg", 1)], KilogramsInPound, 1, 1, 100,
        values.Unit == LengthUnit.Inch ? "what a bag weighs, from 3 to 220 lb, such as \"60 lb\"" : "what a bag weighs, from 1 to 100 kg, such as \"25 kg\"");

    /// <summary>What a cubic metre weighs, in kg.</summary>
    public static double? Density(Entry? entry, Values values) => Read(
        entry, values, [("lb/ft3", KilogramsInPound * 1000 / LitresInFoot), ("lb/ft³", KilogramsInPound * 1000 / LitresInFoot), ("pcf", KilogramsInPound * 1000 / LitresInFoot), ("kg/m3", 1), ("kg/m³", 1)],
        KilogramsInPound * 1000 / LitresInFoot, 1, 200, 4000, values.Unit == LengthUnit.Inch ? "a weight such as \"144 lb/ft3\", from 12.5 to 249" : "a weight such as \"2300 kg/m3\", from 200 to 4000");

    private static double? Read(Entry? entry, Values values, (string Unit, double Times)[] units, double bareInches, double bareMillimetres, double least, double most, string expected, bool whole = false)
    {
        if (entry is null) return null;
        var text = ((entry as Entry.Text)?.Value ?? (entry as Entry.Number)?.Value)?.Trim() ?? "";
        var unit = units.Where(one => text.EndsWith(one.Unit, StringComparison.Ordinal)).OrderByDescending(one => one.Unit.Length).FirstOrDefault();
        var number = unit.Unit is null ? text : text[..^unit.Unit.Length].Trim();
        var times = unit.Unit is not null ? unit.Times : values.Unit == LengthUnit.Inch ? bareInches : bareMillimetres;
        if (decimal.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount) && (double)amount * times is var read && read >= least && read <= most && (!whole || read % 1 == 0)) return read;
        values.Log.Add(entry, expected);
        return null;
    }
}
