using CsCheck;
using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using Google.OrTools.LinearSolver;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Bases;

/// <summary>Filler that leaves no straightedge out: judged anew as filled, against the least that a linear program finds (GLOP of Google OR-Tools), and highs and lows as drawn.</summary>
public sealed class FillerTests
{
    private static readonly Face s_floor = Given("floor", [(0, 0), (4000, 0), (4000, 4000), (0, 4000)], Stop("south"), Stop("east"), Stop("north"), Stop("west"));

    [Fact]
    public void A_floor_filled_as_told_shows_no_straightedge_more_than_is_asked_and_is_near_the_least_that_a_linear_program_finds()
    {
        var (filled, worst, sum, least) = (0, 0.0, 0.0, 0.0);
        Gen.Select(Gen.Long[-5, 5].Array[30], Gen.Bool).Each(
            (heights, isFine) =>
            {
                var step = isFine ? 150 : 300;
                var flat = Make(heights, step);
                if (flat.Gaps.All(gap => gap.IsWithin)) return;
                Assert.NotNull(flat.ToStraightedges);
                Assert.All(flat.Fills, fill => Assert.True(fill >= Length.Zero));
                var after = Make([.. heights.Select((height, i) => Mm(height) + flat.Fills[i])], step);
                Assert.All(after.Gaps, gap => Assert.True(gap.IsWithin, $"{gap.Over} shows {gap.Worst}"));
                var off = flat.Spots.Zip(flat.Fills, (spot, fill) => spot.Off + fill).ToList();
                Assert.True(off.Max() <= flat.Spots.Max(spot => spot.Off) + Length.FromSteps(2), "filled over the highest place");
                var (told, program) = (flat.Fills.Sum(fill => (double)fill.Millimetres), Least(heights, step));
                Assert.True(told >= program - 0.01);
                (filled, sum, least, worst) = (filled + 1, sum + told, least + program, Math.Max(worst, told / program));
            },
            iter: 120);
        Assert.True(filled > 80);
        Assert.True(sum / least < 1.1 && worst < 1.5, FormattableString.Invariant($"{sum / least:0.000} of the least in all, {worst:0.000} at the worst"));
    }

    [Fact]
    public void No_place_of_a_floor_filled_as_told_could_do_with_a_tenth_of_a_millimetre_less_by_itself()
    {
        var lowered = 0;
        Gen.Long[-5, 5].Array[30].Each(
            heights =>
            {
                var flat = Make(heights, 300);
                var filled = heights.Select((height, i) => Mm(height) + (flat.Fills.Count > 0 ? flat.Fills[i] : Length.Zero)).ToArray();
                for (var i = 0; i < flat.Fills.Count; i++)
                {
                    if (flat.Fills[i].Steps < 640) continue;
                    var less = (Length[])filled.Clone();
                    less[i] -= Length.FromSteps(320);
                    Assert.Contains(Make(less, 300).Gaps, gap => !gap.IsWithin);
                    Interlocked.Increment(ref lowered);
                }
            },
            iter: 20);
        Assert.True(lowered > 50, $"{lowered}");
    }

    [Fact]
    public void A_single_low_place_is_filled_to_what_the_shorter_straightedge_allows()
    {
        // 9 deep, its neighbours 300 off: of 600 mm 1.5 is allowed for large tile, so 7.5 of fill; by hand.
        var heights = new long[30];
        heights[14] = -9;
        var flat = Make(heights, 300);
        Assert.Equal(7.5, (double)flat.Fills[14].Millimetres, 0.01);
        Assert.Equal(7.5, flat.Fills.Sum(fill => (double)fill.Millimetres), 0.01);
        // A pyramid over four cells, each 300 by 300: its middle takes half of each cell's two triangles and a quarter in each cell's middle.
        Assert.InRange(flat.ToStraightedges!.Volume / (300 * 300), 7.49, 7.51);
    }

    [Fact]
    public void A_single_high_place_is_met_by_filling_round_it()
    {
        var heights = new long[30];
        heights[14] = 9;
        var flat = Make(heights, 300);
        Assert.Equal(Length.Zero, flat.Fills[14]);
        Assert.True(flat.Fills.Sum(fill => (double)fill.Millimetres) > 4 * 5);
    }

