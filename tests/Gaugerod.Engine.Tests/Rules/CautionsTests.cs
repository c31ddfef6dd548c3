using System.Text.RegularExpressions;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Rules;

public class CautionsTests
{
    // Worked by hand at 2.4 g/cm3: 30.48 x 60.96 x 0.9525 cm = 1769.8 cm3, 4.247 kg or 9.36 lb; eight of them 74.9 lb.
    private static readonly Product Plank = new("plank", Length.FromInches(24), Length.FromInches(12), Length.FromInches(0, 3, 8)) { PerBox = 8 };

    private static readonly CautionFacts Planks = new(null, Tape.Sixteenths, [Plank]);

    [Fact]
    public void A_box_of_eight_planks_is_more_than_one_person_lifts()
    {
        var finding = Assert.Single(Cautions.Findings(Planks), f => f.Rule == "caution-lifting");
        Assert.Equal(("about 75 lb a box", "51 lb in the best posture"), (finding.Value, finding.Limit));
        Assert.StartsWith("A box weighs more than one person should lift.", finding.Text, StringComparison.Ordinal);
    }

    // Worked by hand at 2.4 g/cm3: 60 x 60 x 0.9 cm = 3240 cm3, 7.776 kg.
    [Fact]
    public void A_single_tile_of_600_mm_is_about_8_kg()
    {
        var tile = new Product("field", Length.FromMillimetres(600), Length.FromMillimetres(600), Length.FromMillimetres(9));
        Assert.Equal(7776m, Lifting.BoxGrams(tile));
        Assert.Equal("about 8 kg a box", Assert.Single(Cautions.Findings(new(null, Tape.Millimetres, [tile])), f => f.Rule == "caution-lifting").Value);
    }

    [Fact]
    public void Without_a_thickness_no_weight_is_guessed() =>
        Assert.Equal(
            "not known without the thickness",
            Assert.Single(Cautions.Findings(Planks with { Products = [Plank with { Thickness = Length.Zero }] }), f => f.Rule == "caution-lifting").Value);

    // Source: NIOSH lifting equation, load constant 23 kg, from memory (NIOSH publication 94-110); in pounds 50.7 by hand.
    [Theory]
    [InlineData("50 lb bag", false)]
    [InlineData("60 lb bag", true)]
    [InlineData("23 kg bag", false)]
    [InlineData("25 kg bag", true)]
    [InlineData("bag", false)]
    [InlineData("3 gal pail", false)]
    public void A_bag_of_60_pounds_is_more_than_one_person_lifts(string pack, bool isHeavy)
    {
        var facts = Planks with { Region = Region.America, Supplies = [new("mortar", SupplyKind.Mortar, pack, 10)] };
        Assert.Equal(isHeavy, Cautions.OfTask(CautionTask.Setting, facts).Any(finding => finding is { Rule: "caution-lifting", Where: "mortar" }));
    }

    [Fact]
    public void Dust_current_blade_cement_and_old_work_are_cautioned_of_and_none_is_a_stop()
    {
        var findings = Cautions.Findings(Planks with { Products = [] });
        Assert.Equal(["caution-dust", "caution-electricity", "caution-saw", "caution-cement", "caution-old-work"], findings.Select(f => f.Rule));
        Assert.All(findings, f => Assert.Equal(FindingLevel.Note, f.Level));
    }

    // Source: a construction safety research page on silica and 29 CFR 1926.1153: limit 50, action level 25 µg/m3.
    [Fact]
    public void The_silica_limits_are_named() =>
        Assert.Equal("50 µg/m³ of air over 8 hours, action from 25 µg/m³", Cautions.Findings(Planks)[0].Limit);

    // Source: California's print of the federal table (8 CCR 1532.3), handheld power saw: indoors APF 10 for 4 h or less; outside none, APF 10 for longer.
    [Theory]
    [InlineData(Air.Inside, 1, 10)]
    [InlineData(Air.Inside, 6, 10)]
    [InlineData(Air.Outside, 1, 0)]
    [InlineData(Air.Outside, 4, 0)]
    [InlineData(Air.Outside, 4.5, 10)]
    public void A_handheld_wet_saw_indoors_for_an_hour_asks_for_a_mask_of_ten(Air air, double hours, int factor) =>
        Assert.Equal(factor, Assert.Single(SilicaTask.All, task => task.Tool == "handheld saw" && task.Air == air).Mask(hours));

