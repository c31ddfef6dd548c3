using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;

namespace Gaugerod.Engine.Rules;

internal static class ProductRules
{
    internal static IEnumerable<Finding> Findings(RunFacts facts)
    {
        // the longer side has the wider window: what is outside that is outside either
        if (facts.Product is not { Class: TileClass.Rectified, Variation: { } variation }) yield break;
        var spread = SizeLimits.RectifiedSpread(facts.Longest);
        if (variation <= spread) yield break;
        yield return new(FindingLevel.Warn, "caliber", facts.Product.Name,
            "The tiles differ in size by more than one caliber of rectified tile may. Look for boxes of another caliber among them.",
            $"at most {Shown.Fine(spread, facts.Tape)} between the largest and the smallest", Shown.Fine(variation, facts.Tape),
            LimitTable.For(facts.Region, LimitKeys.Caliber).Source);
    }
}
