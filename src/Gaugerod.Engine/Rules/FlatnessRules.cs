using Gaugerod.Engine.Bases;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rules;

/// <summary>Whether a face that was read is flat enough for its tile, and what brings it there.</summary>
internal static class FlatnessRules
{
    private const string Rule = "flatness", Practice = "common practice, no source";

    internal static IEnumerable<Finding> Findings(FlatFace flat, Tape tape)
    {
        foreach (var gap in flat.Gaps)
        {
            var over = LengthText.Nearest(gap.Over, tape);
            var worst = gap.Hump > gap.Hollow
                ? $"Over {over} it stands out by {Shown.Fine(gap.Hump, tape)} at {Say(gap.At, tape)}, over a string from {Say(gap.From, tape)} to {Say(gap.To, tape)}."
                : $"Under a straightedge of {over} the widest gap is {Shown.Fine(gap.Hollow, tape)}, at {Say(gap.At, tape)}, resting at {Say(gap.From, tape)} and {Say(gap.To, tape)}.";
            if (gap.Limit is not { } limit) continue;
            yield return new(gap.IsWithin ? FindingLevel.Note : FindingLevel.Warn, Rule, flat.Face, worst, $"at most {Shown.Fine(limit.Most, tape)} over {over}", Shown.Fine(gap.Worst, tape), limit.Source);
        }

        if (flat.IsFalling)
        {
            yield return new(
                FindingLevel.Note, Rule, flat.Face,
                "It falls, so that no one plane is asked of it, and these readings do not say whether the base or the bed on it was read: nothing is judged. Of the base they say where a bed will be thicker or thinner than reckoned over a level base; keep the heights. Of a bed each plane between two folds is read by itself.",
                "", "", Practice);
        }

        if (flat.ToLimit is { } level && (level.Volume > 0 || level.Grind > Length.Zero) && flat.Gaps.Any(gap => !gap.IsWithin))
        {
            yield return new(
                FindingLevel.Note, Rule, flat.Face,
                $"So that no reading is off by more than the limit: fill {Amounts.Volume(level.Volume, tape)}, {Shown.Fine(level.Deepest, tape)} at the deepest, or grind {Shown.Fine(level.Grind, tape)} off the highest. Filled to the plane through the highest place it takes {Amounts.Volume(flat.ToHighs!.Volume, tape)}. Reckoned between the readings: beyond them nothing is known.",
                "", "", "reckoned; filler and primer as their instructions say. Grinding sets silica dust free: see the caution on dust");
        }

        if (flat.ToStraightedges is { } even)
        {
            yield return new(
                FindingLevel.Note, Rule, flat.Face,
                $"So that no straightedge, long or short, shows more than asked along the readings: fill {Amounts.Volume(even.Volume, tape)}, {Shown.Fine(even.Deepest, tape)} at the deepest, feathered out to the next readings. No place could do with less by itself.",
                "", "", "reckoned; filler and primer as their instructions say");
        }

        foreach (var over in flat.Untold)
        {
            yield return new(FindingLevel.Note, Rule, flat.Face, $"No three readings in a line lie within {LengthText.Nearest(over, tape)}: of a straightedge so long they say nothing. Read nearer together.", "", "", Practice);
        }
    }

    private static string Say(Point place, Tape tape) => $"[{LengthText.Nearest(place.X, tape)}, {LengthText.Nearest(place.Y, tape)}]";
}
