using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>What of a face's wants, held as planned, still holds when its rest is set otherwise.</summary>
/// <param name="plan">The run as planned.</param>
/// <param name="face">The face as planned.</param>
/// <param name="tape">The tape: to a mark is held.</param>
internal sealed class AgainWants(RunPlan plan, FacePlan face, Tape tape)
{
    /// <summary>The heights at which wants ask for a joint.</summary>
    public IEnumerable<long> Heights => plan.Best.Wants.Select(outcome => outcome.Want).OfType<Want.JointAtHeight>().Where(IsHere).Select(want => want.Height.Steps);

    /// <summary>What is missed of what the plan held.</summary>
    /// <param name="set">What is set.</param>
    /// <param name="rows">Where the courses stand.</param>
    /// <param name="pieces">The pieces still to be set.</param>
    /// <param name="aside">How far right of the plan joints stand.</param>
    public (int Musts, int Wishes, Sequence<string> Words) Missed(SetCourses set, AgainRows rows, Sequence<Piece> pieces, Length aside)
    {
        var (musts, wishes, words) = (0, 0, new List<string>());
        foreach (var outcome in plan.Best.Wants)
        {
            if (!outcome.Held || Holds(outcome.Want, set, rows, pieces, aside)) continue;
            if (outcome.Want.Must) musts++;
            else wishes += outcome.Want.Weight;
            words.Add(Lost(outcome.Text));
        }

        if (plan.Request.Limits.Smallest is { } smallest && pieces.Where(piece => piece.Kind != PieceKind.Full).Select(piece => piece.Smallest).DefaultIfEmpty(smallest).Min() < smallest && plan.Best.Score.SmallestCut >= smallest)
        {
            musts++;
            words.Add($"A cut is under {LengthText.Nearest(smallest, tape)}, which no cut may be.");
        }

        return (musts, wishes, words.ToSequence());
    }

    private bool Holds(Want want, SetCourses set, AgainRows rows, Sequence<Piece> pieces, Length aside) => want switch
    {
        Want.JointAtHeight at when IsHere(at) => at.Height.Steps <= Math.Max(set.Left, set.Right) || HasJoint(at.Height.Steps, set, rows),
        Want.Centred centred when IsFace(centred.Face) => aside.Abs() <= tape.Mark,
        Want.InLine line when IsFace(line.Face) => aside.Abs() <= tape.Mark,
        Want.HoleOn hole when IsFace(hole.Face) => aside.Abs() <= tape.Mark && rows.Courses.All(row => (Length.FromSteps(row.Left) - Length.FromSteps(set.Planned(row.Course))).Abs() <= tape.Mark),
        // Beside courses that begin by turns it is held in some of them only; those stay so where joints stand where they were planned.
        _ => AreCut(want, pieces) || (aside.Abs() <= tape.Mark && !AreCut(want, face.Pieces)),
    };

    /// <summary>Whether all pieces at the edges of a want are cut as it asks; wants of other kinds and faces ask nothing of them.</summary>
    private bool AreCut(Want want, Sequence<Piece> pieces) => want switch
    {
        Want.AtLeast least when IsFace(least.Edge.Face) => Cuts(pieces, least.Edge.Edge).All(cut => cut.Size >= Asked(least, cut.Whole)),
        Want.JointOnEdge on when IsFace(on.Edge.Face) => Cuts(pieces, on.Edge.Edge).All(cut => cut.Size + tape.Mark >= cut.Whole),
        Want.FullCourse full when IsFace(full.Edge.Face) => Cuts(pieces, full.Edge.Edge).All(cut => cut.Most + tape.Mark >= cut.Whole),
        Want.EqualCuts equal when IsFace(equal.One.Face) && IsFace(equal.Other.Face) => AreEqual(Cuts(pieces, equal.One.Edge), Cuts(pieces, equal.Other.Edge)),
        _ => true,
    };

    private bool HasJoint(long height, SetCourses set, AgainRows rows)
    {
        var top = (set.Left + set.Right) / 2;
        foreach (var (_, left, right) in rows.Courses)
        {
            var bottom = (left + right) / 2;
            if (Math.Abs(((top + bottom) / 2) - height) <= tape.Mark.Steps / 2) return true;
            top = bottom + set.Depth;
        }

        return false;
    }

    private bool AreEqual(IReadOnlyList<EdgeCutSize> one, IReadOnlyList<EdgeCutSize> other) =>
        one.Count == 0 || other.Count == 0 || (one.Min(cut => cut.Size) - other.Min(cut => cut.Size)).Abs() <= tape.Mark;

    private static List<EdgeCutSize> Cuts(Sequence<Piece> pieces, string edge) => [.. from piece in pieces from cut in piece.Cuts
        where string.Equals(cut.Faces, edge, StringComparison.Ordinal)
        select new EdgeCutSize(cut.Least, cut.Most, cut.Away is TileSide.Left or TileSide.Right ? piece.Cell.Width : piece.Cell.Height)];

    private static Length Asked(Want.AtLeast least, Length whole) => least.PartOfTile is var (over, under) ? Length.FromSteps(((whole.Steps * over) + under - 1) / under) : least.Size!.Value;

    private bool IsHere(Want.JointAtHeight want) => IsFace(want.Face);

    private bool IsFace(string name) => face.Face.IsCalled(name);

    private static string Lost(string held) => held.EndsWith(": held.", StringComparison.Ordinal) ? string.Concat(held.AsSpan(0, held.Length - ": held.".Length), ": lost.") : held + " Lost.";

    /// <summary>A cut at an edge.</summary>
    private readonly record struct EdgeCutSize(Length Size, Length Most, Length Whole);
}
