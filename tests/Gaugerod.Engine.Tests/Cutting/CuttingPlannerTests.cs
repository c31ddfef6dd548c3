using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Cutting.Make;

namespace Gaugerod.Engine.Tests.Cutting;

/// <summary>Cut plans a setter would sketch on the back of a box (common practice, no source).</summary>
public sealed class CuttingPlannerTests
{
    [Fact]
    public void The_two_ends_of_one_course_come_from_one_tile()
    {
        var tile = Tile(600, 300);
        var plan = Plan(tile, Straight(tile, "A1", TileSide.Left, Mm(200)), Whole(tile, "A2"), Straight(tile, "A3", TileSide.Right, Mm(397)));
        Assert.Equal(2, plan.Bought);
        Assert.True(plan.Proved);
        Assert.Equal(
            [
                new CutTile(1, [new("A1", Rectangle(400, 0, 600, 300), 0), new("A3", Rectangle(0, 0, 397, 300), 0)]),
                new CutTile(2, [new("A2", Rectangle(0, 0, 600, 300), 0)]),
            ],
            plan.Tiles.Select(Normal));
    }

    [Fact]
    public void Two_left_ends_share_when_one_may_be_turned_half_round_and_not_when_the_tile_has_a_direction()
    {
        foreach (var (turning, bought) in new[] { (Turning.Free, 1), (Turning.Half, 1), (Turning.None, 2) })
        {
            var tile = Tile(600, 300, turning);
            var plan = Plan(tile, Straight(tile, "A1", TileSide.Right, Mm(200)), Straight(tile, "B1", TileSide.Right, Mm(300)));
            Assert.Equal(bought, plan.Bought);
            Assert.True(plan.Proved);
            if (bought == 1) Assert.Equal(new PieceInTile("B1", Rectangle(300, 0, 600, 300), 2), Normal(plan.Tiles[0]).Pieces[1]);
        }
    }

    [Fact]
    public void A_piece_cut_at_the_side_and_one_cut_at_the_top_do_not_share_an_oblong_tile()
    {
        var tile = Tile(600, 300);
        var plan = Plan(tile, Straight(tile, "A1", TileSide.Right, Mm(100)), Straight(tile, "A2", TileSide.Top, Mm(100)));
        Assert.Equal(2, plan.Bought);
        Assert.Equal(["width", "height"], plan.Proofs.Select(p => p.Pool));
    }

    [Fact]
    public void They_share_a_square_tile_that_may_be_turned_a_quarter()
    {
        var tile = Tile(300, 300);
        var plan = Plan(tile, Straight(tile, "A1", TileSide.Right, Mm(100)), Straight(tile, "A2", TileSide.Top, Mm(197)));
        var only = Normal(Assert.Single(plan.Tiles));
        Assert.Equal([new("A1", Rectangle(0, 0, 100, 300), 0), new("A2", Rectangle(103, 0, 300, 300), 1)], only.Pieces);
        Assert.Equal("width or height", Assert.Single(plan.Proofs).Pool);
    }

    [Fact]
    public void They_do_not_share_a_square_tile_that_may_only_be_turned_half_round()
    {
        var tile = Tile(300, 300, Turning.Half);
        Assert.Equal(2, Plan(tile, Straight(tile, "A1", TileSide.Right, Mm(100)), Straight(tile, "A2", TileSide.Top, Mm(100))).Bought);
    }

    [Fact]
    public void A_tile_stood_upright_is_cut_lying_and_its_lower_end_is_the_left_one()
    {
        var tile = Tile(600, 300, Turning.None);
        var plan = Plan(tile, Straight(tile, "A1", TileSide.Top, Mm(200), upright: true), Straight(tile, "A2", TileSide.Bottom, Mm(397), upright: true));
        var only = Normal(Assert.Single(plan.Tiles));
        Assert.Equal([new("A1", Rectangle(0, 0, 200, 300), 3), new("A2", Rectangle(203, 0, 600, 300), 3)], only.Pieces);
        Assert.Equal([new(Mm(397), true, ["A2"]), new SawSetting(Mm(200), true, ["A1"])], plan.Settings);
    }

    [Fact]
    public void A_taper_is_reckoned_by_its_wider_end()
    {
        var tile = Tile(600, 300);
        var taper = Taper(tile, "A1", TileSide.Right, Mm(190), Mm(200));
        Assert.Equal(1, Plan(tile, taper, Straight(tile, "A2", TileSide.Left, Mm(397))).Bought);
        Assert.Equal(2, Plan(tile, taper, Straight(tile, "A2", TileSide.Left, Mm(398))).Bought);
    }

    [Fact]
    public void A_taper_whose_cut_leaves_the_tile_at_its_far_side_shares_with_nothing()
    {
        var tile = Tile(600, 300, kerf: 0);
        var taper = Taper(tile, "A1", TileSide.Right, Mm(100), Mm(600));
        Assert.Equal(2, Plan(tile, taper, Straight(tile, "A2", TileSide.Left, Mm(1))).Bought);
    }

    [Fact]
    public void Corner_notch_and_hole_pieces_take_a_tile_each()
    {
        var tile = Tile(600, 300);
        var plan = Plan(
            tile, Corner(tile, "A1", Mm(100), Mm(100)), Corner(tile, "A2", Mm(100), Mm(100), PieceKind.Notch),
            Corner(tile, "A3", Mm(100), Mm(100), PieceKind.Hole), Corner(tile, "A4", Mm(100), Mm(100), PieceKind.Taper));
        Assert.Equal(4, plan.Bought);
        Assert.Equal(4, plan.LowerBound);
        Assert.Empty(plan.Proofs);
    }

    [Fact]
    public void No_pieces_take_no_tiles() =>
        Assert.Equal(new ProductCutting("tile", [], 0, 0, [], [], []), Plan(Tile(600, 300)));

    [Fact]
    public void A_piece_of_another_product_or_of_another_size_is_refused()
    {
        var tile = Tile(600, 300);
        Assert.Throws<ArgumentException>(() => Plan(tile, Whole(tile, "A1") with { Product = "other" }));
        Assert.Throws<ArgumentException>(() => Plan(tile, Whole(Tile(600, 299), "A1")));
    }

    private static ProductCutting Plan(Product tile, params Piece[] pieces) =>
        CuttingPlanner.Plan(tile, pieces.ToSequence(), Tape.Millimetres);

    private static Ring Rectangle(long left, long bottom, long right, long top) => Ring.Of(new(Mm(left), Mm(bottom), Mm(right), Mm(top)));

    // Rectangles from their lower left corner on, wherever the turn has left the first corner.
    private static CutTile Normal(CutTile tile) =>
        tile with { Pieces = tile.Pieces.Select(p => p with { At = Ring.Of(p.At.Bounds) }).ToSequence() };
}
