using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Rules;

/// <summary>Borders and rugs that whole tiles fill, by hand: so many tiles, the joints between them, and half a joint at each side that has one.</summary>
public sealed class ZoneRulesTests
{
    private static readonly Product s_tile = new("chip", Mm(50), Mm(50), Length.Zero);
    private static readonly BondRequest s_grid = new BondRequest.Grid(Lay.Level);

    [Fact]
    public void A_border_as_wide_as_its_tile_leaves_every_tile_cut_and_half_a_joint_more_leaves_them_whole()
    {
        // From the tile's edge to the middle of a joint of 4: a tile of 50 and 2.
        var finding = Assert.Single(Of(new Zone.Border("frame", Mm(50), Mitred: true) { Joint = Mm(4) }));
        Assert.Equal((FindingLevel.Warn, "52 mm wide for whole tiles", "50 mm"), (finding.Level, finding.Limit, finding.Value));
        Assert.Empty(Of(new Zone.Border("frame", Mm(52), Mitred: true) { Joint = Mm(4) }));
        // Two tiles and a joint of 3 between them.
        Assert.Empty(Of(new Zone.Border("frame", Mm(105), Mitred: true) { Joint = Mm(4) }));
    }

    [Fact]
    public void A_rug_is_as_large_as_its_tiles_their_joints_and_the_joint_round_it()
    {
        // Six tiles of 50, five joints of 3, and half of 4 at either end: 319.
        var finding = Assert.Single(Of(new Zone.Rug("rug", new(Mm(100), Mm(100), Mm(410), Mm(419))) { Joint = Mm(4) }));
        Assert.Equal((FindingLevel.Note, "319 mm by 319 mm for whole tiles", "310 mm by 319 mm"), (finding.Level, finding.Limit, finding.Value));
    }

    [Fact]
    public void Nothing_is_said_of_a_field_that_is_turned_for_its_tiles_are_cut_all_round()
    {
        var turned = s_grid with { Turn = Angle.FromDegrees(45) };
        Assert.Empty(ZoneRules.Findings([new Zone.Rug("rug", new(Mm(100), Mm(100), Mm(410), Mm(419)))], s_tile, turned, Mm(3), Mm(3), Tape.Millimetres));
    }

    private static IEnumerable<Finding> Of(Zone zone) => ZoneRules.Findings([zone], s_tile, s_grid, Mm(3), Mm(3), Tape.Millimetres);

    private static Length Mm(long mm) => Length.FromMillimetres(mm);
}
