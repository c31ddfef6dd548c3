using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>What to check on the wall before and while setting: nothing the plan can know.</summary>
internal static class SurfaceRules
{
    private const string Lippage = "ANSI A108.02-2013, 4.3.7";

    internal static IEnumerable<Finding> Findings(RunFacts facts)
    {
        var tape = facts.Tape;
        if (facts.Product.Warpage is { } warp)
        {
            yield return new(FindingLevel.Note, "lippage", facts.Run,
                "How far one tile's edge may stand above the next at this joint, the warp of the tile counted in. Check while setting.",
                $"at most {Shown.Fine(LippageLimits.Allowed(facts.Joint, warp), tape)}", "", Lippage);
        }
        else
        {
            yield return new(FindingLevel.Note, "warpage", facts.Product.Name,
                "How far the tiles are warped is not known. Lay a straightedge along the longest edge of ten of them and enter the greatest gap.",
                $"lippage: the warp and {Shown.Fine(LippageLimits.Allowance(facts.Joint), tape)}", "not measured", Lippage);
        }

        var flat = FlatnessLimits.Required(facts.Longest);
        var limit = tape.Unit == LengthUnit.Inch
            ? $"{Shown.Fine(flat.Long, tape)} over {LengthText.FeetNearest(flat.LongOver, tape)} and {Shown.Fine(flat.Short, tape)} over {LengthText.Nearest(flat.ShortOver, tape)}"
            : flat.Metric;
        yield return new(FindingLevel.Note, "flatness", facts.Run,
            facts.Folded
                ? "Check every plane with a straightedge before setting. Flat is not level: a plane may fall, but it may not bend between its folds."
                : "Check the surface with a straightedge before setting. Flat is not level: a slope does not matter here.",
            $"out of plane by at most {limit}", "", "ANSI A108.01 and A108.02, 4.1.4.3.1 (clause from memory)");
    }
}
