using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Tests.Cutting;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Rules;

/// <summary>How far sizes may differ at one setting of the fence. That a joint hides so much is common practice, no source.</summary>
public sealed class FenceRulesTests
{
    private static readonly RunFacts Wall = new("wall", Make.Tile(200, 100), new BondRequest.Grid(Lay.Level), Make.Mm(3), new(null, Make.Mm(30), HalfTile: false), Tape.Millimetres, 1, Make.Mm(50), 0, false, []);

    [Fact]
    public void Pieces_that_may_come_out_shorter_than_a_joint_hides_are_told_of()
    {
        var finding = Assert.Single(FenceRules.Findings(Make.Mm(4), Wall));
        Assert.EndsWith("Nearest: 3 mm.", finding.Text, StringComparison.Ordinal);
        Assert.Equal("4 mm", finding.Value);
    }

    [Fact]
    public void What_a_joint_hides_is_not_told_of() => Assert.Empty(FenceRules.Findings(Make.Mm(3), Wall));
}
