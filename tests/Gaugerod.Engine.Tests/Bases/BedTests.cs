using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Bases.Beds;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Bases;

/// <summary>
/// Beds against figures worked by hand: an edge level all round over a drain makes a pyramid upside down, so the mean thickness is that at the
/// drain and two thirds of the rise; beside a channel, one half. Yields of bags from makers' pages, weight from an answer in the trade press.
/// </summary>
public sealed class BedTests
{
    [Theory]
    // Width, depth, thickness at the drain; mean thickness in inches, cubic feet, pounds, bags of 60 lb at 0.50 and at 0.45 ft3.
    [InlineData(36, 60, 1.5, 1.986, 2.482, 357, 5, 6)]
    [InlineData(36, 36, 1.5, 1.854, 1.390, 200, 3, 4)]
    [InlineData(36, 36, 1.25, 1.604, 1.203, 173, 3, 3)]
    [InlineData(48, 48, 1.5, 1.971, 2.629, 379, 6, 6)]
    [InlineData(36, 60, 0, 0.486, 0.607, 87, 2, 2)]
    public void A_shower_floor_with_its_drain_in_the_middle_takes_what_is_reckoned_by_hand(double width, double depth, double least, double mean, double feet, double pounds, int bags, int more)
    {
        var request = new BedRequest(Length.FromSteps((long)(least * Length.StepsPerInch)));
        var bed = Make(Shower(width, depth, width / 2, depth / 2, request));
        Assert.Equal(feet, bed.Volume / CubicFoot, 0.0006);
        Assert.Equal(mean, bed.Volume / bed.Area / 25.4, 0.0006);
        Assert.Equal(pounds, bed.Kilograms / 0.45359237, 0.6);
        Assert.Equal((bags, more), (Bags(0.50), Bags(0.45)));

        int Bags(double yield) => (bed with { Request = request with { Bag = new(null, yield * CubicFoot / 1e6) } }).Bags!.Value;
    }

    [Fact]
    public void A_channel_along_a_wall_has_one_plane_to_it_and_half_of_the_rise_for_a_mean()
    {
        var request = new BedRequest(In(1, 1, 2)) { Perimeter = Perimeter.Constant, Drains = [new(null, new(Inch(0, 0), Inch(60, 0)))] };
        var bed = Make(Shower(60, 36, 30, 18, request));
        Assert.Equal(2.344, bed.Volume / CubicFoot, 0.0006);
        Assert.Equal(1.875, bed.Volume / bed.Area / 25.4, 1e-9);
        Assert.Equal(338, bed.Kilograms / 0.45359237, 0.6);
        Assert.Equal(In(2, 1, 4), bed.Greatest);
        // A level edge says the same: every way runs from the wall behind straight into it.
        Assert.Equal(bed.Volume, Make(Shower(60, 36, 30, 18, request with { Perimeter = Perimeter.Level })).Volume, 1);
    }

    [Fact]
    public void The_corner_48_inches_away_stands_an_inch_over_the_drain()
    {
        // A corner 28.8 to the side and 38.4 on: three-four-five.
        var bed = Make(Shower(57.6, 76.8, 28.8, 38.4, new(In(1))));
        Assert.Equal(25.4, (double)bed.Rise.Millimetres, 0.006);
        Assert.Equal(1 / 48.0, bed.LeastFall, 1e-12);
        // The nearest wall is 28.8 away: an inch in 28.8.
        Assert.Equal((1 / 28.8, "east"), (Math.Round(bed.GreatestFall, 9) is var fall && Math.Abs(fall - (1 / 28.8)) < 1e-6 ? 1 / 28.8 : fall, bed.SteepestFrom));
    }

    [Fact]
    public void An_inch_and_a_quarter_of_bed_weighs_15_pounds_on_a_square_foot() => Assert.Equal(15, Bed.UsualDensity / 0.45359237 * 0.3048 * 0.3048 * (1.25 * 0.0254), 1e-9);

    [Theory]
    [InlineData(1, 9, FindingLevel.Warn)]
    [InlineData(2, 0, FindingLevel.Note)]
    [InlineData(9, 0, FindingLevel.Note)]
    [InlineData(9, 1, FindingLevel.Warn)]
    public void A_curb_stands_from_two_to_nine_inches_over_the_drain(int inches, int tenths, FindingLevel level)
    {
        var bed = Make(Shower(36, 60, 18, 30, new(In(1, 1, 2)) { Curb = In(inches, tenths, 10) }));
        Assert.Equal(level, Assert.Single(BedRules.Findings(bed, Tape.Sixteenths), finding => finding.Text.Contains("curb", StringComparison.Ordinal)).Level);
    }

