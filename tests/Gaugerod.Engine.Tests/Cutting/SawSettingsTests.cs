using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Cutting.Make;

namespace Gaugerod.Engine.Tests.Cutting;

/// <summary>How a setter lists cuts for the saw (common practice, no source).</summary>
public sealed class SawSettingsTests
{
    [Fact]
    public void Pieces_that_read_the_same_on_the_tape_are_cut_at_one_setting_the_largest_first()
    {
        var tile = Tile(600, 300);
        var settings = Of(
            Straight(tile, "A1", TileSide.Left, Length.FromSteps((200 * 3200) + 3199)), Straight(tile, "A2", TileSide.Top, Mm(120)),
            Straight(tile, "A3", TileSide.Right, Mm(200)), Straight(tile, "A4", TileSide.Right, Mm(201))).Settings;
        Assert.Equal([new(Mm(201), true, ["A4"]), new(Mm(200), true, ["A1", "A3"]), new SawSetting(Mm(120), false, ["A2"])], settings);
    }

    [Fact]
    public void A_corner_piece_stands_under_both_its_settings()
    {
        var tile = Tile(600, 300);
        Assert.Equal(
            [new(Mm(100), true, ["A1"]), new SawSetting(Mm(100), false, ["A1"])],
            Of(Corner(tile, "A1", Mm(100), Mm(100))).Settings);
    }

    [Fact]
    public void Tapers_notches_slots_holes_and_shapes_are_marked_by_hand_and_whole_tiles_are_not_listed()
    {
        var tile = Tile(600, 300);
        var (settings, byHand) = Of(
            Whole(tile, "A1"), Taper(tile, "A2", TileSide.Right, Mm(190), Mm(200)), Corner(tile, "A3", Mm(9), Mm(9), PieceKind.Notch),
            Corner(tile, "A4", Mm(9), Mm(9), PieceKind.Slot), Corner(tile, "A5", Mm(9), Mm(9), PieceKind.Hole), Corner(tile, "A6", Mm(9), Mm(9), PieceKind.Shaped));
        Assert.Empty(settings);
        Assert.Equal(["A2", "A3", "A4", "A5", "A6"], byHand);
    }

    [Fact]
    public void A_taper_the_tape_does_not_show_is_sawn_straight_at_its_shorter_end()
    {
        var tile = Tile(600, 300);
        var (settings, byHand) = Of(Taper(tile, "A1", TileSide.Right, Length.FromSteps((200 * 3200) + 3199), Mm(200)));
        Assert.Equal([new SawSetting(Mm(200), true, ["A1"])], settings);
        Assert.Empty(byHand);
    }

    [Fact]
    public void A_cut_below_the_first_mark_of_the_tape_has_no_fence_and_is_marked_by_hand()
    {
        var tile = Tile(600, 300);
        Assert.Equal(["A1"], Of(Straight(tile, "A1", TileSide.Right, Length.FromSteps(3199))).ByHand);
    }

    [Fact]
    public void A_strip_from_the_middle_of_a_tile_is_sawn_at_two_settings_and_not_marked_by_hand()
    {
        var tile = Tile(600, 300);
        var whole = Whole(tile, "A1");
        var strip = whole with
        {
            Kind = PieceKind.Shaped,
            Outline = Ring.Of(whole.Cell with { Bottom = whole.Cell.Bottom + Mm(40), Top = whole.Cell.Top - Mm(60) }),
            Cuts = [new(TileSide.Bottom, Mm(260), Mm(260), Length.Zero, Mm(600), "sill"), new(TileSide.Top, Mm(240), Mm(240), Length.Zero, Mm(600), "head")],
        };
        var plan = CuttingPlanner.Plan(tile, [strip], Tape.Millimetres);
        Assert.Empty(plan.ByHand);
        Assert.All(plan.Settings, setting => Assert.Equal(["A1"], setting.Pieces));
        Assert.Equal(Mm(200), plan.Settings[^1].Fence);
    }

    private static (Sequence<SawSetting> Settings, Sequence<string> ByHand) Of(params Piece[] pieces) =>
        SawSettings.Of(Tile(600, 300), pieces.ToSequence(), [], Tape.Millimetres, new(Tile(600, 300), pieces, Tape.Millimetres, CuttingAims.Usual));
}
