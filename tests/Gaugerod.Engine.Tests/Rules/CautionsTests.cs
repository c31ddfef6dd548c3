using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Rules;

public class CautionsTests
{
    // Worked by hand at 2.4 g/cm3: 30.48 x 60.96 x 0.9525 cm = 1769.8 cm3, 4.247 kg or 9.36 lb; eight of them 74.9 lb.
    private static readonly Product Plank = new("plank", Length.FromInches(24), Length.FromInches(12), Length.FromInches(0, 3, 8)) { PerBox = 8 };

    [Fact]
    public void A_box_of_eight_planks_is_more_than_one_person_lifts()
    {
        var finding = Assert.Single(Cautions.Findings(Tape.Sixteenths, [Plank]), f => f.Rule == "caution-lifting");
        Assert.Equal(("about 75 lb a box", "51 lb in the best posture"), (finding.Value, finding.Limit));
        Assert.StartsWith("A box weighs more than one person should lift.", finding.Text, StringComparison.Ordinal);
    }

    // Worked by hand at 2.4 g/cm3: 60 x 60 x 0.9 cm = 3240 cm3, 7.776 kg.
    [Fact]
    public void A_single_tile_of_600_mm_is_about_8_kg()
    {
        var tile = new Product("field", Length.FromMillimetres(600), Length.FromMillimetres(600), Length.FromMillimetres(9));
        Assert.Equal(7776m, Cautions.BoxGrams(tile));
        Assert.Equal("about 8 kg a box", Assert.Single(Cautions.Findings(Tape.Millimetres, [tile]), f => f.Rule == "caution-lifting").Value);
    }

    [Fact]
    public void Without_a_thickness_no_weight_is_guessed() =>
        Assert.Equal(
            "not known without the thickness",
            Assert.Single(Cautions.Findings(Tape.Sixteenths, [Plank with { Thickness = Length.Zero }]), f => f.Rule == "caution-lifting").Value);

    [Fact]
    public void Dust_current_blade_cement_and_old_work_are_cautioned_of_and_none_is_a_stop()
    {
        var findings = Cautions.Findings(Tape.Sixteenths, []);
        Assert.Equal(["caution-dust", "caution-electricity", "caution-saw", "caution-cement", "caution-old-work"], findings.Select(f => f.Rule));
        Assert.All(findings, f => Assert.Equal(FindingLevel.Note, f.Level));
    }

    // Source: a construction safety research page on silica and 29 CFR 1926.1153: limit 50, action level 25 µg/m3.
    [Fact]
    public void The_silica_limits_are_named() =>
        Assert.Equal("50 µg/m³ of air over 8 hours, action from 25 µg/m³", Cautions.Findings(Tape.Sixteenths, [])[0].Limit);
}
