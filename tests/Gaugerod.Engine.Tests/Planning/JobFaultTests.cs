using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Planning;

/// <summary>What a run asks for that its tile or its faces cannot give.</summary>
public class JobFaultTests
{
    [Fact]
    public void A_smallest_cut_larger_than_the_tile_is_refused()
    {
        var fault = Assert.Single(JobCheck.Check(Wall(limits: new(Length.FromSteps(961_280), Mm(50), HalfTile: true))));
        Assert.Equal(new Fault("runs[0].limits.smallest", "300.4 mm", "a cut no larger than the tile, 300 mm", "300 mm"), fault);
    }

    [Fact]
    public void A_smallest_cut_as_large_as_the_tile_asks_for_no_cuts_and_is_let_be() =>
        Assert.Empty(JobCheck.Check(Wall(limits: new(Mm(300), Mm(50), HalfTile: true))));

    /// <summary>The field ends 3 mm under the ceiling, at 2397 mm; the tape shows whole millimetres.</summary>
    [Theory]
    [InlineData(7_671_040, "2397.2 mm", "2397 mm")]
    [InlineData(8_000_000, "2500 mm", "2397 mm")]
    [InlineData(6_400, "2 mm", "3 mm")]
    public void The_nearest_height_that_would_do_is_not_the_one_that_was_found(long steps, string found, string nearest)
    {
        var fault = Assert.Single(JobCheck.Check(Wall(wants: [new Want.JointAtHeight("wall", Length.FromSteps(steps), Must: false, 1)])));
        Assert.Equal(("runs[0].wants[0].height", found, nearest), (fault.Path, fault.Found, fault.Nearest));
    }

    private static Job Wall(Sequence<Want>? wants = null, Limits? limits = null) =>
        OneWall.Job(Mm(2400), Mm(2400), Mm(3), Mm(300), JointRange.Only(Mm(3)), Tape.Millimetres, wants, limits);

    private static Length Mm(long millimetres) => Length.FromMillimetres(millimetres);
}
