using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>
/// Looks for the placings of a run that do best when its things are moved to their joints. Heights are put in order by what each
/// comes to with the rest left alone, then places sideways, and they are tried together, those that stand first in both orders first.
/// </summary>
internal sealed class MovableSearch(MovableRun run)
{
    /// <summary>So many placings are tried besides those that put the places in order.</summary>
    private const int MostTried = 900;

    /// <summary>So many of the best are kept.</summary>
    private const int Kept = 8;

    /// <summary>So many are tried before the caller may do something else.</summary>
    private const int AtOnce = 4;

    private readonly List<MovedTrial> _best = [];
    private readonly bool _isLevel = run.Model.Bond.Lay == Lay.Level;

    // Where a tile begins, sideways and up, on each face.
    private readonly long[] _x = new long[run.Model.Frames.Length];
    private readonly long[] _y = new long[run.Model.Frames.Length];

    /// <summary>The best that were found, the better first, each with its things elsewhere.</summary>
    public IReadOnlyList<MovedTrial> Best => _best;

    /// <summary>How many placings were tried.</summary>
    public int Tried { get; private set; }

    /// <summary>Gives way whenever a little work is done.</summary>
    /// <param name="known">Placings that are known already, the best first.</param>
    public IEnumerable<bool> Look(IEnumerable<RunPlacing> known)
    {
        foreach (var placing in known.Reverse())
        {
            var (x, y) = _isLevel ? (placing.U, placing.V) : (placing.V, placing.U);
            x.CopyTo(_x, 0);
            y.CopyTo(_y, 0);
            Consider(Try(null));
            yield return true;
        }

        var (model, starts) = (run.Model, new MovableStarts(run.Model, run.Edges));
        var (faces, repeat) = (model.Frames.Length, model.Courses.Repeat);
        var heights = new Places(0, faces, IsUp: true, _isLevel ? starts.Of(CheckAxis.Across, 0, faces, onRun: true, repeat) : starts.Of(CheckAxis.Along, 0, faces, onRun: true, 1));
        foreach (var _ in Rank(heights)) yield return true;
        if (heights.Ranked.Count == 0) yield break;
        Put(heights, heights.Ranked[0].Place);

        // Where each face begins anew it has places of its own, else one serves all.
        var sideways = Enumerable.Range(0, model.Restart ? faces : 1).Select(f =>
        {
            var end = model.Restart ? f + 1 : faces;
            return new Places(f, end, IsUp: false, _isLevel
                ? starts.Of(CheckAxis.Along, f, end, onRun: !model.Restart, 1)
                : starts.Of(CheckAxis.Across, f, end, onRun: !model.Restart, model.Restart ? model.OwnRows : repeat));
        }).ToList();
        foreach (var places in sideways)
        {
            foreach (var _ in Rank(places)) yield return true;
            if (places.Ranked.Count == 0) yield break;
            Put(places, places.Ranked[0].Place);
        }

        var most = (int)Math.Sqrt(2.0 * MostTried / sideways.Count);
        for (var i = 0; i < Math.Min(most, heights.Ranked.Count); i++)
        {
            Put(heights, heights.Ranked[i].Place);
            foreach (var places in sideways)
            {
                foreach (var _ in Choose(places, most - i)) yield return true;
            }
        }
    }

    /// <summary>Tries the first of some places with the rest where it is, and leaves the faces at the one that is best for them.</summary>
    private IEnumerable<bool> Choose(Places places, int most)
    {
        var (own, chosen) = ((Score?)null, places.Ranked[0].Place);
        foreach (var (_, place) in places.Ranked.Take(most))
        {
            Put(places, place);
            // Of a face by itself the best is looked for even where another keeps the run from being better.
            var trial = Try(run.Model.Restart ? null : _best[0].Placing.Score);
            if (Tried % AtOnce == 0) yield return true;
            if (trial is null) continue;
            Consider(trial);
            var score = trial.Model.ScoreFace(trial.Placing.U, trial.Placing.V, places.First);
            if (own is { } known && run.Order.Compare(score, known) >= 0) continue;
            (own, chosen) = (score, place);
        }

        Put(places, chosen);
    }

    /// <summary>Puts places in order by what each comes to with the rest where it is; of legs only those that hang on it count.</summary>
    private IEnumerable<bool> Rank(Places places)
    {
        var was = (places.IsUp ? _y : _x)[places.First..places.End];
        foreach (var place in places.All)
        {
            Put(places, place);
            if (Try(null) is { } trial)
            {
                Consider(trial);
                places.Ranked.Add((trial.Placing.Score with { SmallestCut = Least(trial, places) }, place));
            }

            if (Tried % AtOnce == 0) yield return true;
        }

        places.Ranked.Sort(run.Order.ByPromise);
        was.CopyTo(places.IsUp ? _y : _x, places.First);
    }

    /// <summary>The narrowest leg of some faces at the edges that a place up, or sideways, cuts at.</summary>
    private Length Least(MovedTrial trial, Places places)
    {
        _ = trial.Model.Score(trial.Placing.U, trial.Placing.V);
        var least = long.MaxValue;
        for (var f = places.First; f < places.End; f++)
        {
            var frame = trial.Model.Frames[f];
            foreach (var edge in places.IsUp == _isLevel ? frame.Levels : frame.Sides) least = Math.Min(least, trial.Model.LeastAtEdge(f)[edge.Edge]);
        }

        return Length.FromSteps(least);
    }

    private void Put(Places places, long place)
    {
        for (var f = places.First; f < places.End; f++)
        {
            var face = run.Model.Frames[f].Face;
            if (places.IsUp) _y[f] = place - face.Raised.Steps;
            else _x[f] = run.Model.Restart ? place : place - face.Unrolled.Steps;
        }
    }

    private MovedTrial? Try(Score? toBeat)
    {
        Tried++;
        return _isLevel ? run.At(_x, _y, toBeat) : run.At(_y, _x, toBeat);
    }

    private void Consider(MovedTrial? trial)
    {
        if (trial is null || (_best.Count == Kept && Compare(trial, _best[^1]) >= 0)) return;
        if (_best.FindIndex(other => trial.Job.Faces.Equals(other.Job.Faces)) is >= 0 and var same)
        {
            if (Compare(trial, _best[same]) >= 0) return;
            _best.RemoveAt(same);
        }

        var at = _best.FindIndex(other => Compare(trial, other) < 0);
        _best.Insert(at < 0 ? _best.Count : at, trial);
        if (_best.Count > Kept) _best.RemoveAt(Kept);
    }

    private int Compare(MovedTrial one, MovedTrial other) => run.Compare(one.Placing.Score, one.Moved, other.Placing.Score, other.Moved);

    /// <summary>Places of some faces one way.</summary>
    /// <param name="First">The first face.</param>
    /// <param name="End">One past the last.</param>
    /// <param name="IsUp">Whether they are heights.</param>
    /// <param name="All">The places.</param>
    private sealed record Places(int First, int End, bool IsUp, long[] All)
    {
        /// <summary>Those at which things can stand, the most promising first.</summary>
        public List<(Score Key, long Place)> Ranked { get; } = [];
    }
}
