using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Trims.TrimmedWall;

namespace Gaugerod.Engine.Tests.Trims;

/// <summary>Trims of more pieces than a wall has: a slip in the unit, most likely.</summary>
public sealed class LongTrimTests
{
    [Fact]
    public void Thousands_of_pieces_along_one_edge_are_refused_with_the_edge_unless_a_large_job_is_asked_for()
    {
        // 30 m less two joints of 3, in pieces of 5 mm with a joint of 3.
        var trim = Bullnose with { Stock = Mm(5), Width = Mm(5), Least = Mm(1) };
        var job = Wall(trim);
        var fault = Assert.Single(JobCheck.Check(job));
        Assert.Equal(
            ("trims[0].length", "about 3749 pieces along head of 'wall'", "at most 2000 pieces of trim along an edge, unless a large job is asked for (--large)", "look for a length in the wrong unit"),
            (fault.Path, fault.Found, fault.Expected, fault.Nearest));
        Assert.Empty(JobCheck.Check(job, large: true));
        Assert.Empty(JobCheck.Check(Wall(Bullnose)));
    }

    private static Job Wall(TrimProduct trim) => Job(
        Ring.Of(new Box(Length.Zero, Length.Zero, Mm(30_000), Mm(600))), [new("foot", EdgeKind.Floor), new("right", EdgeKind.InsideCorner), Trimmed("head", trim, TrimJoints.Free), new("left", EdgeKind.InsideCorner)], [], trim,
        new("tile", Mm(297), Mm(147), Mm(8)), Mm(3), new BondRequest.Grid(Lay.Level));
}
