using System.Text.Json.Nodes;

namespace Gaugerod.App.Stations.Measure;

/// <summary>The names of zones, which runs call like faces.</summary>
internal static partial class JobNames
{
    /// <summary>All that a run can lay: the faces, and the zones of each after it.</summary>
    public static IEnumerable<string> FacesAndZones(JsonObject root) => JobLists.List(root, "faces").OfType<JsonObject>()
        .SelectMany(face => (face["zones"] as JsonArray ?? []).Select(JobLists.Name).Prepend(JobLists.Name(face))).Where(name => name.Length > 0);

    /// <summary>Why a zone or a face that is now called otherwise cannot have a name; null when it can.</summary>
    public static string? ZoneRefusal(JsonObject root, string now, string name) =>
        name.Length == 0 ? "A zone needs a name; it keeps the one it had."
        : !string.Equals(now, name, StringComparison.Ordinal) && FacesAndZones(root).Contains(name, StringComparer.Ordinal) ? $"A wall or a zone is called {name} already; this one keeps the name it had."
        : null;

    /// <summary>Takes a zone out of the runs, as a face is, and the wants that speak of its strips.</summary>
    public static void ForgetZone(JsonObject root, string zone)
    {
        ForgetFace(root, zone);
        foreach (var run in Runs(root)) Drop(run, part => Is(part["edge"], zone) || (part["face"] is JsonValue face && face.ToString().StartsWith(zone + " ", StringComparison.Ordinal)));
    }

    /// <summary>Gives the zones of a copied face names of their own; no run lays them yet.</summary>
    public static void FreeZones(JsonObject root, string zones)
    {
        foreach (var zone in JobLists.List(root, zones).OfType<JsonObject>())
        {
            var name = JobLists.Name(zone);
            zone["name"] = "";
            zone["name"] = ZoneMaker.Free(root, name);
        }
    }
}
