using CsCheck;
using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;
using MathNet.Numerics.LinearRegression;
using NetTopologySuite.Geometries;
using NetTopologySuite.Triangulate;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Bases;

/// <summary>How flat a face is, against brute force, another solver and another triangulation.</summary>
public sealed class FlatnessTests
{
    private static readonly Face s_floor = Given("floor", [(0, 0), (4000, 0), (4000, 4000), (0, 4000)], Stop("south"), Stop("east"), Stop("north"), Stop("west"));

    [Fact]
    public void The_widest_gap_is_the_widest_of_all_places_a_straightedge_can_rest() =>
        Gen.Select(Gen.Double[-8, 8].Array[3, 20], Gen.Double[20, 400].Array[20], Gen.Double[100, 3000]).Each(
            (heights, steps, length) =>
            {
                var along = heights.Select((_, i) => steps.Take(i).Sum()).ToArray();
                var profile = new Profile([.. along.Select(at => new Place(at, 0))], along, heights);
                double? worst = null;
                for (var i = 0; i < heights.Length; i++)
                {
                    for (var j = i + 2; j < heights.Length && along[j] - along[i] <= length + 0.5; j++)
                    {
                        worst ??= 0;
                        var under = Enumerable.Range(i + 1, j - i - 1).Select(k => heights[i] + ((heights[j] - heights[i]) * (along[k] - along[i]) / (along[j] - along[i])) - heights[k]).ToList();
                        // It rests on two places when nothing between stands through it.
                        if (under.Min() >= 0) worst = Math.Max(worst.Value, under.Max());
                    }
                }

                var found = Straightedge.Worst(profile, length);
                Assert.Equal(worst is null, found is null);
                if (worst is { } by) Assert.Equal(by, found!.Value.By, 1e-9);
            },
            iter: 3000);

    [Fact]
    public void The_plane_fits_best_as_another_solver_has_it_and_the_filler_is_what_another_triangulation_holds() =>
        Gen.Select(Gen.Long[0, 4000], Gen.Long[0, 4000], Gen.Long[-9, 9]).Array[6, 40].Each(
            drawn =>
            {
                var points = drawn.DistinctBy(p => (p.Item1, p.Item2)).ToList();
                var flat = Make(new() { Points = points.Select(p => new FlatReading(At(p.Item1, p.Item2), Mm(p.Item3 + (p.Item1 / 200)))).ToSequence() });
                if (flat.Spots.Count == 0) return;
                var solved = MultipleRegression.QR(points.Select(p => new double[] { p.Item1, p.Item2 }).ToArray(), points.Select(p => (double)(p.Item3 + (p.Item1 / 200))).ToArray(), intercept: true);
                Assert.Equal(solved[1], flat.Slope.Right, 1e-9);
                Assert.Equal(solved[2], flat.Slope.Up, 1e-9);
                var off = points.ConvertAll(p => p.Item3 + (p.Item1 / 200) - solved[0] - (solved[1] * p.Item1) - (solved[2] * p.Item2));
                for (var i = 0; i < off.Count; i++) Assert.Equal(off[i], (double)flat.Spots[i].Off.Millimetres, 0.0051);
                var builder = new DelaunayTriangulationBuilder();
                builder.SetSites(new MultiPoint([.. points.Select(p => new NetTopologySuite.Geometries.Point(p.Item1, p.Item2))]));
                var (sum, level) = (0.0, off.Max());
                foreach (var triangle in builder.GetTriangles(new GeometryFactory()).Geometries)
                {
                    sum += triangle.Area * triangle.Coordinates.Take(3).Average(c => level - off[points.FindIndex(p => p.Item1 == (long)c.X && p.Item2 == (long)c.Y)]);
                }

                // Four places on one round may be parted either way: then the surfaces differ a little.
                Assert.Equal(sum, flat.ToHighs!.Volume, 0.01 * sum);
            },
            iter: 300);

    [Fact]
    public void What_brings_a_face_to_its_limit_is_what_lies_deeper_under_its_highest_place_than_that() =>
        Gen.Long[-9, 9].Array[25].Each(
            heights =>
            {
                var flat = Make(new() { Grid = new(At(100, 200), Mm(600), Mm(500), Enumerable.Range(0, 5).Select(row => heights.Skip(5 * row).Take(5).Select(Mm).ToSequence()).ToSequence()) });
                var off = flat.Spots.Select(spot => (double)spot.Off.Millimetres).ToArray();
                var (level, sum) = (off.Max() - 6, 0.0);
                const int Fine = 60;
                for (var cell = 0; cell < 16; cell++)
                {
                    var (row, column) = (cell / 4, cell % 4);
                    double[] z = [off[(5 * row) + column], off[(5 * row) + column + 1], off[(5 * row) + column + 6], off[(5 * row) + column + 5]];
                    for (var k = 0; k < Fine * Fine; k++)
                    {
                        // From the middle out: in the quarter of the cell towards one side, so far to it.
                        var (x, y) = (((k % Fine) + 0.5) / Fine, ((k / Fine) + 0.5) / Fine);
                        sum += Math.Max(0, level - At4(z, x, y)) * 300_000 / (Fine * Fine);
                    }
                }

                Assert.Equal(sum, flat.ToLimit!.Volume, (0.002 * sum) + 200);
                Assert.Equal(2400.0 * 2000, flat.ToLimit.Area, 1e-3);
                Assert.Equal(Math.Max(0, off.Max() - off.Min() - 6), (double)flat.ToLimit.Grind.Millimetres, 0.011);
            },
            iter: 100);

