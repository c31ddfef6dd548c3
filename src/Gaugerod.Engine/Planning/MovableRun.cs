using Gaugerod.Engine.Lines;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>A job with its things moved to the joints of a placing.</summary>
/// <param name="Job">The job.</param>
/// <param name="Model">The run with its things there.</param>
/// <param name="Placing">The placing, and how it does; tiles are not counted.</param>
/// <param name="Moved">How far things were moved, added up.</param>
/// <param name="Choices">How many ways there were at each choice of where a thing stands.</param>
/// <param name="Picks">Which way was taken at each; the first where nothing is said.</param>
internal sealed record MovedTrial(Job Job, RunModel Model, RunPlacing Placing, Length Moved, IReadOnlyList<int> Choices, IReadOnlyList<int> Picks);

/// <summary>A run with things that may be moved, and what it comes to when they are moved to the joints of a placing.</summary>
internal sealed class MovableRun
{
    /// <summary>So many ways of each choice are tried, those that bring most edges to joints and move things least first.</summary>
    public const int MostWays = 12;

    private readonly Job _job;
    private readonly int _index;
    private readonly RunRequest _laid;
    private readonly int[] _faces;

    /// <param name="job">The job, its things where they were asked.</param>
    /// <param name="index">The run's place in it.</param>
    /// <param name="laid">The run, with a bond that has courses.</param>
    /// <param name="model">The same with its things where they were asked.</param>
    /// <param name="faces">By the faces of the run: the job's face that each is, or is a zone of.</param>
    /// <param name="edges">By the faces of the run: the edges that may be moved.</param>
    public MovableRun(Job job, int index, RunRequest laid, RunModel model, int[] faces, IReadOnlyList<IReadOnlyList<MovableEdge>> edges)
    {
        (_job, _index, _laid, _faces) = (job, index, laid, faces);
        (Model, Edges, Order) = (model, edges, new(laid.Order));
    }

    public RunModel Model { get; }

    public IReadOnlyList<IReadOnlyList<MovableEdge>> Edges { get; }

    public ScoreOrder Order { get; }

    /// <summary>What the run comes to at a placing; null where its things cannot stand there, or where they alone make it do worse than a score.</summary>
    /// <param name="u">Along, by face.</param>
    /// <param name="v">Across, by face.</param>
    /// <param name="toBeat">The score; null for none.</param>
    /// <param name="picks">Which way is taken at each choice; the first where nothing is said.</param>
    public MovedTrial? At(long[] u, long[] v, Score? toBeat = null, IReadOnlyList<int>? picks = null)
    {
        var things = new MovedThings(Model, new(u, v, default), (face, thing) => Edges[face].Any(edge => string.Equals(edge.Thing, thing, StringComparison.Ordinal)), picks ?? []);
        var faces = _job.Faces.ToArray();
        for (var f = 0; f < _faces.Length; f++) faces[_faces[f]] = things.Move(faces[_faces[f]], f);
        if (toBeat is { } beat && Order.Compare(Score.Perfect with { UnaskedMissed = things.Missed }, beat) > 0) return null;
        var (job, model) = (_job, Model);
        if (things.Moved > Length.Zero)
        {
            job = _job with { Faces = faces.ToSequence() };
            var finished = JobRuns.Finish(job, _index);
            if (finished.Faults.Count > 0) return null;
            model = new(JobRuns.Problem(job, _laid, finished.Faces), Model.Joint);
        }

        return new(job, model, new([.. u], [.. v], model.Score(u, v)), things.Moved, things.Choices, [.. Enumerable.Range(0, things.Choices.Count).Select(i => picks is not null && i < picks.Count ? picks[i] : 0)]);
    }

    /// <summary>The same placing with other ways taken wherever the run does better for it, after every one that was tried; the last is the best.</summary>
    public IEnumerable<MovedTrial?> Improve(long[] u, long[] v)
    {
        if (At(u, v) is not { } best)
        {
            yield return null;
            yield break;
        }

        var picks = new int[best.Choices.Count];
        for (MovedTrial? before = null; !ReferenceEquals(before, best);)
        {
            before = best;
            for (var choice = 0; choice < picks.Length; choice++)
            {
                var taken = picks[choice];
                for (var way = 0; way < Math.Min(best.Choices[choice], MostWays); way++)
                {
                    picks[choice] = way;
                    if (At(u, v, best.Placing.Score, picks) is { } other && Compare(other.Placing.Score, other.Moved, best.Placing.Score, best.Moved) < 0) (best, taken) = (other, way);
                    yield return best;
                }

                picks[choice] = taken;
            }
        }

        yield return best;
    }

    /// <summary>Less than zero where the first does better or, doing as well, moves things less: nothing is moved further to save a tile.</summary>
    public int Compare(Score one, Length moved, Score other, Length otherMoved)
    {
        var by = Order.Compare(one with { Tiles = 0 }, other with { Tiles = 0 });
        if (by == 0) by = moved.CompareTo(otherMoved);
        return by != 0 ? by : Order.Compare(one, other);
    }
}
