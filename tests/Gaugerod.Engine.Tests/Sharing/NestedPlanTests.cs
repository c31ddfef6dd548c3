using Gaugerod.Engine.Sharing;
using Google.OrTools.Sat;

namespace Gaugerod.Engine.Tests.Sharing;

/// <summary>Plans of pieces that share by their outlines. Referee: CP-SAT of Google OR-Tools over every set of pieces that shares a tile.</summary>
public sealed class NestedPlanTests
{
    [Fact]
    public void No_plan_with_nested_pieces_takes_fewer_tiles_than_the_one_found_or_the_bound_says()
    {
        var proved = 0;
        for (var seed = 0; seed < 60; seed++)
        {
            var (stock, pieces) = Outlines.Many(seed, 10);
            var wanted = new Wanted(stock, pieces);
            var search = new SharingSearch(wanted, 2_000_000);
            search.Run();
            var least = Least(wanted);
            Assert.True(search.Best.Least <= least && search.Best.Fills.Count >= least, $"seed {seed}: {search.Best.Least} to {search.Best.Fills.Count}, least {least}");
            if (!search.Best.Proved) continue;
            proved++;
            Assert.Equal(least, search.Best.Fills.Count);
            var layout = new TileLayout(wanted);
            foreach (var fill in search.Best.Fills) layout.Lay(fill);
        }

        Assert.InRange(proved, 55, 60);
    }

    private static int Least(Wanted wanted)
    {
        var (fits, sets) = (new TileFits(wanted), new List<int[]>());
        Grow([], 0);
        var model = new CpModel();
        var take = sets.ConvertAll(set => model.NewIntVar(0, 10, string.Join(' ', set)));
        for (var kind = 0; kind < wanted.Kinds.Length; kind++)
        {
            model.Add(LinearExpr.WeightedSum(take, sets.ConvertAll(set => (long)set.Count(k => k == kind))) >= wanted.Kinds[kind].Wanted);
        }

        model.Minimize(LinearExpr.Sum(take));
        var solver = new CpSolver { StringParameters = "num_workers:1" };
        Assert.Equal(CpSolverStatus.Optimal, solver.Solve(model));
        return (int)solver.ObjectiveValue;

        // A set that shares stays a set that shares without one of its pieces, so that growing one by one finds all.
        void Grow(int[] set, int from)
        {
            for (var kind = from; kind < wanted.Kinds.Length; kind++)
            {
                int[] more = [.. set, kind];
                if (more.Count(k => k == kind) > wanted.Kinds[kind].Wanted || more.Length > Parcels.Most || !fits.Fit(more)) continue;
                sets.Add(more);
                Grow(more, kind);
            }
        }
    }
}
