using System.Diagnostics;
using System.Globalization;
using Gaugerod.Engine.Sharing;
using Gaugerod.Engine.Tests.Sharing;
using Google.OrTools.Sat;

namespace Gaugerod.Bench;

/// <summary>The search for fewest tiles against CP-SAT of Google.OrTools in its set-partition form, its sets given beforehand, both to the same proved answer.</summary>
internal static class CuttingAgainstSolver
{
    public static void Print(int pieces, int jobs)
    {
        Console.WriteLine("| Seed | Tiles | Ours, ms | CP-SAT, ms | its sets | Ratio |");
        Console.WriteLine("|---|---:|---:|---:|---:|---:|");
        var ratios = new List<double>();
        _ = Ours(1, pieces);
        for (var seed = 3000; seed < 3000 + jobs; seed++)
        {
            var (ours, best) = Ours(seed, pieces);
            if (!best.Proved)
            {
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {seed} | not proved | {ours:0} | | | |"));
                continue;
            }

            var (stock, blanks) = BlankSets.Mixed(seed, pieces);
            var (solver, least, sets) = Solved(new(stock, blanks));
            ratios.Add(solver / ours);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {seed} | {best.Fills.Count}, {least} | {ours:0.0} | {solver:0} | {sets} | {solver / ours:0} |"));
        }

        ratios.Sort();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"Median ratio {ratios[ratios.Count / 2]:0}"));
    }

    private static (double Milliseconds, Shares Best) Ours(int seed, int pieces)
    {
        var (stock, blanks) = BlankSets.Mixed(seed, pieces);
        var watch = Stopwatch.StartNew();
        var search = new SharingSearch(new(stock, blanks), 10_000_000);
        search.Run();
        return (watch.Elapsed.TotalMilliseconds, search.Best);
    }

    private static (double Milliseconds, int Least, int Sets) Solved(Wanted wanted)
    {
        var (fits, sets, held) = (new TileFits(wanted), new List<int[]>(), new List<int>());
        Grow(0);
        var watch = Stopwatch.StartNew();
        var model = new CpModel();
        var taken = sets.ConvertAll(set => model.NewIntVar(0, 200, ""));
        var gives = Array.ConvertAll(wanted.Kinds, _ => (Takes: new List<IntVar>(), Copies: new List<long>()));
        for (var i = 0; i < sets.Count; i++)
        {
            foreach (var copies in sets[i].GroupBy(kind => kind))
            {
                gives[copies.Key].Takes.Add(taken[i]);
                gives[copies.Key].Copies.Add(copies.Count());
            }
        }

        for (var kind = 0; kind < gives.Length; kind++) model.Add(LinearExpr.WeightedSum(gives[kind].Takes, gives[kind].Copies) == wanted.Kinds[kind].Wanted);
        model.Minimize(LinearExpr.Sum(taken));
        var solver = new CpSolver { StringParameters = "num_workers:2,linearization_level:2,max_time_in_seconds:120" };
        var status = solver.Solve(model);
        return (watch.Elapsed.TotalMilliseconds, status == CpSolverStatus.Optimal ? (int)solver.ObjectiveValue : -1, sets.Count);

        void Grow(int from)
        {
            for (var kind = from; kind < wanted.Kinds.Length; kind++)
            {
                if (held.Count(k => k == kind) >= wanted.Kinds[kind].Wanted || !fits.Fit(held.Append(kind).Order().ToArray())) continue;
                held.Add(kind);
                Grow(kind);
                held.RemoveAt(held.Count - 1);
            }

            if (held.Count > 0) sets.Add([.. held]);
        }
    }
}
