using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Patterns;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>Searches a run whose bond is a pattern or is turned, and makes its plan out of what was found.</summary>
internal static class PatternPlans
{
    /// <summary>Step by step; the last carries the plan.</summary>
    public static IEnumerable<RunStep> Steps(Job job, RunRequest request, Sequence<FinishedFace> faces, FaceLetters letters)
    {
        PatternFound? found = null;
        var step = new RunStep(RunStep.Progress(request, null, job.Tape), null, false);
        foreach (var sofar in PatternFinder.Find(Problem(job, request, faces)))
        {
            if (!ReferenceEquals(found, sofar)) step = step with { Text = RunStep.Progress(request, sofar?.Best.Score, job.Tape) };
            found = sofar;
            yield return step;
        }

        var stands = request.Place is { } place ? Held(found!, place) : found!;
        foreach (var done in Of(request, stands, letters))
        {
            yield return done is null ? step : step with { Plan = done, HasUnderHalf = stands.Model.HasUnderHalf(stands.Best) };
        }
    }

    public static PatternProblem Problem(Job job, RunRequest request, Sequence<FinishedFace> faces) =>
        new(JobRuns.Problem(job, request, faces), JobRuns.ProductsOf(job, request), request.Bond.Turn);

    private static IEnumerable<RunPlan?> Of(RunRequest request, PatternFound found, FaceLetters letters)
    {
        var (model, best) = (found.Model, found.Best);
        var proposal = PatternProposals.Propose(model, best, null);
        yield return null;
        var alternatives = new List<Proposal>();
        foreach (var other in found.Alternatives)
        {
            alternatives.Add(PatternProposals.Propose(other.Model, other.Place, best));
            yield return null;
        }

        var tiles = new PatternTiles(model);
        Sequence<Sequence<Piece>> pieces = [];
        foreach (var sofar in tiles.PiecesFaceByFace(best, [.. model.Fields.Select(_ => letters.Next())]))
        {
            pieces = sofar;
            yield return null;
        }

        var lines = new PatternLines(model, new(model));
        var faces = Enumerable.Range(0, model.Fields.Length).ToList();
        // What comes after knows the turn that was found, not those it was chosen among.
        var laid = request with { Bond = request.Bond with { Turn = model.Problem.Turn, Free = null } };
        var snapped = faces.Where(face => lines.IsSnappedOn(best, face)).ToList();
        yield return new(
            laid, proposal, found.Proof, alternatives.ToSequence(),
            snapped.SelectMany(face => lines.Crossing(best, face)).ToSequence(), snapped.SelectMany(face => lines.Rods(best, face)).ToSequence(),
            faces.Select(face => new FacePlan(tiles.Drilled(face), proposal.Faces[face], pieces[face])).ToSequence())
        {
            IsPattern = true,
            Finished = model.Problem.Run.Faces,
            Turned = snapped.SelectMany(face => lines.Turned(best, face)).ToSequence(),
        };
    }

    /// <summary>The place a person chose in place of the best, which then leads the alternatives.</summary>
    private static PatternFound Held(PatternFound found, HeldPlace place)
    {
        var model = found.Model;
        var (x, y) = new PatternPlaces(model).Of(place.X[0], place.Y);
        var placing = new PatternTiles(model).Counted(model.At(x, y));
        var proof = found.Proof with { Kind = ProofKind.None, Words = ByHand.Words(placing.Score, found.Best.Score, model.Problem.Run) };
        return found with { Best = placing, Proof = proof, Alternatives = found.Alternatives.Prepend(new(model, found.Best)).ToSequence() };
    }
}
