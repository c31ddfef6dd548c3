using System.Globalization;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

internal static class OffsetRules
{
    internal static IEnumerable<Finding> Findings(RunFacts facts)
    {
        // the width lies along the course whichever way the courses run
        var side = facts.Product.Width;
        if (facts.Bond is not BondRequest.Running(_, var numerator, var denominator, _)) yield break;
        if (OffsetLimits.Keeps(side, numerator, denominator)) yield break;
        var offset = Length.FromSteps(side.Steps * OffsetLimits.Nearer(numerator, denominator) / denominator);
        var part = string.Create(CultureInfo.InvariantCulture, $"{OffsetLimits.Nearer(numerator, denominator)}/{denominator}");
        var limit = LimitTable.For(facts.Region, LimitKeys.Offset);
        yield return new(FindingLevel.Warn, "offset", facts.Run,
            $"Tiles with a side over {Shown.Fine(LargeTile.Side, facts.Tape)} are set off by {part} of it; past one third the warp of the edges shows. "
            + "Unless the tile's maker says otherwise, have a laid sample and its lippage approved first.",
            $"{limit.Most} of the side, {Shown.Fine(OffsetLimits.Greatest(side)!.Value, facts.Tape)}; a third is accepted",
            $"{part}, {Shown.Fine(offset, facts.Tape)}", limit.Source);
    }
}
