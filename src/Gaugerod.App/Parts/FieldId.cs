using System.Text;
using Gaugerod.App.Desk;

namespace Gaugerod.App.Parts;

/// <summary>What a field is called on the page, and what the job's reader says of it.</summary>
internal static class FieldId
{
    /// <summary>The id of the field for a place in the job: <c>f-faces-0--readings-width-foot</c>.</summary>
    public static string Of(string path) => "f-" + string.Concat(path.Select(c => char.IsLetterOrDigit(c) ? c : '-'));

    /// <summary>Whether a place is another, or stands inside it.</summary>
    public static bool Holds(string path, string other) =>
        other.StartsWith(path, StringComparison.Ordinal) && (other.Length == path.Length || other[path.Length] is '.' or '[');

    /// <summary>The station at which a place of the job has its field.</summary>
    public static Station StationOf(string path) =>
        path.StartsWith("prices", StringComparison.Ordinal) ? Station.Order : path.StartsWith("runs", StringComparison.Ordinal) && path.Contains("].set", StringComparison.Ordinal) ? Station.Set : Station.Measure;

    /// <summary>What cannot be used at a place, in words.</summary>
    public static IReadOnlyList<string> Trouble(JobDesk desk, string path) =>
        [.. desk.Faults.Where(f => Holds(path, f.Path)).Select(Say)];

    /// <summary>One fault without its place, which the field beside it tells.</summary>
    public static string Say(Gaugerod.Files.FileFault fault) => fault.Found is "an empty list"
        ? "Nothing is in it yet; it needs at least one."
        : $"Found {fault.Found}; expected {fault.Expected}.{(fault.Nearest is null ? "" : $" Nearest: {Plain(fault.Nearest)}.")}";

    /// <summary>What would do, as one says it: <c>"from": ["2 mm", "5 mm"]</c> of the job file as <c>from 2 mm to 5 mm</c>.</summary>
    public static string Plain(string nearest)
    {
        var said = new StringBuilder();
        for (var at = 0; at < nearest.Length;)
        {
            if (Name(nearest, at) is var (name, behind)) (at, _) = (behind, said.Append(name).Append(' '));
            else if (Pair(nearest, at) is var (least, most, end)) (at, _) = (end, said.Append(least).Append(" to ").Append(most));
            else said.Append(nearest[at++]);
        }

        var plain = said.ToString();
        return plain.StartsWith('"') && plain.EndsWith('"') && plain.Count(c => c == '"') == 2 ? plain.Trim('"') : plain;
    }

    // By hand: the library for patterns is a hundredth of what the app carries. A field's name in its quotes, with its colon.
    private static (string Name, int Behind)? Name(string text, int at)
    {
        var end = at + 1;
        while (end < text.Length && (char.IsLetterOrDigit(text[end]) || text[end] == '_')) end++;
        if (text[at] != '"' || end == at + 1 || !text.AsSpan(end).StartsWith("\":", StringComparison.Ordinal)) return null;
        var behind = end + 2;
        while (behind < text.Length && char.IsWhiteSpace(text[behind])) behind++;
        return (text[(at + 1)..end], behind);
    }

    // Two values in a list, in quotes or not.
    private static (string Least, string Most, int Behind)? Pair(string text, int at)
    {
        if (text[at] != '[') return null;
        var (least, comma) = Value(text, at + 1);
        if (least.Length == 0 || !text.AsSpan(comma).StartsWith(", ", StringComparison.Ordinal)) return null;
        var (most, end) = Value(text, comma + 2);
        return most.Length == 0 || end >= text.Length || text[end] != ']' ? null : (least, most, end + 1);
    }

    private static (string Value, int Behind) Value(string text, int at)
    {
        if (at < text.Length && text[at] == '"') at++;
        var end = at;
        while (end < text.Length && text[end] is not (',' or ']' or '"')) end++;
        return (text[at..end], end < text.Length && text[end] == '"' ? end + 1 : end);
    }

    /// <summary>What stands at a place, as it is typed.</summary>
    public static string Text(JobDesk desk, string path) => JobPath.Get(desk.Root, path) is System.Text.Json.Nodes.JsonValue value ? value.ToString() : "";
}
