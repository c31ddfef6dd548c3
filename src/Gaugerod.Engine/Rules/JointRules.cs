using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

internal static class JointRules
{
    internal static IEnumerable<Finding> Findings(RunFacts facts)
    {
        var (product, tape) = (facts.Product, facts.Tape);
        var (any, varied) = (JointLimits.Any(facts.Region, facts.Longest, facts.IsFloor), LimitTable.For(facts.Region, LimitKeys.JointVariation));
        var byVariation = product.Variation is { } variation ? JointLimits.ByVariation(variation) : Length.Zero;
        var isVaried = byVariation > any.Least.Length;
        var least = Length.Max(byVariation, any.Least.Length);
        if (facts.Joint < least)
        {
            var text = isVaried
                ? $"The joint is narrower than three times the {Shown.Fine(product.Variation!.Value, tape)} by which the tiles differ in size."
                : "The joint is narrower than any tile is set with.";
            yield return new(FindingLevel.Warn, "joint-variation", facts.Run, text + any.Do,
                $"at least {Shown.Fine(least, tape)}", Shown.Fine(facts.Joint, tape), isVaried ? varied.Source : any.Source);
        }
        else if (any.Limit.Most is { } most && facts.Joint > most.Length)
        {
            yield return new(FindingLevel.Warn, "joint-wide", facts.Run, "The joint is wider than tile of this size is set with." + any.Do,
                $"at most {Shown.Fine(most.Length, tape)}", Shown.Fine(facts.Joint, tape), any.Source);
        }

        if (product.Variation is null)
        {
            yield return new(FindingLevel.Note, "joint-variation", product.Name,
                "How far the tiles differ in size is not known. Measure ten from several boxes, both ways, and enter the largest less the smallest.",
                $"a joint of three times the difference, at least {Shown.Fine(any.Least.Length, tape)}", "not measured", string.Equals(any.Limit.Source, varied.Limit.Source, StringComparison.Ordinal) ? varied.Source : $"{varied.Source}; {any.Source}");
        }

        if (facts.Bond is not BondRequest.Running) yield break;
        if (JointLimits.LeastInRunningBond(facts.Longest, product.Class, product.Warpage ?? Length.Zero) is not { } wide) yield break;
        var running = JointLimits.InRunningBond(facts.Region, product.Class);
        if (facts.Joint < wide)
        {
            yield return new(FindingLevel.Warn, "joint-offset", facts.Run,
                $"The joint is narrower than a running bond of this tile asks for ({Reckoned(running, facts)}).{running.Do}",
                $"at least {Shown.Fine(wide, tape)}", Shown.Fine(facts.Joint, tape), running.Source);
        }

        if (product.Class is null)
        {
            yield return new(FindingLevel.Note, "tile-class", product.Name,
                "Whether the tile is rectified is not known, so the wider joint is asked for. Look on the box or the data sheet.",
                $"{Shown.Fine(JointLimits.InRunningBond(null, TileClass.Rectified).Least.Length, tape)} for rectified tile, {Shown.Fine(running.Least.Length, tape)} for other tile, plus the warp",
                "not known", running.Source);
        }
    }

    private static string Reckoned(Ruling running, RunFacts facts)
    {
        var sorted = running.Least.Length;
        return facts.Product.Warpage is { } warp
            ? $"{Shown.Fine(sorted, facts.Tape)} and the warp, {Shown.Fine(warp, facts.Tape)}"
            : $"{Shown.Fine(sorted, facts.Tape)} and the warp, not measured";
    }
}
