using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>How far the planning of a run has come.</summary>
/// <param name="Text">What is being looked at, in words.</param>
/// <param name="Plan">The plan; null until it is done.</param>
/// <param name="HasUnderHalf">Whether the plan leaves any leg under half of its tile.</param>
internal readonly record struct RunStep(string Text, RunPlan? Plan, bool HasUnderHalf)
{
    /// <summary>What a search has come to, in words.</summary>
    public static string Progress(RunRequest request, Score? best, Tape tape) => best switch
    {
        null => $"{request.Name}: looking for a first place",
        { Cuts: 0 } => $"{request.Name}: no cuts so far",
        { } score => $"{request.Name}: smallest cut {LengthText.Narrowest(score.SmallestCut, tape)} so far",
    };
}

/// <summary>Searches a run whose bond is straight, and makes its plan out of what was found.</summary>
internal static class RunPlans
{
    /// <summary>Step by step; the last carries the plan.</summary>
    public static IEnumerable<RunStep> Steps(Job job, RunRequest request, RunProblem problem, FaceLetters letters)
    {
        LinesFound? found = null;
        var step = new RunStep(RunStep.Progress(request, null, job.Tape), null, false);
        foreach (var sofar in LineSearch.Search(problem))
        {
            if (!ReferenceEquals(found, sofar)) step = step with { Text = RunStep.Progress(request, sofar?.Best.Score, job.Tape) };
            found = sofar;
            yield return step;
        }

        var stands = request.Place is { } place ? ByHand.Take(found!, place) : found!;
        foreach (var done in Of(request, found!, stands, letters))
        {
            yield return done is null ? step : step with { Plan = done, HasUnderHalf = stands.Model.HasUnderHalf(stands.Best) };
        }
    }

    /// <summary>Null whenever a little work is done; at the last the plan.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="searched">What the search found.</param>
    /// <param name="found">The same, or the place a person chose.</param>
    /// <param name="letters">The letters of the job's faces.</param>
    private static IEnumerable<RunPlan?> Of(RunRequest request, LinesFound searched, LinesFound found, FaceLetters letters)
    {
        var (model, best) = (found.Model, found.Best);
        var proposal = Reasons.Propose(model, best, null);
        var lines = Enumerable.Range(0, model.Frames.Length).Select(face => StartingLines.Of(model, best, face)).ToList();
        yield return null;
        var alternatives = new List<Proposal>();
        foreach (var other in found.Alternatives)
        {
            alternatives.Add(Reasons.Propose(searched.Model, other, best));
            yield return null;
        }

        var counter = new TileCounter(model);
        Sequence<Sequence<Piece>> pieces = [];
        foreach (var sofar in counter.PiecesFaceByFace(best, [.. model.Frames.Select(_ => letters.Next())]))
        {
            pieces = sofar;
            yield return null;
        }

        yield return new(
            request, proposal, found.Proof, alternatives.ToSequence(),
            lines.SelectMany(of => of.Lines).ToSequence(), lines.SelectMany(of => of.Rods).ToSequence(),
            Enumerable.Range(0, model.Frames.Length)
                .Select(face => new FacePlan(counter.Drilled(face), proposal.Faces[face], pieces[face]))
                .ToSequence())
        {
            Finished = model.Problem.Faces,
        };
    }
}
