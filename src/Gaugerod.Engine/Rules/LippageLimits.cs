using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How far one tile's edge may stand above the next.</summary>
internal static class LippageLimits
{
    /// <summary>
    /// What the joint width allows on top of the tile's own warp: 1/32 in for joints under 1/4 in, 1/16 in from there on
    /// (ANSI A108.02-2013, 4.3.7). The table begins at joints of 1/16 in; narrower ones are given no more.
    /// </summary>
    internal static Length Allowance(Length joint) => Length.FromInches(0, joint < Length.FromInches(0, 1, 4) ? 1 : 2, 32);

    /// <summary>The lippage allowed: the allowance and the warp of the tiles supplied, not the warp their standard would allow.</summary>
    internal static Length Allowed(Length joint, Length warpage) => Allowance(joint) + warpage;
}
