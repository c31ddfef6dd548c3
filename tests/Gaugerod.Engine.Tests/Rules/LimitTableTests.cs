using System.Text.RegularExpressions;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Rules;

/// <summary>The table of published limits: what every row owes a reader, and figures of other regions each beside its source.</summary>
public sealed class LimitTableTests
{
    [Fact]
    public void Every_limit_names_what_is_compared_a_number_a_source_and_what_to_do()
    {
        Assert.All(LimitTable.All, limit =>
        {
            Assert.All([limit.What, limit.Standard, limit.Do, limit.Words], text => Assert.NotEmpty(text));
            Assert.EndsWith(".", limit.Do, StringComparison.Ordinal);
            Assert.False(limit is { Least: null, Most: null, At: null }, limit.Key);
        });
    }

    [Fact]
    public void A_limit_from_memory_says_so_wherever_its_source_is_said() =>
        Assert.All(LimitTable.All.Where(limit => limit.Known == Known.FromMemory), limit => Assert.Contains("from memory", limit.Source, StringComparison.Ordinal));

    [Fact]
    public void No_limit_is_told_twice()
    {
        var twice = LimitTable.All.GroupBy(limit => (limit.Key, limit.Region, limit.At)).Where(alike => alike.Count() > 1).Select(alike => alike.Key);
        Assert.Empty(twice);
    }

    [Fact]
    public void Nothing_in_the_table_is_called_safe_or_compliant() =>
        Assert.All(LimitTable.All, limit => Assert.DoesNotMatch(new Regex("(?i)\\bsafe\\b|complian|complies"), limit.What + limit.Do + limit.Words + limit.Standard));

    [Fact]
    public void What_a_region_does_not_say_is_told_by_the_North_American_figure_and_as_such()
    {
        var ruling = LimitTable.For(Region.Britain, LimitKeys.FallLeast);
        Assert.Equal(Region.America, ruling.Limit.Region);
        Assert.EndsWith("; a North American figure, for none is held here for the United Kingdom", ruling.Source, StringComparison.Ordinal);
        Assert.DoesNotContain("North American", LimitTable.For(Region.Australia, LimitKeys.FallLeast).Source, StringComparison.Ordinal);
        Assert.DoesNotContain("North American", LimitTable.For(null, LimitKeys.FallLeast).Source, StringComparison.Ordinal);
    }

    // Source: pages on DIN 18202, table 3: row 3 at 1, 2 and 4 m 4, 6, 10 mm; row 4 3, 5, 9; row 6 5, 7, 10; row 7 3, 5, 8.
    [Theory]
    [InlineData(true, 10, 6, 4)]
    [InlineData(false, 10, 7, 5)]
    public void A_straightedge_of_two_metres_shows_six_millimetres_on_a_finished_floor_to_DIN_18202(bool isFloor, int four, int two, int one)
    {
        var limits = GapLimits.Of(Mm(600), isFloor, Tape.Millimetres, Region.Europe);
        Assert.Equal([(Mm(4000), Mm(four)), (Mm(2000), Mm(two)), (Mm(1000), Mm(one))], limits.Select(limit => (limit.Over, limit.Most)));
        Assert.All(limits, limit => Assert.Contains(isFloor ? "row 3" : "row 6", limit.Source, StringComparison.Ordinal));
        Assert.Equal(isFloor ? [9, 5, 3] : [8, 5, 3], FlatnessLimits.Agreed(Region.Europe, isFloor).Select(limit => (int)limit.Most.Number));
    }

    // Source: from memory, BS 8204 SR1: 3 mm under 2 m; a building adviser's page on AS 3958.1: 4 mm in 2 m.
    [Theory]
    [InlineData(Region.Britain, 3, true)]
    [InlineData(Region.Australia, 4, false)]
    public void Two_metres_of_floor_elsewhere(Region region, int most, bool isFromMemory)
    {
        var limit = Assert.Single(GapLimits.Of(Mm(600), true, Tape.Millimetres, region));
        Assert.Equal((Mm(2000), Mm(most)), (limit.Over, limit.Most));
        Assert.Equal(isFromMemory, limit.Source.Contains("from memory", StringComparison.Ordinal));
    }

    // Source: a building adviser's page on AS 3958.1: 1 mm at joints to 3 mm, else 2 mm, 1.5 mm for tile ground flat or polished.
    [Fact]
    public void Polished_tile_steps_by_a_millimetre_and_a_half_in_Australia()
    {
        Assert.Equal(1, LippageLimits.Of(Mm(3), Region.Australia).Most.Number);
        Assert.Null(LippageLimits.Polished(Mm(3), Region.Australia));
        Assert.Equal((2, 1.5), (LippageLimits.Of(Mm(4), Region.Australia).Most.Number, LippageLimits.Polished(Mm(4), Region.Australia)!.Most.Number));
    }

    // Source: from memory, BS 5385: 1 mm at joints under 6 mm, 2 mm from there on.
    [Theory]
    [InlineData(5, 1)]
    [InlineData(6, 2)]
    public void A_British_step_goes_by_a_joint_of_six_millimetres(int joint, int most) => Assert.Equal(most, LippageLimits.Of(Mm(joint), Region.Britain).Most.Number);

