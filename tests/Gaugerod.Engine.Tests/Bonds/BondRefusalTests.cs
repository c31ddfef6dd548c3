using System.Globalization;
using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Bonds.Make;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Bonds;

/// <summary>Tiles that do not make the bond asked for are refused; what the refusal calls nearest then makes it.</summary>
public sealed class BondRefusalTests
{
    private static readonly Length Joint = Mm(3);
    private static readonly Length Hair = Length.FromSteps(32);

    [Fact]
    public void Herringbone_asks_for_a_tile_longer_than_those_abreast_are_wide()
    {
        var asked = new BondRequest.Herringbone(3);
        var refusal = Refused(asked, Joint, (Mm(300), Mm(100)));
        Says(refusal, "a tile 300 mm long, 3 of them side by side 306 mm wide", "a tile longer than the tiles side by side are wide", "2 abreast");
        _ = Bond(new BondRequest.Herringbone(2), Joint, (Mm(300), Mm(100)));
        Assert.Equal("a height of 299 mm", Refused(new BondRequest.Herringbone(1), Joint, (Mm(300), Mm(300))).Nearest);
    }

    [Theory]
    [InlineData(300, 100, 306)]
    [InlineData(900, 55, 693)]
    [InlineData(100, 300, 603)]
    public void Basketweave_asks_for_a_tile_as_long_as_several_are_wide(long width, long height, long nearest)
    {
        // 300 by 100 is three tiles without their joints. Of more than twelve side by side no block is made.
        var refusal = Refused(new BondRequest.Basketweave(), Joint, (Mm(width), Mm(height)));
        Assert.Equal($"a tile {width} mm by {height} mm", refusal.Found);
        Assert.Equal($"a width of {nearest} mm", refusal.Nearest);
        _ = Bond(new BondRequest.Basketweave(), Joint, (Mm(nearest), Mm(height)));
    }

    [Fact]
    public void Basketweave_set_tight_is_made_by_a_tile_twice_as_long_as_wide() =>
        Assert.Equal(4, Bond(new BondRequest.Basketweave(), Tight, (Mm(200), Mm(100))).Motif.Count);

    [Fact]
    public void Tiles_touch_only_where_the_joint_may_be_nothing()
    {
        var refusal = Refused(new BondRequest.Basketweave(), Length.FromSteps(320), (Mm(200), Mm(100)));
        Assert.Equal("a width of 200.1 mm", refusal.Nearest);
    }

    [Fact]
    public void A_pinwheel_asks_for_two_squares_the_run_s_own_the_larger()
    {
        var asked = new BondRequest.Pinwheel();
        Says(Refused(asked, Joint, (Mm(200), Mm(190)), (Mm(100), Mm(100))), "\"tile 0\", 200 mm by 190 mm", "a square tile", "190 mm both ways");
        _ = Bond(asked, Joint, (Mm(190), Mm(190)), (Mm(100), Mm(100)));
        Says(
            Refused(asked, Joint, (Mm(100), Mm(100)), (Mm(200), Mm(200))), "squares of 100 mm with squares of 200 mm",
            "a second square smaller than the run's own", "the two products exchanged");
        _ = Bond(asked, Joint, (Mm(200), Mm(200)), (Mm(100), Mm(100)));
        Assert.Equal("a grid, for squares of one size", Refused(asked, Joint, (Mm(100), Mm(100)), (Mm(100), Mm(100))).Nearest);
    }

    [Fact]
    public void A_windmill_asks_for_the_square_that_its_tiles_leave()
    {
        var asked = new BondRequest.Windmill();
        var refusal = Refused(asked, Joint, (Mm(203), Mm(100)), (Mm(103), Mm(103)));
        Says(refusal, "a square of 103 mm", "a square that fills what four tiles leave, 100 mm", "100 mm");
        var side = Lengths(refusal.Nearest)[0];
        _ = Bond(asked, Joint, (Mm(203), Mm(100)), (side, side));
        Says(
            Refused(asked, Joint, (Mm(102), Mm(100)), (Mm(10), Mm(10))), "a tile 102 mm by 100 mm", "a tile longer than it is wide by more than a joint",
            "a width of 113 mm");
        _ = Bond(asked, Joint, (Mm(113), Mm(100)), (Mm(10), Mm(10)));
    }

    [Fact]
    public void A_regular_hexagon_asks_for_its_height()
    {
        var refusal = Refused(new BondRequest.Hexagon(true, null), Joint, (Mm(200), Mm(200)));
        Assert.Equal("a height of 230.94 mm", refusal.Nearest);
        _ = Bond(new BondRequest.Hexagon(true, null), Joint, (Mm(200), Lengths(refusal.Nearest)[0]));
    }

    [Theory]
    [InlineData(200, 300, 150)]
    [InlineData(200, 300, 0)]
    [InlineData(300, 100, 60)]
    public void A_long_hexagon_asks_for_points_within_its_height(long width, long height, long point)
    {
        var refusal = Refused(new BondRequest.Hexagon(false, Mm(point)), Joint, (Mm(width), Mm(height)));
        Assert.Equal($"points that stand out {point} mm", refusal.Found);
        _ = Bond(new BondRequest.Hexagon(false, Lengths(refusal.Nearest)[0]), Joint, (Mm(width), Mm(height)));
    }

    [Fact]
    public void Octagons_ask_for_a_square_that_leaves_something_of_every_side()
    {
        var refusal = Refused(new BondRequest.Octagon(null), Joint, (Mm(200), Mm(200)), (Mm(150), Mm(150)));
        var side = Lengths(refusal.Nearest)[0] - Hair;
        _ = Bond(new BondRequest.Octagon(null), Joint, (Mm(200), Mm(200)), (side, side));
        var corners = Refused(new BondRequest.Octagon(Mm(100)), Joint, (Mm(200), Mm(200)), (Mm(50), Mm(50)));
        Says(corners, "corners that take 100 mm off each side", "corners that take something, and less than half of the octagon's 200 mm", "corners that take 36.6 mm off each side");
    }

