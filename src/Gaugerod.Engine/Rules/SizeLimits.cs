using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How far tiles of one box may differ, and what their sizes are called.</summary>
internal static class SizeLimits
{
    /// <summary>
    /// How far a side of a rectified pressed floor tile may lie from the average of its sample, either way: 0.25 % of it or
    /// 0.03 in, whichever is less, to the nearest step (ANSI A137.1, caliber range).
    /// </summary>
    internal static Length RectifiedTolerance(Length average) =>
        Length.FromSteps(Math.Min(((average.Steps * 2) + 400) / 800, ((Length.StepsPerInch * 6) + 100) / 200));

    /// <summary>How far the largest and the smallest of them may lie apart: twice as much, rounded only then.</summary>
    internal static Length RectifiedSpread(Length average) =>
        Length.FromSteps(Math.Min((average.Steps + 100) / 200, ((Length.StepsPerInch * 6) + 50) / 100));

    /// <summary>The least and the most a side of a rectified pressed floor tile may measure (ANSI A137.1, caliber range).</summary>
    internal static (Length Least, Length Most) RectifiedWindow(Length average) =>
        (average - RectifiedTolerance(average), average + RectifiedTolerance(average));

    /// <summary>The modular (coordinating) size: the tile's real side and one joint.</summary>
    internal static Length Modular(Length side, Length joint) => side + joint;
}