    // Source: from memory, DIN 18157 and DIN 18352: sides to 10 cm 1 to 3 mm, beyond 2 to 8 mm; BS 5385: floors 3 mm, walls 2 mm.
    [Theory]
    [InlineData(Region.Europe, 100, true, 1)]
    [InlineData(Region.Europe, 101, true, 2)]
    [InlineData(Region.Britain, 300, true, 3)]
    [InlineData(Region.Britain, 300, false, 2)]
    public void The_least_joint_elsewhere(Region region, int side, bool isFloor, int least) => Assert.Equal(least, JointLimits.Any(region, Mm(side), isFloor).Least.Number);

    // Source: trade association pages on TCNA EJ171: 25 ft inside, 12 ft in sun and moisture, 8 to 12 ft outside.
    [Theory]
    [InlineData(Exposure.Inside, "24' 10 3/4\"", true)]
    [InlineData(Exposure.Inside, "26'", false)]
    [InlineData(Exposure.Sun, "12' 1 1/4\"", false)]
    [InlineData(Exposure.Sun, "12'", true)]
    [InlineData(Exposure.Outside, "12' 1/16\"", false)]
    public void A_field_of_26_feet_inside_wants_a_soft_joint_and_one_of_24_9_does_not(Exposure exposure, string field, bool goesWithout) =>
        Assert.Equal(goesWithout, Assert.IsType<LengthReading.Understood>(LengthText.Read(field, LengthUnit.Inch)).Value <= MovementLimits.Of(Region.America, exposure, isFloor: true).Most.Length);

    // Source: the trade press on BS 5385-3:2024, outside 3 to 5 m; all else from memory: BS 5385 floors 10 m, walls 4.5 m; ZDB 8 m; AS 3958.1 4.5 m.
    [Theory]
    [InlineData(Region.Britain, Exposure.Inside, true, "10 m")]
    [InlineData(Region.Britain, Exposure.Outside, true, "5 m")]
    [InlineData(Region.Britain, Exposure.Inside, false, "4.5 m")]
    [InlineData(Region.Europe, Exposure.Inside, true, "8 m")]
    [InlineData(Region.Europe, Exposure.Inside, false, "25 ft")]
    [InlineData(Region.Europe, Exposure.Outside, true, "12 ft")]
    [InlineData(Region.Australia, Exposure.Sun, false, "4.5 m")]
    public void Fields_elsewhere_are_parted_sooner(Region region, Exposure exposure, bool isFloor, string most)
    {
        var ruling = MovementLimits.Of(region, exposure, isFloor);
        Assert.Equal(most, ruling.Most.ToString());
        Assert.Equal(most.EndsWith("ft", StringComparison.Ordinal), ruling.Source.Contains("a North American figure", StringComparison.Ordinal));
    }

    // Source: trade association page on ANSI A108.5, 3.3.2: 80 % dry, 95 % in showers and outside. AS 3958.1 from memory: 80 and 90 %.
    [Theory]
    [InlineData(null, "80 %", "95 %")]
    [InlineData(Region.America, "80 %", "95 %")]
    [InlineData(Region.Australia, "80 %", "90 %")]
    public void Mortar_holds_four_fifths_dry_and_nearly_all_where_it_is_wet(Region? region, string dry, string wet)
    {
        var limit = Assert.Single(MortarRules.Findings("floor", 4, Tape.Millimetres, region), finding => finding.Rule == "mortar-contact").Limit;
        Assert.Equal($"at least {dry} of the back where it is dry, {wet} in showers and outdoors, corners held", limit);
    }

    // Source: trade press on thin-set: 3/32 to 1/4 in embedded, mortar for large and heavy tile to 1/2 in.
    [Fact]
    public void Thin_set_lies_from_three_thirty_seconds_to_a_quarter() =>
        Assert.Equal(("3/32 in to 1/4 in", "at most 1/2 in"), (LimitTable.For(null, LimitKeys.MortarBed).Limit.Words, LimitTable.For(null, LimitKeys.MortarHeavy).Limit.Words));

    // Source: IRC P2709 as printed in 2021, 2 % and 4 %; 1/4 and 1/2 in per foot are 2.08 and 4.17 in a hundred by hand.
    [Fact]
    public void A_quarter_and_a_half_inch_in_a_foot_are_2_08_and_4_17_in_a_hundred()
    {
        Assert.Equal(2.08, 100 * LimitTable.For(null, LimitKeys.FallLeast).Least.Part, 0.005);
        Assert.Equal(4.17, 100 * LimitTable.For(null, LimitKeys.FallMost).Most.Part, 0.005);
        Assert.Equal("at least 1/4 in per ft (printed as 2 %)", LimitTable.For(null, LimitKeys.FallLeast).Limit.Words);
    }

    // Source: a paper on European standards for adhesives, EN 12004: C1 0.5 and C2 1.0 N/mm2.
    [Fact]
    public void Adhesive_of_class_C2_holds_a_newton_on_a_square_millimetre() =>
        Assert.Equal(("at least 0.5 N/mm²", "at least 1 N/mm²"), (LimitTable.For(Region.Europe, LimitKeys.AdhesiveC1).Limit.Words, LimitTable.For(Region.Europe, LimitKeys.AdhesiveC2).Limit.Words));

    private static Length Mm(int mm) => Length.FromMillimetres(mm);
}
