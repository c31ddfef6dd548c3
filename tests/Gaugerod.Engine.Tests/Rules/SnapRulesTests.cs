using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rules;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Cutting.Make;

namespace Gaugerod.Engine.Tests.Rules;

/// <summary>What a score can and cannot do (common practice, no source).</summary>
public sealed class SnapRulesTests
{
    [Fact]
    public void A_notch_and_a_strip_too_narrow_are_named_with_what_helps()
    {
        var tile = Tile(600, 300, kerf: 0) with { Snaps = Mm(10) };
        var whole = Whole(tile, "A3");
        var notch = whole with
        {
            Id = "A4", Kind = PieceKind.Notch,
            Outline = new([new(Mm(0), Mm(0)), new(Mm(600), Mm(0)), new(Mm(600), Mm(200)), new(Mm(400), Mm(200)), new(Mm(400), Mm(300)), new(Mm(0), Mm(300))]),
        };
        Piece[] pieces = [Straight(tile, "A1", TileSide.Right, Mm(200)), Straight(tile, "A2", TileSide.Right, Mm(9)), whole, notch, Straight(tile, "A5", TileSide.Top, Mm(295))];
        var findings = SnapRules.Findings(tile, [.. pieces], Tape.Millimetres).ToList();
        Assert.Equal(2, findings.Count);
        Assert.Contains("A4", findings[0].Text, StringComparison.Ordinal);
        Assert.Contains("A2, A5 (the edge on wall). Nearest that snaps: 10 mm kept or taken off.", findings[1].Text, StringComparison.Ordinal);
        Assert.Equal("5 mm", findings[1].Value);
        Assert.Empty(SnapRules.Findings(tile with { Snaps = null }, [.. pieces], Tape.Millimetres));
    }

    // 160 kept of 300 leaves 140: whatever is kept, one of the two strips is under 160.
    [Fact]
    public void Of_a_side_shorter_than_two_least_strips_only_a_whole_tile_is_named_as_the_nearest()
    {
        var tile = Tile(600, 300, kerf: 0) with { Snaps = Mm(160) };
        var finding = Assert.Single(SnapRules.Findings(tile, [Straight(tile, "A1", TileSide.Top, Mm(150))], Tape.Millimetres));
        Assert.Contains("Nearest that snaps: a whole tile, for no score of a side under 320 mm leaves two such strips.", finding.Text, StringComparison.Ordinal);
        finding = Assert.Single(SnapRules.Findings(tile, [Straight(tile, "A1", TileSide.Right, Mm(150))], Tape.Millimetres));
        Assert.Contains("Nearest that snaps: 160 mm kept or taken off.", finding.Text, StringComparison.Ordinal);
    }
}
