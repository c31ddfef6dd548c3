using System.Text.Json.Nodes;
using Gaugerod.App.Desk;

namespace Gaugerod.App.Stations.Measure;

/// <summary>
/// The wall to the right of another: what the corner they share tells of it, and nothing else. Foot and head usually go on
/// round the corner, the height is read in the corner, and what stands in the corner stands before both walls.
/// </summary>
internal static class NextWall
{
    public static JsonObject After(JsonObject before)
    {
        var wall = new JsonObject
        {
            ["readings"] = new JsonObject { ["width"] = new JsonObject { ["foot"] = "" }, ["height"] = new JsonObject { ["left"] = HeightAtRight(before) ?? "" } },
        };
        if (before["edges"] is JsonObject edges)
        {
            var taken = new JsonObject();
            foreach (var side in new[] { "foot", "head" })
            {
                if (edges[side] is JsonObject edge) taken[side] = edge.DeepClone();
            }

            if (taken.Count > 0) wall["edges"] = taken;
        }

        var fixtures = new JsonArray([.. Cornered(before)]);
        if (fixtures.Count > 0) wall["fixtures"] = fixtures;
        return wall;
    }

    /// <summary>Whether its height is known.</summary>
    public static bool HasHeight(JsonObject wall) => Read(wall, "readings.height.left") is not null;

    /// <summary>The height at a wall's right corner: as read, or that of the left one while floor and ceiling are taken as level.</summary>
    public static JsonNode? HeightAtRight(JsonObject wall) =>
        Read(wall, "readings.height.right") ?? (JobPath.Get(wall, "readings.levelLine") is null ? Read(wall, "readings.height.left") : null);

    // A fixture that reaches the right corner. How far it goes on is not known: to the other end until it is read.
    private static IEnumerable<JsonNode> Cornered(JsonObject before)
    {
        if (before["fixtures"] is not JsonArray fixtures) yield break;
        foreach (var fixture in fixtures.OfType<JsonObject>().Where(fixture => fixture["to"] is null))
        {
            var next = new JsonObject();
            foreach (var key in new[] { "name", "at", "edge", "side" })
            {
                if (fixture[key] is { } value) next[key] = value.DeepClone();
            }

            // A height from the level line would ask for that line on the new wall too.
            next["height"] = fixture["heightsFrom"]?.ToString() is "level line" ? "" : Read(fixture, "heightRight") ?? Read(fixture, "height") ?? "";
            yield return next;
        }
    }

    private static JsonNode? Read(JsonObject group, string path) =>
        JobPath.Get(group, path) is JsonValue value && value.ToString().Trim().Length > 0 ? value.DeepClone() : null;
}
