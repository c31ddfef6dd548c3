using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Makes sides of an outline round, and straight again.</summary>
internal static class Rounding
{
    /// <summary>Makes the side that arrives at a corner an arc, half round to begin with; straight again where it is one.</summary>
    public static void Turn(JobDesk desk, JsonArray outline, int corner, bool round)
    {
        var (from, to) = (FaceMeasures.Corner(outline[(corner + outline.Count - 1) % outline.Count]), FaceMeasures.Corner(outline[corner]));
        var end = to?.DeepClone() ?? new JsonArray("", "");
        outline[corner] = !round ? end : new JsonObject
        {
            ["to"] = end,
            ["through"] = FaceMeasures.Place(desk, from) is { } a && FaceMeasures.Place(desk, to) is { } b ? Typed(desk, Crown(a, b)) : new JsonArray("", ""),
        };
    }

    /// <summary>A rectangular opening with a half-round head, its crown as high as its top was; null where it is too low for one, or not read yet.</summary>
    public static JsonObject? Headed(JobDesk desk, JsonObject opening)
    {
        if (Read("left") is not { } left || Read("bottom") is not { } bottom || Read("width") is not { } width || Read("height") is not { } height) return null;
        var (half, right, spring) = (Length.FromSteps(width.Steps / 2), left + width, bottom + height - Length.FromSteps(width.Steps / 2));
        if (spring <= bottom || half <= Length.Zero) return null;
        var headed = (JsonObject)opening.DeepClone();
        foreach (var key in new[] { "left", "bottom", "width", "height", "edges", "range" }) headed.Remove(key);
        headed["outline"] = new JsonArray(
            Typed(desk, new(left, bottom)), Typed(desk, new(right, bottom)), Typed(desk, new(right, spring)),
            new JsonObject { ["to"] = Typed(desk, new(left, spring)), ["through"] = Typed(desk, new(left + half, bottom + height)) });
        if (opening["edges"] is JsonObject edges)
        {
            headed["edges"] = new JsonArray([.. new[] { ("bottom", "bottom"), ("right", "right"), ("top", "arch"), ("left", "left") }.Select(side =>
            {
                var edge = edges[side.Item1]?.DeepClone() as JsonObject ?? [];
                edge["name"] = side.Item2;
                return (JsonNode)edge;
            })]);
        }

        return headed;

        Length? Read(string key) => FaceMeasures.Read(desk, opening[key]);
    }

    // Counter-clockwise the outside lies at the right of the way.
    private static Point Crown(Point a, Point b) => Point.FromSteps((a.X.Steps + b.X.Steps + b.Y.Steps - a.Y.Steps) / 2, (a.Y.Steps + b.Y.Steps + a.X.Steps - b.X.Steps) / 2);

    private static JsonArray Typed(JobDesk desk, Point point) => new(FaceMeasures.Typed(desk, point.X), FaceMeasures.Typed(desk, point.Y));
}
