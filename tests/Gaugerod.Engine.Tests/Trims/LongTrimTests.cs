using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane;
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

    /// <summary>A line twice as long has twice the pieces, and each is looked up where it falls: the work grows as the line does.</summary>
    [Theory]
    [InlineData(0)]
    [InlineData(3)]
    public void What_a_line_costs_to_search_grows_as_it_does_and_not_with_its_square(int joint)
    {
        foreach (var twice in new[] { 0, Mm(1).Steps, Mm(2).Steps })
        {
            var looks = new[] { 10, 20, 40 }.Select(metres => Looks(metres, joint, twice)).ToList();
            Assert.InRange(looks[1], looks[0], 2.2 * looks[0]);
            Assert.InRange(looks[2], looks[1], 2.2 * looks[1]);
        }
    }

    /// <summary>The greatest stagger by hand: pieces of 5 mm without a joint are 5 apart, so that of two beside a joint of the field one is 2 1/2 mm off at most.</summary>
    [Fact]
    public void Forty_metres_of_five_millimetre_pieces_keep_the_stagger_that_two_metres_keep()
    {
        Assert.Equal(Mm(5).Steps, JointPlacing.GreatestStagger(Line(2, 0)));
        Assert.Equal(Mm(5).Steps, JointPlacing.GreatestStagger(Line(40, 0)));
        // Left whole, pieces of 5 end every 5 mm beside courses of 200, whose joint of 3 has its middle 1 1/2 mm before a piece's end: twice that is 3.
        var best = JointPlacing.Best(Line(40, 0), TrimJoints.Staggered, 0)!;
        Assert.Equal((0, 8000, Mm(3).Steps), (best.Cost.Cuts, best.Cost.Pieces, best.Stagger(Line(40, 0))));
    }

    private static double Looks(int metres, int joint, long twice)
    {
        var line = Line(metres, joint);
        return PlaceSearch.Find(JointPlacing.Problem(line, line.Clear(twice)))!.Looks;
    }

    private static TrimLine Line(int metres, int joint) => new(
        Mm(metres * 1000).Steps, TrimEnd.Hidden, TrimEnd.Hidden, Mm(5).Steps, Mm(joint).Steps, Mm(1).Steps,
        Enumerable.Range(1, metres * 5).Select(i => new FieldJoint(Mm((200 * i) - 3).Steps, Mm(200 * i).Steps)).ToSequence());

    private static Job Wall(TrimProduct trim) => Job(
        Ring.Of(new Box(Length.Zero, Length.Zero, Mm(30_000), Mm(600))), [new("foot", EdgeKind.Floor), new("right", EdgeKind.InsideCorner), Trimmed("head", trim, TrimJoints.Free), new("left", EdgeKind.InsideCorner)], [], trim,
        new("tile", Mm(297), Mm(147), Mm(8)), Mm(3), new BondRequest.Grid(Lay.Level));
}
