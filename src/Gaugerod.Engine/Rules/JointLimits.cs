using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How narrow a joint may be.</summary>
internal static class JointLimits
{
    /// <summary>No joint is narrower: 1/16 in (ANSI A108.02-2017, 4.3.8).</summary>
    internal static Length LeastEver { get; } = Length.FromInches(0, 1, 16);

    /// <summary>
    /// The least joint for tiles that differ in size: three times the difference between the largest and the smallest
    /// supplied, never under <see cref="LeastEver"/> (ANSI A108.02-2017, 4.3.8).
    /// </summary>
    internal static Length LeastByVariation(Length variation) => Length.Max(variation * 3, LeastEver);

    /// <summary>
    /// The least joint on average in a running bond with a side over 15 in: 1/8 in for rectified tile, 3/16 in for any
    /// other, plus the warp of the longest edge of the tiles supplied (ANSI A108.02, 4.3.8.1). A class that is not
    /// known counts as not rectified.
    /// </summary>
    /// <returns>Null when no side is over 15 in.</returns>
    internal static Length? LeastInRunningBond(Length longest, TileClass? sorted, Length warpage) =>
        longest > LargeTile.Side ? Length.FromInches(0, sorted == TileClass.Rectified ? 2 : 3, 16) + warpage : null;
}
