using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Tests.Cutting;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Rules;

/// <summary>Strips too thin to be scored and snapped. The limit, 1/8 in or 3 mm, is common practice, no source.</summary>
public sealed class ShaveRulesTests
{
    private static readonly Product Tile = Make.Tile(200, 100);

    [Fact]
    public void A_cut_that_takes_off_three_millimetres_or_less_is_for_the_wet_saw_and_is_said_with_its_edge()
    {
        var finding = Assert.Single(ShaveRules.Findings("wall",
        [
            Make.Straight(Tile, "1", TileSide.Right, Make.Mm(197)), Make.Straight(Tile, "2", TileSide.Right, Make.Mm(198)),
            Make.Straight(Tile, "3", TileSide.Top, Make.Mm(96)), Make.Whole(Tile, "4"),
        ], Tape.Millimetres));
        Assert.Equal(("shave", FindingLevel.Note), (finding.Rule, finding.Level));
        Assert.StartsWith("2 tiles lose a strip too thin to be scored and snapped (2 at ", finding.Text, StringComparison.Ordinal);
        Assert.Equal("2 mm", finding.Value);
    }

    [Fact]
    public void A_taper_that_takes_off_more_at_one_end_can_be_scored_there_and_is_not_told_of() =>
        Assert.Empty(ShaveRules.Findings("wall", [Make.Taper(Tile, "1", TileSide.Right, Make.Mm(198), Make.Mm(190))], Tape.Millimetres));

    [Fact]
    public void By_the_inch_the_limit_is_an_eighth()
    {
        Assert.Single(ShaveRules.Findings("wall", [Make.Straight(Tile, "1", TileSide.Right, Tile.Width - Length.FromInches(0, 1, 8))], Tape.Sixteenths));
        Assert.Empty(ShaveRules.Findings("wall", [Make.Straight(Tile, "1", TileSide.Right, Tile.Width - Length.FromInches(0, 3, 16))], Tape.Sixteenths));
    }
}
