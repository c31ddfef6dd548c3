using System.Globalization;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Files.Json;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads how long something takes, times of day and dates.</summary>
internal static class TimeReading
{
    private const int Day = 24 * 60;

    private static readonly (string Unit, int Minutes)[] Units =
    [
        ("min", 1), ("minute", 1), ("minutes", 1), ("h", 60), ("hour", 60), ("hours", 60), ("day", Day), ("days", Day), ("week", 7 * Day), ("weeks", 7 * Day),
    ];

    /// <summary>How long, in minutes: <c>"45 min"</c>, <c>"2 h 30 min"</c>, <c>"3 days"</c>.</summary>
    public static int? Span(Entry? entry, Values values, int least, int most)
    {
        if (entry is null) return null;
        var text = (entry as Entry.Text)?.Value ?? (entry as Entry.Number)?.Value ?? "";
        var read = Minutes(text);
        if (read is { } minutes && minutes >= least && minutes <= most) return minutes;

        // A bare number is taken for hours in what is offered, never in what is read.
        var meant = read ?? Minutes(text + " h");
        values.Log.Add(
            entry, $"how long, from {SpanText.Say(least)} to {SpanText.Say(most)}, such as \"45 min\", \"2 h 30 min\" or \"3 days\"",
            meant is { } known ? $"\"{SpanText.Say(Math.Clamp(known, least, most))}\"" : null);
        return null;
    }

    /// <summary>Minutes of a text; null where it says none.</summary>
    public static int? Minutes(string text)
    {
        var sum = 0m;
        var rest = text.AsSpan().Trim();
        if (rest.Length is 0 or > 40) return null;
        while (rest.Length > 0)
        {
            var digits = 0;
            while (digits < rest.Length && (char.IsAsciiDigit(rest[digits]) || rest[digits] == '.')) digits++;
            var after = rest[digits..].TrimStart();
            var letters = 0;
            while (letters < after.Length && char.IsAsciiLetter(after[letters])) letters++;
            var unit = after[..letters].ToString();
            var times = Units.FirstOrDefault(one => string.Equals(one.Unit, unit, StringComparison.Ordinal)).Minutes;
            if (times == 0 || !decimal.TryParse(rest[..digits], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) || number > 1_000_000) return null;
            sum += number * times;
            rest = after[letters..].TrimStart();
        }

        return sum > int.MaxValue ? null : (int)decimal.Ceiling(sum);
    }

    /// <summary>A time of the day, in minutes from midnight.</summary>
    public static int? Clock(Entry? entry, Values values)
    {
        if (entry is null) return null;
        var text = ((entry as Entry.Text)?.Value ?? (entry as Entry.Number)?.Value ?? "").Trim();
        if (entry is Entry.Text && text.Split(':') is [var hours, var minutes] && minutes.Length == 2 && Part(hours, 24) is { } h && Part(minutes, 59) is { } m && (h * 60) + m <= Day) return (h * 60) + m;
        values.Log.Add(entry, "a time of the day such as \"08:00\", to \"24:00\"", Part(text, 24) is { } hour ? string.Create(CultureInfo.InvariantCulture, $"\"{hour:00}:00\"") : null);
        return null;
    }

    /// <summary>A date.</summary>
    public static DateOnly? Date(Entry? entry, Values values)
    {
        if (entry is null) return null;
        var text = (entry as Entry.Text)?.Value ?? "";
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var date)) return date;
        values.Log.Add(entry, "a date, year, month and day, such as \"2027-03-08\"", Nearest(text));
        return null;
    }

    public static string Said(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    // A day that its month has not is the month's last; year, month and day may be parted otherwise.
    private static string? Nearest(string text)
    {
        if (text.Split('-', '/', '.', ' ') is not [var years, var months, var days] || years.Length != 4) return null;
        if (Part(years, 9999) is not ({ } year and > 0) || Part(months, 12) is not ({ } month and > 0) || Part(days, 99) is not ({ } day and > 0)) return null;
        return $"\"{Said(new(year, month, Math.Min(day, DateTime.DaysInMonth(year, month))))}\"";
    }

    private static int? Part(string text, int most) => text.Length <= 4 && int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number <= most ? number : null;
}
