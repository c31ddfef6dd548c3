using System.Text.Json.Nodes;
using Gaugerod.App.Desk;
using Gaugerod.Plane.Measure;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Makes and changes grids of readings in the job.</summary>
internal static class FlatMaking
{
    private const int Most = 12;

    /// <summary>A grid over a face, to be read: each two feet or 600 mm, from half a foot or 150 mm off its corner.</summary>
    public static JsonObject Grid(JobDesk desk, string face)
    {
        var (first, step) = desk.Unit == LengthUnit.Inch ? (Length.FromInches(6), Length.FromInches(24)) : (Length.FromMillimetres(150), Length.FromMillimetres(600));
        var box = FaceMeasures.Around(desk, face);
        var (columns, rows) = (Count(box?.Width), Count(box?.Height));
        return new()
        {
            ["from"] = new JsonArray(FaceMeasures.Typed(desk, (box?.Left ?? Length.Zero) + first), FaceMeasures.Typed(desk, (box?.Bottom ?? Length.Zero) + first)),
            ["step"] = FaceMeasures.Typed(desk, step),
            ["heights"] = new JsonArray([.. Enumerable.Range(0, rows).Select(_ => Row(columns))]),
        };

        int Count(Length? across) => across is { } length ? (int)Math.Clamp(((length - first - first).Steps / step.Steps) + 1, 2, Most) : 3;
    }

    /// <summary>Its first reading on the page, where the highest row stands first.</summary>
    public static string First(JsonObject grid, string path) => FormattableString.Invariant($"{path}.heights[{((JsonArray)grid["heights"]!).Count - 1}][0]");

    /// <summary>A row of readings still to be taken.</summary>
    public static JsonNode Row(int columns) => new JsonArray([.. Enumerable.Range(0, columns).Select(_ => (JsonNode)"")]);
}
