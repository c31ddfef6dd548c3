using System.Globalization;
using Gaugerod.Engine.Lines;

namespace Gaugerod.Engine.Rules;

internal static class WantRules
{
    internal static IEnumerable<Finding> Findings(RunFacts facts) =>
        from outcome in facts.Wants
        where !outcome.Held
        select new Finding(outcome.Want.Must ? FindingLevel.Stop : FindingLevel.Note, "want", facts.Run, outcome.Text, Asked(outcome.Want), "missed", "the job's own wants");

    private static string Asked(Want want) => want.Must ? "a must" : string.Create(CultureInfo.InvariantCulture, $"a wish of weight {want.Weight}");
}
