using System.Text.Json.Nodes;
using Gaugerod.App.Desk;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Follows a trim to the edges and the bands that name it.</summary>
internal static partial class JobNames
{
    public static void Trim(JsonObject root, string old, string name)
    {
        Bought(root, old, name);
        foreach (var asked in AskedTrims(JobLists.List(root, "faces"))) Put(asked, "of", old, name);
    }

    /// <summary>The kind of an edge and the trim that stands there: <c>free: bullnose</c>.</summary>
    public static string WithTrim(JsonObject root, string edge, string kind) =>
        JobPath.Get(root, edge + ".trim.of")?.ToString() is { Length: > 0 } trim ? kind.Length == 0 ? trim : $"{kind}: {trim}" : kind;

    /// <summary>Whether an edge or a band names the trim.</summary>
    public static bool UsesTrim(JsonObject root, string name) => AskedTrims(JobLists.List(root, "faces")).Any(asked => Is(asked["of"], name));

    // Edges stand at faces, openings, fixtures and bands, one by one or all at once: wherever a trim is asked for, it is called so.
    private static IEnumerable<JsonObject> AskedTrims(JsonNode? at) => at switch
    {
        JsonObject group => group.SelectMany(member => member is { Key: "trim", Value: JsonObject asked } ? [asked] : AskedTrims(member.Value)),
        JsonArray list => list.SelectMany(AskedTrims),
        _ => [],
    };
}
