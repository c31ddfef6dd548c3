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
    public void Four_corner_pieces_come_from_the_four_corners_of_one_tile()
    {
        var tile = Tile(600, 300);
        Piece[] four = [.. Enumerable.Range(1, 4).Select(i => Corner(tile, $"A{i}", Mm(200), Mm(100)))];

        // A tile turned half round gives a left lower corner two pieces; the other two corners want pieces that keep the right lower one.
        Assert.Equal(2, Plan(tile, four).Bought);
        var square = Tile(300, 300);
        var plan = Plan(square, [.. Enumerable.Range(1, 5).Select(i => Corner(square, $"A{i}", Mm(140), Mm(100)))]);
        Assert.Equal(2, plan.Bought);
        Assert.True(plan.Proved);
        Assert.Empty(plan.Proofs);
        var proof = Assert.Single(plan.Weighings);
        Assert.Equal(2, proof.Tiles);
        Assert.Equal(["A1", "A2", "A3", "A4", "A5"], Assert.Single(proof.Kinds).Pieces);

        // A corner piece is cut twice; the cut that parts two serves both.
        Assert.Equal([4, 1], plan.Tiles.Select(cut => cut.Pieces.Count).OrderDescending());
        Assert.All(plan.Tiles, cut => Assert.InRange(cut.Cuts.Count, 2 * cut.Pieces.Count - 1, 2 * cut.Pieces.Count + 1));
    }

    [Fact]
    public void What_a_job_asks_for_first_decides_whether_a_part_waits_for_another_setting()
    {
        var tile = Tile(600, 300);
        Piece[] pieces =
        [
            Straight(tile, "A1", TileSide.Right, Mm(200)), Straight(tile, "A2", TileSide.Left, Mm(390)),
            Straight(tile, "A3", TileSide.Right, Mm(280)), Straight(tile, "A4", TileSide.Left, Mm(280)),
        ];
        var fewest = Plan(tile, pieces);
        Assert.Equal((2, 1), (fewest.Bought, fewest.Fewest!.LaidBy));
        Assert.Equal((3, 0), (fewest.Simple!.Tiles, fewest.Simple.LaidBy));
        var simple = CuttingPlanner.Plan(tile, pieces.ToSequence(), Tape.Millimetres, CuttingAims.Usual with { Order = [CuttingAim.LaidBy, CuttingAim.Tiles, CuttingAim.Cuts] });
        Assert.Equal((3, 2, false), (simple.Bought, simple.LowerBound, simple.Proved));
        Assert.Equal(fewest.Simple, simple.Simple);
    }

    [Fact]
    public void Two_pieces_of_a_tile_that_is_snapped_leave_nothing_between_them_or_a_strip_that_breaks_off()
    {
        var tile = Tile(600, 300, kerf: 0) with { Snaps = Mm(10) };
        CuttingCost Cost(long one, long other) => Plan(tile, Straight(tile, "A1", TileSide.Right, Mm(one)), Straight(tile, "A2", TileSide.Left, Mm(other))).Fewest!;
        Assert.Equal(1, Cost(200, 400).Tiles);
        Assert.Equal(1, Cost(200, 390).Tiles);
        Assert.Equal(2, Cost(200, 395).Tiles);
        Assert.Equal(1, Plan(tile with { Snaps = null }, Straight(tile, "A1", TileSide.Right, Mm(200)), Straight(tile, "A2", TileSide.Left, Mm(395))).Bought);
    }

    [Fact]
    public void Pieces_within_the_tolerance_share_a_setting_the_smallest_of_them()
    {
        var tile = Tile(600, 300);
        Piece[] pieces = [.. new[] { 200, 201, 202, 203, 240 }.Select((kept, i) => Straight(tile, $"A{i + 1}", TileSide.Right, Mm(kept)))];
        var plan = CuttingPlanner.Plan(tile, pieces.ToSequence(), Tape.Millimetres, CuttingAims.Usual with { Fence = Mm(2) });
        Assert.Equal([Mm(240), Mm(201), Mm(200)], plan.Settings.Select(setting => setting.Fence));
        Assert.Equal(["A2", "A3", "A4"], plan.Settings[1].Pieces);
        Assert.Equal(3, plan.Fewest!.Settings);
    }

    [Fact]
    public void No_pieces_take_no_tiles() =>
        Assert.Equal(new ProductCutting("tile", [], 0, 0, [], [], []) { Fewest = new(0, 0, 0, 0, 0), Simple = new(0, 0, 0, 0, 0) }, Plan(Tile(600, 300)));

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
        new(tile.Number, tile.Pieces.Select(p => p with { At = Ring.Of(p.At.Bounds) }).ToSequence());
}
