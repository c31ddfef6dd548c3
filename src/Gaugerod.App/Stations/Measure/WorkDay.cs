using System.Text.Json.Nodes;
using Gaugerod.App.Desk;

namespace Gaugerod.App.Stations.Measure;

/// <summary>The working day and the working week of a job's order of work.</summary>
internal static class WorkDay
{
    /// <summary>What holds where the job says nothing of its day.</summary>
    public const string Begins = "08:00", Ends = "16:30", Rests = "30 min";

    private const string Week = "work.days";

    /// <summary>The days as the job file names them, and as they are said.</summary>
    public static IReadOnlyList<(string Day, string Word)> All { get; } = [("mon", "Mon"), ("tue", "Tue"), ("wed", "Wed"), ("thu", "Thu"), ("fri", "Fri"), ("sat", "Sat"), ("sun", "Sun")];

    /// <summary>The days that are worked on.</summary>
    public static IReadOnlyList<string> Worked(JsonObject root) => JobPath.Get(root, Week) is JsonArray days ? [.. days.Select(day => day?.ToString() ?? "")] : [.. All.Take(5).Select(day => day.Day)];

    /// <summary>Has a day worked on, or not. One is left: who works on none has no order.</summary>
    public static void Turn(JobDesk desk, string day) => desk.Change("days of work", root =>
    {
        var worked = Worked(root);
        var days = All.Select(one => one.Day).Where(one => worked.Contains(one, StringComparer.Ordinal) != string.Equals(one, day, StringComparison.Ordinal)).ToList();
        if (days.Count == 0) return;
        var usual = days.SequenceEqual(All.Take(5).Select(one => one.Day), StringComparer.Ordinal);
        JobPath.Set(root, Week, usual ? null : new JsonArray([.. days.Select(one => (JsonNode)JsonValue.Create(one)!)]));
    });

    /// <summary>Puts one of the day's figures. A day is said as a whole: what was not typed of it takes its usual value.</summary>
    /// <returns>Null: it is always taken, and what cannot be read is said by the job's reader.</returns>
    public static string? Put(JobDesk desk, string field, string text)
    {
        desk.Change(Parts.JobWords.Of(desk.Root, "work.day." + field), root =>
        {
            var day = new JsonObject();
            foreach (var (name, usual) in new[] { ("from", Begins), ("to", Ends), ("break", Rests) })
            {
                var typed = string.Equals(name, field, StringComparison.Ordinal) ? text : Standing(root, name);
                day[name] = typed.Length == 0 ? usual : typed;
            }

            var isUsual = Same(day, "from", Begins) && Same(day, "to", Ends) && Same(day, "break", Rests);
            JobPath.Set(root, "work.day", isUsual ? null : day);
        });
        return null;
    }

    // A day that says no break has none.
    private static string Standing(JsonObject root, string field) =>
        JobPath.Get(root, "work.day") is not JsonObject day ? "" : day[field]?.ToString() ?? (field is "break" ? "0 min" : "");

    private static bool Same(JsonObject day, string field, string text) => string.Equals(day[field]!.ToString(), text, StringComparison.Ordinal);
}
