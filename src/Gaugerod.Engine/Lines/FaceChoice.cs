using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Lines;

/// <summary>
/// Where each face has an x offset of its own: chooses it for one face, the courses' height being settled. Laid level, the
/// own offset is the move along the courses; laid upright, it is the start across them.
/// </summary>
internal sealed class FaceChoice(RunModel model, RunBounds bounds, Candidates candidates, ScoreOrder order)
{
    private readonly Sawtooth _along = new(model.Courses.Length, model.Courses.Period, model.Frames.Length, model.Relax);

    /// <summary>
    /// Chooses for every face, twice: first each takes what is best for itself. Then, as a cut larger than the run's smallest
    /// gains the run nothing, a face may come down to that for the sake of what counts after it.
    /// </summary>
    public void Choose(long[] u, long[] v, Func<long, bool>? allowed)
    {
        for (var f = 0; f < u.Length; f++) ChooseFor(f, u, v, allowed, null);
        var smallest = model.Score(u, v).SmallestCut;
        for (var f = 0; f < u.Length; f++) ChooseFor(f, u, v, allowed, smallest);
    }

    private void ChooseFor(int face, long[] u, long[] v, Func<long, bool>? allowed, Length? enough)
    {
        var upright = model.Bond.Lay == Lay.Upright;
        var own = upright ? v : u;
        Score? best = null;
        var chosen = own[face];
        foreach (var place in Places(face, v, upright, enough?.Steps ?? 0))
        {
            if (allowed is not null && !allowed(place)) continue;
            own[face] = place;
            if (best is { } beat && order.Compare(Enough(Promise(face, place, u, v, upright)), beat) >= 0) continue;
            var score = Enough(model.ScoreFace(u, v, face));
            if (best is { } known && order.Compare(score, known) >= 0) continue;
            (best, chosen) = (score, place);
        }

        own[face] = chosen;

        Score Enough(Score score) => enough is { } most && score.SmallestCut > most ? score with { SmallestCut = most } : score;
    }

    private long[] Places(int face, long[] v, bool upright, long smallest)
    {
        if (upright)
        {
            var across = bounds.Across(face, face + 1, onRun: false);
            return candidates.Starts(across, face, face + 1, onRun: false, smallest, list => candidates.Mirrored(across, list));
        }

        bounds.Along(_along, v, face, face + 1, onRun: false);
        bounds.AcrossOnly(v, face, face + 1);
        return candidates.Moves(_along, face, face + 1, onRun: false, smallest, list => candidates.Mirrored(_along, list));
    }

    private Score Promise(int face, long place, long[] u, long[] v, bool upright) => upright
        ? bounds.AcrossOnly(v, face, face + 1)
        : bounds.Both(_along, place, u, v, face, face + 1);
}
