using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>How far a course may be set off from the one before.</summary>
internal static class OffsetLimits
{
    /// <summary>The greatest offset of a side over 15 in: 33 % of it, to the nearest step. Null when the side is not over 15 in.</summary>
    internal static Length? Greatest(Length side) =>
        side > LargeTile.Side ? Length.FromSteps(((side.Steps * 2 * (long)LimitTable.For(null, LimitKeys.Offset).Most.Number) + 100) / 200) : null;

    /// <summary>
    /// Whether an offset of a part of the side keeps the limit. 33 % stands for one third, so a true third keeps it; two thirds
    /// one way are one third the other.
    /// </summary>
    internal static bool Keeps(Length side, int numerator, int denominator) =>
        side <= LargeTile.Side || 3L * Nearer(numerator, denominator) <= denominator;

    /// <summary>The numerator of the offset to the nearer joint of the course below.</summary>
    internal static int Nearer(int numerator, int denominator) => Math.Min(numerator, denominator - numerator);
}
