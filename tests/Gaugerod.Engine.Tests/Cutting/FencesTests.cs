using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Cutting.Make;

namespace Gaugerod.Engine.Tests.Cutting;

/// <summary>Referee: every way of sharing sizes out among settings, by trying all subsets.</summary>
public sealed class FencesTests
{
    [Fact]
    public void No_way_of_sharing_sizes_out_has_fewer_settings_and_no_piece_comes_out_too_large_or_too_small()
    {
        var random = new Random(20261127);
        for (var round = 0; round < 300; round++)
        {
            var tile = Tile(600, 300);
            long[] sizes = [.. Enumerable.Range(0, 1 + random.Next(9)).Select(_ => (long)random.Next(100, 130))];
            var tolerance = random.Next(8);
            Piece[] pieces = [.. sizes.Select((size, i) => Straight(tile, $"A{i}", TileSide.Right, Mm(size)))];
            var fences = new Fences(tile, pieces, Tape.Millimetres, CuttingAims.Usual with { Fence = Mm(tolerance) });
            Length[] settings = [.. sizes.Select(size => fences.For(Mm(size)))];
            Assert.Equal(Fewest(sizes, tolerance), settings.Distinct().Count());
            Assert.All(sizes.Zip(settings), of => Assert.InRange((Mm(of.First) - of.Second).Steps, 0, Mm(tolerance).Steps));
        }
    }

    private static int Fewest(long[] sizes, long tolerance)
    {
        var least = new int[1 << sizes.Length];
        for (var all = 1; all < least.Length; all++)
        {
            least[all] = int.MaxValue;
            for (var one = all; one > 0; one = (one - 1) & all)
            {
                long[] own = [.. sizes.Where((_, i) => (one >> i & 1) == 1)];
                if (own.Max() - own.Min() <= tolerance) least[all] = Math.Min(least[all], 1 + least[all ^ one]);
            }
        }

        return least[^1];
    }
}