    [Fact]
    public void A_drain_close_to_a_wall_makes_a_level_edge_too_steep_there_and_a_constant_fall_does_not()
    {
        var near = Make(Shower(60, 36, 8, 18, new(In(1, 1, 2))));
        // 55.03 to the far corners at 1 in 48: 1.146 over 8, 1.72 in a foot.
        Assert.Equal(1.72, near.GreatestFall * 12, 0.005);
        Assert.Equal("west", near.SteepestFrom);
        var steep = Assert.Single(BedRules.Findings(near, Tape.Sixteenths), finding => finding.Level == FindingLevel.Warn && finding.Text.StartsWith("Its", StringComparison.Ordinal));
        // 1 1/2 in and 1.146: thicker than 2 in as well.
        Assert.Single(BedRules.Findings(near, Tape.Sixteenths), finding => finding.Level == FindingLevel.Warn && finding.Text.StartsWith("How thick it is at the most", StringComparison.Ordinal));
        Assert.Equal("at most 1/2 in per foot, 4.17 % (printed as 4 %)", steep.Limit);
        Assert.Contains("from west", steep.Text, StringComparison.Ordinal);
        var constant = Make(Shower(60, 36, 8, 18, new(In(1, 1, 2)) { Perimeter = Perimeter.Constant }));
        Assert.DoesNotContain(BedRules.Findings(constant, Tape.Sixteenths), finding => finding.Level == FindingLevel.Warn && finding.Text.StartsWith("Its", StringComparison.Ordinal));
        Assert.All(constant.Stakes.Where(stake => stake.On == "west"), stake => Assert.True(stake.Over < near.Rise));
    }

    [Fact]
    public void Stakes_along_walls_stand_each_foot_all_at_one_height_where_the_edge_is_level()
    {
        var bed = Make(Shower(36, 60, 18, 30, new(In(1, 1, 2))));
        Assert.Equal([0, 12, 24, 36], bed.Stakes.Where(stake => stake.On == "south").Select(stake => (int)(stake.Along.Millimetres / 25.4m)));
        Assert.All(bed.Stakes.Where(stake => stake.On is "south" or "east" or "north" or "west"), stake => Assert.Equal(bed.Rise, stake.Over));
        var fold = bed.Stakes.Where(stake => stake.On == "to south and east").ToList();
        Assert.Equal([0.25, 0.5], fold.Select(stake => Math.Round((double)stake.Over.Millimetres / 25.4, 3)));
        Assert.Equal(Length.Zero, Assert.Single(bed.Stakes, stake => stake.On == "drain").Over);
    }

    [Fact]
    public void Round_the_corner_of_an_L_the_bed_goes_on_rising_along_the_floor()
    {
        // The far leg is 500 wide; from the drain at (900, 250) to the inside corner (500, 500) and on to (500, 1500) along the wall.
        var face = Floor([(0, 0), (1200, 0), (1200, 500), (500, 500), (500, 1500), (0, 1500)], (900, 250), new(Mm(30)) { Fall = new(1, 50), Perimeter = Perimeter.Constant });
        var bed = Make(face, Tape.Millimetres);
        // To the far corner (0, 1500): round the inside corner, 471.70 and 1118.03.
        Assert.Equal(471.699 + 1118.034, (double)bed.Farthest.Millimetres, 0.01);
        var corner = bed.Stakes.First(stake => stake.Place == At(500, 1500));
        Assert.Equal((471.699 + 1000) / 50, (double)corner.Over.Millimetres, 0.01);
    }

    [Fact]
    public void A_level_edge_behind_a_corner_is_refused_and_a_constant_fall_is_offered()
    {
        var fault = Refused(Floor([(0, 0), (1200, 0), (1200, 500), (500, 500), (500, 1500), (0, 1500)], (900, 250), new(Mm(30))));
        Assert.Equal("faces[0].falls.perimeter", fault.Path);
        Assert.Contains("at [500 mm, 1500 mm]", fault.Found, StringComparison.Ordinal);
        Assert.Equal("\"constant\"", Assert.Single(fault.Mends).Value);
    }

