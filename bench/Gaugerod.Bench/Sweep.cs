using Gaugerod.Engine.Lines;

namespace Gaugerod.Bench;

/// <summary>
/// The plain way to the best placing: try one at every 1/64 in, both ways, and score each as the search does. The start
/// across is common to the run. Where each face starts anew it takes, at each start across, the move along that is best
/// for itself, as the search's own definition has it; to try every face's moves against every other's would take the
/// product of their numbers instead of the sum (see <see cref="AllPlacings"/>).
/// </summary>
internal static class Sweep
{
    /// <summary>1/64 in, in steps of 1/3200 mm.</summary>
    public const long Step = 1270;

    public static long Across(RunModel model) => Count(model.Courses.Rise * model.Courses.Repeat);

    public static long Along(RunModel model) => Count(model.Courses.Period);

    /// <summary>How many single faces (restarting) or runs (wrapping) a full sweep scores.</summary>
    public static long Scorings(RunModel model) =>
        Across(model) * Along(model) * (model.Problem.Restart ? model.Frames.Length : 1);

    /// <summary>How many placings of the whole run there are on the 1/64 in marks, every face's moves against every other's.</summary>
    public static double AllPlacings(RunModel model) =>
        Across(model) * Math.Pow(Along(model), model.Problem.Restart ? model.Frames.Length : 1);

    /// <summary>The best placing of a full sweep.</summary>
    public static RunPlacing Best(RunModel model)
    {
        var order = new ScoreOrder(model.Problem.Order);
        var (u, v) = (new long[model.Frames.Length], new long[model.Frames.Length]);
        RunPlacing? best = null;
        for (var row = 0L; row < Across(model); row++)
        {
            Place(model, row, v);
            if (model.Problem.Restart) FaceByFace(model, order, u, v, ref best);
            else Together(model, order, u, v, ref best);
        }

        return best!;
    }

    /// <summary>
    /// Scores whole runs at all moves along of every so manieth start across; every face moves, each by another step, so
    /// that the sample is of all placings and not of the few where the faces move as one.
    /// </summary>
    /// <returns>How many were scored.</returns>
    public static long Sample(RunModel model, long everyAcross)
    {
        var (u, v) = (new long[model.Frames.Length], new long[model.Frames.Length]);
        var (along, scored) = (Along(model), 0L);
        for (var row = 0L; row < Across(model); row += everyAcross)
        {
            Place(model, row, v);
            for (var column = 0L; column < along; column++, scored++)
            {
                for (var f = 0; f < u.Length; f++) u[f] = column * ((97 * f) + 1) % along * Step;
                _ = model.Score(u, v);
            }
        }

        return scored;
    }

    private static void FaceByFace(RunModel model, ScoreOrder order, long[] u, long[] v, ref RunPlacing? best)
    {
        for (var f = 0; f < u.Length; f++)
        {
            Score? known = null;
            var chosen = 0L;
            for (var move = 0L; move < model.Courses.Period; move += Step)
            {
                u[f] = move;
                var score = model.ScoreFace(u, v, f);
                if (known is { } beat && order.Compare(score, beat) >= 0) continue;
                (known, chosen) = (score, move);
            }

            u[f] = chosen;
        }

        Keep(order, new([.. u], [.. v], model.Score(u, v)), ref best);
    }

    private static void Together(RunModel model, ScoreOrder order, long[] u, long[] v, ref RunPlacing? best)
    {
        for (var move = 0L; move < model.Courses.Period; move += Step)
        {
            for (var f = 0; f < u.Length; f++) u[f] = move - model.Frames[f].RunAlong;
            var score = model.Score(u, v);
            if (best is null || order.Compare(score, best.Score) < 0) best = new([.. u], [.. v], score);
        }
    }

    private static void Keep(ScoreOrder order, RunPlacing placing, ref RunPlacing? best)
    {
        if (best is null || order.Compare(placing.Score, best.Score) < 0) best = placing;
    }

    private static void Place(RunModel model, long row, long[] v)
    {
        for (var f = 0; f < v.Length; f++) v[f] = (row * Step) - model.Frames[f].RunAcross;
    }

    private static long Count(long repeat) => (repeat + Step - 1) / Step;
}
