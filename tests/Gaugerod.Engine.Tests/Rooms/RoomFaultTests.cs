using Gaugerod.Engine.Rooms;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rooms;

public sealed class RoomFaultTests
{
    [Fact]
    public void An_outline_that_crosses_itself_is_refused_at_the_corner() =>
        Refused(Given("a", [(0, 0), (900, 0), (0, 600), (900, 600)], Four()), "faces[0].outline[3]", "crosses or touches side 'b'");

    [Fact]
    public void An_outline_that_encloses_nothing_is_refused() =>
        Refused(Given("a", [(0, 0), (900, 0), (400, 0)], Stop("a"), Stop("b"), Stop("c")), "faces[0].outline[1]", "crosses or touches");

    [Fact]
    public void Edges_that_do_not_match_the_outline_are_refused() =>
        Refused(Given("a", [(0, 0), (900, 0), (900, 600), (0, 600)], Stop("a"), Stop("b"), Stop("c")), "faces[0].edges", "3 edges");

    [Fact]
    public void Two_edges_of_one_name_are_refused() =>
        Refused(Given("a", [(0, 0), (900, 0), (0, 600)], Stop("a"), Stop("b"), Stop("a")), "faces[0].edges[2]", "a second edge 'a'");

    [Fact]
    public void Edges_that_take_more_than_there_is_are_named() =>
        Refused(
            Given("a", [(0, 0), (900, 0), (900, 20), (0, 20)], Stop("low") with { Cover = Mm(12) }, Stop("b"), Stop("high") with { Cover = Mm(12) }, Stop("d")),
            "faces[0]", "'low', 'b', 'high'");

    [Fact]
    public void A_step_smaller_than_what_covers_the_floor_beside_it_is_refused() =>
        Refused(Read("north", foot: Floor with { Cover = Mm(40) }, fixtures: [Box("tray", 0, 450, 20)]), "faces[0]", "'tray', 'tray.right', 'foot'");

    [Fact]
    public void Two_arms_of_an_outline_that_grow_into_each_other_are_refused() =>
        Refused(
            Given(
                "a", [(0, 0), (900, 0), (900, 600), (460, 600), (460, 200), (440, 200), (440, 600), (0, 600)],
                Stop("a"), Stop("b"), Stop("c"), Outside("d", CornerFinish.Mitre) with { Cover = Mm(12) }, Stop("e"), Outside("f", CornerFinish.Mitre) with { Cover = Mm(12) }, Stop("g"), Stop("h")),
            "faces[0]", "take more than there is");

    [Theory]
    [InlineData(300, 1900, 600, 2400, "make it a fixture at the head")]
    [InlineData(300, 1900, 600, 2398, "make it a fixture at the head")]
    [InlineData(300, 0, 600, 2000, "make it a fixture at the foot")]
    [InlineData(300, 5, 600, 2000, "make it a fixture at the foot")]
    [InlineData(700, 1000, 898, 1500, "end it short of that edge, or give the face by its corners, around it")]
    [InlineData(1300, 1000, 1500, 1500, "measure it again, to the right and up from the face's lower left corner")]
    public void An_opening_that_reaches_the_fields_edge_is_told_what_would_do(long left, long bottom, long right, long top, string nearest)
    {
        var fault = Assert.Single(Finish(Read("north", openings: [Window("window", left, bottom, right, top)])).Faults);

        Assert.Equal(("faces[0].openings[0]", nearest), (fault.Path, fault.Nearest));
    }

    [Fact]
    public void Openings_whose_joints_meet_are_refused()
    {
        var fault = Assert.Single(Finish(Read("north", openings: [Window("window", 200, 1000, 400, 1500), Window("niche", 405, 1000, 600, 1500)])).Faults);

        Assert.Equal(("faces[0].openings[1]", "'niche' running into 'window'"), (fault.Path, fault.Found));
    }

    [Fact]
    public void An_opening_inside_another_is_refused() =>
        Assert.Equal(
            "faces[0].openings[1]",
            Assert.Single(Finish(Read("north", openings: [Window("window", 200, 1000, 600, 1500), Window("niche", 300, 1100, 400, 1200)])).Faults).Path);

    [Fact]
    public void An_opening_closed_by_what_grows_over_it_is_refused() =>
        Refused(
            Read("north", openings: [Window("slit", 300, 1000, 320, 1500, n => Outside(n, CornerFinish.Mitre) with { Cover = Mm(12) })]),
            "faces[0].openings[0]", "take more than there is");

    [Fact]
    public void Faults_of_several_faces_are_said_together() =>
        Assert.Equal(
            ["faces[0].edges.foot.joint", "faces[1].readings.width.foot", "faces[2].holes[0].diameter"],
            Finish(Read("a", foot: Floor with { Joint = -Mm(1) }), Read("b", width: 0), Read("c", holes: [new("pipe", At(100, 100), Mm(0))])).Faults.Select(f => f.Path));

    private static Edge[] Four() => [Stop("a"), Stop("b"), Stop("c"), Stop("d")];

    private static void Refused(Face face, string path, string found)
    {
        var fault = Assert.Single(Finish(face).Faults);
        Assert.Equal(path, fault.Path);
        Assert.Contains(found, fault.Found, StringComparison.Ordinal);
    }
}
