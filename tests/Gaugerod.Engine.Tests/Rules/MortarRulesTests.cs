using Gaugerod.Engine.Rules;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Rules;

/// <summary>Source: trade press on thin-set and medium beds (3/32 to 1/4 in embedded, to 1/2 in of mortar for large and heavy tile); ANSI A108.5, 3.3.2, for contact.</summary>
public sealed class MortarRulesTests
{
    [Theory]
    [InlineData(3, 32, null)]
    [InlineData(1, 4, null)]
    [InlineData(1, 16, "thinner")]
    [InlineData(5, 16, "for large and heavy tile")]
    [InlineData(1, 2, "for large and heavy tile")]
    [InlineData(5, 8, "thicker than such beds")]
    public void A_bed_is_held_against_what_thin_set_is_meant_for(int of, int parts, string? words)
    {
        var warnings = MortarRules.Findings("walls", 25.4 * of / parts, Tape.Sixteenths).Where(finding => finding.Level == FindingLevel.Warn).ToList();
        if (words is null) Assert.Empty(warnings);
        else Assert.Contains(words, Assert.Single(warnings).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_tile_s_back_must_hold_is_always_said()
    {
        var note = Assert.Single(MortarRules.Findings("walls", 4, Tape.Millimetres));
        Assert.Equal("at least 80 % of the back where it is dry, 95 % in showers and outdoors, corners held", note.Limit);
    }
}
