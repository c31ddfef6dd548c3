using System.Globalization;

namespace Gaugerod.Engine.Sequencing;

/// <summary>Says how long something takes, as one says it on site.</summary>
public static class SpanText
{
    private const int Hour = 60, Day = 24 * Hour;

    /// <summary><c>45 min</c>, <c>2 h 30 min</c>, <c>48 h</c>, <c>7 days</c>.</summary>
    /// <param name="minutes">Zero or more.</param>
    public static string Say(int minutes)
    {
        if (minutes < Hour) return Number(minutes, "min");
        if (minutes >= 3 * Day && minutes % Day == 0) return Number(minutes / Day, "days");
        if (minutes >= 3 * Day) return $"{Number(minutes / Day, "days")} {Say(minutes % Day)}";
        return minutes % Hour == 0 ? Number(minutes / Hour, "h") : $"{Number(minutes / Hour, "h")} {Number(minutes % Hour, "min")}";
    }

    private static string Number(int number, string unit) => string.Create(CultureInfo.InvariantCulture, $"{number} {unit}");
}
