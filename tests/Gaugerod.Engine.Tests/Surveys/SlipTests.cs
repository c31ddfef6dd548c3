using Gaugerod.Engine.Surveys;
using MathNet.Numerics.Distributions;
using Xunit.Abstractions;

namespace Gaugerod.Engine.Tests.Surveys;

/// <summary>Source: the theory of data snooping (W. Baarda 1968): 1 in 1,000 good readings is doubted, and the least slip is found four times in five.</summary>
public sealed class SlipTests(ITestOutputHelper output)
{
    private const int Count = 10_000;

    [Fact]
    public void Standardised_corrections_of_10_000_rooms_follow_the_normal_law_and_slips_are_found_as_often_as_theory_says()
    {
        var chance = new Random(66);
        var sample = new List<double>();
        var (doubted, tests, found, tried) = (0, 0, 0, 0);
        for (var room = 0; room < Count; room++)
        {
            var truth = Rooms.Any(chance);
            var network = truth.Read(chance);
            var adjusted = Adjustment.Of(network, truth.Places);
            Assert.True(adjusted.IsSettled);
            var own = Enumerable.Range(0, network.Readings.Count).Where(i => !adjusted.IsUnchecked(i)).ToArray();
            sample.Add(adjusted.Standardised(own[chance.Next(own.Length)]));
            tests += own.Length;
            doubted += own.Count(i => Math.Abs(adjusted.Standardised(i)) > Adjusted.Critical);

            var slipped = own[chance.Next(own.Length)];
            var slip = adjusted.LeastSlip(slipped) * (chance.Next(2) == 0 ? 1 : -1);
            var wrong = Adjustment.Of(Slipped(network, slipped, slip), truth.Places);
            tried++;
            if (Math.Abs(wrong.Standardised(slipped)) > Adjusted.Critical) found++;
        }

        sample.Sort();
        var apart = sample.Select((w, i) => Math.Max(Math.Abs(Normal.CDF(0, 1, w) - ((i + 1.0) / Count)), Math.Abs(Normal.CDF(0, 1, w) - ((double)i / Count)))).Max();
        output.WriteLine($"farthest from the normal law {apart:0.0000}; doubted {doubted} of {tests}; found {found} of {tried}");

        // A. Kolmogorov 1933: beyond 1.63 / sqrt(n) is one in a hundred.
        Assert.True(apart < 1.63 / Math.Sqrt(Count), $"{apart}");
        Assert.InRange((double)doubted / tests, 0.0005, 0.0015);
        Assert.InRange((double)found / tried, 0.78, 0.82);
    }

    [Fact]
    public void Four_sides_and_two_diagonals_are_named_as_a_group_and_one_more_reading_tells_them_apart()
    {
        var chance = new Random(67);
        var (located, named) = (0, 0);
        const int Many = 1000;
        for (var room = 0; room < Many; room++)
        {
            var truth = Rooms.Four(chance);
            var network = truth.Read(chance);
            var slipped = chance.Next(6);
            var first = Adjustment.Of(network, truth.Places);
            var slip = 4 * first.LeastSlip(slipped) * (chance.Next(2) == 0 ? 1 : -1);
            network = Slipped(network, slipped, slip);
            var wrong = Adjustment.Of(network, truth.Places);
            var group = Suspects.Of(wrong);
            Assert.Equal([0, 1, 2, 3, 4, 5], group);

            var next = NextReading.ToTell(wrong, group, [Four], new(Rooms.Accuracy, 10, 300));
            Assert.NotNull(next);
            var taken = next.Value with { Value = ReadingSlope.Of(next.Value, truth.Places, new double[8]) + (Rooms.Accuracy * TrueRoom.Normal(chance)) };
            var after = Suspects.Of(Adjustment.Of(network.With(taken), truth.Places));
            if (after is [_]) named++;
            if (after is [var only] && only == slipped) located++;
        }

        output.WriteLine($"one named in {named} of {Many}, the right one in {located}");
        Assert.Equal(Many, named);
        Assert.True(located >= 0.95 * Many, $"{located} of {Many}");
    }

    private static readonly NetworkPart Four = new(new("floor", 0, new([.. "ABCD".Select(name => new SurveyCorner($"{name}", false, null))], [], [])), 0, 4, 0, 0, []);

    private static Network Slipped(Network network, int reading, double slip) =>
        network with { Readings = [.. network.Readings.Select((r, i) => i == reading ? r with { Value = r.Value + slip } : r)] };
}
