using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

internal static class JointRules
{
    private const string ByVariation = "ANSI A108.02-2017, 4.3.8";
    private const string InRunningBond = "ANSI A108.02, 4.3.8.1";

    internal static IEnumerable<Finding> Findings(RunFacts facts)
    {
        var (product, tape) = (facts.Product, facts.Tape);
        var least = product.Variation is { } variation ? JointLimits.LeastByVariation(variation) : JointLimits.LeastEver;
        if (facts.Joint < least)
        {
            var text = least > JointLimits.LeastEver
                ? $"The joint is narrower than three times the {Shown.Fine(product.Variation!.Value, tape)} by which the tiles differ in size."
                : "The joint is narrower than any tile is set with.";
            yield return new(FindingLevel.Warn, "joint-variation", facts.Run, text,
                $"at least {Shown.Fine(least, tape)}", Shown.Fine(facts.Joint, tape), ByVariation);
        }

        if (product.Variation is null)
        {
            yield return new(FindingLevel.Note, "joint-variation", product.Name,
                "How far the tiles differ in size is not known. Measure ten from several boxes, both ways, and enter the largest less the smallest.",
                $"a joint of three times the difference, at least {Shown.Fine(JointLimits.LeastEver, tape)}", "not measured", ByVariation);
        }

        if (facts.Bond is not BondRequest.Running) yield break;
        if (JointLimits.LeastInRunningBond(facts.Longest, product.Class, product.Warpage ?? Length.Zero) is not { } wide) yield break;
        if (facts.Joint < wide)
        {
            yield return new(FindingLevel.Warn, "joint-offset", facts.Run,
                $"The joint is narrower than a running bond of this tile asks for ({Reckoned(facts)}).",
                $"at least {Shown.Fine(wide, tape)}", Shown.Fine(facts.Joint, tape), InRunningBond);
        }

        if (product.Class is null)
        {
            yield return new(FindingLevel.Note, "tile-class", product.Name,
                "Whether the tile is rectified is not known, so the wider joint is asked for. Look on the box or the data sheet.",
                $"{Shown.Fine(Length.FromInches(0, 1, 8), tape)} for rectified tile, {Shown.Fine(Length.FromInches(0, 3, 16), tape)} for other tile, plus the warp",
                "not known", InRunningBond);
        }
    }

    private static string Reckoned(RunFacts facts)
    {
        var sorted = JointLimits.LeastInRunningBond(facts.Longest, facts.Product.Class, Length.Zero)!.Value;
        return facts.Product.Warpage is { } warp
            ? $"{Shown.Fine(sorted, facts.Tape)} and the warp, {Shown.Fine(warp, facts.Tape)}"
            : $"{Shown.Fine(sorted, facts.Tape)} and the warp, not measured";
    }
}
