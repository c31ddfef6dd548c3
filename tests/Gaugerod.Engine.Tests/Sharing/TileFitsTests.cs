using Gaugerod.Engine.Sharing;

namespace Gaugerod.Engine.Tests.Sharing;

/// <summary>Source: the referees of this folder, which saw by the definition.</summary>
public sealed class TileFitsTests
{
    [Fact]
    public void Blanks_share_a_tile_exactly_when_straight_cuts_can_part_them()
    {
        var shared = 0;
        for (var seed = 0; seed < 1500; seed++)
        {
            var count = 2 + (seed % 3);
            var (stock, blanks) = seed % 3 == 0 ? BlankSets.Corners(seed, count) : BlankSets.Mixed(seed, count);
            for (var i = 0; i < blanks.Count; i++) blanks[i] = Smaller(stock, blanks[i], seed % 4);
            var wanted = new Wanted(stock, blanks);
            var kinds = AllKinds(wanted);
            var fit = new TileFits(wanted).Fit(kinds);
            Assert.True(fit == BenchReferee.Share(stock, blanks), $"seed {seed}: {string.Join(", ", blanks)}");
            if (!fit) continue;
            shared++;
            var layout = new TileLayout(wanted);
            layout.Lay(kinds);
            Assert.Null(SawReferee.Fault(wanted, kinds, layout));
        }

        Assert.InRange(shared, 200, 1300);
    }

    // So that sharing and not sharing are both common.
    private static Blank Smaller(Stock stock, Blank blank, int by) => blank with
    {
        Width = blank.Width == stock.Width ? blank.Width : 1 + (blank.Width / (1 + by)),
        Height = blank.Height == stock.Height ? blank.Height : 1 + (blank.Height / (1 + by)),
    };

    internal static int[] AllKinds(Wanted wanted) => wanted.Kinds.SelectMany((kind, i) => Enumerable.Repeat(i, kind.Wanted)).ToArray();
}
