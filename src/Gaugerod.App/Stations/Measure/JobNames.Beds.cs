using System.Text.Json.Nodes;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Follows floors and edges to the walls that stand on their beds.</summary>
internal static partial class JobNames
{
    /// <summary>A floor with a new name; null where it goes, and with it what stands on its bed.</summary>
    private static void Floor(JsonObject root, string old, string? name)
    {
        foreach (var (face, beds) in Standing(root))
        {
            for (var i = beds.Count - 1; i >= 0; i--)
            {
                if (!Is(beds[i]?["floor"], old)) continue;
                if (name is null) beds.RemoveAt(i);
                else beds[i]!["floor"] = name;
            }

            if (beds.Count == 0) face.Remove("beds");
        }
    }

    /// <summary>An edge or a fixture of a face with a new name; null where it goes.</summary>
    private static void BedEdge(JsonObject root, string face, string old, string? name)
    {
        if (Named(root, face)?["falls"] is JsonObject falls) Put(falls, "toward", old, name);
        foreach (var (on, beds) in Standing(root))
        {
            foreach (var bed in beds.OfType<JsonObject>())
            {
                if (Is(bed["floor"], face)) Put(bed, "edge", old, name);
                if (Is(on["name"], face)) Put(bed, "side", old, name);
            }
        }
    }

    private static IEnumerable<(JsonObject Face, JsonArray Beds)> Standing(JsonObject root) =>
        [.. JobLists.List(root, "faces").OfType<JsonObject>().Where(face => face["beds"] is JsonArray).Select(face => (face, (JsonArray)face["beds"]!))];
}
