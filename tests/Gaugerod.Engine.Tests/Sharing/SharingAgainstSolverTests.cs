using Gaugerod.Engine.Sharing;
using Google.OrTools.Sat;

namespace Gaugerod.Engine.Tests.Sharing;

/// <summary>
/// Source: CP-SAT of Google.OrTools in its set-partition form: how often each set of blanks that one tile gives is taken,
/// every blank once, as few tiles as can be.
/// </summary>
public sealed class SharingAgainstSolverTests
{
    [Fact]
    public void On_60_jobs_of_12_pieces_a_general_solver_finds_the_same_number_of_tiles() => Same(Enumerable.Range(0, 60), 12);

    [Fact]
    public void On_10_jobs_of_24_pieces_a_general_solver_finds_the_same_number_of_tiles() => Same(Enumerable.Range(1000, 10), 24);

    /// <summary>The three hundred the issue asks for: about a quarter of an hour.</summary>
    [Fact]
    [Trait("Category", "Long")]
    public void On_300_jobs_a_general_solver_finds_the_same_number_of_tiles()
    {
        Same(Enumerable.Range(2000, 180), 12);
        Same(Enumerable.Range(3000, 100), 24);
        Same(Enumerable.Range(4000, 20), 48);
    }

    private static void Same(IEnumerable<int> seeds, int count)
    {
        foreach (var seed in seeds)
        {
            var (stock, blanks) = seed % 4 == 3 ? BlankSets.Corners(seed, count) : BlankSets.Mixed(seed, count);
            var wanted = new Wanted(stock, blanks);
            var search = new SharingSearch(wanted, 20_000_000);
            search.Run();
            var best = search.Best;
            Assert.True(best.Proved, $"seed {seed} is not proved: {best.Fills.Count} tiles, at least {best.Least}");
            Assert.Equal(TileFitsTests.AllKinds(wanted), best.Fills.SelectMany(fill => fill).Order());
            Assert.Equal(LeastBySolver(wanted), best.Fills.Count);
        }
    }

    private static int LeastBySolver(Wanted wanted)
    {
        var model = new CpModel();
        var taken = new List<IntVar>();
        var gives = Array.ConvertAll(wanted.Kinds, _ => new List<(IntVar Tiles, int Copies)>());
        foreach (var fill in Fills(wanted))
        {
            var copies = fill.GroupBy(kind => kind).ToDictionary(g => g.Key, g => g.Count());
            var tiles = model.NewIntVar(0, copies.Max(c => (wanted.Kinds[c.Key].Wanted + c.Value - 1) / c.Value), "");
            taken.Add(tiles);
            foreach (var (kind, count) in copies) gives[kind].Add((tiles, count));
        }

        for (var kind = 0; kind < gives.Length; kind++)
        {
            model.Add(LinearExpr.WeightedSum(gives[kind].Select(g => g.Tiles), gives[kind].Select(g => (long)g.Copies)) == wanted.Kinds[kind].Wanted);
        }

        model.Minimize(LinearExpr.Sum(taken));
        var solver = new CpSolver { StringParameters = "num_workers:2,linearization_level:2" };
        Assert.Equal(CpSolverStatus.Optimal, solver.Solve(model));
        return (int)solver.ObjectiveValue;
    }

    private static List<int[]> Fills(Wanted wanted)
    {
        var fits = new TileFits(wanted);
        var (fills, held) = (new List<int[]>(), new List<int>());
        Grow(0);
        return fills;

        void Grow(int from)
        {
            for (var kind = from; kind < wanted.Kinds.Length; kind++)
            {
                if (!Fits(kind)) continue;
                held.Add(kind);
                Grow(kind);
                held.RemoveAt(held.Count - 1);
            }

            if (held.Count > 0) fills.Add([.. held]);
        }

        bool Fits(int kind) =>
            held.Count(k => k == kind) < wanted.Kinds[kind].Wanted && fits.Fit(held.Append(kind).Order().ToArray());
    }
}
