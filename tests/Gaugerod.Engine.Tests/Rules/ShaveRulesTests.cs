using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rules;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rules;

/// <summary>Strips too thin to be scored and snapped off tiles of 300 by 200 mm, worked by hand. The limit, 1/8 in or 3 mm: common practice, no source.</summary>
public sealed class ShaveRulesTests
{
    [Fact]
    public void Tiles_that_lose_a_strip_too_thin_to_snap_are_counted_edge_by_edge()
    {
        var finding = Assert.Single(ShaveRules.Findings(
            "bath", [Cut("A1", TileSide.Right, 297, 297, "right"), Cut("A2", TileSide.Right, 298, 299, "right"), Cut("A3", TileSide.Top, 199, 200, "head"), Cut("A4", TileSide.Top, 120, 120, "head")], Tape.Millimetres));

        Assert.Equal(new Finding(
            FindingLevel.Note, "shave", "bath",
            "3 tiles lose a strip too thin to be scored and snapped (2 at the right side of wall, 1 at the head of wall): that is for the wet saw or the grinder, or the line is shifted.",
            "more than 3 mm taken off", "1 mm", "common practice, no source"), finding);
    }

    /// <summary>1/8 in is 3.175 mm.</summary>
    [Fact]
    public void On_a_tape_in_inches_the_limit_is_an_eighth()
    {
        Piece[] pieces = [Cut("A1", TileSide.Left, Mm(300) - In(0, 1, 8), Mm(300) - In(0, 1, 8), "left")];

        var finding = Assert.Single(ShaveRules.Findings("bath", pieces.ToSequence(), Tape.Sixteenths));
        Assert.Equal(("more than 1/8 in taken off", "1/8 in"), (finding.Limit, finding.Value));
        Assert.Empty(ShaveRules.Findings("bath", pieces.ToSequence(), Tape.Millimetres));
    }

    [Fact]
    public void A_strip_that_widens_beyond_the_limit_and_one_that_no_one_would_cut_are_not_spoken_of() => Assert.Empty(ShaveRules.Findings(
        "bath", [Cut("A1", TileSide.Right, 295, 299, "right"), Cut("A2", TileSide.Top, Mm(200) - Length.FromSteps(300), Mm(200), "head")], Tape.Millimetres));

    private static Piece Cut(string id, TileSide away, long first, long last, string edge) => Cut(id, away, Mm(first), Mm(last), edge);

    private static Piece Cut(string id, TileSide away, Length first, Length last, string edge)
    {
        var cell = new Box(Length.Zero, Length.Zero, Mm(300), Mm(200));
        var along = away is TileSide.Left or TileSide.Right ? cell.Height : cell.Width;
        return new(id, PieceKind.Straight, "wall", 1, 1, "tile", cell, Ring.Of(cell), [], Mm(100), [new(away, first, last, Length.Zero, along, edge)]);
    }
}
