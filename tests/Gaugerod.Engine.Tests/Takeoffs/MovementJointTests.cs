using CsCheck;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Takeoffs;

public sealed class MovementJointTests
{
    // All choices of candidates, by brute force: the fewest that keep every part within the limit, then the fewest tiles cut, then the shortest longest part.
    [Fact]
    public void The_joints_chosen_are_the_fewest_that_go_through_fewest_tiles_and_lie_most_even() =>
        Gen.Select(Gen.Int[1, 99].Array[0, 10], Gen.Int[0, 3].Array[10], Gen.Int[5, 60]).Each(
            (places, cuts, most) =>
            {
                var candidates = places.Distinct().Order().Select((at, i) => ((long)at, cuts[i])).ToList();
                var chosen = MovementJoints.Chosen(candidates, 0, 100, most);
                var best = Enumerable.Range(1, (1 << candidates.Count) - 1).Select(bits => candidates.Where((_, i) => (bits >> i & 1) == 1).ToList()).Where(ways => Longest(ways) <= most)
                    .Select(ways => (ways.Count, Cuts: ways.Sum(way => way.Item2), Longest: Longest(ways))).DefaultIfEmpty((Count: 0, Cuts: 0, Longest: 0)).Min();
                Assert.Equal(best, chosen.Count == 0 ? (0, 0, 0) : (chosen.Count, chosen.Sum(way => way.Cut), Longest(chosen)));
            },
            iter: 1000);

    // By hand: a grid of 300 with joints of 3 has a joint every 303, and none goes through a tile; courses that begin by turns have one in every other.
    [Fact]
    public void A_joint_that_goes_on_over_all_courses_cuts_no_tile_and_one_that_does_not_cuts_every_other()
    {
        var grid = MovementJoints.Candidates([(0, 300), (303, 603), (0, 300), (303, 603)], 3, 0, 603);
        Assert.Equal([(301L, 0), (302L, 0)], grid);
        var running = MovementJoints.Candidates([(0, 300), (303, 603), (0, 150), (152, 452), (455, 603)], 2, 0, 603);
        Assert.All(running, candidate => Assert.Equal(1, candidate.Cut));
    }

    private static long Longest(IReadOnlyList<(long At, int Cut)> ways) => ways.Select(way => way.At).Append(100).Zip(ways.Select(way => way.At).Prepend(0), (to, from) => to - from).Max();
}
