using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads how steeply a floor falls, as one says it: so much in a foot or a metre, 1 in 48, or so many in a hundred.</summary>
internal static class FallText
{
    private const string Expected = "a fall such as \"1/4 per ft\", \"1 in 48\", \"2 %\" or \"20 mm per m\", from 1 in 400 to 1 in 8";
    private const int Gentlest = 400, Steepest = 8;

    public static Fall? Read(Entry? entry, Values values)
    {
        if (entry is null) return null;
        var text = (entry as Entry.Text)?.Value.Trim();
        if (text is not null && Of(text) is { } fall && fall.Rise * Gentlest >= fall.Over && fall.Rise * Steepest <= fall.Over) return fall;
        values.Log.Add(entry, Expected, Nearest(entry, text));
        return null;
    }

    private static Fall? Of(string text)
    {
        if (text.EndsWith('%') && Number(text[..^1]) is { } percent) return Part(percent, 100);
        foreach (var between in (ReadOnlySpan<string>)[":", " in "])
        {
            if (text.Split(between) is [var rise, var over] && Number(rise) is { } one && Number(over) is { } many) return Part(one, many);
        }

        foreach (var between in (ReadOnlySpan<string>)[" per ", " in a ", " a "])
        {
            if (text.Split(between) is [var rise, var over] && Unit(over.Trim()) is var (unit, length) && LengthText.Read(rise, unit) is LengthReading.Understood { Value: { Steps: > 0 } value }) return Part(value.Steps, length.Steps);
        }

        return null;
    }

    private static (LengthUnit Unit, Length Over)? Unit(string word) => word switch
    {
        "ft" or "foot" => (LengthUnit.Inch, Length.FromInches(12)),
        "m" or "metre" or "meter" => (LengthUnit.Millimetre, Length.FromMillimetres(1000)),
        _ => null,
    };

    private static decimal? Number(string text) =>
        decimal.TryParse(text.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number is > 0 and < 100_000 ? number : null;

    private static Fall Part(decimal rise, decimal over)
    {
        // Three places after the point are more than any level shows.
        var (one, other) = ((long)decimal.Round(rise * 1000), (long)decimal.Round(over * 1000));
        if (one == 0 || other == 0) return new(1, long.MaxValue / 1000);
        var (a, b) = (one, other);
        while (b != 0) (a, b) = (b, a % b);
        return new(one / a, other / a);
    }

    /// <summary>A bare number was meant in a hundred, if it could be; what is too steep or too gentle comes to the end of the range.</summary>
    private static string? Nearest(Entry entry, string? text)
    {
        if (entry is Entry.Number { Value: var bare } && Number(bare) is { } percent && percent >= 0.25m && percent <= 12.5m) return $"\"{percent.ToString(CultureInfo.InvariantCulture)} %\"";
        return text is null || Of(text) is not { } fall ? null : fall.Rise * Steepest > fall.Over ? "\"1 in 8\"" : "\"1 in 400\"";
    }
}
