using CsCheck;
using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Tests.Planning;
using Gaugerod.Engine.Tolerances;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Tolerances;

/// <summary>Placings by what is left of the smallest cut with everything off at once.</summary>
public sealed class AtWorstTests
{
    private static readonly JointRange Joints = new(Mm(3), Mm(3), Mm(3));
    private static readonly Limits AtWorst = new(null, Mm(10), HalfTile: false) { AtWorst = true };

    [Fact]
    public void More_is_kept_at_the_ceiling_eleven_courses_off_than_at_the_floor_beside_the_line()
    {
        // Joints off by up to 2 mm each and nothing else: at the floor 2 at the worst, or 4; at the ceiling 11 to 13 joints.
        var errors = new SettingErrors(default, default, Mm(2));
        var job = OneWall.Job(Mm(2000), Mm(2400), Mm(3), Mm(200), Joints, Tape.Millimetres, limits: AtWorst) with { Errors = errors };
        job = job with { Products = [job.Products[0] with { Variation = Length.Zero }] };
        var (worst, plain) = (OneWall.Plan(job), OneWall.Plan(job with { Runs = [job.Runs[0] with { Limits = AtWorst with { AtWorst = false } }] }));
        var (foot, head) = (Smallest(worst, "foot"), Smallest(worst, "head"));
        // As planned both are alike. At worst the ceiling keeps the more by what it loses more.
        Assert.Equal(Smallest(plain, "foot"), Smallest(plain, "head"));
        Assert.InRange((double)(head - foot).Millimetres, 18, 26);
        Assert.True(Left(worst) > Left(plain));
        Assert.Equal(foot + head, Smallest(plain, "foot") + Smallest(plain, "head"));
    }

    [Fact]
    public void What_the_plan_says_may_be_lost_at_an_edge_is_what_was_taken_off_or_up_to_two_tiles_less_on_300_walls() =>
        Gen.Select(Gen.Long[700, 4000], Gen.Long[700, 3000], Gen.Long[40, 400], Gen.Long[40, 400], Gen.Bool, Gen.Bool).Each(
            drawn =>
            {
                var (width, height, across, up, upright, running) = drawn;
                var lay = upright ? Lay.Upright : Lay.Level;
                BondRequest bond = running ? new BondRequest.Running(lay, 1, 3, Stepping.OneWay) : new BondRequest.Grid(lay);
                var job = OneWall.Job(Mm(width), Mm(height), Mm(3), Mm(across), Joints, Tape.Millimetres, limits: AtWorst, bond: bond, depth: Mm(up));
                var plan = OneWall.Plan(job);
                var score = plan.Best.Score;
                if (score.Cuts == 0) return;
                // The least of the plan's own ranges is no worse than what was compared, and better by no more than two tiles and joints. Wider than a tile's shorter side no cut counts.
                var left = Math.Min(plan.Ranges.Min(range => (range.Smallest - range.AtWorst).Steps), Mm(Math.Min(across, up)).Steps);
                var errors = SettingErrors.Usual(LengthUnit.Millimetre);
                var stack = new ErrorStack(errors, errors.Reading, SettingErrors.Variation(job.Products[0]));
                var one = (stack.AtWorst(20, 21) - stack.AtWorst(19, 20)).Steps;
                Assert.InRange(left - score.AtWorst!.Value.Steps, 0, (2 * one) + 2);
            },
            iter: 300);

    [Fact]
    public void Of_a_pattern_smallest_cuts_are_compared_as_planned_and_that_is_said()
    {
        var job = OneWall.Job(Mm(1200), Mm(1200), Mm(3), Mm(100), Joints, Tape.Millimetres, limits: AtWorst, bond: new BondRequest.Herringbone(1), depth: Mm(50));
        Assert.Contains(Planner.Plan(job).Findings, finding => finding is { Rule: "at-worst", Where: "wall" });
    }

    private static Length Smallest(RunPlan plan, string edge) => plan.Ranges.First(range => range.Edge == edge).Smallest;

    private static long Left(RunPlan plan) => plan.Ranges.Where(range => range.Edge is "foot" or "head").Min(range => (range.Smallest - range.AtWorst).Steps);
}
