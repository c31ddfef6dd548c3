using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>A job with its things somewhere, and the placing that does best with them there.</summary>
/// <param name="Job">The job.</param>
/// <param name="Best">The placing.</param>
/// <param name="Moved">How far things were moved, added up.</param>
internal sealed record SettledThings(CheckedJob Job, RunPlacing Best, Length Moved)
{
    /// <summary>Null whenever a little work is done; at the last the trial's things with the best placing for them, null where they cannot stand there.</summary>
    public static IEnumerable<SettledThings?> Of(MovedTrial trial, RunRequest laid, int index)
    {
        var again = JobCheck.Steps(trial.Job, large: true).Last()!;
        if (again.Faults.Count > 0)
        {
            yield return null;
            yield break;
        }

        LinesFound? found = null;
        foreach (var sofar in LineSearch.Search(JobRuns.Problem(again.Job, laid, again.Runs[index].Faces)))
        {
            found = sofar;
            yield return null;
        }

        yield return new(again, found!.Best, trial.Moved);
    }
}

/// <summary>
/// From the best that was found, each thing by itself is put in every other way it may stand at that placing, and the best placing
/// is searched anew: things and placing may have to move together to do better. At the last the things go where the same
/// placing, held by hand, will have them, wherever the run does as well for it.
/// </summary>
/// <param name="run">The run.</param>
/// <param name="laid">The same as it is searched.</param>
/// <param name="index">Its place in the job.</param>
internal sealed class MovableDescent(MovableRun run, RunRequest laid, int index)
{
    /// <summary>So many ways are searched at the most.</summary>
    private const int MostSearched = 48;

    /// <summary>Things and placing settle on each other so often at the most.</summary>
    private const int Rounds = 4;

    private readonly HashSet<Sequence<Face>> _searched = [];

    /// <summary>The best so far, after every little work; the last is the best.</summary>
    public IEnumerable<SettledThings> From(SettledThings best)
    {
        for (SettledThings? before = null; !ReferenceEquals(before, best);)
        {
            before = best;
            foreach (var sofar in Better(best))
            {
                best = sofar;
                yield return best;
            }
        }

        foreach (var sofar in AsHeld(best)) yield return sofar;
    }

    /// <summary>The first that does better with one thing standing otherwise; the same where none does.</summary>
    private IEnumerable<SettledThings> Better(SettledThings best)
    {
        MovedTrial? here = null;
        foreach (var sofar in run.Improve(best.Best.U, best.Best.V))
        {
            here = sofar;
            yield return best;
        }

        if (here is null) yield break;
        var picks = here.Picks.ToArray();
        for (var choice = 0; choice < picks.Length; choice++)
        {
            var taken = picks[choice];
            for (var way = 0; way < Math.Min(here.Choices[choice], MovableRun.MostWays) && _searched.Count < MostSearched; way++)
            {
                picks[choice] = way;
                if (run.At(best.Best.U, best.Best.V, null, picks) is not { } trial || !_searched.Add(trial.Job.Faces)) continue;
                var beats = false;
                foreach (var placing in new JointSearch(trial.Model).Improve(best.Best.Score with { Tiles = 0 }))
                {
                    yield return best;
                    beats = placing is not null;
                    if (beats) break;
                }

                if (!beats) continue;
                SettledThings? placed = null;
                foreach (var sofar in SettledThings.Of(trial, laid, index))
                {
                    placed = sofar;
                    yield return best;
                }

                if (placed is null || Compare(placed, best) >= 0) continue;
                yield return placed;
                yield break;
            }

            picks[choice] = taken;
        }
    }

    /// <summary>The things where the placing held by hand has them, if the run does no worse so.</summary>
    private IEnumerable<SettledThings> AsHeld(SettledThings best)
    {
        for (var round = 0; round < Rounds; round++)
        {
            MovedTrial? held = null;
            foreach (var sofar in run.Improve(best.Best.U, best.Best.V))
            {
                held = sofar;
                yield return best;
            }

            if (held is null || held.Job.Faces.Equals(best.Job.Job.Faces)) break;
            SettledThings? placed = null;
            foreach (var sofar in SettledThings.Of(held, laid, index))
            {
                placed = sofar;
                yield return best;
            }

            if (placed is null || run.Order.Compare(placed.Best.Score with { Tiles = 0 }, best.Best.Score with { Tiles = 0 }) > 0) break;
            best = placed;
        }

        yield return best;
    }

    private int Compare(SettledThings one, SettledThings other) => run.Compare(one.Best.Score, one.Moved, other.Best.Score, other.Moved);
}
