using CsCheck;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Plane;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Sequencing;

/// <summary>What each mix covers.</summary>
public sealed class BatchTests
{
    private static readonly WorkHours Hours = new(new(2027, 3, 8), 480, 990, 30, [DayOfWeek.Monday, DayOfWeek.Tuesday], [], Clocks.None);

    [Fact]
    public void A_mix_ends_with_a_course_and_is_used_up_within_its_pot_life()
    {
        // Eight courses of six tiles at 4 min each: a course takes 24 min. Two hours are five courses and no more.
        var batches = Batches(8, 6, 4, 1, 120, 100);
        Assert.Equal([5, 3], batches.Select(batch => batch.Courses.Count));
        Assert.Equal([30.0, 18.0], batches.Select(batch => batch.Litres));
        Assert.Equal(new DateTime(2027, 3, 8, 10, 0, 0), batches[0].Ends);
        Assert.All(batches, batch => Assert.All(batch.Courses, course => Assert.True(course.IsWhole)));
    }

    [Fact]
    public void A_mix_is_never_more_than_a_pack() => Assert.All(Batches(8, 6, 4, 1, 120, 14), batch => Assert.True(batch.Packs <= 1));

    [Fact]
    public void A_course_longer_than_the_pot_life_takes_more_than_one_mix()
    {
        var batches = Batches(1, 30, 4, 1, 40, 100);
        Assert.Equal([(1, 10), (11, 20), (21, 30)], batches.Select(batch => (batch.Courses[0].First, batch.Courses[0].Last)));
    }

    [Fact]
    public void Every_piece_is_in_one_mix_and_no_mix_outlives_its_pot_life_or_its_day() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[1, 9], Gen.Int[5, 90], Gen.Int[20, 300]).Each(
            (courses, pieces, tenths, life) =>
            {
                var batches = Batches(courses, pieces, tenths / 10.0, 0.5, life, 12);
                Assert.Equal(courses * pieces, batches.Sum(batch => batch.Pieces));
                Assert.Equal(courses * pieces, batches.SelectMany(batch => batch.Courses).Sum(course => course.Last - course.First + 1));
                Assert.All(batches, batch => Assert.True((batch.Ends - batch.Begins).TotalMinutes <= life && batch.Begins.Date == batch.Ends.Date && batch.Packs <= 1 + 1e-9, batch.ToString()));
            },
            500);

    private static Sequence<Batch> Batches(int courses, int pieces, double minutes, double litres, int life, double pack)
    {
        var works = Enumerable.Range(0, courses * pieces).Select(piece => new PieceWork((piece / pieces) + 1, minutes, litres)).ToList();
        using var clock = new WorkClock(Hours);
        return Batching.Of(new(works, life, null, pack), clock, 0, Clocks.None);
    }
}
