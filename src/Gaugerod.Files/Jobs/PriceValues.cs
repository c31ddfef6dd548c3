using System.Globalization;
using Gaugerod.Engine.Prices;
using Gaugerod.Files.Json;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads prices, quantities, hundredths and days. What cannot be used goes to the log.</summary>
/// <param name="values">Takes what is wrong.</param>
/// <param name="currency">What prices are in; null where that could not be read.</param>
internal sealed class PriceValues(Values values, Currency? currency)
{
    public Values Values => values;

    /// <summary>A price of more than nothing.</summary>
    public Spread? Price(Entry? entry)
    {
        if (entry is null || Number(entry, "a price") is not { } read) return null;
        if (currency is not null && !currency.Fits(read.Sign))
        {
            values.Log.AddSaid(entry, $"a price in {read.Sign}", $"a price in {currency.Code}, the job's currency");
            return null;
        }

        if (read.Value.Low > 0) return read.Value;
        values.Log.Add(entry, $"a price of more than nothing; for what others buy, \"{PriceText.ByOthers}\"");
        return null;
    }

    /// <summary>A quantity of more than nothing, or where asked for of nothing too.</summary>
    public Spread? Quantity(Entry? entry, bool none = false)
    {
        if (entry is null || Number(entry, "a quantity") is not { } read) return null;
        if (read.Sign.Length == 0 && (read.Value.Low > 0 || (none && read.Value.Low == 0))) return read.Value;
        values.Log.Add(entry, none ? "a quantity of nothing or more" : "a quantity of more than nothing");
        return null;
    }

    /// <summary>How much is done in an hour: a quantity with its unit behind it.</summary>
    public Pace? Pace(Entry? entry, LabourOf kind)
    {
        if (entry is null) return null;
        var example = LabourAmount.IsIn(kind, PriceUnit.SquareMetre) ? "\"0.8 to 1.2 m2\"" : LabourAmount.IsIn(kind, PriceUnit.Metre) ? "\"4 to 6 m\"" : "\"10 to 15\"";
        var text = (Written(entry) ?? "").Trim();
        foreach (var hour in (string[])["an hour", "per hour", "/h", "/hour"]) text = text.EndsWith(hour, StringComparison.OrdinalIgnoreCase) ? text[..^hour.Length].TrimEnd() : text;
        var digit = text.AsSpan().LastIndexOfAnyInRange('0', '9');
        // The 2 of m2 is no part of the number.
        var at = text.EndsWith('2') ? Math.Max(text.LastIndexOf('m'), text.LastIndexOf('f')) : digit + 1;
        var unit = at < 0 || at >= text.Length ? PriceUnit.Each : PriceUnits.Read(text[at..]);
        var number = at < 0 ? text : text[..at];
        if (unit is { } read && LabourAmount.IsIn(kind, read) && PriceText.Read(number, DecimalMark.Point) is PriceReading.Understood({ Low: > 0 } amount, "") && !number.Contains(',', StringComparison.Ordinal)) return new(amount, read);
        values.Log.Add(entry, $"how much {PriceWords.Of(kind)} in an hour, such as {example}");
        return null;
    }

    /// <summary>Hundredths, with or without their sign.</summary>
    /// <param name="entry">What stands there.</param>
    /// <param name="words">What may stand behind them.</param>
    /// <param name="expected">What could stand there.</param>
    public (decimal Percent, string Word)? Percent(Entry? entry, IReadOnlyList<string> words, string expected)
    {
        if (entry is null) return null;
        var text = (Written(entry) ?? "").Trim();
        var word = words.FirstOrDefault(one => text.EndsWith(one, StringComparison.OrdinalIgnoreCase)) ?? "";
        var number = text[..^word.Length].TrimEnd(' ', '%');
        if ((words.Count == 0 || word.Length > 0) && decimal.TryParse(number, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var percent) && decimal.Round(percent, PriceText.Places) == percent && percent <= 1000) return (percent, word);
        values.Log.Add(entry, expected);
        return null;
    }

    /// <summary>A number from one to another, to so many places.</summary>
    public decimal? Plain(Entry? entry, decimal least, decimal most)
    {
        if (entry is null) return null;
        if (decimal.TryParse(Written(entry), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most && decimal.Round(number, PriceText.Places) == number) return number;
        values.Log.Add(entry, $"a number from {PriceText.Plain(least)} to {PriceText.Plain(most)}");
        return null;
    }

    /// <summary>A day, as year-month-day.</summary>
    public string? Day(Entry? entry)
    {
        if (entry is null) return null;
        if (entry is Entry.Text { Value: var text } && DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _)) return text;
        values.Log.Add(entry, "a day that is in the calendar, as year-month-day, such as \"2031-03-14\"");
        return null;
    }

    /// <summary>What was written, as text or as a number; null for anything else.</summary>
    public static string? Written(Entry entry) => (entry as Entry.Text)?.Value ?? (entry as Entry.Number)?.Value;

    private PriceReading.Understood? Number(Entry entry, string what)
    {
        var text = Written(entry) ?? "";
        switch (PriceText.Read(text, DecimalMark.Point))
        {
            // By hand a comma is typed before the parts of one as often as between thousands.
            case PriceReading.Understood when HasCommaInside(text):
                values.Log.Add(entry, $"{what} without a comma", null);
                return null;
            case PriceReading.Understood read:
                return read;
            case PriceReading.Refused refused:
                values.Log.Add(entry, refused.Expected, Values.Quoted(refused.Nearest));
                return null;
            default:
                return null;
        }
    }

    private static bool HasCommaInside(string text)
    {
        var at = text.IndexOf(',', StringComparison.Ordinal);
        return at >= 0 && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]);
    }
}