    [Fact]
    public void Octagons_with_given_corners_ask_for_the_square_that_fits_them()
    {
        var asked = new BondRequest.Octagon(Mm(40));
        var refusal = Refused(asked, Joint, (Mm(200), Mm(200)), (Mm(40), Mm(40)));
        Assert.StartsWith("a square of ", refusal.Nearest, StringComparison.Ordinal);
        var side = Lengths(refusal.Nearest)[0];
        _ = Bond(asked, Joint, (Mm(200), Mm(200)), (side, side));
    }

    [Fact]
    public void Where_no_square_fits_the_corners_other_corners_are_named()
    {
        // A corner of 1 mm leaves less than the joint alone takes.
        var refusal = Refused(new BondRequest.Octagon(Mm(1)), Joint, (Mm(200), Mm(200)), (Mm(40), Mm(40)));
        Assert.StartsWith("corners that take ", refusal.Nearest, StringComparison.Ordinal);
        _ = Bond(new BondRequest.Octagon(Lengths(refusal.Nearest)[0]), Joint, (Mm(200), Mm(200)), (Mm(40), Mm(40)));
    }

    [Theory]
    [InlineData(0, "1°")]
    [InlineData(90_000, "88°")]
    [InlineData(-30_000, "30°")]
    public void A_chevron_asks_for_a_slope(int thousandths, string nearest)
    {
        var refusal = Refused(new BondRequest.Chevron(Angle.FromThousandths(thousandths)), Joint, (Mm(600), Mm(90)));
        Assert.Equal(nearest, refusal.Nearest);
        _ = Bond(new BondRequest.Chevron(Angle.FromDegrees(88)), Joint, (Mm(600), Mm(90)));
    }

    [Fact]
    public void A_chevron_is_no_higher_than_a_room()
    {
        var refusal = Refused(new BondRequest.Chevron(Angle.FromThousandths(89_500)), Joint, (Mm(600), Mm(90)));
        Assert.Equal("88°", refusal.Nearest);
        Assert.Equal("15°", Refused(new BondRequest.Chevron(Angle.FromDegrees(45)), Joint, (Mm(4000), Mm(4000))).Nearest);
        _ = Bond(new BondRequest.Chevron(Angle.FromDegrees(60)), Joint, (Mm(4000), Mm(200)));
    }

    [Fact]
    public void A_chevron_of_two_products_asks_for_one_size()
    {
        var asked = new BondRequest.Chevron(Angle.FromDegrees(45));
        Says(
            Refused(asked, Joint, (Mm(600), Mm(90)), (Mm(600), Mm(120))), "\"tile 1\", 600 mm by 120 mm", "planks of one size sloping up and down", "600 mm by 90 mm");
    }

    [Fact]
    public void A_set_of_four_sizes_asks_for_whole_units()
    {
        (Length Width, Length Height)[] set = [(Mm(597), Mm(397)), (Mm(397), Mm(397)), (Mm(397), Mm(200)), (Mm(197), Mm(197))];
        var refusal = Refused(new BondRequest.Modular(), Joint, set);
        Says(
            refusal, "\"tile 2\", 397 mm by 200 mm, in a set with a unit of 200 mm", "a tile of 2 by 1 units less a joint", "397 mm by 197 mm");
        set[2] = (Lengths(refusal.Nearest)[0], Lengths(refusal.Nearest)[1]);
        _ = Bond(new BondRequest.Modular(), Joint, set);
    }

    [Fact]
    public void Sheets_ask_for_chips_of_some_size()
    {
        // 297 mm and a joint of 3 are 300; 37 chips of them leave 5.1 mm each beside their joint, 38 only 4.9.
        Assert.Equal("37 by 2 chips", Refused(new BondRequest.Mosaic(38, 2), Joint, (Mm(297), Mm(297))).Nearest);
        _ = Bond(new BondRequest.Mosaic(37, 2), Joint, (Mm(297), Mm(297)));
    }

    [Fact]
    public void Planks_ask_for_one_width() => Says(
        Refused(new BondRequest.Planks(Mm(100), "oak"), Joint, (Mm(900), Mm(150)), (Mm(600), Mm(140))), "\"tile 1\", 140 mm wide", "planks of one width in a course", "150 mm");

    [Theory]
    [InlineData("oak", 470, "900")]
    [InlineData("ash", 500, "900 600")]
    [InlineData("elm", 500, "900 750 600")]
    [InlineData("larch", 400, "1200 900 600 300")]
    [InlineData("", 2000, "600 600 600")]
    public void Planks_ask_for_a_stagger_that_can_be_kept(string start, long stagger, string lengths)
    {
        var widths = Array.ConvertAll(lengths.Split(' '), width => long.Parse(width, CultureInfo.InvariantCulture));
        var tiles = widths.Select(width => (Mm(width), Mm(150))).ToArray();
        var refusal = Refused(new BondRequest.Planks(Mm(stagger), start), Joint, tiles);
        var nearest = Lengths(refusal.Nearest)[0];
        Assert.InRange(nearest.Steps, Mm(widths.Min() / 8).Steps, Mm((widths.Max() + 3) / 2).Steps);
        _ = Bond(new BondRequest.Planks(nearest, start), Joint, tiles);
    }

    private static void Says(BondRefusal refusal, string found, string expected, string nearest) => Assert.Equal((found, expected, nearest), (refusal.Found, refusal.Expected, refusal.Nearest));
}
