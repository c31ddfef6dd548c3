using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>Where the limits for large tile begin.</summary>
internal static class LargeTile
{
    /// <summary>
    /// 15 in. Offsets and joints are limited for sides over it, flatness for edges of it or more. The limits speak of nominal
    /// sizes; a real side is never over 15 in when the nominal one is 15 in.
    /// </summary>
    internal static Length Side { get; } = LimitTable.For(null, LimitKeys.LargeSide).At.Length;
}
