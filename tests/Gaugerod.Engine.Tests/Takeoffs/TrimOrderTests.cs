using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Tests.Trims;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Takeoffs;

/// <summary>What is bought of a trim, reckoned by hand: common practice, no source.</summary>
public sealed class TrimOrderTests
{
    /// <summary>997 mm in pieces of 297 with joints of 3: three whole ones and one of 97. With 2 for breakage and 3 spares they are 9; a tenth of that on top is 0.9, so one more.</summary>
    [Theory]
    [InlineData(0, 0, null, 4, 0, "4 by the trim plan; no fewer would do")]
    [InlineData(2, 3, null, 9, 0, "4 by the trim plan, 2 for breakage, 3 to leave with the client; no fewer would do")]
    [InlineData(2, 3, 10, 10, 1, "4 by the trim plan, 2 for breakage, 3 to leave with the client, 1 for the 10 % asked for; no fewer would do")]
    public void Breakage_spares_and_a_flat_share_come_on_top_of_the_trim_plan(int breakage, int spares, int? percent, int need, int flat, string basis)
    {
        var trim = TrimmedWall.Bullnose with { Breakage = breakage, Spares = spares, FlatPercent = percent };
        var job = TrimmedWall.Job(
            Ring.Of(new Box(Length.Zero, Length.Zero, Length.FromMillimetres(1003), Length.FromMillimetres(600))),
            [new("foot", EdgeKind.Floor), new("right", EdgeKind.InsideCorner), TrimmedWall.Trimmed("head", trim, TrimJoints.Free), new("left", EdgeKind.InsideCorner)], [], trim,
            new("tile", Length.FromMillimetres(197), Length.FromMillimetres(197), Length.FromMillimetres(8)), Length.FromMillimetres(3), new BondRequest.Grid(Lay.Level));
        var line = Planner.Plan(job).Order.Single(order => order.Item == "trim");
        Assert.Equal((need, "piece", 4, breakage, spares, flat, need, 0, basis), (line.Need, line.Unit, line.Planned, line.Breakage, line.Spares, line.Flat, line.Packs, line.Over, line.Basis));
    }
}
