using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>
/// Settles what a job leaves open before it is planned: where things that are not built yet will stand, so that their edges meet
/// the joints of the placing that does best with them there, or of the one that is held by hand. docs/patterns.md says how.
/// </summary>
internal static class Movables
{
    /// <summary>Things follow the placing and the placing them so often at the most.</summary>
    private const int Rounds = 4;

    /// <summary>From so many of the placings that do best.</summary>
    private const int Starts = 8;

    /// <summary>Whether anything of a face may be moved.</summary>
    public static bool Any(Face face) => MovableEdges.Of(face).Any();

    /// <summary>Step by step: null whenever a little work is done, at the last the job as settled, with what was moved.</summary>
    public static IEnumerable<(CheckedJob Job, Sequence<Finding> Findings)?> Settle(CheckedJob ready)
    {
        var (asked, findings, settled) = (ready.Job, new List<Finding>(), new HashSet<(int Face, string Thing)>());
        for (var i = 0; i < asked.Runs.Count; i++)
        {
            var (run, finished) = (ready.Job.Runs[i], ready.Runs[i]);
            var faces = finished.Faces.Select(face => FaceOf(asked, face)).ToArray();
            // What has no edge at the run's tile has none to bring to a joint; what another run moved stays there.
            var edges = finished.Faces.Select((face, f) => MovableEdges.Of(asked.Faces[faces[f]])
                .Where(edge => !settled.Contains((faces[f], edge.Thing)) && face.Edges.Any(one => string.Equals(one.Name, edge.Name, StringComparison.Ordinal))).ToList()).ToList();
            if (finished.Strips.Count > 0 || edges.All(of => of.Count == 0)) continue;
            if (StraightenedBond.Of(run.Bond) is not { } bond || finished.Faces.Any(face => face.Plane is not null))
            {
                findings.Add(MovedNotes.Left(run.Name, "no joint of a pattern, of a bond turned askew or of a floor that falls runs through to bring it to."));
                continue;
            }

            settled.UnionWith(edges.SelectMany((of, f) => of.Select(edge => (faces[f], edge.Thing))));
            // What may be moved is meant to meet joints: that is wished for, so that the last placing keeps to it.
            // Where the setter asks for it already, it is asked for once.
            run = run with { Wants = run.Wants.Concat(edges.SelectMany((of, f) => of.Where(edge => !IsAsked(run, finished.Faces[f], edge)).Select(edge => Wish(finished.Faces[f].Name, edge)))).ToSequence() };
            var job = ready.Job with { Runs = ready.Job.Runs.Select((one, k) => k == i ? run : one).ToSequence() };
            var wished = JobCheck.Steps(job, large: true).Last()!;
            if (wished.Faults.Count > 0) continue;
            ready = wished;
            yield return null;

            var laid = run with { Bond = bond };
            var problem = JobRuns.Problem(job, laid, wished.Runs[i].Faces);
            if (run.Place is { } place)
            {
                var (model, u, v) = ByHand.At(problem, StraightenedBond.Of(place, run.Bond, problem.Product));
                MovedTrial? there = null;
                foreach (var sofar in new MovableRun(job, i, laid, model, faces, edges).Improve(u, v))
                {
                    there = sofar;
                    yield return null;
                }

                var held = there is not null ? JobCheck.Steps(there.Job, large: true).Last()! : null;
                if (held is { Faults.Count: 0 }) ready = held;
                else findings.Add(MovedNotes.Left(run.Name, "at the joints of the place chosen by hand it cannot stand."));
                continue;
            }

            foreach (var sofar in Searched(wished, i, laid, problem, faces, edges))
            {
                ready = sofar ?? ready;
                yield return null;
            }
        }

        findings.AddRange(MovedNotes.Of(asked, ready.Job));
        yield return (ready, findings.ToSequence());
    }

    /// <summary>Null whenever a little work is done; at the last the job with its things where they do best, if not where they were asked.</summary>
    private static IEnumerable<CheckedJob?> Searched(CheckedJob ready, int index, RunRequest laid, RunProblem problem, int[] faces, IReadOnlyList<IReadOnlyList<MovableEdge>> edges)
    {
        LinesFound? found = null;
        foreach (var sofar in LineSearch.Search(problem))
        {
            found = sofar;
            yield return null;
        }

        var asked = found!;
        var run = new MovableRun(ready.Job, index, laid, asked.Model, faces, edges);
        var search = new MovableSearch(run);
        foreach (var _ in search.Look(asked.Alternatives.Prepend(asked.Best))) yield return null;

        var starts = new List<MovedTrial>();
        foreach (var kept in search.Best)
        {
            MovedTrial? better = null;
            foreach (var sofar in run.Improve(kept.Placing.U, kept.Placing.V))
            {
                better = sofar;
                yield return null;
            }

            starts.Add(better!);
        }

        starts.Sort((one, other) => run.Compare(one.Placing.Score, one.Moved, other.Placing.Score, other.Moved));
        var best = new SettledThings(ready, asked.Best, Length.Zero);
        var tried = new HashSet<Sequence<Face>> { ready.Job.Faces };
        foreach (var start in starts.DistinctBy(start => start.Job.Faces).Take(Starts))
        {
            // With its things there the run is searched again, and where its joints are then, the things are brought once more.
            MovedTrial? trial = start;
            for (var round = 0; round < Rounds && trial is not null && tried.Add(trial.Job.Faces); round++)
            {
                SettledThings? placed = null;
                foreach (var sofar in SettledThings.Of(trial, laid, index))
                {
                    placed = sofar;
                    yield return null;
                }

                if (placed is null) break;
                if (run.Compare(placed.Best.Score, placed.Moved, best.Best.Score, best.Moved) < 0) best = placed;
                foreach (var sofar in run.Improve(placed.Best.U, placed.Best.V))
                {
                    trial = sofar;
                    yield return null;
                }
            }
        }

        foreach (var sofar in new MovableDescent(run, laid, index).From(best))
        {
            best = sofar;
            yield return null;
        }

        yield return best.Job;
    }

    private static Want.JointOnEdge Wish(string face, MovableEdge edge) => new(new(face, edge.Name), Must: false, Weight: 1) { OfMovable = true };

    private static bool IsAsked(RunRequest run, FinishedFace face, MovableEdge edge) => run.Wants.Any(want =>
        (want switch { Want.JointOnEdge on => on.Edge, Want.FullCourse full => full.Edge, _ => null }) is { } asked
        && face.IsCalled(asked.Face) && string.Equals(asked.Edge, edge.Name, StringComparison.Ordinal));

    /// <summary>The job's face that a face of a run is, or is a zone or a plane of.</summary>
    private static int FaceOf(Job job, FinishedFace finished) => Enumerable.Range(0, job.Faces.Count).First(f =>
        finished.IsCalled(job.Faces[f].Name) || job.Faces[f].Zones.Any(zone => finished.IsCalled(zone.Name) || finished.Name.StartsWith(zone.Name + " ", StringComparison.Ordinal)));
}
