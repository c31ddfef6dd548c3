using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Takeoffs;

public class TileOrderTests
{
    private static readonly Product Tile = new("plank", Length.FromInches(24), Length.FromInches(12), Length.FromInches(0, 3, 8)) { PerBox = 8 };

    [Fact]
    public void A_counted_plan_is_bought_in_whole_boxes_with_nothing_on_top() =>
        Assert.Equal(new OrderLine("plank", 66, "tile", 8, 9, 66, 0, 0, 0, "66 by the cut plan; one lot, one caliber"), TileOrder.Order(Tile, 66));

    [Fact]
    public void Breakage_and_spares_are_said_apart_from_what_is_cut()
    {
        var order = TileOrder.Order(Tile with { Breakage = 2, Spares = 4 }, 66);
        Assert.Equal(
            new OrderLine("plank", 72, "tile", 8, 9, 66, 2, 4, 0, "66 by the cut plan, 2 for breakage, 4 to leave with the client; one lot, one caliber"), order);
        Assert.Equal(0, order.Over);
    }

    [Fact]
    public void A_flat_share_comes_on_top_of_everything_only_when_asked_for()
    {
        var order = TileOrder.Order(Tile with { Breakage = 2, Spares = 4, FlatPercent = 5 }, 66);
        // 72 x 5 % = 3.6
        Assert.Equal((76, 4, 10, 4), (order.Need, order.Flat, order.Packs, order.Over));
        Assert.Equal("66 by the cut plan, 2 for breakage, 4 to leave with the client, 4 for the 5 % asked for; one lot, one caliber", order.Basis);
    }

    [Fact]
    public void Nothing_planned_is_nothing_bought() => Assert.Equal(0, TileOrder.Order(Tile, 0).Packs);

    // Source: a flooring site's article on how much extra tile to order: 200 ft2 in boxes of 10 ft2 with 10 % is 22 boxes.
    [Fact]
    public void Two_hundred_square_feet_with_ten_percent_are_22_boxes() =>
        Assert.Equal(new AreaOrder(220m, 22), TileOrder.ByArea(200, 10, perPack: 10));

    // Source: a German textbook for tile setters, 7.4: 120 m2 and 6 % are 127.2 m2, ordered as 128 m2.
    [Fact]
    public void A_hundred_and_twenty_square_metres_with_six_percent_are_128() =>
        Assert.Equal(new AreaOrder(127.2m, 128), TileOrder.ByArea(120, 6, perPack: 1));

    // Worked by hand: 120 ft2 and 10 % are 132 ft2; 12 by 24 in is 2 ft2 a tile, 8 a box 16 ft2; 66 tiles, 8.25 boxes.
    [Fact]
    public void A_hundred_and_twenty_square_feet_of_planks_are_66_tiles_in_9_boxes()
    {
        Assert.Equal(new AreaOrder(132m, 66), TileOrder.ByArea(120, 10, perPack: 2));
        Assert.Equal(new AreaOrder(132m, 9), TileOrder.ByArea(120, 10, perPack: 16));
    }

    [Theory]
    [InlineData(-1, 0, 1)]
    [InlineData(1, -1, 1)]
    [InlineData(1, 0, 0)]
    public void An_area_without_sense_is_our_own_mistake(int area, int percent, int perPack) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => TileOrder.ByArea(area, percent, perPack));

    [Fact]
    public void What_is_left_over_in_the_boxes_is_said_and_what_one_more_would_allow()
    {
        // 66 planned of boxes of 8: 72 bought, 6 over.
        var order = TileOrder.Order(Tile, 66);
        Assert.Equal(
            "To cut so that no offcut waits for another setting of the fence takes 4 tiles more, 70 in place of 66: these boxes hold them. "
            + "To give every cut piece a tile to itself takes 24 tiles more, 90 in place of 66: 3 more boxes. One more box leaves 14 tiles over, to spoil or to keep for repairs from the same lot.",
            BoxFreedom.Words(order, 70, 90));
        Assert.Equal("", BoxFreedom.Words(order with { Pack = 1 }, 70, 90));
    }
}