    [Fact]
    public void Of_two_readings_at_one_place_the_lower_shows_the_hollow_and_the_higher_the_hump()
    {
        var flat = Make(new() { Points = [new(At(0, 0), Mm(0)), new(At(500, 0), Mm(4)), new(At(500, 0), Mm(-3)), new(At(1000, 0), Mm(0)), new(At(0, 900), Mm(0))] });
        Assert.Equal((Mm(3), Mm(4)), (flat.Gaps[0].Hollow, flat.Gaps[0].Hump));
    }

    [Fact]
    public void A_floor_that_slopes_is_flat_and_one_with_a_dip_is_as_deep_as_the_dip()
    {
        // 1 in 100 to the right; a dip of 4 at one crossing, 600 from its neighbours.
        Sequence<Sequence<Length>> Rows(long dip) => Enumerable.Range(0, 5).Select(row => Enumerable.Range(0, 6).Select(column => Mm((6 * column) - (row == 2 && column == 3 ? dip : 0))).ToSequence()).ToSequence();
        var (sound, dipped) = (Make(new() { Grid = new(At(0, 0), Mm(600), Mm(600), Rows(0)) }), Make(new() { Grid = new(At(0, 0), Mm(600), Mm(600), Rows(4)) }));
        Assert.All(sound.Gaps, gap => Assert.Equal((Length.Zero, Length.Zero), (gap.Hollow, gap.Hump)));
        Assert.Equal(0.01, sound.Slope.Right, 1e-12);
        Assert.Equal([3000, 2000], dipped.Gaps.Select(gap => (int)gap.Over.Millimetres));
        Assert.All(dipped.Gaps, gap => Assert.Equal((Mm(4), At(1800, 1200)), (gap.Hollow, gap.At)));
        Assert.Equal([600, 300], dipped.Untold.Select(over => (int)over.Millimetres));
    }

    [Fact]
    public void Gaps_under_one_straightedge_are_judged_by_the_tile_in_hand()
    {
        // 5 mm in 3 m: within 6 for small tile, beyond 3 for large.
        var laid = new FlatReadings { Laid = [new(At(0, 500), At(3000, 500), [Mm(0), Mm(2), Mm(5), Mm(2), Mm(0)])] };
        Assert.True(Make(laid, Mm(300)).Gaps[0].IsWithin);
        var large = Make(laid, Mm(600));
        Assert.False(large.Gaps[0].IsWithin);
        Assert.Empty(large.Spots);
        Assert.Contains(FlatnessRules.Findings(large, Tape.Millimetres), finding => finding.Level == FindingLevel.Warn && finding.Value == "5 mm" && finding.Limit == "at most 3 mm over 3000 mm");
    }

    [Theory]
    [InlineData(149, 4, 12)]
    [InlineData(150, 8, 24)]
    public void Tile_from_fifteen_inches_on_asks_for_half_as_much_out_of_flat(int tenths, int part, int over)
    {
        // ANSI A108.01 and A108.02 as the trade press gives them.
        var limits = GapLimits.Of(In(0, tenths, 10), true, Tape.Sixteenths);
        Assert.Equal([In(0, 1, part), In(0, 1, 16)], limits.Select(limit => limit.Most));
        Assert.Equal([In(120), In(over)], limits.Select(limit => limit.Over));
    }

    [Fact]
    public void A_floor_in_millimetres_is_held_to_six_in_two_metres_as_DIN_18202_has_it_for_finished_floors() =>
        Assert.Equal((Mm(2000), Mm(6)), (GapLimits.Of(Mm(300), true, Tape.Millimetres)[1].Over, GapLimits.Of(Mm(300), true, Tape.Millimetres)[1].Most));

    // A cell is four triangles about its middle, which stands at the mean of its corners.
    private static double At4(double[] z, double x, double y)
    {
        var middle = z.Average();
        var (dx, dy) = (x - 0.5, y - 0.5);
        var (a, b, along, out_) = Math.Abs(dx) > Math.Abs(dy)
            ? dx > 0 ? (z[1], z[2], dy, dx) : (z[0], z[3], dy, -dx)
            : dy > 0 ? (z[3], z[2], dx, dy) : (z[0], z[1], dx, -dy);
        // At the side itself, straight from corner to corner; inwards straight to the middle.
        var part = out_ / 0.5;
        return part == 0 ? middle : middle + (part * (((a + b) / 2) + ((b - a) * along / (2 * out_)) - middle));
    }

    private static FlatFace Make(FlatReadings read, Length? tile = null)
    {
        var remarks = new Remarks(Tape.Millimetres);
        var flat = FlatMaker.Make(FaceDrawing.Draw(new(0, s_floor), remarks)!, read with { IsFloor = true }, GapLimits.Of(tile ?? Mm(300), true, Tape.Millimetres), remarks);
        Assert.Empty(remarks.Faults);
        return flat!;
    }
}
