using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.App.Stations.Measure;

namespace Gaugerod.App.Stations.Set;

/// <summary>What a job says is set: finds it for a face, and changes it.</summary>
internal static class SetJob
{
    /// <summary>Where what is set on a face stands in the job, or would; null where the job has no such run any more.</summary>
    public static string? Place(JsonObject root, string run, string face)
    {
        var at = JobLists.List(root, "runs").ToList().FindIndex(one => string.Equals(JobLists.Name(one), run, StringComparison.Ordinal));
        if (at < 0) return null;
        var list = string.Create(CultureInfo.InvariantCulture, $"runs[{at}].set");
        var entries = JobLists.List(root, list);
        var entry = entries.ToList().FindIndex(one => string.Equals(one?["face"]?.ToString(), face, StringComparison.Ordinal));
        return string.Create(CultureInfo.InvariantCulture, $"{list}[{(entry < 0 ? entries.Count : entry)}]");
    }

    /// <summary>Which courses are set, as far as the plan has them: what it has not is said by the plan, and stays in the job.</summary>
    public static CoursesSet Of(JsonObject root, string place, FaceSet face)
    {
        if (Number(JobPath.Get(root, place + ".courses")) is not { } last || last < face.First) return face.Nothing;
        var (from, to) = (Number(JobPath.Get(root, place + ".from")) ?? face.First, Math.Min(last, face.Last));
        return new(from > to ? face.First : Math.Max(face.First, from), to);
    }

    /// <summary>The numbers of the pieces that are cut already.</summary>
    public static IReadOnlyList<string> Cut(JsonObject root, string place) => [.. JobLists.List(root, place + ".cut").Select(piece => piece?.ToString() ?? "")];

    /// <summary>Puts what is set into the job. With nothing left to say of a face its entry goes.</summary>
    public static void Put(JsonObject root, string place, FaceSet face, CoursesSet set)
    {
        var entry = Entry(root, place, face);
        entry["courses"] = set.None ? 0 : set.To;
        entry.Remove("from");
        if (!set.None && set.From > face.First) entry["from"] = set.From;
        if (set.None)
        {
            entry.Remove("top");
            entry.Remove("aside");
        }

        Clear(root, place);
    }

    /// <summary>Puts the pieces that are cut already into the job.</summary>
    public static void PutCut(JsonObject root, string place, FaceSet face, IEnumerable<string> pieces)
    {
        var cut = new JsonArray([.. pieces.Select(piece => (JsonNode)JsonValue.Create(piece))]);
        Entry(root, place, face)["cut"] = cut;
        if (cut.Count == 0) JobPath.Set(root, place + ".cut", null);
        Clear(root, place);
    }

    private static JsonObject Entry(JsonObject root, string place, FaceSet face)
    {
        if (JobPath.Get(root, place) is JsonObject entry) return entry;
        entry = new() { ["face"] = face.Name, ["courses"] = 0 };
        JobPath.Set(root, place, entry);
        return entry;
    }

    private static void Clear(JsonObject root, string place)
    {
        if (JobPath.Get(root, place) is not JsonObject { Count: 2 } entry || Number(entry["courses"]) != 0) return;
        var list = place[..place.LastIndexOf('[')];
        JobPath.Set(root, place, null);
        if (JobLists.List(root, list).Count == 0) JobPath.Set(root, list, null);
    }

    private static int? Number(JsonNode? node) => node is JsonValue value && int.TryParse(value.ToString(), NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
