using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rooms;

/// <summary>What each kind of edge takes, on a wall 900 by 2400. Expected numbers are worked by hand.</summary>
public sealed class EdgeTakesTests
{
    [Fact]
    public void Floor_ceiling_and_fixtures_take_what_covers_them_and_a_joint()
    {
        var face = One(Read("north", foot: Floor with { Cover = Mm(10) }, head: Ceiling with { Joint = Mm(5) }, left: Stop("left"), right: Stop("right")));

        Assert.Equal(RingMm((3, 13), (897, 13), (897, 2395), (3, 2395)), face.Field.Outer);
        Assert.Equal(
            [("foot", EdgeKind.Floor), ("right", EdgeKind.Fixture), ("head", EdgeKind.Ceiling), ("left", EdgeKind.Fixture)],
            face.Edges.Select(e => (e.Name, e.Kind)));
        Assert.Equal((At(3, 13), At(897, 13)), (face.Edges[0].From, face.Edges[0].To));
    }

    [Fact]
    public void A_threshold_takes_its_cover_and_a_joint() =>
        Assert.Equal(Mm(8), One(Read("hall", foot: new("door", EdgeKind.Threshold) { Cover = Mm(5) })).Field.Outer.Bounds.Bottom);

    [Theory]
    [InlineData(0, null, 900)]
    [InlineData(10, null, 887)]
    [InlineData(10, 2L, 888)]
    [InlineData(0, 2L, 898)]
    public void A_free_edge_takes_its_trim_and_the_joint_beside_it(long trim, long? joint, long right) =>
        Assert.Equal(Mm(right), FieldRight(Free("right") with { Trim = Mm(trim), Joint = joint is { } j ? Mm(j) : null }));

    [Theory]
    [InlineData(CornerFinish.BullnoseOver, 912)]
    [InlineData(CornerFinish.BullnoseUnder, 897)]
    [InlineData(CornerFinish.Mitre, 912)]
    [InlineData(CornerFinish.Profile, 889)]
    public void An_outside_corner_takes_or_gives_as_it_is_finished(CornerFinish finish, long right) =>
        Assert.Equal(Mm(right), FieldRight(Outside("right", finish) with { Cover = Mm(12), Trim = finish == CornerFinish.Profile ? Mm(8) : Mm(0) }));

    [Fact]
    public void An_outside_corner_with_nothing_said_is_covered_by_the_other_side() =>
        Assert.Equal(Mm(897), FieldRight(Outside("right")));

    [Fact]
    public void An_outside_corner_with_a_trim_and_nothing_said_has_a_profile() =>
        Assert.Equal(Mm(889), FieldRight(Outside("right") with { Trim = Mm(8) }));

    [Fact]
    public void A_joint_stated_at_a_mitre_comes_off_what_it_grows_by() =>
        Assert.Equal(Mm(911), FieldRight(Outside("right", CornerFinish.Mitre) with { Cover = Mm(12), Joint = Mm(1) }));

    [Theory]
    [InlineData(null, Lap.AsRun, 897)]
    [InlineData(14L, Lap.AsRun, 883)]
    [InlineData(14L, Lap.Through, 897)]
    [InlineData(null, Lap.Laps, 897)]
    public void A_wall_alone_runs_through_unless_the_other_walls_build_up_is_stated(long? cover, Lap lap, long right) =>
        Assert.Equal(Mm(right), FieldRight(Inside("right") with { Cover = cover is { } c ? Mm(c) : null, Lap = lap }));

    [Fact]
    public void A_joint_of_nothing_sets_the_tile_tight() =>
        Assert.Equal(Mm(900), FieldRight(Inside("right") with { Joint = Length.Zero }));

    [Theory]
    [InlineData(26, 0, 0, "joint")]
    [InlineData(-1, 0, 0, "joint")]
    [InlineData(3, -4, 0, "trim")]
    [InlineData(3, 0, 301, "cover")]
    public void Joints_trims_and_covers_out_of_reason_are_refused(long joint, long trim, long cover, string field)
    {
        var fault = Assert.Single(Finish(Read("north", right: Stop("right") with { Joint = Mm(joint), Trim = Mm(trim), Cover = Mm(cover) })).Faults);

        Assert.Equal($"faces[0].edges.right.{field}", fault.Path);
    }

    private static Length FieldRight(Edge right) => One(Read("north", right: right)).Field.Outer.Bounds.Right;
}
