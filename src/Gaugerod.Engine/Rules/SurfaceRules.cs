using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>What to check on the wall before and while setting: nothing the plan can know.</summary>
internal static class SurfaceRules
{
    internal static IEnumerable<Finding> Findings(RunFacts facts)
    {
        var (tape, ruling) = (facts.Tape, LippageLimits.Of(facts.Joint, facts.Region));
        // Only the North American limit counts beside the warp.
        if (ruling.Limit.Region != Region.America)
        {
            var polished = LippageLimits.Polished(facts.Joint, facts.Region) is { } finer ? $"; {Shown.Fine(finer.Most.Length, tape)} for tile ground flat or polished" : "";
            yield return new(FindingLevel.Note, "lippage", facts.Run, $"How far one tile's edge may stand above the next at this joint. Check while setting.{ruling.Do}", $"at most {Shown.Fine(ruling.Most.Length, tape)}{polished}", "", ruling.Source);
        }
        else if (facts.Product.Warpage is { } warp)
        {
            yield return new(FindingLevel.Note, "lippage", facts.Run,
                $"How far one tile's edge may stand above the next at this joint, the warp of the tile counted in. Check while setting.{ruling.Do}",
                $"at most {Shown.Fine(LippageLimits.Allowed(facts.Joint, warp), tape)}", "", ruling.Source);
        }

        if (facts.Product.Warpage is null)
        {
            var limit = ruling.Limit.Region == Region.America ? $"the warp and {Shown.Fine(LippageLimits.Allowance(facts.Joint), tape)}" : $"at most {Shown.Fine(ruling.Most.Length, tape)}";
            yield return new(FindingLevel.Note, "warpage", facts.Product.Name,
                "How far the tiles are warped is not known. Lay a straightedge along the longest edge of ten of them and enter the greatest gap.",
                $"lippage: {limit}", "not measured", ruling.Source);
        }

        yield return Flatness(facts);
    }

    private static Finding Flatness(RunFacts facts)
    {
        var tape = facts.Tape;
        var text = facts.Folded
            ? "Check every plane with a straightedge before setting. Flat is not level: a plane may fall, but it may not bend between its folds."
            : "Check the surface with a straightedge before setting. Flat is not level: a slope does not matter here.";
        if (FlatnessLimits.Own(facts.Region, facts.IsFloor) is { Count: > 0 } own)
        {
            var agreed = FlatnessLimits.Agreed(facts.Region, facts.IsFloor);
            return new(
                FindingLevel.Note, "flatness", facts.Run, text + own[0].Do,
                $"out of plane by at most {Each(own)}{(agreed.Count > 0 ? $"; where more was agreed, {Each(agreed)}" : "")}", "", own[0].Source + (agreed.Count > 0 ? $"; more: {agreed[0].Source}" : ""));
        }

        var flat = FlatnessLimits.Required(facts.Longest);
        var (far, _) = FlatnessLimits.Rulings(facts.Longest, isMetric: false, facts.Region);
        var limit = tape.Unit == LengthUnit.Inch
            ? $"{Shown.Fine(flat.Long, tape)} over {LengthText.FeetNearest(flat.LongOver, tape)} and {Shown.Fine(flat.Short, tape)} over {LengthText.Nearest(flat.ShortOver, tape)}"
            : flat.Metric;
        return new(FindingLevel.Note, "flatness", facts.Run, text + far.Do, $"out of plane by at most {limit}", "", far.Source);

        string Each(IReadOnlyList<Ruling> limits) => string.Join(", ", limits.Select(one => $"{Shown.Fine(one.Most.Length, tape)} over {LengthText.Nearest(one.At.Length, tape)}"));
    }
}
