using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Referees.RoundFaces;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rooms;

/// <summary>Where a floor is cut when it falls, and what is said where it cannot be.</summary>
public sealed class FoldTests
{
    private static readonly Face s_square = Given("floor", [(0, 0), (1200, 0), (1200, 900), (0, 900)], Stop("south"), Stop("east"), Stop("north"), Stop("west"));

    [Fact]
    public void A_round_floor_falls_to_its_drain_without_a_fold()
    {
        var ring = Circle(600, 600, 600);
        var planes = Folded(new("floor", new FaceShape.Outline(ring, Every(ring, Stop("side")), default), [], []), To(600, 600));
        var plane = Assert.Single(planes);
        Assert.Null(plane.Plane);
        Assert.Equal(["side"], Assert.Single(plane.Cones).Rounds);
    }

    [Fact]
    public void A_quarter_round_shower_is_folded_to_the_corner_of_its_walls_and_to_where_the_walls_end()
    {
        // The walls run 300 past the corner of the tray's round, which goes on tangentially into both: nothing bends there.
        var arc = Arc.Of(At(900, 300), At(300 + 424, 300 + 424), At(300, 900))!;
        Point[] points = [At(0, 0), At(900, 0), At(900, 300), .. arc.Corners(), At(300, 900), At(0, 900)];
        Edge[] edges = [Stop("south"), Stop("east"), .. Enumerable.Repeat(Stop("front"), arc.Chords), Stop("north"), Stop("west")];
        var planes = Folded(new("tray", new FaceShape.Outline(new(points.ToSequence()), edges.ToSequence(), default), [], []), To(450, 450));
        Assert.Equal(["tray south", "tray east to north", "tray west"], planes.Select(plane => plane.Name));
        Assert.Equal([0, 1, 0], planes.Select(plane => plane.Cones.Count));
    }

    [Fact]
    public void A_floor_with_one_corner_has_one_fold_and_one_plane_with_a_joint_from_the_corner_to_the_drain()
    {
        // A drop: most of a round and two sides on to one corner, both tangents of the round.
        // The round of 400 about (400, 400) meets its tangents from (1200, 400) 200 right of its middle and 346 beside.
        var round = Arc.Of(At(600, 746), At(0, 400), At(600, 54))!;
        Point[] points = [At(1200, 400), At(600, 746), .. round.Corners(), At(600, 54)];
        Edge[] edges = [Stop("left wall"), .. Enumerable.Repeat(Stop("round"), round.Chords), Stop("right wall")];
        var face = new Face("drop", new FaceShape.Outline(new(points.ToSequence()), edges.ToSequence(), default), [], []);
        var (flat, planes) = (One(face).Field, Folded(face, To(400, 400)));
        var plane = Assert.Single(planes);
        Assert.Equal("drop", plane.Name);
        Assert.NotNull(plane.Plane);
        // The slit is 3 wide and some 800 long, less the joint at the corner's point, and half a joint past the drain.
        var slit = (double)(flat.DoubledArea - plane.Field.DoubledArea) / 2 / 10_240_000;
        Assert.InRange(slit, 3 * 790, 3 * 803);
    }

    [Fact]
    public void A_side_that_runs_on_into_the_next_has_no_fold_between()
    {
        var face = Given("floor", [(0, 0), (400, 0), (1200, 0), (1200, 900), (0, 900)], Stop("door"), Stop("south"), Stop("east"), Stop("north"), Stop("west"));
        Assert.Equal(["floor door to south", "floor east", "floor north", "floor west"], Folded(face, To(600, 450)).Select(plane => plane.Name));
    }

    [Fact]
    public void Folds_from_the_corners_to_the_ends_of_a_ridge_part_a_floor_in_four()
    {
        var planes = Folded(s_square, Lines((0, 0, 400, 450), (0, 900, 400, 450), (1200, 0, 800, 450), (1200, 900, 800, 450), (400, 450, 800, 450)));
        // By hand: triangles of 900 by 400 over two, trapezoids of 1200 and 400 by 450, as measured.
        Assert.Equal([180_000, 360_000, 360_000, 180_000], planes.Select(plane => (long)Math.Round((double)plane.Outline.DoubledArea / 2 / 10_240_000)));
        Assert.Equal(["floor 1", "floor 2", "floor 3", "floor 4"], planes.Select(plane => plane.Name));
    }

    [Fact]
    public void A_fold_that_ends_at_another_parts_only_what_lies_on_its_side()
    {
        // The second fold ends a millimetre short of the first: as near as a tape reads.
        Assert.Equal(3, Folded(s_square, Lines((500, 0, 500, 900), (0, 450, 499, 450))).Count);
        Assert.Equal(2, Folded(s_square, Lines((500, -50, 500, 2000))).Count);
    }

