using System.Globalization;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

internal static class CutRules
{
    internal static IEnumerable<Finding> Findings(RunFacts facts)
    {
        if (facts.Cuts == 0) yield break;
        var (limits, tape) = (facts.Limits, facts.Tape);
        var smallest = LengthText.Narrowest(facts.SmallestCut, tape);
        if (limits.Smallest is { } least && facts.SmallestCut < least)
        {
            yield return new(FindingLevel.Stop, "smallest-cut", facts.Run, "A cut is narrower than the narrowest this job allows.",
                $"at least {LengthText.Nearest(least, tape)}", smallest, "the job's own limit");
        }

        if (facts.Slivers > 0)
        {
            var tiles = facts.Slivers == 1 ? "One tile is" : string.Create(CultureInfo.InvariantCulture, $"{facts.Slivers} tiles are");
            var named = facts.Narrow.Count == 0 ? "" : ": " + Slivers.Words(facts.Narrow);
            yield return new(FindingLevel.Warn, "sliver", facts.Run, $"{tiles} cut narrower than a sliver may be{named}.",
                $"at least {LengthText.Nearest(limits.Sliver, tape)}", smallest, "the job's own limit; 2 in or 50 mm: common practice, no source");
        }

        if (facts.HalfTileMissed)
        {
            yield return new(FindingLevel.Note, "half-tile", facts.Run,
                "A cut is under half a tile. Half a tile or more is the usual aim, not a bound: the room's shape, a focal point or the waste may speak against it.",
                "half a tile", smallest, "ANSI A108.02, 4.3.2" + RegionWords.Borrowed(facts.Region));
        }
    }
}
