using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Rules;

/// <summary>The published limits, each against a figure printed outside this project.</summary>
public class LimitsTests
{
    // Source: trade press article on the least grout joint, ANSI A108.02-2017, 4.3.8: a variation of 1/16 in asks for 3/16 in.
    [Fact]
    public void A_joint_is_three_times_the_variation() => Assert.Equal(In("3/16"), JointLimits.LeastByVariation(In("1/16")));

    // Source: the same article: never under 1/16 in.
    [Theory]
    [InlineData("0")]
    [InlineData("1/64")]
    public void No_joint_is_under_a_sixteenth(string variation) => Assert.Equal(In("1/16"), JointLimits.LeastByVariation(In(variation)));

    // Source: a tile consultants' answer page, ANSI A108.02, 4.3.8.1: rectified 12 by 24 in, 1/8 in and a warp of 1/32 in make 5/32 in.
    [Fact]
    public void The_warp_of_the_longest_edge_widens_the_joint_of_a_running_bond() =>
        Assert.Equal(In("5/32"), JointLimits.LeastInRunningBond(In("24"), TileClass.Rectified, In("1/32")));

    // Source: trade press article on large tile, ANSI A108.02: calibrated tile with a side of 18 in, at least 3/16 in.
    [Theory]
    [InlineData(TileClass.Calibrated)]
    [InlineData(TileClass.Natural)]
    [InlineData(null)]
    public void Tile_that_is_not_rectified_takes_the_wider_joint(TileClass? sorted) =>
        Assert.Equal(In("3/16"), JointLimits.LeastInRunningBond(In("18"), sorted, Length.Zero));

    // Source: the same rule speaks of sides over 15 in.
    [Fact]
    public void A_side_of_fifteen_inches_sets_no_joint_for_a_running_bond() =>
        Assert.Null(JointLimits.LeastInRunningBond(In("15"), TileClass.Calibrated, In("1/32")));

    // Source: trade press article on offset patterns, ANSI A108.02: 33 % of 24 in is 7.92 in.
    [Fact]
    public void The_greatest_offset_of_a_two_foot_side() => Assert.Equal(In("7.92"), OffsetLimits.Greatest(In("24")));

    // Source: the same article for 33 %; that a true third keeps it and half does not is reckoned from it by hand (8.00 and 12 in).
    [Theory]
    [InlineData("24", 1, 3, true)]
    [InlineData("24", 2, 3, true)]
    [InlineData("24", 1, 4, true)]
    [InlineData("24", 1, 2, false)]
    [InlineData("24", 2, 5, false)]
    [InlineData("24", 3, 5, false)]
    [InlineData("15 1/128", 1, 2, false)]
    [InlineData("15", 1, 2, true)]
    public void A_true_third_keeps_the_limit_and_half_does_not(string side, int numerator, int denominator, bool keeps) =>
        Assert.Equal(keeps, OffsetLimits.Keeps(In(side), numerator, denominator));

    // Source: trade association page on lippage, ANSI A108.02-2013, 4.3.7: warp and 1/32 in under a joint of 1/4 in, 1/16 in from there.
    [Theory]
    [InlineData("1/8", "3/32")]
    [InlineData("1/16", "3/32")]
    [InlineData("15/64", "3/32")]
    [InlineData("1/4", "1/8")]
    [InlineData("1/2", "1/8")]
    public void Lippage_is_the_warp_and_what_the_joint_allows(string joint, string allowed) =>
        Assert.Equal(In(allowed), LippageLimits.Allowed(In(joint), In("1/16")));

    // Source: building reference page on flatness under tile, ANSI A108.01 and A108.02: 1/4 in in 10 ft, 1/8 in from edges of 15 in.
    [Theory]
    [InlineData("14.9", "1/4", "12")]
    [InlineData("15", "1/8", "24")]
    public void Flatness_is_stricter_from_fifteen_inches(string longest, string deviation, string shortOver)
    {
        var flat = FlatnessLimits.Required(In(longest));
        Assert.Equal((In(deviation), In("10'")), (flat.Long, flat.LongOver));
        Assert.Equal((In("1/16"), In(shortOver)), (flat.Short, flat.ShortOver));
    }

    // Source: tile council page on caliber range, ANSI A137.1: rectified 8 in lies from 7.98 to 8.02 in.
    [Fact]
    public void The_window_of_a_rectified_eight_inch_side() =>
        Assert.Equal((In("7.98"), In("8.02")), SizeLimits.RectifiedWindow(In("8")));

    // Source: the same page: 24 in is held to 0.03 in, not to the 0.06 in of 0.25 %.
    [Fact]
    public void The_window_of_a_rectified_two_foot_side_is_capped()
    {
        Assert.Equal(In("0.03"), SizeLimits.RectifiedTolerance(In("24")));
        Assert.Equal(In("0.06"), SizeLimits.RectifiedSpread(In("24")));
        Assert.Equal((In("23.97"), In("24.03")), SizeLimits.RectifiedWindow(In("24")));
    }

    // Source: German building encyclopedia on tile sizes (coordinating size): 597 mm and a joint of 3 mm make 600 mm.
    [Fact]
    public void The_modular_size_is_side_and_joint() =>
        Assert.Equal(Length.FromMillimetres(600), SizeLimits.Modular(Length.FromMillimetres(597), Length.FromMillimetres(3)));

    private static Length In(string text) => Assert.IsType<LengthReading.Understood>(LengthText.Read(text, LengthUnit.Inch)).Value;
}
