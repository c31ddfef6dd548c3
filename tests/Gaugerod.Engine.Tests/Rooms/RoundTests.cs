using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Referees.RoundFaces;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rooms;

/// <summary>What joints and trims take off arcs, against circles drawn about the same middle.</summary>
public sealed class RoundTests
{
    private static readonly double Error = Arc.Error.Steps + 2;

    [Theory]
    [InlineData(60, 3, 0)]
    [InlineData(60, 3, 10)]
    [InlineData(300, 3, 10)]
    [InlineData(20, 3, 10)]
    public void The_tile_round_a_column_keeps_its_joint_and_its_trim_all_round(long radius, long joint, long trim)
    {
        var edge = new Edge("side", EdgeKind.Free) { Joint = Mm(joint), Trim = Mm(trim) };
        var face = One(Read("floor") with { Openings = [Column("column", 450, 1000, radius, edge)] });

        var round = Assert.Single(face.Field.Inner);
        StandsOff(round, 450, 1000, (radius + joint + trim) * 3200);
        Assert.All(face.Edges.Skip(4), side => Assert.Equal("column.side", side.Name));
    }

    [Theory]
    [InlineData(60, 3, 0)]
    [InlineData(60, 3, 10)]
    [InlineData(1000, 3, 10)]
    [InlineData(14, 3, 10)]
    public void The_tile_in_a_round_face_keeps_its_joint_and_its_trim_all_round(long radius, long joint, long trim)
    {
        var edge = new Edge("side", EdgeKind.Free) { Joint = Mm(joint), Trim = Mm(trim) };
        var ring = Circle(radius, radius, radius);
        var face = One(new("floor", new FaceShape.Outline(ring, Every(ring, edge), default), [], []));

        StandsOff(face.Field.Outer, radius, radius, (radius - joint - trim) * 3200);
    }

    [Fact]
    public void An_arc_whose_radius_is_smaller_than_what_its_edge_takes_is_refused()
    {
        var edge = new Edge("rounded", EdgeKind.Free) { Trim = Mm(10) };
        var fault = Assert.Single(Finish(Rounded(8, edge)).Faults);

        Assert.Contains("'rounded', an arc whose radius is smaller than what its edge takes", fault.Found);
        Assert.Contains("a plain corner in its place", fault.Nearest);
        Assert.Empty(Finish(Rounded(14, edge)).Faults);
    }

    /// <summary>A quarter-round step in a corner: both walls stand square on the arc's ends, and each takes more than one chord is long.</summary>
    [Fact]
    public void A_wall_that_an_arc_meets_square_swallows_its_end()
    {
        var (wall, front) = (new Edge("right wall", EdgeKind.InsideCorner) { Cover = Mm(30) }, new Edge("front", EdgeKind.Free) { Trim = Mm(10), Joint = Mm(0) });
        var arc = Arc.Of(At(300, 0), new(Grid.Nearest(300 * 3200 * Math.Sqrt(0.5)), Grid.Nearest(300 * 3200 * Math.Sqrt(0.5))), At(0, 300))!;
        Point[] points = [At(0, 0), At(300, 0), .. arc.Corners(), At(0, 300)];
        Edge[] edges = [wall, .. Enumerable.Repeat(front, arc.Chords), wall with { Name = "left wall" }];
        var face = One(new("step", new FaceShape.Outline(new(points.ToSequence()), edges.ToSequence(), default), [], []));

        // 30 of cover and a joint of 3; the arc stands 290 off the corner where it was moved to.
        var end = Math.Sqrt((290.0 * 290) - (33 * 33)) * 3200;
        Assert.Equal(Mm(33), face.Field.Outer.Bounds.Bottom);
        Assert.InRange((double)face.Field.Outer.Bounds.Right.Steps, end - Error, end + Error);
        var round = face.Edges.Where(edge => edge.Name == "front").ToList();
        // A chord is 15.5 long: two at each end.
        Assert.Equal(arc.Chords - 4, round.Count);
        Assert.All(round.Skip(1), side => Assert.InRange(Off(side.From, 0, 0), (290 * 3200) - Error, (290 * 3200) + Error));
    }

    [Fact]
    public void The_chords_of_an_arc_are_one_edge_and_two_edges_of_one_name_are_still_refused()
    {
        var face = Given("wall", [(0, 0), (900, 0), (900, 600), (0, 600)], Floor, Free("side"), Ceiling, Free("side"));

        Assert.Equal("faces[0].edges[3]", Assert.Single(Finish(face).Faults).Path);
    }

    [Fact]
    public void What_is_wrong_with_an_arc_is_said_in_the_counting_of_who_gave_it()
    {
        var arc = Arc.Of(At(900, 0), At(1200, 300), At(900, 600))!;
        Point[] points = [At(0, 0), At(900, 0), .. arc.Corners(), At(900, 600), At(0, 600)];
        Edge[] edges = [Floor, .. Enumerable.Repeat(Free("bow"), arc.Chords), Ceiling with { Joint = Mm(30) }, Free("left")];
        var fault = Assert.Single(Finish(new Face("wall", new FaceShape.Outline(new(points.ToSequence()), edges.ToSequence(), default), [], [])).Faults);

        Assert.Equal("faces[0].edges[2].joint", fault.Path);
    }

    /// <summary>A wall of 900 by 600 whose upper right corner is rounded: the middle of the round lies on whole millimetres.</summary>
    private static Face Rounded(long radius, Edge edge)
    {
        var middle = new Point(Mm(900 - radius) + Grid.Nearest(radius * 3200 * Math.Sqrt(0.5)), Mm(600 - radius) + Grid.Nearest(radius * 3200 * Math.Sqrt(0.5)));
        var arc = Arc.Of(At(900, 600 - radius), middle, At(900 - radius, 600))!;
        Point[] points = [At(0, 0), At(900, 0), At(900, 600 - radius), .. arc.Corners(), At(900 - radius, 600), At(0, 600)];
        Edge[] edges = [Free("foot"), Free("right"), .. Enumerable.Repeat(edge, arc.Chords), Free("head"), Free("left")];
        return new("wall", new FaceShape.Outline(new(points.ToSequence()), edges.ToSequence(), default), [], []);
    }

    private static void StandsOff(Ring ring, long x, long y, double radius)
    {
        for (var i = 0; i < ring.Points.Count; i++)
        {
            var (a, b) = (ring.Points[i], ring.Points[(i + 1) % ring.Points.Count]);
            var middle = new Point(Grid.HalfDown(a.X + b.X), Grid.HalfDown(a.Y + b.Y));
            Assert.InRange(Off(a, x, y), radius - Error, radius + Error);
            Assert.InRange(Off(middle, x, y), radius - Error, radius + Error);
        }
    }

    private static double Off(Point point, long x, long y) => Math.Sqrt(Math.Pow(point.X.Steps - (x * 3200), 2) + Math.Pow(point.Y.Steps - (y * 3200), 2));
}
