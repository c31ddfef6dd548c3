using Gaugerod.Engine.Cutting;
using Gaugerod.Plane.Measure;
using Google.OrTools.Sat;

namespace Gaugerod.Engine.Tests.Cutting;

/// <summary>
/// Source: CP-SAT of Google.OrTools, given one yes or no for every two pieces that may share and told only that no
/// piece shares twice.
/// </summary>
public sealed class PairingAgainstSolverTests
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void On_100_sets_a_general_solver_finds_the_same_number_of_tiles(bool turnable) => Same(Enumerable.Range(0, 100), turnable);

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    [Trait("Category", "Long")]
    public void On_300_sets_a_general_solver_finds_the_same_number_of_tiles(bool turnable) => Same(Enumerable.Range(1000, 300), turnable);

    private static void Same(IEnumerable<int> seeds, bool turnable)
    {
        foreach (var seed in seeds)
        {
            var (strips, tile, kerf) = Set(new Random(seed), seed);
            var paired = Pairing.Find("p", strips, Length.FromSteps(tile), Length.FromSteps(kerf), turnable);
            PairingCase.Holds(paired, strips, tile, kerf, turnable);
            Assert.Equal(LeastBySolver(strips, tile, kerf, turnable), paired.Proof.Tiles);
        }
    }

    // Sets of 1 to 60 pieces: from slivers to whole tiles, wide ones only, or on a coarse tape with many equal ones.
    private static (Strip[] Strips, long Tile, long Kerf) Set(Random random, int seed)
    {
        var (least, most, mark) = (seed % 3) switch
        {
            0 => (1, 300, 1),
            1 => (90, 260, 1),
            _ => (1, 20, 15),
        };
        var strips = new Strip[1 + random.Next(60)];
        for (var i = 0; i < strips.Length; i++)
        {
            strips[i] = new(Length.FromSteps(random.Next(least, most + 1) * mark), random.Next(5) < 2);
        }

        return (strips, 300, seed % 2 == 0 ? 3 : 0);
    }

    private static int LeastBySolver(Strip[] strips, long tile, long kerf, bool turnable)
    {
        var model = new CpModel();
        var shares = new List<BoolVar>();
        var ofPiece = strips.Select(_ => new List<ILiteral>()).ToArray();
        for (var i = 0; i < strips.Length; i++)
        {
            for (var j = i + 1; j < strips.Length; j++)
            {
                if (!PairingCase.MayShare(strips[i], strips[j], tile, kerf, turnable)) continue;
                var share = model.NewBoolVar("");
                shares.Add(share);
                ofPiece[i].Add(share);
                ofPiece[j].Add(share);
            }
        }

        foreach (var piece in ofPiece) model.AddAtMostOne(piece);
        model.Maximize(LinearExpr.Sum(shares));
        var solver = new CpSolver { StringParameters = "num_workers:1" };
        Assert.Equal(CpSolverStatus.Optimal, solver.Solve(model));
        return strips.Length - (int)solver.ObjectiveValue;
    }
}
