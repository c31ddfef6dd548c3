using CsCheck;
using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Testing;
using static Gaugerod.Engine.Tests.Cutting.Make;

namespace Gaugerod.Engine.Tests.Cutting;

/// <summary>What holds of every cut plan. Referee: <see cref="CutPlanReferee"/>, which looks at the shapes only.</summary>
public sealed class CutPlanPropertyTests
{
    private static readonly Gen<Product> Tiles = Gen.OneOf(
        Gen.Select(Gen.Long[10, 40], Gen.Long[10, 40], Gen.Enum<Turning>(), Gen.Long[0, 4], (w, h, turning, kerf) => Tile(w, h, turning, kerf)),
        Gen.Select(Gen.Long[10, 40], Gen.Enum<Turning>(), Gen.Long[0, 4], (w, turning, kerf) => Tile(w, w, turning, kerf)));

    private static readonly Gen<Product> Snapped = Gen.Select(
        Gen.Long[10, 40], Gen.Long[10, 40], Gen.Enum<Turning>(), Gen.Long[1, 6], (w, h, turning, strip) => Tile(w, h, turning, kerf: 0) with { Snaps = Mm(strip) });

    [Fact]
    public void Every_piece_is_made_once_and_lies_in_its_tile_a_kerf_from_the_others() =>
        Jobs(40).Each(
            (tile, pieces) =>
            {
                var plan = CuttingPlanner.Plan(tile, pieces, Tape.Millimetres);
                var byId = pieces.ToDictionary(p => p.Id, StringComparer.Ordinal);
                Assert.Equal(byId.Keys.Order(StringComparer.Ordinal), plan.Tiles.SelectMany(t => t.Pieces).Select(p => p.Id).Order(StringComparer.Ordinal));
                Assert.Equal(Enumerable.Range(1, plan.Bought), plan.Tiles.Select(t => t.Number));
                Assert.True(plan.LowerBound <= plan.Bought);

                // What the way taken is said to cost is what is listed.
                Assert.Equal((plan.Bought, plan.Settings.Count), (plan.Fewest!.Tiles, plan.Fewest.Settings));

                // Read in the order given: each tile's first piece is the first not yet cut.
                var place = pieces.Select((p, i) => (p.Id, i)).ToDictionary(p => p.Id, p => p.i, StringComparer.Ordinal);
                var firsts = plan.Tiles.Select(t => place[t.Pieces[0].Id]).ToArray();
                Assert.Equal(firsts.Order(), firsts);
                Assert.All(plan.Tiles, cut => Assert.Null(CutPlanReferee.Fault(tile, cut, byId)));
            },
            iter: 2000);

    [Fact]
    public void A_shared_tile_that_is_snapped_is_never_scored_nearer_to_a_side_than_the_least_strip() =>
        Jobs(25, Snapped).Each(
            (tile, pieces) =>
            {
                var byId = pieces.ToDictionary(p => p.Id, StringComparer.Ordinal);
                foreach (var aims in new[] { CuttingAims.Usual, CuttingAims.Usual with { Order = [CuttingAim.LaidBy, CuttingAim.Tiles, CuttingAim.Courses] } })
                {
                    var plan = CuttingPlanner.Plan(tile, pieces, Tape.Millimetres, aims);
                    Assert.True(plan.LowerBound <= plan.Bought);
                    Assert.All(plan.Tiles, cut => Assert.Null(CutPlanReferee.Fault(tile, cut, byId)));
                }
            },
            iter: 500);

    [Fact]
    public void No_way_of_laying_two_pieces_in_a_tile_takes_fewer_tiles() =>
        Jobs(8).Each(
            (tile, pieces) =>
            {
                var plan = CuttingPlanner.Plan(tile, pieces, Tape.Millimetres);
                var least = PairingCase.LeastByTryingAll(pieces.Count, (i, j) => CutPlanReferee.MayShare(tile, pieces[i], pieces[j]));
                Assert.True(plan.Bought <= least, $"{plan.Bought} tiles, by twos {least}");
                if (pieces.All(piece => piece.Cuts.Count <= 1)) Assert.Equal((least, least), (plan.Bought, plan.LowerBound));
                Assert.True(CuttingPlanner.Count(tile, pieces) >= plan.Bought);
            },
            iter: 1500);

    [Fact]
    public void One_more_piece_never_takes_fewer_tiles() =>
        Jobs(12).Where(j => j.V1.Count > 0).Each(
            (tile, pieces) =>
            {
                var before = CuttingPlanner.Plan(tile, pieces.Skip(1).ToSequence(), Tape.Millimetres).Bought;
                Assert.InRange(CuttingPlanner.Plan(tile, pieces, Tape.Millimetres).Bought, before, before + 1);
            },
            iter: 1000);

    [Fact]
    public void Every_piece_that_is_cut_has_a_fence_or_is_marked_by_hand() =>
        Jobs(40).Each(
            (tile, pieces) =>
            {
                var plan = CuttingPlanner.Plan(tile, pieces, Tape.Millimetres);
                var listed = plan.Settings.SelectMany(s => s.Pieces).Concat(plan.ByHand).Distinct(StringComparer.Ordinal);
                Assert.Equal(
                    pieces.Where(p => p.Kind != PieceKind.Full).Select(p => p.Id).Order(StringComparer.Ordinal), listed.Order(StringComparer.Ordinal));
                foreach (var (wide, next) in plan.Settings.Zip(plan.Settings.Skip(1))) Assert.True(wide.Fence >= next.Fence);
                foreach (var setting in plan.Settings) Assert.Equal(0, setting.Fence.Steps % Tape.Millimetres.Mark.Steps);
            },
            iter: 500);

    private static Gen<(Product V0, Sequence<Piece> V1)> Jobs(int most, Gen<Product>? tiles = null) => (tiles ?? Tiles).SelectMany(
        tile => Gen.Select(Gen.Int[0, 9], Gen.Enum<TileSide>(), Gen.Double[0, 1], Gen.Double[0, 1], Gen.Bool).Array[0, most],
        (tile, wanted) => (tile, wanted.Select((w, i) => Piece(tile, $"P{i:000}", w)).ToSequence()));

    private static Piece Piece(Product tile, string id, (int Kind, TileSide Away, double First, double Last, bool Upright) wanted)
    {
        var (kind, away, first, last, upright) = wanted;
        var along = (away is TileSide.Left or TileSide.Right) != (upright && tile.Width != tile.Height) ? tile.Width : tile.Height;

        // Whole millimetres, so that pieces often fill a tile exactly; a straight cut leaves less than the whole tile.
        Length Kept(double share, Length of) => Mm(1 + (long)(share * ((long)of.Millimetres - 1)));
        return kind switch
        {
            0 => Whole(tile, id, upright),
            1 => Corner(tile, id, Kept(first, tile.Width), Kept(last, tile.Height)),
            2 => Corner(tile, id, Kept(first, tile.Width), Kept(last, tile.Height), PieceKind.Notch),
            3 or 4 => Taper(tile, id, away, Kept(first, along), Kept(last, along), upright),
            _ => Straight(tile, id, away, Kept(first, along), upright),
        };
    }
}
