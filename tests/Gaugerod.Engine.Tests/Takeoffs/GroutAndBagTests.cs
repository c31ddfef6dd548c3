using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Takeoffs;

/// <summary>Single figures of grout and mortar that are printed or worked by hand, beside the whole tables.</summary>
public sealed class GroutAndBagTests
{
    // Source: an article on thin-set: 200 ft2 at 65 ft2 a bag are 3.08, so 4 bags.
    [Fact]
    public void Two_hundred_square_feet_at_65_a_bag_take_four_bags() => Assert.Equal(4, Packs(200, 65));

    // Source: a seller's page on mosaics: 96 ft2 at 0.94 lb are 90 lb, 4 bags of 25.
    [Fact]
    public void Ninety_pounds_are_four_bags_of_25() => Assert.Equal(4, Packs(96 * 0.94, 25));

    // Source: a page on reckoning grout: 300 by 300 by 10 mm, joints of 2, 1.6 kg a litre: 5 kg for 23 to 24 m2. The printed formula counts crossings twice: 0.2133 kg.
    [Fact]
    public void Five_kilograms_reach_23_to_24_square_metres_of_300_by_300()
    {
        var perSquareMetre = Share(Mm(300), Mm(300), Mm(2)) * 10 * 1.6;
        Assert.InRange(5 / perSquareMetre, 23, 24);
        Assert.InRange(0.2133 / perSquareMetre, 1, 1.011);
    }

    // Source: a maker's guide: a joint of 5/32 for one of 1/8 takes a quarter more.
    [Fact]
    public void A_joint_a_quarter_wider_takes_a_quarter_more() =>
        Assert.Equal(1.25, Share(Inches(12), Inches(12), Length.FromInches(0, 5, 32)) / Share(Inches(12), Inches(12), Length.FromInches(0, 1, 8)), 0.005);

    // Worked by hand: 60 ft2 of 12 by 24 by 3/8 with joints of 1/8: 50.0 in3; at 437.6 in3 to 25 lb they are 2.86 lb.
    [Fact]
    public void Sixty_square_feet_of_12_by_24_take_50_cubic_inches()
    {
        var cubicInches = Share(Inches(12), Inches(24), Length.FromInches(0, 1, 8)) * 60 * 144 * 3 / 8;
        Assert.Equal(50.0, cubicInches, 0.05);
        Assert.Equal(2.86, cubicInches / 437.6 * 25, 0.005);
    }

    private static int Packs(double need, double makes) => new SupplyLine(new("bags", SupplyKind.Mortar, "bag", makes), [new SupplyUse("wall", need, "")]).Packs;

    // What of a wall is joint: one tile and the joints above it and to its right, over and over.
    private static double Share(Length width, Length height, Length joint)
    {
        var tile = Rectangle(width, height);
        var whole = Rectangle(width + joint, height + joint);
        var piece = new Piece("A1", PieceKind.Full, "wall", 1, 1, "tile", tile.Bounds, tile, [], tile.Bounds.Width, []);
        return JointSpace.Of(new(whole, []), [piece]).Area / ((double)whole.DoubledArea / 2 / (3200.0 * 3200.0));
    }

    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);

    private static Length Inches(int inches) => Length.FromInches(inches);

    private static Ring Rectangle(Length width, Length height) => new([new(Length.Zero, Length.Zero), new(width, Length.Zero), new(width, height), new(Length.Zero, height)]);
}