    [Theory]
    [InlineData(0, 0, 1200, 0, "runs along the edge \"south\"", "leave it out")]
    [InlineData(0, 450, 900, 450, "stops inside the floor at [900 mm, 450 mm]", "[1200 mm, 450 mm] in place of [900 mm, 450 mm]")]
    [InlineData(0, 450, 380, 450, "stops inside the floor at [380 mm, 450 mm]", "[300 mm, 450 mm] in place of [380 mm, 450 mm]")]
    [InlineData(300, 0, 300, 900, "which lies on fold 1", "leave fold 2 out")]
    [InlineData(300, 500, 300, 100, "which lies on fold 1 from [300 mm, 100 mm] to [300 mm, 500 mm]", "leave fold 2 out")]
    [InlineData(301, 0, 301, 900, "a plane about 0.98 mm wide beside fold 2", "fold 2 left out")]
    [InlineData(0, 1, 1200, 1, "beside fold 2", "fold 2 left out")]
    [InlineData(1300, 0, 1300, 900, "nowhere crosses the floor", "places on the floor")]
    public void A_fold_that_nobody_could_cut_along_is_refused_with_what_would_do(long x, long y, long x2, long y2, string found, string nearest)
    {
        var fault = Refused(s_square, Lines((300, 0, 300, 900), (x, y, x2, y2)));
        Assert.Equal("faces[0].falls.lines[1]", fault.Path);
        Assert.Contains(found, fault.Found, StringComparison.Ordinal);
        Assert.Contains(nearest, fault.Nearest, StringComparison.Ordinal);
    }

    [Fact]
    public void A_fold_of_its_own_beside_those_of_the_drain_is_cut_too_and_said()
    {
        var planes = Folded(s_square, To(600, 450) with { Falls = new("drain", Lines((300, 0, 300, 900)).Falls.Lines) }, out var remarks);
        // South, north: two each; west: two; east: one.
        Assert.Equal(["south 1", "south 2", "east", "north 1", "north 2", "west 1", "west 2"], planes.Select(plane => plane.Name["floor ".Length..]));
        Assert.Contains(remarks.Findings, finding => finding.Rule == "falls" && finding.Text.Contains("folds of its own", StringComparison.Ordinal));
    }

    [Fact]
    public void A_drain_off_the_floor_is_said_to_lie_off_it_how_far_and_where_it_might_be()
    {
        var fault = Refused(s_square, To(600, -40));
        Assert.Equal("faces[0].falls.to", fault.Path);
        Assert.Contains("40 mm off the floor \"floor\", beyond its edge \"south\"", fault.Found, StringComparison.Ordinal);
        // Half of its 100 and three quarters of a mark from the edge.
        Assert.Equal("[600 mm, 51 mm]", fault.Nearest);
    }

    [Fact]
    public void A_drain_that_does_not_see_a_corner_is_refused_with_the_corner_and_the_nearest_place_that_sees_all()
    {
        var face = Given(
            "floor", [(0, 0), (1200, 0), (1200, 500), (500, 500), (500, 1000), (0, 1000)],
            Stop("south"), Stop("east"), Stop("bench"), Stop("end"), Stop("north"), Stop("west"));
        var fault = Refused(face, To(900, 250));
        Assert.Contains("the corner of \"end\" and \"north\" at [500 mm, 1000 mm]", fault.Found, StringComparison.Ordinal);
        Assert.DoesNotContain("south", fault.Found, StringComparison.Ordinal);
        Assert.Equal("[449 mm, 250 mm]", fault.Nearest);
        Assert.Equal(6, Folded(face, To(449, 250)).Count);
    }

    private sealed record Fall(Falls Falls, Hole? Drain);

    private static Fall To(long x, long y) => new(new("drain", []), new("drain", At(x, y), Mm(100)));

    private static Fall Lines(params (long X, long Y, long X2, long Y2)[] lines) => new(new(null, lines.Select(line => new FoldLine(At(line.X, line.Y), At(line.X2, line.Y2))).ToSequence()), null);

    private static IReadOnlyList<FinishedFace> Folded(Face face, Fall fall) => Folded(face, fall, out _);

    private static IReadOnlyList<FinishedFace> Folded(Face face, Fall fall, out Remarks remarks)
    {
        remarks = new(Tape.Millimetres);
        var whole = One(face with { Holes = fall.Drain is { } drain ? [drain] : [] });
        var floor = FoldedFloor.Of(whole, fall.Falls, Mm(3), "faces[0]", remarks);
        Assert.Empty(remarks.Faults);
        return floor!.Cut(whole, remarks);
    }

    private static Fault Refused(Face face, Fall fall)
    {
        var remarks = new Remarks(Tape.Millimetres);
        var run = Finish(face with { Holes = fall.Drain is { } drain ? [drain] : [] });
        Assert.Empty(run.Faults);
        Assert.Null(FoldedFloor.Of(run.Faces[0], fall.Falls, Mm(3), "faces[0]", remarks));
        return Assert.Single(remarks.Faults);
    }
}
