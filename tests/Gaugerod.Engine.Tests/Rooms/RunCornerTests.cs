using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rooms;

/// <summary>Three walls of a shower, 900, 1500 and 900 wide; build-up 12, joints 3.</summary>
public sealed class RunCornerTests
{
    [Fact]
    public void A_wall_seen_from_the_entrance_runs_through_and_the_others_are_cut_to_its_finished_face()
    {
        var faces = Sound(Finish(Read("west"), Read("north", 1500), Read("east")));

        Assert.Equal([(3, 885), (3, 1497), (15, 897)], faces.Select(Sides));
    }

    [Fact]
    public void The_wall_that_runs_through_may_be_named()
    {
        var faces = Sound(Finish("west", Read("west"), Read("north", 1500), Read("east")));

        Assert.Equal([(3, 897), (15, 1497), (15, 897)], faces.Select(Sides));
    }

    [Fact]
    public void Of_two_walls_the_left_one_runs_through()
    {
        var faces = Sound(Finish(Read("west"), Read("north", 1500)));

        Assert.Equal([(3, 897), (15, 1497)], faces.Select(Sides));
    }

    [Fact]
    public void A_wall_that_is_said_to_run_through_makes_the_other_lap()
    {
        var faces = Sound(Finish(Read("west", right: Inside("right") with { Lap = Lap.Through }), Read("north", 1500), Read("east")));

        Assert.Equal([(3, 897), (15, 1497), (15, 897)], faces.Select(Sides));
    }

    [Fact]
    public void A_stated_cover_counts_before_the_runs_own_build_up() =>
        Assert.Equal((3, 877), Sides(Sound(Finish(Read("west", right: Inside("right") with { Cover = Mm(20) }), Read("north"), Read("east")))[0]));

    [Fact]
    public void Walls_unroll_with_one_edge_joint_between_their_fields()
    {
        var faces = Sound(Finish(Read("west"), Read("north", 1500, left: Inside("left") with { Joint = Mm(2) }), Read("east", left: Inside("left") with { Joint = Mm(4) })));

        // West ends at 885 and laps with a joint of 3, so north begins at 888, 2 from its own corner: 886.
        // North ends at 886 + 1497 = 2383; east laps with a joint of 4 and begins 16 from its corner: 2383 + 4 - 16.
        Assert.Equal([Mm(0), Mm(886), Mm(2371)], faces.Select(f => f.Unrolled));
    }

    [Fact]
    public void Level_lines_are_one_line()
    {
        static Face Wall(string name, long level) => Read(name, readings: Surveys.Sketch.Wall(Mm(900), Mm(2400), level: (Mm(level), Mm(level)), leanLeft: Mm(0), leanRight: Mm(0)));
        var faces = Sound(Finish(Wall("west", 1000), Wall("north", 1010), Wall("east", 995)));

        Assert.Equal([Mm(0), -Mm(10), Mm(5)], faces.Select(f => f.Raised));
    }

    [Fact]
    public void A_wall_without_a_level_line_beside_walls_with_one_is_warned_of()
    {
        var run = Finish(Read("west"), Read("north", readings: Wall(Mm(900), Mm(2400), leanLeft: Mm(0), leanRight: Mm(0))));

        Assert.Contains(run.Findings, f => (f.Level, f.Rule, f.Where) == (FindingLevel.Warn, "level-line", "north"));
        Assert.Equal(Mm(0), run.Faces[1].Raised);
    }

    [Fact]
    public void A_mitre_grows_both_walls_and_the_pattern_goes_round_without_a_joint()
    {
        var faces = Sound(Finish(Read("front", right: Outside("right", CornerFinish.Mitre)), Read("return", left: Outside("left"))));

        Assert.Equal([(3, 912), (-12, 897)], faces.Select(Sides));
        Assert.Equal(Mm(924), faces[1].Unrolled);
    }

    [Fact]
    public void A_bullnose_covers_the_edge_of_the_other_wall()
    {
        var faces = Sound(Finish(Read("front", right: Outside("right", CornerFinish.BullnoseOver)), Read("return", left: Outside("left"))));

        Assert.Equal([(3, 912), (3, 897)], faces.Select(Sides));
        Assert.Equal(Mm(912), faces[1].Unrolled);
    }

    [Fact]
    public void A_profile_stated_on_one_wall_stops_both()
    {
        var faces = Sound(Finish(Read("front", right: Outside("right", CornerFinish.Profile) with { Trim = Mm(8) }), Read("return", left: Outside("left"))));

        Assert.Equal([(3, 889), (11, 897)], faces.Select(Sides));
    }

