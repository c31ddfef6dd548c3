using Gaugerod.Engine.Rooms;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rooms;

public sealed class FieldShapeTests
{
    [Fact]
    public void A_bath_beside_a_shower_floor_gives_two_heights_each_with_its_joint()
    {
        var face = One(Read("north", 1700, foot: Floor with { Cover = Mm(10) }, fixtures: [Box("bath", 0, 700, 550)]));

        Assert.Equal(RingMm((3, 553), (703, 553), (703, 13), (1697, 13), (1697, 2397), (3, 2397)), face.Field.Outer);
        Assert.Equal(["bath", "bath.right", "foot", "right", "head", "left"], face.Edges.Select(e => e.Name));
    }

    [Fact]
    public void A_bench_in_a_leaning_corner_meets_the_tile_where_the_moved_lines_cross()
    {
        // The corner leans in 24 over 2400, one in a hundred. Its line moves 3 square to itself: sideways
        // 3 * sqrt(1 + 1/10000) = 3.00015. At 453 high it stands at 4.53 + 3.00015 = 7.53015 mm.
        var readings = Wall(Mm(1700), Mm(2400), level: (Mm(1000), Mm(1000)), leanLeft: Mm(24), leanRight: Mm(0));
        var face = One(Read("north", readings: readings, fixtures: [Box("bench", 0, 600, 450)]));

        var corner = face.Field.Outer.Points[0];
        Assert.Equal(Mm(453), corner.Y);
        Assert.Equal((long)Math.Round(3200 * (4.53 + (3 * Math.Sqrt(1.0001)))), corner.X.Steps);
    }

    [Fact]
    public void A_floor_out_by_three_eighths_keeps_its_joint_along_its_slope()
    {
        var readings = Wall(In(60), In(96), level: (In(48), In(48, 3, 8)), leanLeft: In(0), leanRight: In(0));
        var face = One(Read("north", readings: readings, left: Free("left"), right: Free("right")));

        // The floor falls 3/8 in 60: its line moves up by 3 mm * sqrt(1 + (1/160)²).
        var up = (long)Math.Round(3 * 3200 * Math.Sqrt(1 + (1.0 / 25600)));
        Assert.Equal(up, face.Field.Outer.Points[0].Y.Steps);
        Assert.Equal(up - In(0, 3, 8).Steps, face.Field.Outer.Points[1].Y.Steps);
    }

    [Fact]
    public void Edges_in_one_line_that_take_differently_make_a_jog()
    {
        var face = One(Given(
            "floor", [(0, 0), (400, 0), (900, 0), (900, 600), (0, 600)],
            new Edge("door", EdgeKind.Threshold) { Cover = Mm(20) }, Stop("wall"), Stop("right"), Stop("top"), Stop("left")));

        Assert.Equal(RingMm((3, 23), (400, 23), (400, 3), (897, 3), (897, 597), (3, 597)), face.Field.Outer);
        Assert.Equal(["door", "door", "wall", "right", "top", "left"], face.Edges.Select(e => e.Name));
    }

    [Fact]
    public void Edges_in_one_line_that_take_alike_are_one_line_with_both_names_kept()
    {
        var face = One(Given("floor", [(0, 0), (400, 0), (900, 0), (900, 600), (0, 600)], Stop("a"), Stop("b"), Stop("right"), Stop("top"), Stop("left")));

        Assert.Equal(RingMm((3, 3), (897, 3), (897, 597), (3, 597)), face.Field.Outer);
        Assert.Equal([("a", At(3, 3), At(400, 3)), ("b", At(400, 3), At(897, 3))], face.Edges.Take(2).Select(e => (e.Name, e.From, e.To)));
    }

    [Fact]
    public void A_gentle_bend_whose_edges_take_differently_makes_a_jog_there()
    {
        var readings = Wall(Mm(1700), Mm(2400), level: (Mm(1000), Mm(1010)), leanLeft: Mm(0), leanRight: Mm(0));
        var bench = new Fixture("tray", false, Mm(850), null, -Mm(5), -Mm(5), Stop("tray") with { Cover = Mm(30) }, Stop("side"));
        var face = One(Read("north", readings: readings, fixtures: [bench]));

        var jog = face.Edges.Where(e => e.Name == "tray").ToList();
        Assert.Equal(2, jog.Count);
        Assert.True((jog[0].From.X - Mm(850)).Abs() < Mm(1));
    }

    [Fact]
    public void An_openings_joints_and_trims_widen_it_and_its_edges_keep_the_tile_to_their_left()
    {
        var face = One(Read("north", openings: [Window("window", 300, 1000, 600, 1500, n => Stop(n) with { Cover = Mm(n == "bottom" ? 10 : 0) })]));

        var hole = Assert.Single(face.Field.Inner);
        Assert.Equal((Mm(297), Mm(987), Mm(603), Mm(1503)), (hole.Bounds.Left, hole.Bounds.Bottom, hole.Bounds.Right, hole.Bounds.Top));
        Assert.True(hole.DoubledArea > 0);
        Assert.Equal(["window.left", "window.top", "window.right", "window.bottom"], face.Edges.Skip(4).Select(e => e.Name));
        var bottom = face.Edges[^1];
        Assert.Equal((At(603, 987), At(297, 987)), (bottom.From, bottom.To));
    }

    [Fact]
    public void A_niche_with_mitred_edges_gets_smaller()
    {
        var face = One(Read("north", openings: [Window("niche", 300, 1000, 600, 1500, n => Outside(n, CornerFinish.Mitre) with { Cover = Mm(12) })]));

        Assert.Equal((Mm(312), Mm(588)), (face.Field.Inner[0].Bounds.Left, face.Field.Inner[0].Bounds.Right));
    }

    [Fact]
    public void An_outline_given_clockwise_is_turned_with_its_edges()
    {
        var edges = new[] { Stop("left") with { Cover = Mm(100) }, Stop("top"), Stop("right"), Stop("bottom") };
        var face = One(Given("panel", [(0, 0), (0, 600), (900, 600), (900, 0)], edges));

        Assert.Equal(RingMm((0, 0), (900, 0), (900, 600), (0, 600)), face.Outline);
        Assert.Equal(RingMm((103, 3), (897, 3), (897, 597), (103, 597)), face.Field.Outer);
        Assert.Equal(["bottom", "right", "top", "left"], face.Edges.Select(e => e.Name));
    }

    [Fact]
    public void A_hole_where_no_tile_is_is_noted_and_kept()
    {
        var run = Finish(Read("north", fixtures: [Box("bath", 0, 700, 550)], holes: [new("valve", At(200, 1100), Mm(40)), new("overflow", At(200, 400), Mm(60))]));

        Assert.Equal(2, Sound(run)[0].Holes.Count);
        Assert.Contains("'overflow'", Assert.Single(run.Findings).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_square_turned_an_eighth_moves_its_sides_square_to_themselves()
    {
        var face = One(Given("top", [(500, 0), (1000, 500), (500, 1000), (0, 500)], Stop("a"), Stop("b"), Stop("c"), Stop("d")));

        // 3 mm square to a side at 45 degrees is 3 * sqrt 2 along the axes: 13576.45 steps.
        Assert.Equal(13576, face.Field.Outer.Points[0].Y.Steps);
        Assert.Equal(Mm(500), face.Field.Outer.Points[0].X);
    }
}
