using System.Globalization;
using Gaugerod.Engine.Lines;

namespace Gaugerod.Engine.Rules;

internal static class WantRules
{
    internal static IEnumerable<Finding> Findings(RunFacts facts) =>
        from outcome in facts.Wants
        where !outcome.Held
        select new Finding(outcome.Want.Must ? FindingLevel.Stop : FindingLevel.Note, "want", facts.Run, outcome.Text, Asked(outcome.Want), "missed", "the job's own wants");

    /// <summary>Wants that are held as planned and may not be on the wall.</summary>
    internal static IEnumerable<Finding> AtRisk(RunFacts facts) =>
        from outcome in facts.Wants
        where outcome is { Held: true, Sure: Sureness.AtRisk }
        select new Finding(outcome.Want.Must ? FindingLevel.Warn : FindingLevel.Note, "at-risk", facts.Run, outcome.Text, Asked(outcome.Want), "at risk", "the job's own wants; see docs/tolerances.md");

    private static string Asked(Want want) => want.Must ? "a must" : string.Create(CultureInfo.InvariantCulture, $"a wish of weight {want.Weight}");
}
