using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>Makes the plan of a run out of what the search found.</summary>
internal static class RunPlans
{
    /// <summary>Null whenever a little work is done; at the last the plan.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="searched">What the search found.</param>
    /// <param name="found">The same, or the place a person chose.</param>
    /// <param name="letters">The letters of the job's faces.</param>
    public static IEnumerable<RunPlan?> Of(RunRequest request, LinesFound searched, LinesFound found, FaceLetters letters)
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
