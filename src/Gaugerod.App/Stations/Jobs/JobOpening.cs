using System.Text;
using System.Text.Json;
using Gaugerod.Files;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane;

namespace Gaugerod.App.Stations.Jobs;

/// <summary>
/// Opens a job file, also one that is not finished: what is still missing or wrong in it is then said at Measure. Refused is
/// only what no station could show: another format, a later version, text that is no JSON, and shapes that a job never has.
/// </summary>
internal static class JobOpening
{
    private const int DeepestNesting = 32;

    private static readonly string[] s_lists = ["products", "faces", "runs"];
    private static readonly HashSet<string> s_listsOfGroups = new(StringComparer.Ordinal) { "products", "faces", "runs", "supplies", "boards", "fills", "openings", "fixtures", "holes", "wants" };

    /// <summary>The job's text; or why it is refused, in words.</summary>
    public static (string Text, string Refusal) Open(byte[] bytes, string fileName)
    {
        Sequence<FileFault> faults = JobReader.Read(bytes, fileName) is JobReading.Refused refused ? refused.Faults : [];
        var said = faults.Count > 0 ? faults[0].Say() : "";
        try
        {
            var text = new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes).TrimStart('\uFEFF');
            using var job = JsonDocument.Parse(text, new() { MaxDepth = DeepestNesting, AllowDuplicateProperties = false });
            var refusal = Refusal(job.RootElement, fileName, said);
            return refusal.Length > 0 ? ("", refusal) : (text, "");
        }
        catch (Exception trouble) when (trouble is JsonException or ArgumentException or InvalidOperationException)
        {
            // A field that stands twice is a fault among others to the reader; here it is the one that forbids opening.
            var twice = faults.FirstOrDefault(fault => fault.Expected is "every field once");
            return ("", twice?.Say() ?? (said.Length > 0 ? said : $"{fileName} cannot be read as a job."));
        }
    }

    private static string Refusal(JsonElement root, string fileName, string said)
    {
        if (root.ValueKind != JsonValueKind.Object) return said.Length > 0 ? said : $"{fileName} holds no job.";
        var format = root.TryGetProperty("format", out var named) && named.ValueKind == JsonValueKind.String ? named.GetString()! : "";
        if (string.Equals(format, "gaugerod-job/1", StringComparison.Ordinal)) return Shape(root, "", fileName);
        if (format.StartsWith("gaugerod-job/", StringComparison.Ordinal)) return $"{fileName} was made by a newer Gaugerod. Open this page with a network once, take the new version it offers, then open the file again.";
        if (format.Length > 0) return said.Length > 0 ? said : $"{fileName} is not a job file of Gaugerod.";
        return s_lists.Any(list => root.TryGetProperty(list, out _)) ? Shape(root, "", fileName) : $"{fileName} is not a job file of Gaugerod.";
    }

    // Text is looked at as well: half a character, as JSON can spell it, stops whoever reads it later.
    private static string Shape(JsonElement at, string path, string fileName)
    {
        switch (at.ValueKind)
        {
            case JsonValueKind.String:
                _ = at.GetString();
                return "";
            case JsonValueKind.Array:
                var (i, item) = (0, path);
                foreach (var one in at.EnumerateArray())
                {
                    item = FormattableString.Invariant($"{path}[{i++}]");
                    if (one.ValueKind == JsonValueKind.Null) return Odd(fileName, item, "nothing stands there", "take it out");
                    if (Shape(one, item, fileName) is { Length: > 0 } odd) return odd;
                }

                return "";
            case JsonValueKind.Object:
                foreach (var member in at.EnumerateObject())
                {
                    var inner = path.Length == 0 ? member.Name : path + "." + member.Name;
                    if (Kind(member.Name, member.Value, path) is { Length: > 0 } kind) return Odd(fileName, inner, "what stands there cannot be shown", $"it has to be {kind}");
                    if (Shape(member.Value, inner, fileName) is { Length: > 0 } odd) return odd;
                }

                return "";
            default:
                return "";
        }
    }

    // A run's faces are names; the job's are groups. What is not named here may hold anything: a field shows it or not.
    private static string Kind(string name, JsonElement value, string path)
    {
        if (value.ValueKind == JsonValueKind.Null) return "";
        // The faces of what is made elsewhere are names as well, and a board's edges a gap.
        if (path.StartsWith("work.made[", StringComparison.Ordinal) && name is "faces") return Lists(value, JsonValueKind.String) ? "" : "a list of names";
        if (path.EndsWith("].board", StringComparison.Ordinal) && name is "edges") return "";
        if (path.StartsWith("runs[", StringComparison.Ordinal) && name is "faces" or "order") return Lists(value, JsonValueKind.String) ? "" : "a list of names";
        if (s_listsOfGroups.Contains(name)) return Lists(value, JsonValueKind.Object) ? "" : "a list of groups";
        if (name is "outline") return Lists(value, JsonValueKind.Array) ? "" : "a list of corners";
        return name is "edges" && value.ValueKind != JsonValueKind.Object && !Lists(value, JsonValueKind.Object) ? "a group, or a list of groups" : "";
    }

    private static bool Lists(JsonElement value, JsonValueKind kind) =>
        value.ValueKind == JsonValueKind.Array && value.EnumerateArray().All(one => one.ValueKind == kind || one.ValueKind == JsonValueKind.Null);

    private static string Odd(string fileName, string path, string what, string then) => $"{fileName}: {path}: {what}; {then}.";
}