    [Fact]
    public void A_drain_off_the_floor_a_curb_under_the_bed_and_a_threshold_that_is_nowhere_are_named_with_what_fits()
    {
        (long, long)[] square = [(0, 0), (1000, 0), (1000, 1000), (0, 1000)];
        var off = Refused(Floor(square, (1040, 500), new(Mm(30))));
        Assert.Contains("40 mm off the floor \"floor\", beyond its edge \"side 1\"", off.Found, StringComparison.Ordinal);
        var curb = Refused(Floor(square, (500, 500), new(Mm(30)) { Curb = Mm(14) }));
        // 707.1 at 1 in 48 stand 14.73 over the drain.
        Assert.Contains("14.73 mm", curb.Expected, StringComparison.Ordinal);
        Assert.Equal("\"15 mm\"", Assert.Single(curb.Mends).Value);
        Assert.Equal("faces[0].falls.threshold", Refused(Floor(square, (500, 500), new(Mm(30)) { Threshold = Mm(20) })).Path);
        var channel = Refused(Floor(square, (500, 500), new(Mm(30)) { Drains = [new(null, new(At(100, 100), At(1200, 100)))] }));
        Assert.Contains("[1000 mm, 100 mm] in place of [1200 mm, 100 mm]", channel.Nearest, StringComparison.Ordinal);
        Assert.Contains("where drain 1 is", Refused(Floor(square, (500, 500), new(Mm(30)) { Drains = [new("drain", null), new("drain", null)] })).Found, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_drains_share_a_floor_at_the_ridge_half_way_between_them()
    {
        (long, long)[] room = [(0, 0), (2000, 0), (2000, 1000), (0, 1000)];
        BedRequest Two(Perimeter edge) => new(Mm(20)) { Perimeter = edge, Drains = [new(null, new(At(500, 499), At(500, 501))), new(null, new(At(1500, 499), At(1500, 501)))] };
        var (constant, level) = (Make(Floor(room, (1000, 500), Two(Perimeter.Constant)), Tape.Millimetres), Make(Floor(room, (1000, 500), Two(Perimeter.Level)), Tape.Millimetres));
        // Each half is a square about its drain, but for the 2 mm that make each drain a channel.
        var mean = (Math.Sqrt(2) + Math.Log(1 + Math.Sqrt(2))) / 6 * 1000 / 48;
        Assert.Equal(20 + mean, constant.Volume / constant.Area, 0.02);
        Assert.Equal(20 + (2 * Math.Sqrt(0.5) * 1000 / 48 / 3), level.Volume / level.Area, 0.03);
    }

    [Fact]
    public void A_level_edge_that_a_channel_runs_up_to_is_refused_and_a_constant_fall_is_offered()
    {
        var fault = Refused(Floor([(0, 0), (1200, 0), (1200, 800), (0, 800)], (300, 400), new(Mm(30)) { Perimeter = Perimeter.Level, Drains = [new("drain", null), new(null, new(At(1200, 800), At(900, 500)))] }));
        Assert.Equal("faces[0].falls.perimeter", fault.Path);
        Assert.Equal("\"constant\"", Assert.Single(fault.Mends).Value);
    }

    [Theory]
    [InlineData(1300, 400)]
    [InlineData(1200, 400)]
    [InlineData(1250, 850)]
    public void A_drain_beyond_its_floor_is_offered_a_place_that_the_floor_has(long x, long y)
    {
        var fault = Refused(Floor([(0, 0), (1200, 0), (1200, 800), (0, 800)], (x, y), new(Mm(30)) { Perimeter = Perimeter.Constant }));
        var near = fault.Nearest![1..fault.Nearest!.IndexOf(']', StringComparison.Ordinal)].Replace(" mm", "", StringComparison.Ordinal).Split(", ").Select(long.Parse).ToList();
        Make(Floor([(0, 0), (1200, 0), (1200, 800), (0, 800)], (near[0], near[1]), new(Mm(30)) { Perimeter = Perimeter.Constant }), Tape.Millimetres);
    }

    [Fact]
    public void Channels_that_meet_are_one_drain_too_many_wherever_they_meet()
    {
        foreach (var (from, to) in (IReadOnlyList<(Point, Point)>)[(At(600, 100), At(600, 700)), (At(500, 400), At(700, 100)), (At(900, 100), At(900, 700))])
        {
            var fault = Refused(Floor([(0, 0), (1200, 0), (1200, 800), (0, 800)], (50, 50), new(Mm(30)) { Perimeter = Perimeter.Constant, Drains = [new(null, new(At(300, 400), At(900, 400))), new(null, new(from, to))] }));
            Assert.Equal(("faces[0].falls.drains[1]", "a drain where drain 1 is"), (fault.Path, fault.Found));
        }
    }

    [Fact]
    public void Round_the_end_of_a_channel_along_a_wall_the_floor_behind_that_wall_falls_to_it()
    {
        // The channel lies along the upper side of a wedge that stands into the floor from the left; what is under the wedge sees its end only.
        var face = Floor([(0, 0), (1200, 0), (1200, 800), (0, 800), (0, 450), (400, 450), (0, 350)], (1100, 100), new(Mm(30)) { Fall = new(1, 50), Perimeter = Perimeter.Constant, Drains = [new(null, new(At(0, 450), At(400, 450)))] });
        var bed = Make(face, Tape.Millimetres);
        // Above the channel a strip 350 high; all else runs straight to its end at (400, 450). Added up over squares of 2 mm.
        var ways = 0.0;
        for (var x = 1; x < 1200; x += 2)
        {
            for (var y = 1; y < 800; y += 2)
            {
                if (y > 450 && x < 400) ways += 4 * (y - 450);
                else if (x >= 400 || y < 350 + (x / 4.0)) ways += 4 * Math.Sqrt(((x - 400.0) * (x - 400.0)) + ((y - 450.0) * (y - 450.0)));
            }
        }

        Assert.Equal((ways / 50) + (30 * ((1200.0 * 800) - 20_000)), bed.Volume, bed.Volume * 0.0005);
    }
}
