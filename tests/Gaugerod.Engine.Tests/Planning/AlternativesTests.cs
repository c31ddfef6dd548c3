using System.Globalization;
using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Planning;

public sealed class AlternativesTests
{
    private static readonly Gen<Job> Jobs =
        from width in Gen.Long[900, 2600]
        from height in Gen.Long[700, 2000]
        from tile in Gen.Long[150, 600]
        from depth in Gen.Long[150, 600]
        from part in Gen.Int[0, 3]
        from lay in Gen.Bool
        select OneWall.Job(
            Mm(width), Mm(height), Mm(4), Mm(tile), JointRange.Only(Mm(3)), Tape.Millimetres, depth: Mm(depth),
            bond: part == 0 ? new BondRequest.Grid(lay ? Lay.Level : Lay.Upright) : new BondRequest.Running(lay ? Lay.Level : Lay.Upright, 1, part + 1, (Stepping)(part % 2)));

    /// <summary>A share of a repeat nearer than which two placings are one: common practice, no source.</summary>
    private const double Apart = 0.08;

    [Fact]
    public void At_least_four_other_placings_differ_from_the_best_and_from_each_other_and_none_is_better() => Jobs.Each(
        job =>
        {
            var plan = OneWall.Plan(job);
            var (order, bond) = (new ScoreOrder(job.Runs[0].Order), BondMaker.Straight(job.Runs[0].Bond, job.Products[0], plan.Placing().Joint));
            var all = plan.Alternatives.Prepend(plan.Best).ToList();

            Assert.True(plan.Alternatives.Count >= 4, plan.Alternatives.Count.ToString(CultureInfo.InvariantCulture));
            for (var i = 0; i < all.Count; i++)
            {
                Assert.NotEmpty(all[i].Why);
                // Whoever reads that a place gives a tile and sees no cost takes it for the better one, if only a hair parts them.
                if (i > 0 && order.Compare(all[0].Score with { Tiles = 0 }, all[i].Score with { Tiles = 0 }) < 0) Assert.Matches("costs|does without|Costs|Does without", all[i].Why);
                for (var j = i + 1; j < all.Count; j++)
                {
                    Assert.True(Distance(Assert.Single(all[i].Faces), Assert.Single(all[j].Faces), bond) >= Apart, $"{i} and {j}");
                    // Between alternatives tiles are not a reason to change the order.
                    Assert.True(order.Compare(all[i].Score with { Tiles = 0 }, all[j].Score with { Tiles = 0 }) <= 0, $"{all[i].Score}\n{all[j].Score}");
                }
            }
        },
        iter: 60);

    /// <summary>A page with one thread draws between the steps, so there must be many: one after each start, face and place at the least.</summary>
    [Fact]
    public void The_planning_gives_way_many_times_and_only_its_last_step_carries_the_plan()
    {
        var steps = Planner.Steps(OneWall.Job(Mm(2400), Mm(1200), Mm(3), Mm(300), JointRange.Only(Mm(3)), Tape.Millimetres)).ToList();
        Assert.True(steps.Count > 40, steps.Count.ToString(CultureInfo.InvariantCulture));
        Assert.All(steps.SkipLast(1), step => Assert.Null(step.Plan));
        Assert.NotNull(steps[^1].Plan);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    public void The_same_job_gives_the_same_plan_under_any_culture(string culture) => Jobs.Each(
        job =>
        {
            var plan = Planner.Plan(job);
            var before = CultureInfo.CurrentCulture;
            try
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                Assert.Equal(",", CultureInfo.CurrentCulture.NumberFormat.NumberDecimalSeparator);
                Assert.Equal(plan, Planner.Plan(job));
            }
            finally
            {
                CultureInfo.CurrentCulture = before;
            }
        },
        iter: 15);

    /// <summary>How far the nearest likes of two placings are apart, as a share of a tile and its joint, the way they differ more.</summary>
    private static double Distance(Placing one, Placing other, Bond bond)
    {
        var (x, y) = ((one.X - other.X).Steps, (one.Y - other.Y).Steps);
        if (bond.Lay == Lay.Upright) (x, y) = (y, x);
        var (first, second) = (bond.Lattice.First, bond.Lattice.Second);
        var rise = second.Across.Steps / bond.Motif.Count;
        var least = double.MaxValue;
        for (var k = -8; k <= 8; k++)
        {
            var (along, across) = (x - (k * second.Along.Steps), y - (k * second.Across.Steps));
            var off = Math.Abs(along - (Math.Round(along / (double)first.Along.Steps) * first.Along.Steps)) / first.Along.Steps;
            least = Math.Min(least, Math.Max(off, Math.Abs(across) / (double)rise));
        }

        return least;
    }
}
