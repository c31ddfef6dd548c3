using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Referees.RoundFaces;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rules;

/// <summary>
/// What is said of tile on a cone, against the round cone by hand: a diagonal d whose ends lie r from the drain stands off by
/// s (r - sqrt(r² - d²/4)). The fall of 1 in 48 is IRC P2709's 1/4 in a foot; what a corner may stand off is ANSI A108.02-2013,
/// 4.3.7: 1/32 in, 0.79 mm, at a joint under 1/4 in.
/// </summary>
public sealed class ConeRulesTests
{
    [Theory]
    [InlineData(100, 50)]
    [InlineData(300, 200)]
    [InlineData(424, 500)]
    public void A_diagonal_on_a_round_cone_stands_off_by_what_the_closed_form_has(long diagonal, long middle)
    {
        var cone = new Cone("drain", At(600, 600), Mm(50), ["side"], [.. Circle(600, 600, 600).Points, Circle(600, 600, 600).Points[0]], Mm(600));
        var shape = new ConeShape(cone, 600 * 3200 / 48.0);
        var ends = Math.Sqrt((middle * middle) + (diagonal * diagonal / 4.0));
        var hand = (ends - Math.Sqrt((ends * ends) - (diagonal * diagonal / 4.0))) / 48;
        // The rim is chords that stand a tenth of a millimetre off it: 1 in 6000 of its radius.
        Assert.All(shape.Ways(64), way => Assert.Equal(hand, shape.Hollow(way, middle * 3200, diagonal * 3200) / 3200, 0.02));
    }

    [Fact]
    public void Mosaic_follows_a_round_floor_and_large_tile_is_said_to_follow_it_from_where_the_closed_form_has_it()
    {
        var small = Finding(new("chip", Mm(48), Mm(48), Mm(6)));
        Assert.Equal(FindingLevel.Note, small.Level);
        var large = Finding(new("tile", Mm(297), Mm(297), Mm(9)));
        Assert.Equal(FindingLevel.Warn, large.Level);
        // d = 420; over 0.79375 at 1 in 48 with its middle nearer than d²/(8 s^-1 0.79375) less half of 0.79375/s: 578.8 less 19.05 ... 560.
        Assert.Contains("nearer than 5", large.Text, StringComparison.Ordinal);
        var middle = double.Parse(large.Text.Split("nearer than ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.InRange((Math.Sqrt((middle * middle) + (210 * 210)) - middle) / 48, 0.79375 - 0.02, 0.79375 + 0.02);
        // At the rim of the drain, 50 from its middle: ends at most 50 + 48 * 0.79375 = 88.1 from it, so a diagonal of 145 and sides of 102.
        Assert.Contains("up to 102 mm", large.Text, StringComparison.Ordinal);
        Assert.Contains("A108.02", large.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_is_judged_by_its_chips() =>
        Assert.Equal(FindingLevel.Note, Finding(new("sheet", Mm(298), Mm(298), Mm(6)), new BondRequest.Mosaic(6, 6)).Level);

    private static Finding Finding(Product product, BondRequest? bond = null)
    {
        var ring = Circle(600, 600, 600);
        var face = One(new Face("floor", new FaceShape.Outline(ring, Every(ring, Stop("side")), default), [], [new("drain", At(600, 600), Mm(100))]));
        var remarks = new Remarks(Tape.Millimetres);
        var cut = Assert.Single(FoldedFloor.Of(face, new("drain", []), Mm(2), "faces[0]", remarks)!.Cut(face, remarks));
        var facts = new RunFacts("floor", product, bond ?? new BondRequest.Grid(Lay.Level), Mm(2), new(null, Mm(30), HalfTile: false), Tape.Millimetres, 1, Mm(50), 0, false, []);
        return Assert.Single(ConeRules.Findings(cut, facts));
    }
}
