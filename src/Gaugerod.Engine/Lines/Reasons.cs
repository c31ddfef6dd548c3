using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Lines;

/// <summary>Says in one sentence why a placing is proposed, and what it costs against the best.</summary>
internal static class Reasons
{
    /// <summary>The placing as a proposal.</summary>
    public static Proposal Propose(RunModel model, RunPlacing placing, RunPlacing? best)
    {
        // Scored again, so that the model's legs at the edges are this placing's.
        _ = model.Score(placing.U, placing.V);
        var wants = Outcomes(model, placing);
        var faces = placing.OnFaces(model);
        var first = model.Frames[0].Face;
        return new(
            new(faces[0].X + first.Unrolled, faces[0].Y + first.Raised, model.Joint), faces,
            placing.Score, wants, best is null
                ? Why(placing.Score, model.NarrowestEdge(placing.Score.SmallestCut.Steps), wants, model.Problem.Tape)
                : Against(placing.Score, best.Score, wants, model.Problem.Order, model.Problem.Tape));
    }

    /// <summary>How the wants come out in the placing that was scored last.</summary>
    public static Sequence<WantOutcome> Outcomes(RunModel model, RunPlacing placing)
    {
        var outcomes = new List<WantOutcome>();
        foreach (var check in model.Checks.Where(check => check.Want >= 0))
        {
            var want = model.Problem.Wants[check.Want];
            var held = model.IsHeld(check, placing.U, placing.V);
            var aim = Array.Find(model.Checks, one => one.AimOf == check.Want) ?? check;
            var meets = held || model.IsHeld(aim, placing.U, placing.V);
            var byTurns = EdgeOf(want) is { } edge && aim is Check.Stands { Targets.Length: > 0 } stands && !OnEdge.IsMetByAll(edge, stands, model, placing) ? model.Offsets.Length : 1;
            outcomes.Add(Outcome(want, held, meets, byTurns, model.Frames[check.Face].Face, model.Problem.Tape));
        }

        return outcomes.ToSequence();
    }

    /// <summary>How a want came out, in words.</summary>
    /// <param name="want">The want.</param>
    /// <param name="held">Whether it is held.</param>
    /// <param name="meets">Of a want at an edge, whether a tile's side meets it at least where it stands furthest out.</param>
    /// <param name="byTurns">Of how many courses one meets it, where they begin by turns; else 1.</param>
    /// <param name="face">The face; null where nothing more is to be said.</param>
    /// <param name="tape">The tape.</param>
    public static WantOutcome Outcome(Want want, bool held, bool meets, int byTurns, FinishedFace? face, Tape tape)
    {
        var how = face is not null && EdgeOf(want) is { } edge && (held || want is Want.JointOnEdge) ? EdgeFit.Of(face, edge.Edge).Words(held, meets, byTurns, tape) : "";
        return new(want, held, $"{(want.Must ? "Must" : "Wish")}: {WantText.Phrase(want, tape)}: {(held ? "held" : "missed")}{how}.") { MeetsInPart = meets && !held };
    }

    private static EdgeRef? EdgeOf(Want want) => want switch { Want.JointOnEdge on => on.Edge, Want.FullCourse full => full.Edge, _ => null };

    /// <summary>Why a placing is proposed.</summary>
    /// <param name="score">How it does, its tiles counted.</param>
    /// <param name="narrowest">The edge of the smallest cut, in words; null where tiles are cut only off their corners or round.</param>
    /// <param name="wants">How the wants came out.</param>
    /// <param name="tape">The tape.</param>
    /// <param name="sheets">Whether chips were judged and sheets are bought.</param>
    public static string Why(Score score, string? narrowest, Sequence<WantOutcome> wants, Tape tape, bool sheets = false)
    {
        var parts = new List<string> { score.Cuts == 0 ? "no tile is cut" : narrowest is null ? "no cut runs along a tile's side, so none leaves a strip" : $"smallest cut {LengthText.Narrowest(score.SmallestCut, tape)}, at {narrowest}" };
        if (score is { AtWorst: { } worst, Cuts: > 0 }) parts.Add(worst > Length.Zero ? $"{LengthText.Narrowest(worst, tape)} is left of any with everything off at once" : "with everything off at once one may come to nothing");
        var held = wants.Where(outcome => outcome.Held).Select(outcome => WantText.Phrase(outcome.Want, tape)).ToList();
        if (held.Count > 0) parts.Add(string.Join(", ", held));
        var missed = wants.Where(outcome => !outcome.Held).Select(outcome => WantText.Phrase(outcome.Want, tape)).ToList();
        if (missed.Count > 0) parts.Add("but not " + string.Join(", nor ", missed));
        if (score.Slivers > 0) parts.Add(Count(score.Slivers, "sliver"));
        parts.Add(Count(score.Cuts, sheets ? "cut chip" : "cut tile"));
        return Sentence(string.Join("; ", parts));
    }

