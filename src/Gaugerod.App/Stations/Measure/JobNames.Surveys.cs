using System.Text.Json.Nodes;
using Gaugerod.App.Desk;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Follows faces and their corners to the surveys of other faces that share sides with them.</summary>
internal static partial class JobNames
{
    /// <summary>A corner of a surveyed face with a new name; null where it goes, and with it the sides that end there.</summary>
    /// <param name="root">The job.</param>
    /// <param name="face">Where the face stands in the job.</param>
    /// <param name="old">What the corner was called.</param>
    /// <param name="name">What it is called now.</param>
    public static void SharedCorner(JsonObject root, string face, string old, string? name)
    {
        var on = JobLists.Name(JobPath.Get(root, face));
        Shared(root, side =>
        {
            if (on.Length == 0 || !Is(side["face"], on) || side["as"] is not JsonArray corners) return true;
            for (var i = 0; i < corners.Count; i++)
            {
                if (!Is(corners[i], old)) continue;
                if (name is null) return false;
                corners[i] = name;
            }

            return true;
        });
    }

    // A face with a new name; null where it goes, and with it the sides that were read on it too.
    private static void SharedFace(JsonObject root, string old, string? name) => Shared(root, side =>
    {
        if (!Is(side["face"], old)) return true;
        if (name is not null) side["face"] = name;
        return name is not null;
    });

    private static void Shared(JsonObject root, Func<JsonObject, bool> stays)
    {
        foreach (var survey in JobLists.List(root, "faces").OfType<JsonObject>().Select(face => face["survey"]).OfType<JsonObject>())
        {
            if (survey["same"] is not JsonArray sides) continue;
            for (var i = sides.Count - 1; i >= 0; i--)
            {
                if (sides[i] is JsonObject side && !stays(side)) sides.RemoveAt(i);
            }

            if (sides.Count == 0) survey.Remove("same");
        }
    }
}
