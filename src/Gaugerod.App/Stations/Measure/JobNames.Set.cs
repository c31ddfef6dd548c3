using System.Text.Json.Nodes;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Follows faces to what is set on them, and holes to the drains that a bed falls to.</summary>
internal static partial class JobNames
{
    /// <summary>Forgets what is set of a face that a run lays no more.</summary>
    public static void ForgetSet(JsonObject run, string face)
    {
        if (run["set"] is not JsonArray set) return;
        for (var i = set.Count - 1; i >= 0; i--)
        {
            if (Is(set[i]?["face"], face)) set.RemoveAt(i);
        }

        if (set.Count == 0) run.Remove("set");
    }

    private static void Drain(JsonObject falls, string old, string? name)
    {
        Put(falls, "to", old, name);
        if (falls["drains"] is not JsonArray drains) return;
        for (var i = drains.Count - 1; i >= 0; i--)
        {
            if (!Is(drains[i], old)) continue;
            if (name is null) drains.RemoveAt(i);
            else drains[i] = name;
        }

        if (drains.Count == 0) falls.Remove("drains");
    }
}