    [Fact]
    public void A_line_of_one_height_goes_round_a_hollow_and_comes_back_to_where_it_began()
    {
        // One crossing 8 deep among flat ones: half way down the line is a ring about it, and what lies deeper a quarter of the area of what is deep at all.
        var heights = new long[30];
        heights[14] = -8;
        var flat = Make(heights, 300);
        var (rim, bottom) = (flat.Spots.Max(spot => spot.Off), flat.Spots.Min(spot => spot.Off));
        var half = Length.FromSteps((rim.Steps + bottom.Steps) / 2);
        var line = Assert.Single(Relief.Along(flat, half));
        Assert.Equal(line[0], line[^1]);
        var deeper = Relief.Beyond(flat, half).Sum(part => Math.Abs(Area(part)));
        Assert.InRange(deeper / (300.0 * 300.0), 0.2, 1.2);
        Assert.Equal(2 * (6 - 1 + 5 - 1), Relief.Rim(flat).Count);
    }

    private static double Area(Sequence<Point> ring) => Enumerable.Range(0, ring.Count).Sum(i =>
        (((double)ring[i].X.Millimetres * (double)ring[(i + 1) % ring.Count].Y.Millimetres) - ((double)ring[(i + 1) % ring.Count].X.Millimetres * (double)ring[i].Y.Millimetres)) / 2);

    /// <summary>The least that raises 6 by 5 readings so that of any three in a line within reach the middle one is off the other two's line by no more than is asked.</summary>
    private static double Least(long[] heights, int step)
    {
        using var solver = Solver.CreateSolver("GLOP");
        var raise = solver.MakeNumVarArray(30, 0, 100);
        foreach (var (over, most) in new[] { (3000, 3.0), (2000, 6.0), (600, 1.5) })
        {
            foreach (var (right, up) in new[] { (1, 0), (0, 1), (1, 1), (1, -1) })
            {
                var part = step * Math.Sqrt((right * right) + (up * up));
                for (var from = 0; from < 30; from++)
                {
                    for (var to = 2; On(from, to); to++)
                    {
                        if (to * part > over + 0.5) break;
                        for (var at = 1; at < to; at++)
                        {
                            var (i, j, k, share) = (from, Number(from, to), Number(from, at), at / (double)to);
                            var read = ((1 - share) * heights[i]) + (share * heights[j]) - heights[k];
                            var limit = solver.MakeConstraint(-most - read, most - read);
                            limit.SetCoefficient(raise[i], 1 - share);
                            limit.SetCoefficient(raise[j], share);
                            limit.SetCoefficient(raise[k], -1);
                        }
                    }

                    bool On(int at, int steps) => (at % 6) + (right * steps) is >= 0 and < 6 && (at / 6) + (up * steps) is >= 0 and < 5;

                    int Number(int at, int steps) => at + (right * steps) + (6 * up * steps);
                }
            }
        }

        foreach (var one in raise) solver.Objective().SetCoefficient(one, 1);
        solver.Objective().SetMinimization();
        Assert.Equal(Solver.ResultStatus.OPTIMAL, solver.Solve());
        return solver.Objective().Value();
    }

    private static FlatFace Make(long[] heights, int step) => Make([.. heights.Select(height => Mm(height))], step);

    private static FlatFace Make(Length[] heights, int step)
    {
        var remarks = new Remarks(Tape.Millimetres);
        var grid = new FlatGrid(At(100, 200), Mm(step), Mm(step), Enumerable.Range(0, 5).Select(row => heights.Skip(6 * row).Take(6).ToSequence()).ToSequence());
        var flat = FlatMaker.Make(FaceDrawing.Draw(new(0, s_floor), remarks)!, new() { Grid = grid, IsFloor = true }, GapLimits.Of(Mm(600), true, Tape.Millimetres), remarks);
        Assert.Empty(remarks.Faults);
        return flat!;
    }
}