    /// <summary>What a placing gives and costs against the best.</summary>
    /// <param name="one">How it does.</param>
    /// <param name="other">How the best does.</param>
    /// <param name="wants">How the wants came out in it.</param>
    /// <param name="order">What placings are compared by.</param>
    /// <param name="tape">The tape.</param>
    public static string Against(Score one, Score other, Sequence<WantOutcome> wants, Sequence<Criterion> order, Tape tape)
    {
        var (costs, gains, without) = (new List<string>(), new List<string>(), "");
        var missed = wants.Where(outcome => !outcome.Held).Select(outcome => WantText.Phrase(outcome.Want, tape)).ToList();
        if (one.MustsMissed > other.MustsMissed || one.WishesMissed > other.WishesMissed || one.UnaskedMissed > other.UnaskedMissed)
        {
            if (missed.Count == 0 || one.WantsMissed <= other.WantsMissed) costs.Add("more cuts under half a tile or under the limit");
            else without = "does without " + string.Join(" and ", missed);
        }

        Compare(one.Slivers - other.Slivers, "sliver", costs, gains);
        if (tape.Down(one.SmallestCut) != tape.Down(other.SmallestCut))
        {
            var text = $"smallest cut {LengthText.Narrowest(one.SmallestCut, tape)} in place of {LengthText.Narrowest(other.SmallestCut, tape)}";
            (one.SmallestCut < other.SmallestCut ? costs : gains).Add(text);
        }

        if (one.AtWorst is { } worst && other.AtWorst is { } best && tape.Nearest(worst) != tape.Nearest(best)) (worst < best ? costs : gains).Add($"{LengthText.Nearest((best - worst).Abs(), tape)} {(worst < best ? "less" : "more")} at worst");

        if (tape.Nearest(one.Mirror) != tape.Nearest(other.Mirror))
        {
            var text = $"cuts left and right that differ by {LengthText.Nearest(one.Mirror, tape)} in all, not {LengthText.Nearest(other.Mirror, tape)}";
            (one.Mirror > other.Mirror ? costs : gains).Add(text);
        }

        Compare(one.Cuts - other.Cuts, "cut tile", costs, gains);
        Compare(one.Tiles - other.Tiles, "tile", costs, gains);
        if (costs.Count == 0 && without.Length == 0 && new ScoreOrder(order).FirstDifference(one, other) is { } first)
        {
            // It comes after the best for something that the tape cannot show; without a word it would look the better one.
            if (first == Criterion.Smallest && one.SmallestCut < other.SmallestCut) costs.Add("a hair of the smallest cut, less than this tape shows");
            if (first == Criterion.Mirror && one.Mirror > other.Mirror) costs.Add("cuts left and right less alike, by less than this tape shows");
        }

        var parts = new List<string>();
        if (gains.Count > 0) parts.Add("gives " + string.Join(", ", gains));
        if (without.Length > 0) parts.Add(without);
        if (costs.Count > 0) parts.Add("costs " + string.Join(", ", costs));
        return Sentence(parts.Count == 0 ? "as good as the best, in another place" : string.Join("; ", parts));
    }

    private static void Compare(int more, string what, List<string> costs, List<string> gains)
    {
        if (more == 0) return;
        var text = $"{Count(Math.Abs(more), what)} {(more > 0 ? "more" : "fewer")}";
        (more > 0 ? costs : gains).Add(text);
    }

    private static string Count(int count, string what) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {what}{(count == 1 ? "" : "s")}");

    private static string Sentence(string text) => char.ToUpperInvariant(text[0]) + text[1..] + ".";
}
