using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Patterns;

/// <summary>Says in words why a pattern's place is proposed, and what is proved of it.</summary>
internal static class PatternProposals
{
    /// <summary>The place as a proposal.</summary>
    /// <param name="model">The run.</param>
    /// <param name="placing">The place, its tiles counted.</param>
    /// <param name="best">The best place, for an alternative; null for the best itself.</param>
    public static Proposal Propose(PatternModel model, PatternPlacing placing, PatternPlacing? best)
    {
        var (places, run) = (new PatternPlaces(model), model.Problem.Run);
        var wants = Outcomes(model, placing);
        var why = best is null
            ? Reasons.Why(placing.Score, Narrowest(model), wants, run.Tape, sheets: model.Bond.Chips is not null)
            : Against(placing, best, wants, run);
        var score = placing.Score.Cuts > 0 ? placing.Score : placing.Score with { SmallestCut = Length.Min(run.Product.Width, run.Product.Height) };
        return new(
            places.OnRun(placing), Enumerable.Range(0, model.Fields.Length).Select(face => places.OnFace(placing, face)).ToSequence(),
            score, wants, why);
    }

    /// <summary>What a place gives and costs. Where it would come first by what the tape shows, it is a hair of the smallest cut that put it second.</summary>
    private static string Against(PatternPlacing placing, PatternPlacing best, Sequence<WantOutcome> wants, RunProblem run)
    {
        var (one, other) = (placing.Score, best.Score);
        if (new ScoreOrder(run.Order).Compare(one, other) < 0) (one, other) = (Exact(placing), Exact(best));
        return Reasons.Against(one, other, wants, run.Order, run.Tape);

        static Score Exact(PatternPlacing of) => of.Score with { SmallestCut = Length.FromSteps((long)of.Smallest) };
    }

    /// <summary>How the wants come out.</summary>
    public static Sequence<WantOutcome> Outcomes(PatternModel model, PatternPlacing placing)
    {
        var held = model.Held(placing);
        var (run, checks) = (model.Problem.Run, model.Checks.Select((check, i) => (check, held: held[i])).ToList());
        return checks.Where(of => of.check.Want >= 0)
            .Select(of => Reasons.Outcome(
                run.Wants[of.check.Want], of.held, of.held || checks.Exists(aim => aim.check.AimOf == of.check.Want && aim.held), 1, FaceOf(of.check.Want), run.Tape)).ToSequence();

        // What the face says of an edge's level and plumb says something only where a tile's side is meant to follow it.
        FinishedFace? FaceOf(int want) => run.Wants[want] switch
        {
            Want.JointOnEdge on when checks.Exists(aim => aim.check.AimOf == want) => run.Faces.FirstOrDefault(face => face.IsCalled(on.Edge.Face)),
            Want.FullCourse full => run.Faces.FirstOrDefault(face => face.IsCalled(full.Edge.Face)),
            _ => null,
        };
    }

    /// <summary>What is proved.</summary>
    /// <param name="searches">The searches, one for each turn.</param>
    /// <param name="best">The best place of all.</param>
    public static Proof Prove(IReadOnlyList<PatternSearch> searches, PatternPlacing best)
    {
        var problem = searches[0].Model.Problem.Run;
        var (bound, tape, examined) = (searches.Max(search => search.Bound(best)), problem.Tape, searches.Sum(search => search.Model.Examined));
        if (!new ScoreOrder(problem.Order).SmallestIsProved)
        {
            return new(ProofKind.None, best.Score.SmallestCut, examined, "In this order of what counts nothing is proved; this is the best place found.");
        }

        var most = Length.FromSteps((long)bound);
        var (gap, leaves) = (Length.FromSteps((long)Math.Max(bound - best.Smallest, 0)), "");
        if (!searches.All(search => search.IsComplete)) leaves = " The search was stopped at its limit of work.";
        if (searches.Any(search => search.MayDoBetterBefore(best))) leaves = " The search was stopped at its limit of work; whether a place misses less of what counts before the smallest cut is not known.";
        if (searches.Count > 1) leaves = $" {searches.Count.ToString(CultureInfo.InvariantCulture)} turns were searched; between them nothing is known.{leaves}";
        var words = gap < Length.FromSteps((long)PointsOnLine.Tolerance)
            ? $"No place that meets as many wants has a larger smallest cut.{leaves}"
            : $"No place that meets as many wants has a smallest cut over {LengthText.Finer(most, tape)}: {LengthText.Finer(gap, tape)} more than this one.{leaves}";
        return new(ProofKind.Bounded, most, examined, words);
    }

    /// <summary>The edge, in words, of the narrowest leg in the place scored last; null where none has one.</summary>
    private static string? Narrowest(PatternModel model)
    {
        var (least, words) = (double.MaxValue, default(string));
        for (var i = 0; i < model.Lines.Length; i++)
        {
            if (model.Lines[i].Edge < 0 || model.LeastAtLine[i] >= least) continue;
            FinishedFace face = model.Problem.Run.Faces[model.Lines[i].Face];
            (least, words) = (model.LeastAtLine[i], EdgeWords.Of(face.Name, face.Edges[model.Lines[i].Edge].Name));
        }

        return words;
    }
}
