using System.Text.Json.Nodes;

namespace Gaugerod.App.Stations.Measure;

/// <summary>Where a zone lies as it was asked for, without the engine's help: drawn also while it cannot be cut so.</summary>
internal static class RoughZone
{
    /// <summary>Its outline, of a border that of what lies inside it; nothing while too little of it is read.</summary>
    /// <param name="zone">The zone.</param>
    /// <param name="outline">The face's outline.</param>
    /// <param name="at">Reads a length of it.</param>
    /// <param name="up">Reads a height of it.</param>
    public static IReadOnlyList<Spot> Of(JsonObject zone, IReadOnlyList<Spot> outline, Func<string, double?> at, Func<string, double?> up)
    {
        var (left, right, low, high) = (outline.Min(p => p.X), outline.Max(p => p.X), outline.Min(p => p.Y), outline.Max(p => p.Y));
        return (zone["kind"]?.ToString(), at("width"), at("height"), at("left"), up("bottom"), up("from")) switch
        {
            ("rug", > 0 and var wide, > 0 and var tall, { } x, { } y, _) => Box(x, y, x + wide, y + tall),
            ("band", _, _, _, _, { } from) => Box(left, from, right, up("to") ?? high),
            ("border", > 0 and var width, _, _, _, _) when 2 * width < Math.Min(right - left, high - low) => Box(left + width, low + width, right - width, high - width),
            _ => [],
        };
    }

    private static IReadOnlyList<Spot> Box(double left, double low, double right, double high) => [new(left, low), new(right, low), new(right, high), new(left, high)];
}
