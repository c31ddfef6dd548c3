using Gaugerod.Plane;

namespace Gaugerod.Engine.Rules;

/// <summary>Holds a run against the published limits and the setter's own.</summary>
internal static class RunRules
{
    /// <summary>
    /// What there is to say, the gravest first. A limit that is met is not mentioned; one that cannot be checked is,
    /// with what to measure. Findings about a product alone name the product, so that two runs of one tile say the same.
    /// </summary>
    internal static Sequence<Finding> Findings(RunFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        IEnumerable<Finding> all =
        [
            .. WantRules.Findings(facts), .. CutRules.Findings(facts), .. JointRules.Findings(facts),
            .. OffsetRules.Findings(facts), .. ProductRules.Findings(facts), .. SurfaceRules.Findings(facts),
        ];
        return all.OrderByDescending(f => f.Level).ToSequence();
    }
}
