using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>
/// The plain way to look for a placing: score every place on a grid. Where each face begins anew its faces are swept one
/// by one for every height: of each face only the scores are kept that no other of its scores beats in everything, which
/// loses nothing, since the run's score is no better in anything when a face's is worse.
/// </summary>
internal sealed class Sweep(RunModel model)
{
    private readonly ScoreOrder _order = new(model.Problem.Order);
    private readonly int _faces = model.Frames.Length;

    public Score? Best { get; private set; }

    public long Placings { get; private set; }

    /// <summary>
    /// Every place that ties with the best, on the run, some perhaps twice. Where each face begins anew none are kept: there
    /// are as many as there are ways of putting the faces' own places together.
    /// </summary>
    public List<(long Along, long Across)> Ties { get; } = [];

    /// <summary>A place on the run as the search writes it.</summary>
    public RunPlacing Placing((long Along, long Across) place) => new(
        [.. model.Frames.Select(frame => place.Along - frame.RunAlong)], [.. model.Frames.Select(frame => place.Across - frame.RunAcross)], Best!.Value);

    public void Over(IReadOnlyCollection<long> along, IReadOnlyCollection<long> across)
    {
        var (u, v) = (new long[_faces], new long[_faces]);
        if (model.Restart)
        {
            // Laid level the faces share the height and each has its own move along; laid upright they share the move, which
            // is up the wall, and each has its own start across.
            var upright = model.Bond.Lay == Lay.Upright;
            foreach (var shared in upright ? along : across)
            {
                for (var f = 0; f < _faces; f++)
                {
                    if (upright) u[f] = shared - model.Frames[f].RunAlong;
                    else v[f] = shared - model.Frames[f].RunAcross;
                }

                FaceByFace(upright ? across : along, u, v, upright ? v : u);
            }

            return;
        }

        foreach (var height in across)
        {
            for (var f = 0; f < _faces; f++) v[f] = height - model.Frames[f].RunAcross;
            foreach (var place in along)
            {
                for (var f = 0; f < _faces; f++) u[f] = place - model.Frames[f].RunAlong;
                Placings++;
                if (Take(model.Score(u, v))) Ties.Add((place, height));
            }
        }
    }

    private void FaceByFace(IReadOnlyCollection<long> places, long[] u, long[] v, long[] own)
    {
        List<Score> runs = [new(0, 0, 0, Gaugerod.Plane.Measure.Length.FromSteps(long.MaxValue), default, 0, 0, 0)];
        for (var f = 0; f < _faces; f++)
        {
            var front = new List<Score>();
            foreach (var place in places)
            {
                own[f] = place;
                Placings++;
                var score = model.ScoreFace(u, v, f);
                if (front.Any(known => NoWorse(known, score))) continue;
                front.RemoveAll(known => NoWorse(score, known));
                front.Add(score);
            }

            runs = [.. runs.SelectMany(run => front, Sum)];
        }

        foreach (var run in runs) _ = Take(run);
    }

    /// <summary>Whether a score is as good as the best.</summary>
    private bool Take(Score score)
    {
        var by = Best is { } best ? _order.Compare(score, best) : -1;
        if (by >= 0) return by == 0;
        Best = score;
        Ties.Clear();
        return true;
    }

    private static Score Sum(Score one, Score other) => new(
        one.MustsMissed + other.MustsMissed, one.WishesMissed + other.WishesMissed, one.Slivers + other.Slivers,
        Gaugerod.Plane.Measure.Length.Min(one.SmallestCut, other.SmallestCut), one.Mirror + other.Mirror, one.Cuts + other.Cuts, 0, 0)
    {
        AtWorst = other.AtWorst is { } worst ? Gaugerod.Plane.Measure.Length.Min(one.AtWorst ?? worst, worst) : null,
    };

    private static bool NoWorse(Score one, Score other) =>
        one.MustsMissed <= other.MustsMissed && one.WishesMissed <= other.WishesMissed && one.Slivers <= other.Slivers
        && one.Judged >= other.Judged && one.Mirror <= other.Mirror && one.Cuts <= other.Cuts;
}