    [Fact]
    public void Who_saws_in_America_is_told_which_mask_each_tool_asks_for()
    {
        var finding = Assert.Single(Cautions.OfTask(CautionTask.Cutting, Planks with { Region = Region.America }), f => f.Rule == "caution-mask");
        Assert.Contains("handheld saw, indoors, water fed to the blade: APF 10; ", finding.Limit, StringComparison.Ordinal);
        Assert.Contains("handheld saw, outside, water fed to the blade: none to 4 h a day, APF 10 for longer; ", finding.Limit, StringComparison.Ordinal);
        Assert.Contains("from memory", finding.Source, StringComparison.Ordinal);
        Assert.DoesNotContain(Cautions.OfTask(CautionTask.Cutting, Planks with { Region = Region.Britain }), f => f.Rule == "caution-mask");
    }

    // Source: a training page on 40 CFR 745: 6 ft2 a room inside is a minor repair, more is not.
    [Theory]
    [InlineData(6, true)]
    [InlineData(7, false)]
    public void Six_square_feet_of_old_paint_in_a_room_are_a_minor_repair_and_seven_are_not(double feet, bool isMinor)
    {
        var facts = Planks with { Region = Region.America, Area = feet * 92_903.04 };
        var finding = Assert.Single(Cautions.OfTask(CautionTask.TearOut, facts), f => f.Rule == "caution-lead");
        Assert.Equal(isMinor, finding.Text.Contains("no more than a minor repair", StringComparison.Ordinal));
        Assert.Equal(!isMinor, finding.Text.Contains("a certified firm does it", StringComparison.Ordinal));
        Assert.Equal(("minor repair: to 6.00 ft² a room inside, 20.0 ft² outside", $"faces of {feet}.00 ft²"), (finding.Limit, finding.Value));
    }

    [Theory]
    [InlineData(Region.Britain)]
    [InlineData(Region.Europe)]
    [InlineData(Region.Australia)]
    public void No_American_figure_stands_for_another_regions_law(Region region)
    {
        var findings = Cautions.Findings(Planks with { Region = region });
        Assert.DoesNotContain(findings, f => f.Rule == "caution-lead");
        Assert.All(findings, f => Assert.DoesNotMatch("CFR|IRC", f.Limit + f.Source));
        Assert.Equal($"as the law of {RegionWords.Long(region)} has it; no figure is held here", Assert.Single(findings, f => f.Rule == "caution-dust").Limit);
        Assert.Contains("an American figure", Assert.Single(findings, f => f.Rule == "caution-lifting").Source, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_task_has_its_cautions_and_a_strange_one_has_none()
    {
        foreach (var region in Enum.GetValues<Region>().Select(region => (Region?)region).Append(null))
        {
            Assert.All(CautionTask.All, task => Assert.NotEmpty(Cautions.OfTask(task, Planks with { Region = region })));
            Assert.Empty(Cautions.OfTask("whistling", Planks with { Region = region }));
        }

        Assert.Equal(["caution-old-work", "caution-lead", "caution-hidden"], Cautions.OfTask(CautionTask.TearOut, Planks with { Region = Region.America }).Take(3).Select(f => f.Rule));
        Assert.Contains(Cautions.OfTask(CautionTask.Membrane, Planks), f => f.Rule == "caution-water");
        Assert.Contains(Cautions.OfTask(CautionTask.Glass, Planks), f => f.Rule == "caution-glass");
    }

    [Fact]
    public void A_plan_of_a_named_region_tells_every_caution_once()
    {
        var findings = Cautions.Findings(Planks with { Region = Region.America, Area = 1 });
        Assert.Equal(findings.Select(f => f.Rule).Distinct(), findings.Select(f => f.Rule));
        Assert.Equal(CautionTask.All.SelectMany(CautionTask.Rules).Distinct().Order(), findings.Select(f => f.Rule).Order());
    }

    [Fact]
    public void No_caution_calls_anything_safe_or_compliant()
    {
        var findings = Enum.GetValues<Region>().SelectMany(region => Cautions.Findings(Planks with { Region = region, Area = 1e6 })).Concat(Cautions.Findings(Planks));
        Assert.All(findings, f => Assert.DoesNotMatch(new Regex(@"(?i)\bsafe\b|complian|complies"), f.Text + f.Limit + f.Value));
        Assert.All(findings, f => Assert.NotEmpty(f.Source));
    }
}