    [Fact]
    public void Walls_given_by_their_corners_meet_like_those_given_by_readings()
    {
        static Face Wall(string name, long width) =>
            Given(name, [(0, 0), (width, 0), (width, 2400), (0, 2400)], Floor, Inside("east"), Ceiling, Inside("west"));
        var faces = Sound(Finish(Wall("a", 900), Wall("b", 1500), Wall("c", 900)));

        Assert.Equal([(3, 885), (3, 1497), (15, 897)], faces.Select(Sides));
        Assert.Equal([Mm(0), Mm(885), Mm(2370)], faces.Select(f => f.Unrolled));
    }

    [Fact]
    public void A_corner_in_the_middle_of_an_outline_is_not_the_next_walls()
    {
        // A wall with a slot from above: the slot's sides are corners, but not towards a neighbour.
        var slotted = Given(
            "a", [(0, 0), (900, 0), (900, 2400), (600, 2400), (600, 1200), (300, 1200), (300, 2400), (0, 2400)],
            Floor, Inside("right"), Ceiling, Outside("slot.right", CornerFinish.Mitre), Stop("sill"), Outside("slot.left", CornerFinish.Mitre), new("head2", EdgeKind.Ceiling), Inside("left"));
        var run = Finish("b", slotted, Read("b"));

        var slot = Sound(run)[0].Edges.Single(e => e.Name == "slot.left");
        Assert.Equal(Mm(300), slot.From.X);
        Assert.Equal(2, run.Findings.Count(f => f.Rule == "build-up"));
    }

    [Fact]
    public void Where_thickness_and_thinset_are_not_given_each_wall_cut_to_the_other_is_warned_to_come_out_too_long()
    {
        var run = RoomBuilder.Finish(new("runs[0]", [new(0, Read("west")), new(1, Read("north", 1500)), new(2, Read("east"))], Mm(0), null, Joint, Tape.Millimetres));

        var found = run.Findings.Where(f => f.Rule == "build-up").ToList();
        Assert.Equal(["right edge of west", "left edge of east"], found.Select(f => f.Where));
        Assert.All(found, f => Assert.Equal(FindingLevel.Warn, f.Level));
        Assert.All(found, f => Assert.Contains("nothing is taken off at this corner for the other wall's tile, and cuts there come out too long", f.Text, StringComparison.Ordinal));
        Assert.Single(found.Select(f => f.Text).Distinct(StringComparer.Ordinal));
    }

    [Fact]
    public void A_tile_that_reaches_over_another_of_unknown_thickness_comes_out_too_short()
    {
        var run = Finish(Read("front", right: Outside("right", CornerFinish.Mitre)));

        var found = Assert.Single(run.Findings, f => f.Rule == "build-up");
        Assert.Equal((FindingLevel.Warn, "right edge of front"), (found.Level, found.Where));
        Assert.Contains("come out too short", found.Text, StringComparison.Ordinal);
        Assert.Contains("Give this edge's cover", found.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Lap.Through)]
    [InlineData(Lap.Laps)]
    public void A_corner_at_which_both_walls_say_the_same_is_refused(Lap lap)
    {
        var fault = Assert.Single(Finish(Read("west", right: Inside("right") with { Lap = lap }), Read("north", left: Inside("left") with { Lap = lap })).Faults);

        Assert.Equal("faces[1].edges.left.lap", fault.Path);
    }

    [Fact]
    public void Corners_whose_kinds_or_finishes_do_not_go_together_are_refused()
    {
        Assert.Equal("faces[1].edges.left.kind", Assert.Single(Finish(Read("west"), Read("north", left: Outside("left"))).Faults).Path);
        Assert.Equal(
            "faces[1].edges.left.finish",
            Assert.Single(Finish(Read("w", right: Outside("right", CornerFinish.Mitre)), Read("n", left: Outside("left", CornerFinish.Profile))).Faults).Path);
    }

    [Fact]
    public void A_through_face_that_is_not_of_the_run_is_refused() =>
        Assert.Equal(("runs[0].through", "south"), Finish("south", Read("west"), Read("north")).Faults.Select(f => (f.Path, f.Found)).Single());

    private static (long Left, long Right) Sides(FinishedFace face) =>
        (face.Field.Outer.Bounds.Left.Steps / Length.StepsPerMillimetre, face.Field.Outer.Bounds.Right.Steps / Length.StepsPerMillimetre);
}
