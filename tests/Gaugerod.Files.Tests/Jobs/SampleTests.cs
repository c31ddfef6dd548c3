using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Tests.Jobs;

/// <summary>What stands in a file arrives in the job, length for length. The values are the samples' own.</summary>
public class SampleTests
{
    [Theory]
    [InlineData("guest-shower")]
    [InlineData("cloakroom")]
    [InlineData("plain-wall")]
    public void A_sample_is_read_and_says_that_it_is_invented(string name) => Assert.Contains("invented", Samples.Job(name).Note, StringComparison.Ordinal);

    [Fact]
    public void The_plain_wall_needs_little_and_the_rest_is_what_is_usual()
    {
        var mm = Length.FromMillimetres;
        var wall = new FaceShape.Read(
            new FaceReadings(new(mm(2400), null, null), new(mm(1200), null), null, new(null, null)),
            new Edge("foot", EdgeKind.Floor), new Edge("right", EdgeKind.InsideCorner), new Edge("head", EdgeKind.Ceiling), new Edge("left", EdgeKind.InsideCorner), []);
        var wants = Sequence.Of<Want>(
        [
            new Want.EqualCuts(new("wall", "left"), new("wall", "right"), false, 1),
            new Want.EqualCuts(new("wall", "foot"), new("wall", "head"), false, 1),
        ]);
        var expected = new Job(
            "Plain wall", "An invented wall, true and square, small enough to check by hand.", Tape.Millimetres, Paper.A4, mm(3),
            [new Product("tile", mm(300), mm(300), mm(8)) { BondCoat = mm(3), PerBox = 10, Kerf = Length.FromSteps(16 * 320) }],
            [new Face("wall", wall, [], [])],
            [
                new RunRequest(
                    "wall", "tile", ["wall"], new BondRequest.Grid(Lay.Level), Corners.Wrap, JointRange.Only(mm(3)), null, new Limits(null, mm(50), true), wants,
                    [Criterion.Musts, Criterion.Wishes, Criterion.Slivers, Criterion.Smallest, Criterion.Mirror, Criterion.Cuts, Criterion.Tiles]),
            ]);
        Assert.Equal(expected, Samples.Job("plain-wall"));
    }

    [Fact]
    public void Feet_and_inches_are_read_to_the_step()
    {
        var job = Samples.Job("guest-shower");
        var north = Assert.IsType<FaceShape.Read>(job.Faces[1].Shape);
        Assert.Equal(new WidthReadings(Length.FromInches(60, 1, 4), Length.FromInches(60, 1, 8), Length.FromInches(60, 1, 16)), north.Readings.Width);
        Assert.Equal(new LeanReadings(-Length.FromInches(0, 3, 16), Length.Zero), Assert.IsType<FaceShape.Read>(job.Faces[2].Shape).Readings.Lean);
        Assert.Equal(new Tape(LengthUnit.Inch, Length.FromInches(0, 1, 16)), job.Tape);
        Assert.Equal(Paper.Letter, job.Paper);
        Assert.Equal(new JointRange(Length.FromInches(0, 1, 16), Length.FromInches(0, 1, 8), Length.FromInches(0, 3, 16)), job.Runs[0].Joint);
        Assert.Equal(new BondRequest.Running(Lay.Level, 1, 2, Stepping.OneWay), job.Runs[0].Bond);
    }

    [Fact]
    public void A_fixture_with_one_height_is_level_and_one_without_an_end_reaches_the_corner()
    {
        var north = Assert.IsType<FaceShape.Read>(Samples.Job("guest-shower").Faces[1].Shape);
        var tray = new Edge("tray", EdgeKind.Fixture);
        var bench = new Edge("bench", EdgeKind.Fixture);
        Assert.Equal(
            [
                new Fixture("tray", false, Length.Zero, Length.FromInches(45), Length.FromInches(2, 7, 8), Length.FromInches(2, 7, 8), tray, tray),
                new Fixture("bench", false, Length.FromInches(45), null, Length.FromInches(18, 1, 8), Length.FromInches(18, 1, 4), bench, bench),
            ],
            north.Fixtures);
    }

    [Fact]
    public void An_openings_edges_are_alike_but_for_the_one_that_says_otherwise()
    {
        var window = Samples.Job("guest-shower").Faces[1].Openings[0];
        Assert.Equal(Ring.Of(new Box(Length.FromInches(18, 1, 8), Length.FromInches(54), Length.FromInches(42, 1, 8), Length.FromInches(84, 1, 2))), window.Ring);
        var round = new Edge("top", EdgeKind.OutsideCorner) { Finish = CornerFinish.Profile, Trim = Length.FromInches(0, 3, 8) };
        Assert.Equal([new Edge("bottom", EdgeKind.Fixture), round with { Name = "right" }, round, round with { Name = "left" }], window.Edges);
    }

    [Fact]
    public void A_hole_is_drilled_with_clearance_on_both_sides() =>
        Assert.Equal(new Hole("valve", new Point(Length.FromInches(27), Length.FromInches(39)), Length.FromInches(4, 1, 2)) { Clearance = Length.FromInches(0, 1, 8) }, Samples.Job("guest-shower").Faces[0].Holes[0]);

    [Fact]
    public void An_outline_keeps_its_corners_and_their_edges_in_order()
    {
        var wall = Assert.IsType<FaceShape.Outline>(Samples.Job("cloakroom").Faces[0].Shape);
        Assert.Equal(["foot", "right", "top", "left"], wall.Edges.Select(e => e.Name));
        Assert.Equal(new Point(Length.FromMillimetres(1486), Length.FromMillimetres(4)), wall.Ring.Points[1]);
        Assert.Equal(Length.FromMillimetres(10), wall.Edges[2].Trim);
        Assert.Equal(Length.FromMillimetres(10), wall.Edges[0].Cover);
    }

    [Fact]
    public void Each_want_arrives_as_what_it_says()
    {
        var wants = Samples.Job("guest-shower").Runs[0].Wants;
        Assert.Equal(
            [
                new Want.FullCourse(new("north", "bench"), true, 1),
                new Want.JointOnEdge(new("west", "niche.bottom"), false, 3),
                new Want.FullCourse(new("west", "left"), false, 2),
                new Want.FullCourse(new("east", "right"), false, 2),
                new Want.EqualCuts(new("north", "left"), new("north", "right"), false, 2),
            ],
            wants);
        Assert.Equal(new Want.Centred("basin wall", "hatch", CentreOn.Either, false, 1), Samples.Job("cloakroom").Runs[0].Wants[2]);
        Assert.Equal(new Want.FullCourse(new("basin wall", "top"), true, 1), Samples.Job("cloakroom").Runs[0].Wants[0]);
    }
}
