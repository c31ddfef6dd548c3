using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How far tiles of one box may differ, and what their sizes are called.</summary>
internal static class SizeLimits
{
    // In decimals, for a half of a step is rounded up.
    private static readonly decimal s_part = (decimal)LimitTable.For(null, LimitKeys.Caliber).Most.Number / 100;

    private static readonly decimal s_cap = (decimal)LimitTable.For(null, LimitKeys.CaliberCap).Most.Number * Length.StepsPerInch;

    /// <summary>
    /// How far a side of a rectified pressed floor tile may lie from the average of its sample, either way: 0.25 % of it or
    /// 0.03 in, whichever is less, to the nearest step (ANSI A137.1, caliber range).
    /// </summary>
    internal static Length RectifiedTolerance(Length average) =>
        Length.FromSteps(Math.Min(Rounded(average.Steps * s_part), Rounded(s_cap)));

    /// <summary>How far the largest and the smallest of them may lie apart: twice as much, rounded only then.</summary>
    internal static Length RectifiedSpread(Length average) =>
        Length.FromSteps(Math.Min(Rounded(average.Steps * s_part * 2), Rounded(s_cap * 2)));

    /// <summary>The least and the most a side of a rectified pressed floor tile may measure (ANSI A137.1, caliber range).</summary>
    internal static (Length Least, Length Most) RectifiedWindow(Length average) =>
        (average - RectifiedTolerance(average), average + RectifiedTolerance(average));

    private static long Rounded(decimal steps) => (long)decimal.Round(steps, 0, MidpointRounding.AwayFromZero);

    /// <summary>The modular (coordinating) size: the tile's real side and one joint.</summary>
    internal static Length Modular(Length side, Length joint) => side + joint;
}
