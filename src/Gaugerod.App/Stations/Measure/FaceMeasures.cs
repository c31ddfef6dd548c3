using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.App.Stations.Measure;

/// <summary>What can be read of a face without the engine's help, for proposing where on it something might go.</summary>
internal static class FaceMeasures
{
    /// <summary>A length of the job; null while it cannot be read.</summary>
    public static Length? Read(JobDesk desk, JsonNode? node) =>
        node is JsonValue value && LengthText.Read(value.ToString(), desk.Unit) is LengthReading.Understood read ? read.Value : null;

    /// <summary>A place [x, y]; null while it cannot be read.</summary>
    public static Point? Place(JobDesk desk, JsonNode? node) =>
        node is JsonArray { Count: 2 } pair && Read(desk, pair[0]) is { } x && Read(desk, pair[1]) is { } y ? new(x, y) : null;

    /// <summary>Where a corner of an outline is, an arc's or a plain one.</summary>
    public static JsonNode? Corner(JsonNode? corner) => corner is JsonObject arc ? arc["to"] : corner;

    /// <summary>The box around a face as measured; null while too little of it is read.</summary>
    public static Box? Around(JobDesk desk, string face)
    {
        if (JobPath.Get(desk.Root, face + ".outline") is JsonArray corners)
        {
            var places = corners.Select(corner => Place(desk, Corner(corner))).OfType<Point>().ToList();
            return places.Count > 1 ? Box.Around(places) : null;
        }

        if (JobPath.Get(desk.Root, face + ".survey") is not null) return desk.Survey(face)?.Shape.Outline?.Bounds;
        return Read(desk, JobPath.Get(desk.Root, face + ".readings.width.foot")) is { } width && Read(desk, JobPath.Get(desk.Root, face + ".readings.height.left")) is { } height
            ? new(Length.Zero, Length.Zero, width, height) : null;
    }

    /// <summary>A length as it would be typed, to the tape's mark; to be typed where it is not known.</summary>
    public static JsonNode Typed(JobDesk desk, Length? length) => length is { } known ? LengthText.NearestBare(known, Tapes.Of(desk)) : "";

    /// <summary>The run that lays a face or a zone, by its place in the job; below zero for none.</summary>
    public static int RunOf(JsonObject root, string name) => name.Length == 0 ? -1
        : JobLists.List(root, "runs").ToList().FindIndex(run => run?["faces"] is JsonArray faces && faces.Any(face => string.Equals(face?.ToString(), name, StringComparison.Ordinal)));
}
