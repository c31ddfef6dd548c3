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
    /// <summary>
    /// By the tile's longest edge (ANSI A108.02, 4.1.4.3.1; the clause is from memory): under 15 in, 1/4 in in 10 ft and
    /// 1/16 in in 12 in; from 15 in on, 1/8 in in 10 ft and 1/16 in in 24 in.
    /// </summary>
    internal static Flatness Required(Length longest) => longest < LargeTile.Side
        ? new(Length.FromInches(0, 1, 4), Length.FromInches(120), Length.FromInches(0, 1, 16), Length.FromInches(12), "6 mm in 3 m and 1.5 mm in 300 mm")
        : new(Length.FromInches(0, 1, 8), Length.FromInches(120), Length.FromInches(0, 1, 16), Length.FromInches(24), "3 mm in 3 m and 1.5 mm in 600 mm");
}
