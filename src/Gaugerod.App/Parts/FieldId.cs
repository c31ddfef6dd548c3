using System.Text.RegularExpressions;
using Gaugerod.App.Desk;

namespace Gaugerod.App.Parts;

/// <summary>What a field is called on the page, and what the job's reader says of it.</summary>
internal static partial class FieldId
{
    /// <summary>The id of the field for a place in the job: <c>f-faces-0--readings-width-foot</c>.</summary>
    public static string Of(string path) => "f-" + string.Concat(path.Select(c => char.IsLetterOrDigit(c) ? c : '-'));

    /// <summary>Whether a place is another, or stands inside it.</summary>
    public static bool Holds(string path, string other) =>
        other.StartsWith(path, StringComparison.Ordinal) && (other.Length == path.Length || other[path.Length] is '.' or '[');

    /// <summary>What cannot be used at a place, in words.</summary>
    public static IReadOnlyList<string> Trouble(JobDesk desk, string path) =>
        [.. desk.Faults.Where(f => Holds(path, f.Path)).Select(Say)];

    /// <summary>One fault without its place, which the field beside it tells.</summary>
    public static string Say(Gaugerod.Files.FileFault fault) =>
        $"Found {fault.Found}; expected {fault.Expected}.{(fault.Nearest is null ? "" : $" Nearest: {Plain(fault.Nearest)}.")}";

    /// <summary>What would do, as one says it: <c>"from": ["2 mm", "5 mm"]</c> of the job file as <c>from 2 mm to 5 mm</c>.</summary>
    public static string Plain(string nearest)
    {
        var plain = Pair().Replace(Name().Replace(nearest, "${name} "), "${least} to ${most}");
        return plain.StartsWith('"') && plain.EndsWith('"') && plain.Count(c => c == '"') == 2 ? plain.Trim('"') : plain;
    }

    [GeneratedRegex("\"(?<name>\\w+)\":\\s*", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Name();

    [GeneratedRegex("\\[\"?(?<least>[^,\\]\"]+)\"?, \"?(?<most>[^,\\]\"]+)\"?\\]", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Pair();

    /// <summary>What stands at a place, as it is typed.</summary>
    public static string Text(JobDesk desk, string path) => JobPath.Get(desk.Root, path) is System.Text.Json.Nodes.JsonValue value ? value.ToString() : "";
}
