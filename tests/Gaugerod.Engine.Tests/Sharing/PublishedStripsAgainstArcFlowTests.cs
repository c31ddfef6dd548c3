using System.Diagnostics;
using Xunit.Abstractions;

namespace Gaugerod.Engine.Tests.Sharing;

/// <summary>Source: SCIP on the arc-flow model (<see cref="ArcFlow"/>), for the published sets of tests/Data/strips.</summary>
public sealed class PublishedStripsAgainstArcFlowTests(ITestOutputHelper output)
{
    [Fact]
    public void On_four_published_sets_a_general_solver_comes_to_as_few_lengths() =>
        Same(new[] { 0, 11 }.SelectMany(i => new[] { StripSets.U120.ElementAt(i), StripSets.T60.ElementAt(i) }));

    /// <summary>About a minute.</summary>
    [Fact]
    [Trait("Category", "Long")]
    public void On_all_sets_u120_and_t60_a_general_solver_comes_to_as_few_lengths() => Same(StripSets.U120.Concat(StripSets.T60));

    /// <summary>As far as SCIP ends within two minutes a set: up to an hour in all. What it does not end says nothing against ours but for its bound.</summary>
    [Fact]
    [Trait("Category", "Long")]
    public void On_the_hard_28_nothing_is_claimed_that_a_general_solver_denies()
    {
        var (ended, equal) = (0, 0);
        foreach (var set in StripSets.Hard28)
        {
            var (ours, clock) = (PublishedStripsTests.Solve(set, 300_000, 1500), Stopwatch.StartNew());
            var theirs = ArcFlow.Solve(set, TimeSpan.FromMinutes(2));
            output.WriteLine($"{set}: {ours.Fills.Count}, at least {ours.Least}; {theirs}, {clock.Elapsed.TotalSeconds:0} s");
            Assert.True(ours.Fills.Count >= theirs.Bound, $"{set}: {ours.Fills.Count} lengths, where at least {theirs.Bound} are needed");
            if (theirs.Lengths is { } found) Assert.True(ours.Least <= found, $"{set}: at least {ours.Least} are said to be needed, and {found} do");
            if (!theirs.Proved) continue;
            ended++;
            if (ours.Proved) Assert.Equal(theirs.Lengths, ours.Fills.Count);
            if (ours.Fills.Count == theirs.Lengths) equal++;
        }

        output.WriteLine($"{ended} of 28 ended, as few lengths on {equal} of these");
        Assert.NotEqual(0, ended);
    }

    private static void Same(IEnumerable<StripSet> sets)
    {
        foreach (var set in sets)
        {
            var ours = PublishedStripsTests.Solve(set, long.MaxValue, 5000);
            var theirs = ArcFlow.Solve(set, TimeSpan.FromMinutes(2));
            Assert.True(theirs.Proved, $"{set} is not ended in two minutes: {theirs}");
            Assert.Equal(theirs.Lengths, ours.Fills.Count);
            Assert.Equal(theirs.Bound, ours.Least);
        }
    }
}
