using Gaugerod.Engine.Bonds;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Bonds.Make;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Bonds;

/// <summary>
/// What is published of patterns, against the bonds' own geometry. Sources: a tile maker's pattern pages (spotidoc.com/doc/88497
/// for the pinwheel, spotidoc.com/doc/88502 for the windmill) and a household guide (hunker.com/12001563); areas of the
/// bare tiles, no joint.
/// </summary>
public sealed class CheckValueTests
{
    private const double SquareFoot = 144;

    /// <summary>spotidoc.com/doc/88497: 80 % and 20 %; 69 % and 31 %. For 12 and 4 in the page's text says 11.1 % where its own rule, the small square's share of both, gives 10 %.</summary>
    [Theory]
    [InlineData(12, 6, 80.0, 20.0)]
    [InlineData(18, 12, 69.2, 30.8)]
    [InlineData(12, 4, 90.0, 10.0)]
    [InlineData(8, 4, 80.0, 20.0)]
    public void A_pinwheel_shares_the_floor_as_published(int large, int small, double largeShare, double smallShare)
    {
        var bond = Bond(new BondRequest.Pinwheel(), Tight, (In(large), In(large)), (In(small), In(small)));
        Assert.Equal(largeShare, Share(bond, 0) * 100, 0.05);
        Assert.Equal(smallShare, Share(bond, 1) * 100, 0.05);
    }

    /// <summary>spotidoc.com/doc/88502: 20 by 20 ft and a tenth more is 440 sq ft; of 8 by 16 in 89 %, 392 sq ft; of 8 by 8 in 11 %, 48 sq ft.</summary>
    [Fact]
    public void A_windmill_takes_the_published_areas_of_both_tiles()
    {
        var bond = Bond(new BondRequest.Windmill(), Tight, (In(16), In(8)), (In(8), In(8)));
        var (rectangles, squares) = (Math.Round(Share(bond, 0), 2), Math.Round(Share(bond, 1), 2));
        Assert.Equal((0.89, 0.11), (rectangles, squares));
        Assert.Equal(392, Math.Round(440 * rectangles));
        Assert.Equal(48, Math.Round(440 * squares));
        Assert.Equal(4, bond.Motif.Count(tile => tile.Product == 0));
    }

    /// <summary>hunker.com/12001563: 100 sq ft of 12 and 6 in squares take 80 of each.</summary>
    [Fact]
    public void A_hundred_square_feet_of_two_squares_take_eighty_of_each()
    {
        var bond = Bond(new BondRequest.Pinwheel(), Tight, (In(12), In(12)), (In(6), In(6)));
        Assert.Equal([1, 1], bond.Motif.CountBy(tile => tile.Product).Select(count => count.Value));
        Assert.Equal(80, 100 * SquareFoot / Repeat(bond), 1e-9);
    }

    /// <summary>2, 4, 2 and 4 tiles of a 16 in set make 16 sq ft, a third, four ninths, a ninth and a ninth of it (from memory; to be found on the layout sheets of makers of such sets).</summary>
    [Fact]
    public void A_set_of_four_sizes_covers_sixteen_square_feet()
    {
        var bond = Bond(new BondRequest.Modular(), Tight, (In(24), In(16)), (In(16), In(16)), (In(16), In(8)), (In(8), In(8)));
        Assert.Equal([2, 4, 2, 4], bond.Motif.CountBy(tile => tile.Product).OrderBy(count => count.Key).Select(count => count.Value));
        Assert.Equal(16.0, Repeat(bond) / SquareFoot, 1e-9);
        Assert.Equal([33.3, 44.4, 11.1, 11.1], Enumerable.Range(0, 4).Select(i => Math.Round(Share(bond, i) * 100, 1)));
    }

    /// <summary>A regular hexagon is √3/2 of the square of its flats' distance: 2 in make 3.464 sq in, 41.57 to the square foot, and 36.82 with joints of 1/8 in; derived.</summary>
    [Fact]
    public void Hexagons_of_two_inches_have_the_area_of_the_closed_form()
    {
        (Length, Length) tile = (In(2), Length.FromSteps(187_708));
        var bare = Bond(new BondRequest.Hexagon(true, null), Tight, tile);
        Assert.Equal(3.464, Area(bare), 0.001);
        Assert.Equal(41.57, SquareFoot / Repeat(bare), 0.005);
        Assert.Equal(36.82, SquareFoot / Repeat(Bond(new BondRequest.Hexagon(false, null), In(0, 1, 8), tile)), 0.005);
    }

    /// <summary>From row to row 0.866 of the flats' distance and a joint; derived.</summary>
    [Fact]
    public void Rows_of_hexagons_stand_as_far_apart_as_the_closed_form_says()
    {
        var bond = Bond(new BondRequest.Hexagon(true, null), Mm(3), (Mm(200), Length.FromSteps(739_008)));
        Assert.Equal(203 * Math.Sqrt(3) / 2, (double)bond.Lattice.Second.Across.Millimetres, 0.001);
        Assert.Equal(101.5, (double)bond.Lattice.Second.Along.Millimetres, 0.001);
    }

    /// <summary>Of octagons of 8 in and squares of 2 in, both are S² and the square is 4 of 64, 6.25 %; derived. The corner takes 2/√2 = 1.414 in off each side.</summary>
    [Fact]
    public void Octagons_leave_the_share_of_the_closed_form_to_their_squares()
    {
        var bond = Bond(new BondRequest.Octagon(null), Tight, (In(8), In(8)), (In(2), In(2)));
        Assert.Equal(6.25, Share(bond, 1) * 100, 0.001);
        Assert.Equal(60, Area(bond), 0.001);
        Assert.Equal(2 / Math.Sqrt(2), bond.Motif[0].Shape.Points[0].X.Steps / (double)Length.StepsPerInch, 0.0001);
    }

    /// <summary>Herringbone of 3 by 6 in: 8 to the square foot, 7.52 with joints of 1/8 in; derived from the tile and half a joint around it.</summary>
    [Theory]
    [InlineData(0, 8.0)]
    [InlineData(1, 7.52)]
    public void Herringbone_takes_as_many_tiles_as_any_bond_of_the_same_tile(int eighths, double perFoot)
    {
        var bond = Bond(new BondRequest.Herringbone(1), In(0, eighths, 8), (In(6), In(3)));
        Assert.Equal(perFoot, bond.Motif.Count * SquareFoot / Repeat(bond), 0.005);
    }

    /// <summary>A plank's end is its width over the cosine of its slope, its column its long side times it; derived.</summary>
    [Fact]
    public void A_chevron_stands_as_wide_and_as_steep_as_the_closed_form_says()
    {
        var bond = Bond(new BondRequest.Chevron(Angle.FromDegrees(30)), Mm(2), (Mm(600), Mm(90)));
        Assert.Equal(600 * Math.Sqrt(3) / 2, (double)bond.Motif[0].Cell.Width.Millimetres, 0.001);
        Assert.Equal(92 * 2 / Math.Sqrt(3), (double)bond.Lattice.Second.Across.Millimetres, 0.001);
        Assert.Equal((600 * Math.Sqrt(3)) + 4, (double)bond.Lattice.First.Along.Millimetres, 0.001);
    }
}
