using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How narrow a joint may be.</summary>
internal static class JointLimits
{
    /// <summary>No joint is narrower: 1/16 in.</summary>
    internal static Length LeastEver { get; } = LimitTable.For(null, LimitKeys.JointLeast).Least.Length;

    /// <summary>
    /// The least joint for tiles that differ in size: three times the difference between the largest and the smallest
    /// supplied, never under <see cref="LeastEver"/>.
    /// </summary>
    internal static Length LeastByVariation(Length variation) => Length.Max(ByVariation(variation), LeastEver);

    /// <summary>Three times that difference and no more.</summary>
    internal static Length ByVariation(Length variation) => variation * (long)LimitTable.For(null, LimitKeys.JointVariation).Least.Number;

    /// <summary>What a region asks of any joint, whatever the tiles differ by.</summary>
    /// <param name="region">The job's region; null where it names none.</param>
    /// <param name="longest">The tile's longest edge.</param>
    /// <param name="isFloor">Whether it lies on a floor.</param>
    internal static Ruling Any(Region? region, Length longest, bool isFloor)
    {
        var small = LimitTable.For(region, LimitKeys.JointSmallTile, LimitKeys.JointLeast);
        return small.Limit.At is { } to && longest <= to.Length ? small : LimitTable.For(region, isFloor ? LimitKeys.JointFloor : LimitKeys.JointWall, LimitKeys.JointLeast);
    }

    /// <summary>
    /// The least joint on average in a running bond with a side over 15 in: 1/8 in for rectified tile, 3/16 in for any
    /// other, plus the warp of the longest edge of the tiles supplied. A class that is not known counts as not rectified.
    /// </summary>
    /// <returns>Null when no side is over 15 in.</returns>
    internal static Length? LeastInRunningBond(Length longest, TileClass? sorted, Length warpage) =>
        longest > LargeTile.Side ? InRunningBond(null, sorted).Least.Length + warpage : null;

    /// <summary>What that is by the tile's class, beside the warp.</summary>
    internal static Ruling InRunningBond(Region? region, TileClass? sorted) => LimitTable.For(region, sorted == TileClass.Rectified ? LimitKeys.JointOffsetRectified : LimitKeys.JointOffset);
}
