using System.Globalization;
using System.Text.Json.Nodes;
using Gaugerod.App.Desk;

namespace Gaugerod.App.Parts;

/// <summary>What a face is called: a floor is spoken of in a floor's words, a wall in a wall's.</summary>
internal static class FaceWords
{
    /// <summary><c>floor</c> or <c>wall</c>, as what was read and said of the face tells.</summary>
    public static string Of(JsonNode? face)
    {
        if (face is not JsonObject group || group["readings"] is not null) return "wall";
        if (group["falls"] is not null || Text(group["flatness"], "of") is "floor") return "floor";
        // A wall stands on something and ends at something; a floor is shut in by walls and doorways.
        var kinds = (group["edges"] as JsonArray ?? []).Select(edge => Text(edge, "kind")).ToList();
        var isWall = kinds.Exists(kind => kind is "floor" or "ceiling") || Text(group["flatness"], "of") is "wall" || group["levelLine"] is not null;
        return !isWall && (group["survey"] is not null || kinds.TrueForAll(kind => kind is "inside corner" or "outside corner" or "threshold" or "fixture")) ? "floor" : "wall";
    }

    /// <summary>The same, by its place in the job.</summary>
    /// <param name="root">The job.</param>
    /// <param name="face">Which face, from zero.</param>
    public static string Of(JsonObject root, int face) => Of(JobPath.Get(root, string.Create(CultureInfo.InvariantCulture, $"faces[{face}]")));

    /// <summary>What the faces of a job are called together: <c>Walls</c>, <c>Floors</c> or <c>Walls and floors</c>.</summary>
    public static string All(JsonObject root)
    {
        var words = (JobPath.Get(root, "faces") as JsonArray ?? []).Select(Of).Distinct(StringComparer.Ordinal).ToList();
        return words.Count > 1 ? "Walls and floors" : words is ["floor"] ? "Floors" : "Walls";
    }

    private static string Text(JsonNode? group, string field) => (group as JsonObject)?[field]?.ToString() ?? "";
}
