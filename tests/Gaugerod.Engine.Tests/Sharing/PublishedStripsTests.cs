using Xunit.Abstractions;
using System.Diagnostics;
using Gaugerod.Engine.Sharing;

namespace Gaugerod.Engine.Tests.Sharing;

/// <summary>Source: published one-dimensional sets and the table of bounds, see tests/Data/strips/SOURCES.txt.</summary>
public sealed class PublishedStripsTests(ITestOutputHelper output)
{
    public static TheoryData<StripSet> Closed => [.. StripSets.U120.Concat(StripSets.T60)];

    [Theory]
    [MemberData(nameof(Closed))]
    public void A_published_set_is_cut_from_as_few_lengths_as_are_known_to_do_and_that_is_proved(StripSet set)
    {
        var clock = Stopwatch.StartNew();
        var best = Solve(set, long.MaxValue, 5000);
        Assert.Equal(set.Least, best.Fills.Count);
        Assert.True(best.Proved);
        Assert.InRange(clock.ElapsedMilliseconds, 0, 5000);
    }

    /// <summary>The hardest known: nobody needs to close them, but what is claimed must be true and near.</summary>
    [Fact]
    public void On_the_hard_28_nothing_is_claimed_that_the_table_denies_and_one_length_more_is_the_most()
    {
        var closed = 0;
        foreach (var set in StripSets.Hard28)
        {
            var best = Solve(set, 300_000, 1500);
            output.WriteLine($"{set}: {best.Fills.Count}, at least {best.Least}, known {set.Least}");
            Assert.InRange(set.Least, best.Least, best.Fills.Count);
            Assert.InRange(best.Fills.Count, set.Least, set.Least + 1);
            Assert.InRange(best.Least, set.Least - 1, set.Least);
            if (best.Proved) closed++;
        }

        output.WriteLine($"{closed} of 28 proved");
    }

    internal static Shares Solve(StripSet set, long allowed, int milliseconds)
    {
        var wanted = set.Wanted;
        var search = new SharingSearch(wanted, allowed);
        var clock = Stopwatch.StartNew();
        foreach (var _ in search.Steps())
        {
            if (clock.ElapsedMilliseconds > milliseconds) break;
        }

        var best = search.Best;
        Assert.Equal(TileFitsTests.AllKinds(wanted), best.Fills.SelectMany(fill => fill).Order());
        Assert.All(best.Fills, fill => Assert.InRange(fill.Sum(kind => wanted.Kinds[kind].Blank.Width), 1, set.Tile));
        return best;
    }
}
