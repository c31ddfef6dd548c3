using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Lines;

/// <summary>
/// Where each face has an x offset of its own: chooses it for one face, the courses' height being settled. Laid level, the
/// own offset is the move along the courses; laid upright, it is the start across them.
/// </summary>
internal sealed class FaceChoice(RunModel model, RunBounds bounds, Candidates candidates, ScoreOrder order)
{
    private readonly Sawtooth _along = new(model.Courses.Length, model.Courses.Period, model.Frames.Length, model.Relax.Side, model.Off);
    private readonly List<(Score Promise, long Place)> _promised = [];

    /// <summary>
    /// Chooses for every face, twice: first each takes what is best for itself. Then, as a cut larger than the run's smallest
    /// gains the run nothing, a face may come down to that for the sake of what counts after it.
    /// </summary>
    /// <returns>
    /// Whenever a little work is done, whether every face has a place, and the faces' own best together may beat the score: no
    /// until the last.
    /// </returns>
    public IEnumerable<bool> Choose(long[] u, long[] v, Score? toBeat, Func<long, bool>? allowed)
    {
        var together = Score.Perfect;
        for (var f = 0; f < u.Length; f++)
        {
            Score? chosen = null;
            foreach (var sofar in ChooseFor(f, u, v, allowed, null))
            {
                chosen = sofar;
                yield return false;
            }

            if (chosen is not { } own) yield break;
            // What comes after the smallest cut a face may still better, by coming down to the run's.
            together = order.UpToSmallest(together.And(own));
            if (toBeat is { } beat && order.Compare(together, beat) >= 0) yield break;
        }

        for (var f = 0; f < u.Length; f++)
        {
            foreach (var _ in ChooseFor(f, u, v, allowed, together.Judged)) yield return false;
        }

        yield return true;
    }

    /// <summary>Whenever a little work is done, what a face reaches; the last counts, and null is for no place.</summary>
    private IEnumerable<Score?> ChooseFor(int face, long[] u, long[] v, Func<long, bool>? allowed, Length? enough)
    {
        var upright = model.Bond.Lay == Lay.Upright;
        var own = upright ? v : u;
        var chosen = own[face];
        _promised.Clear();
        var first = 0;
        foreach (var place in Places(face, v, upright, enough?.Steps))
        {
            if (allowed is not null && !allowed(place)) continue;
            own[face] = place;
            _promised.Add((Enough(Promise(face, place, u, v, upright)), place));
            if (order.Compare(_promised[^1].Promise, _promised[first].Promise) < 0) first = _promised.Count - 1;
            if (_promised.Count % JointSearch.AtOnce == 0) yield return null;
        }

        // The most promising first: what it reaches rules most of the others out.
        Score? best = null;
        var scored = 0;
        for (var i = -1; i < _promised.Count; i++)
        {
            if (i == first || _promised.Count == 0) continue;
            var (promise, place) = _promised[i < 0 ? first : i];
            if (best is { } beat && order.Compare(promise, beat) >= 0) continue;
            own[face] = place;
            var score = Enough(model.ScoreFace(u, v, face));
            if (best is not { } known || order.Compare(score, known) < 0) (best, chosen) = (score, place);
            if (++scored % JointSearch.AtOnce == 0) yield return best;
        }

        own[face] = chosen;
        yield return best;

        Score Enough(Score score) => enough is { } most && score.Judged > most ? score.JudgedAs(most) : score;
    }

    private long[] Places(int face, long[] v, bool upright, long? smallest)
    {
        if (upright)
        {
            var across = bounds.Across(face, face + 1, onRun: false);
            return candidates.Starts(across, face, face + 1, onRun: false, model.OwnRows, smallest, list => candidates.Mirrored(across, list));
        }

        bounds.Along(_along, v, face, face + 1, onRun: false);
        bounds.AcrossOnly(v, face, face + 1);
        return candidates.Moves(_along, face, face + 1, onRun: false, smallest, list => candidates.Mirrored(_along, list));
    }

    private Score Promise(int face, long place, long[] u, long[] v, bool upright) => upright
        ? bounds.AcrossOnly(v, face, face + 1)
        : bounds.Both(_along, place, u, v, face, face + 1);
}
