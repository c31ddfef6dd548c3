using System.Globalization;
using Gaugerod.App.Desk;
using Gaugerod.Engine.Planning;

namespace Gaugerod.App.Parts;

/// <summary>Says a day that was typed with its day of the week, which tells a slip of the finger best.</summary>
internal static class DayWords
{
    /// <summary><c>= Mon 8 Mar 2027</c>; empty where no date stands there.</summary>
    public static string Echo(JobDesk desk, string path) =>
        DateOnly.TryParseExact(FieldId.Text(desk, path), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? "= " + WorkWords.Day(day.ToDateTime(TimeOnly.MinValue)) : "";
}
