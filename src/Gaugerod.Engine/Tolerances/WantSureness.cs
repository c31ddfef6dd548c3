using Gaugerod.Engine.Lines;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tolerances;

/// <summary>Says of wants how sure they are.</summary>
internal static class WantSureness
{
    /// <summary>The outcome with what may come of it on the wall; as it was where it does not hang on a cut at an edge, or is missed already.</summary>
    public static WantOutcome Of(WantOutcome outcome, Sequence<CutRange> ranges, Tape tape)
    {
        if (!outcome.Held || outcome.Want is not Want.AtLeast least || Range(ranges, least.Edge) is not { } range) return outcome;
        var asked = least.PartOfTile is var (over, under) ? Length.FromSteps(((range.Whole.Steps * over) + under - 1) / under) : least.Size!.Value;
        var sure = range.Smallest - range.AtWorst >= asked ? Sureness.Held : range.Smallest - range.GiveOrTake >= asked ? Sureness.WithinRange : Sureness.AtRisk;
        var text = sure switch
        {
            Sureness.AtRisk => $"{outcome.Text} At risk: cuts there may come out {LengthText.Nearest(range.GiveOrTake, tape)} smaller.",
            Sureness.WithinRange => $"{outcome.Text} Held nineteen times in twenty, though not with everything off at once.",
            _ => outcome.Text,
        };
        return outcome with { Sure = sure, Text = text };
    }

    private static CutRange? Range(Sequence<CutRange> ranges, EdgeRef edge) => ranges.FirstOrDefault(range =>
        string.Equals(range.Face, edge.Face, StringComparison.Ordinal) && string.Equals(range.Edge, edge.Edge, StringComparison.Ordinal));
}
