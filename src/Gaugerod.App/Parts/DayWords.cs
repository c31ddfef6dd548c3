using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.Engine.Planning;

namespace Gaugerod.App.Parts;

/// <summary>Says a day that was typed with its day of the week, which tells a slip of the finger best.</summary>
internal static class DayWords
{
    private const string To = " to ", Written = "yyyy-MM-dd";

    /// <summary><c>= Mon 8 Mar 2027</c>; empty where no date stands there.</summary>
    public static string Echo(JobDesk desk, string path) => Said(FieldId.Text(desk, path)) is { Length: > 0 } day ? "= " + day : "";

    /// <summary>Days and stretches of days: <c>= Mon 8 Mar 2027; Wed 10 Mar 2027 to Fri 12 Mar 2027</c>; empty while one of them is no date.</summary>
    public static string EchoAll(JobDesk desk, string path)
    {
        var days = (JobPath.Get(desk.Root, path) as JsonArray ?? []).Select(day => Line(day).Split(To).Select(Said).ToList()).ToList();
        return days.Count == 0 || days.Exists(day => day.Contains("")) ? "" : "= " + string.Join("; ", days.Select(day => string.Join(To, day)));
    }

    /// <summary>A day off as a line: <c>2027-03-08</c>, or <c>2027-03-08 to 2027-03-12</c>.</summary>
    public static string Line(JsonNode? day) => day is JsonObject stretch ? $"{stretch["from"]}{To}{stretch["to"]}" : day?.ToString() ?? "";

    /// <summary>Reads such a line; what is neither stays as it was typed.</summary>
    public static JsonNode Read(string line) =>
        line.Split(To) is [{ Length: > 0 } from, { Length: > 0 } to] ? new JsonObject { ["from"] = from.Trim(), ["to"] = to.Trim() } : JsonValue.Create(line);

    private static string Said(string text) =>
        DateOnly.TryParseExact(text, Written, CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? WorkWords.Day(day.ToDateTime(TimeOnly.MinValue)) : "";
}
