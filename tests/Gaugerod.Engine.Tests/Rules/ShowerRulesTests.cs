using CsCheck;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using static Gaugerod.Engine.Tests.Bases.Beds;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rules;

public sealed class ShowerRulesTests
{
    // Source: a page of bath design standards on IRC P2708.1: 900 in2 and 30 in at the least; 30 by 30 keeps it, 28 by 34 has 952 in2 and is too narrow (by hand).
    [Theory]
    [InlineData(30, 30, FindingLevel.Note, FindingLevel.Note)]
    [InlineData(28, 34, FindingLevel.Note, FindingLevel.Warn)]
    [InlineData(29, 31, FindingLevel.Warn, FindingLevel.Warn)]
    [InlineData(36, 60, FindingLevel.Note, FindingLevel.Note)]
    public void A_shower_has_900_square_inches_and_a_round_of_30_inches_fits(double width, double depth, FindingLevel area, FindingLevel round)
    {
        var findings = Said(width, depth, Region.America);
        Assert.Equal([area, round], findings.Where(finding => finding.Rule == "shower").Take(2).Select(finding => finding.Level));
        Assert.Equal($"{width * depth} in²", findings[0].Value);
        Assert.Equal("at least 900 in²", findings[0].Limit);
    }

    [Fact]
    public void Elsewhere_the_size_of_a_shower_is_told_by_the_North_American_figure_and_as_such() =>
        Assert.All(Said(28, 34, Region.Britain), finding => Assert.Contains("a North American figure, for none is held here for the United Kingdom", finding.Source, StringComparison.Ordinal));

    [Fact]
    public void Both_times_of_the_flood_test_are_shown()
    {
        var test = Assert.Single(Said(36, 60, Region.America), finding => finding.Rule == "flood-test");
        Assert.Equal("at least 2 in of water at the threshold for 15 min; 24 h as many places and the trade have it", test.Limit);
        Assert.Contains("ASTM D5957, 24 to 72 h, from memory", test.Source, StringComparison.Ordinal);
    }

    // Source: an inspectors' page on IRC P2709: from 2 to 9 in over the drain; 1.9 and 9.1 are not.
    [Theory]
    [InlineData("1 9/10", FindingLevel.Warn)]
    [InlineData("2", FindingLevel.Note)]
    [InlineData("9", FindingLevel.Note)]
    [InlineData("9 1/10", FindingLevel.Warn)]
    public void A_curb_stands_two_to_nine_inches_over_the_drain(string curb, FindingLevel level)
    {
        var bed = Make(Shower(36, 60, 18, 30, new(In(1)) { Curb = Assert.IsType<LengthReading.Understood>(LengthText.Read(curb, LengthUnit.Inch)).Value }));
        var finding = Assert.Single(BedRules.Findings(bed, Tape.Sixteenths, Region.America), finding => finding.Text.Contains("curb", StringComparison.Ordinal));
        Assert.Equal(level, finding.Level);
        Assert.Equal(level == FindingLevel.Warn, finding.Text.Contains("Build the curb higher or lower", StringComparison.Ordinal));
    }

    // Source: from memory, NCC 2022 and AS 3740:2021: 1 in 80 to 1 in 50. A bed of 1/4 in per foot, 1 in 48, is steeper than 1 in 50 everywhere.
    [Fact]
    public void A_bed_of_a_quarter_inch_in_a_foot_is_steeper_than_Australia_has_it()
    {
        var bed = Make(Shower(36, 60, 18, 30, new(In(1)) { Perimeter = Perimeter.Constant }));
        var falls = BedRules.Findings(bed, Tape.Millimetres, Region.Australia).Where(finding => finding.Limit.Contains("printed as", StringComparison.Ordinal)).ToList();
        Assert.Equal([FindingLevel.Note, FindingLevel.Warn], falls.Select(finding => finding.Level));
        Assert.Equal(["at least 12.5 mm per metre, 1.25 % (printed as 1:80)", "at most 20 mm per metre, 2.00 % (printed as 1:50)"], falls.Select(finding => finding.Limit));
        Assert.All(falls, finding => Assert.Contains("from memory", finding.Source, StringComparison.Ordinal));
    }

    // The widest round of a rectangle is as wide as its shorter side; of a triangle twice its area by half its girth.
    [Fact]
    public void The_widest_round_of_rectangles_and_triangles_is_that_of_the_school_book() => Gen.Select(Gen.Int[300, 4000], Gen.Int[300, 4000], Gen.Int[-3000, 3000]).Each(
        (width, height, aside) =>
        {
            Assert.InRange(WidestDisc.On(RingOf((0, 0), (width, 0), (width, height), (0, height))), Math.Min(width, height) - 0.5, Math.Min(width, height) + 1e-6);
            var (a, b) = (Math.Sqrt(((double)aside * aside) + ((double)height * height)), Math.Sqrt(((double)(width - aside) * (width - aside)) + ((double)height * height)));
            var inscribed = 2.0 * width * height / (width + a + b);
            Assert.InRange(WidestDisc.On(RingOf((0, 0), (width, 0), (aside, height))), inscribed - 0.5, inscribed + 1e-6);
        },
        iter: 300);

    // By hand: in the inner corner of an L of arms 1000 wide on 2000 the round touches both outer sides and the corner: r (1 + 1/sqrt 2) sqrt 2 = 1000 sqrt 2.
    [Fact]
    public void In_the_corner_of_an_L_a_wider_round_fits_than_in_its_arms() =>
        Assert.Equal(2 * 1000 / (1 + Math.Sqrt(0.5)), WidestDisc.On(RingOf((0, 0), (2000, 0), (2000, 1000), (1000, 1000), (1000, 2000), (0, 2000))), 0.5);

    [Theory]
    [InlineData(60, FindingLevel.Warn)]
    [InlineData(72, FindingLevel.Note)]
    public void A_membrane_that_stops_under_six_feet_is_warned_of(int height, FindingLevel level)
    {
        // Source: a code writer's answer on IRC R307.2: not under 6 ft above the floor.
        var wall = Shower(36, 60, 18, 30, new(In(1))) with { Under = new() { Membrane = new("membrane", 2) { To = In(height) } } };
        var finding = Assert.Single(ShowerRules.Wall(wall, Region.America, Tape.Sixteenths));
        Assert.Equal((level, "at least 72 in"), (finding.Level, finding.Limit));
    }

    private static List<Finding> Said(double width, double depth, Region region)
    {
        var floor = Shower(width, depth, width / 2, depth / 2, new(In(1)) { Perimeter = Perimeter.Constant });
        return [.. ShowerRules.Findings(Make(floor), FaceDrawing.Draw(new(0, floor), new(Tape.Sixteenths))!.Outline.Ring, region, Tape.Sixteenths)];
    }

    private static Ring RingOf(params (int X, int Y)[] corners) => new([.. corners.Select(corner => new Point(Length.FromMillimetres(corner.X), Length.FromMillimetres(corner.Y)))]);
}
