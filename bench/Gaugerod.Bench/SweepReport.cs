using System.Diagnostics;
using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Bench;

/// <summary>Runs the sweep in full beside the search, with a stopwatch, and sets what each found side by side.</summary>
internal static class SweepReport
{
    /// <summary>Prints it; false when the sweep found better.</summary>
    public static bool Print(string sample)
    {
        var problem = Subjects.Problem(Subjects.Sample(sample));
        for (var i = 0; i < 40; i++) _ = LineSearch.Find(problem);
        var found = LineSearch.Find(problem);
        var order = new ScoreOrder(problem.Order);
        var whole = Fastest(20, () => _ = LineSearch.Find(problem));
        Say($"{sample}: whole search, all joint widths, with alternatives and proof: {whole:0.000} ms");
        var good = true;
        foreach (var joint in Joints(problem, found.Model.Joint))
        {
            var model = new RunModel(problem, joint);
            RunPlacing search = null!, sweep = null!;
            var quick = Fastest(20, () => search = new JointSearch(new(problem, joint)).Improve().Last()!);
            var slow = Fastest(1, () => sweep = Sweep.Best(model));
            var by = order.Compare(search.Score, sweep.Score);
            good &= by <= 0;
            Say($"joint {joint}: {Sweep.Scorings(model)} scorings of {Sweep.AllPlacings(model):0.00e0} placings");
            Say($"  sweep {slow,12:0.000} ms  {sweep.Score}");
            Say($"  search {quick,11:0.000} ms  {search.Score}");
            Say($"  {slow / quick:0} times; the search is {(by < 0 ? "better" : by == 0 ? "equal" : "WORSE")}");
            if (AllElsePerfect(order, sweep.Score, found.Best.Score))
            {
                good = false;
                Say("  the sweep meets MORE of what was asked at this joint than the whole search does at its own");
            }
        }

        return good;
    }

    /// <summary>The joint the search took, and every 1/64 in of the range besides.</summary>
    private static IEnumerable<Length> Joints(RunProblem problem, Length taken)
    {
        yield return taken;
        for (var joint = problem.Joint.Least.Steps; joint <= problem.Joint.Most.Steps; joint += Sweep.Step)
        {
            if (joint != taken.Steps) yield return Length.FromSteps(joint);
        }
    }

    /// <summary>Whether a score beats another in musts and wishes alone, which is what another joint may be taken for.</summary>
    private static bool AllElsePerfect(ScoreOrder order, Score one, Score other) =>
        order.Compare(other with { MustsMissed = one.MustsMissed, WishesMissed = one.WishesMissed }, other) < 0;

    private static double Fastest(int rounds, Action work)
    {
        var least = double.MaxValue;
        for (var i = 0; i < rounds; i++)
        {
            var watch = Stopwatch.StartNew();
            work();
            least = Math.Min(least, watch.Elapsed.TotalMilliseconds);
        }

        return least;
    }

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));

    private static void Say(string line) => Console.WriteLine(line);
}
