using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How far a surface may be out of plane.</summary>
/// <param name="Long">The most over the long distance.</param>
/// <param name="LongOver">The long distance.</param>
/// <param name="Short">The most over the short distance.</param>
/// <param name="ShortOver">The short distance.</param>
/// <param name="Metric">The same as printed in metric, rounded down.</param>
internal sealed record Flatness(Length Long, Length LongOver, Length Short, Length ShortOver, string Metric);

/// <summary>How flat the surface under tile must be. Flat is not level: its slope does not count.</summary>
internal static class FlatnessLimits
{
    /// <summary>The North American limits, by the tile's longest edge: those for large tile hold from 15 in on.</summary>
    internal static Flatness Required(Length longest)
    {
        var (far, near) = Rulings(longest, isMetric: false);
        var (metric, metricNear) = Rulings(longest, isMetric: true);
        return new(far.Most.Length, far.At.Length, near.Most.Length, near.At.Length, $"{metric.Most} in {metric.At} and {metricNear.Most} in {metricNear.At}");
    }

    /// <summary>The North American limits over the long and over the short distance, as printed in inches or in metric.</summary>
    internal static (Ruling Long, Ruling Short) Rulings(Length longest, bool isMetric, Region? asked = null)
    {
        var (far, near) = (longest >= LargeTile.Side, isMetric) switch
        {
            (false, false) => (LimitKeys.FlatSmall, LimitKeys.FlatSmallShort),
            (false, true) => (LimitKeys.FlatSmallMetric, LimitKeys.FlatSmallShortMetric),
            (true, false) => (LimitKeys.FlatLarge, LimitKeys.FlatLargeShort),
            (true, true) => (LimitKeys.FlatLargeMetric, LimitKeys.FlatLargeShortMetric),
        };
        return (LimitTable.For(asked, far), LimitTable.For(asked, near));
    }

    /// <summary>The limits of a region that has its own for any tile, the longest straightedge first; none of North America.</summary>
    internal static IReadOnlyList<Ruling> Own(Region? region, bool isFloor) => region is null or Region.America ? []
        : [.. LimitTable.Each(region, LimitKeys.Flat).Concat(LimitTable.Each(region, isFloor ? LimitKeys.FlatFloor : LimitKeys.FlatWall))];

    /// <summary>Those that hold where they were agreed.</summary>
    internal static IReadOnlyList<Ruling> Agreed(Region? region, bool isFloor) => [.. LimitTable.Each(region, isFloor ? LimitKeys.FlatFloorStrict : LimitKeys.FlatWallStrict)];
}
