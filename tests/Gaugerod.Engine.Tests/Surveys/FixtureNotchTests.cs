using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Surveys;

public sealed class FixtureNotchTests
{
    [Fact]
    public void A_bath_in_the_left_corner_takes_the_foot_and_the_corner_beside_it()
    {
        var survey = Draw(Foot("bath", 0, 700, 550));

        Assert.Equal(RingMm((0, 550), (700, 550), (700, 0), (1700, 0), (1700, 2400), (0, 2400)), survey.Outline);
        Assert.Equal(
            [new(SideOf.BoxEdge, 0), new(SideOf.BoxRight, 0), new(SideOf.Foot), new(SideOf.Right), new(SideOf.Head), new(SideOf.Left)],
            survey.Sides);
    }

    [Fact]
    public void A_bath_beside_a_bench_shares_one_side_which_is_the_higher_ones()
    {
        var survey = Draw(Foot("bench", 700, null, 450), Foot("bath", 0, 700, 550));

        Assert.Equal(RingMm((0, 550), (700, 550), (700, 450), (1700, 450), (1700, 2400), (0, 2400)), survey.Outline);
        Assert.Equal([new(SideOf.BoxEdge, 1), new(SideOf.BoxRight, 1), new SideTag(SideOf.BoxEdge, 0)], survey.Sides.Take(3));
    }

    [Fact]
    public void A_doorway_splits_the_foot_in_two()
    {
        var survey = Draw(Foot("door", 400, 1200, 2050));

        Assert.Equal(RingMm((0, 0), (400, 0), (400, 2050), (1200, 2050), (1200, 0), (1700, 0), (1700, 2400), (0, 2400)), survey.Outline);
        Assert.Equal(2, survey.Sides.Count(s => s.Of == SideOf.Foot));
    }

    [Fact]
    public void A_tray_lower_than_the_floor_lets_the_wall_run_down()
    {
        var survey = Draw(Foot("tray", 800, null, -40));

        Assert.Equal(RingMm((0, 0), (800, 0), (800, -40), (1700, -40), (1700, 2400), (0, 2400)), survey.Outline);
        Assert.Equal(new SideTag(SideOf.BoxLeft, 0), survey.Sides[1]);
    }

    [Fact]
    public void A_bench_at_a_leaning_corner_ends_where_the_corner_stands_at_its_height()
    {
        // 12 in out of plumb over 2400: at 450 high the left corner stands 450 * 12 / 2400 = 2.25 mm in.
        var wall = Wall(Mm(1700), Mm(2400), level: (Mm(1000), Mm(1000)), leanLeft: Mm(12), leanRight: -Mm(8));
        var survey = ReadingsToOutline.Draw(wall, [Foot("bench", 0, 600, 450), Foot("ledge", 1300, null, 600)], Metric);

        Assert.Equal(new Point(Gaugerod.Plane.Measure.Length.FromSteps(7200), Mm(450)), survey.Outline!.Points[0]);
        Assert.Equal(At(1702, 600), survey.Outline.Points[5]); // leans out: 600 * 8 / 2400 = 2
    }

    [Fact]
    public void A_fixture_stands_on_the_floor_as_it_falls()
    {
        var wall = Wall(Mm(1700), Mm(2400), level: (Mm(1000), Mm(1017)), leanLeft: Mm(0), leanRight: Mm(0));
        var survey = ReadingsToOutline.Draw(wall, [Foot("bench", 500, 900, 450)], Metric);

        Assert.Equal([At(0, 0), At(500, -5), At(500, 450), At(900, 450), At(900, -9), At(1700, -17)], survey.Outline!.Points.Take(6));
    }

    [Fact]
    public void A_soffit_hangs_from_the_head_in_the_right_corner()
    {
        var survey = Draw(new SurveyBox("soffit", true, Mm(1200), null, Mm(2100), Mm(2110)));

        Assert.Equal(RingMm((0, 0), (1700, 0), (1700, 2110), (1200, 2100), (1200, 2400), (0, 2400)), survey.Outline);
        Assert.Equal([new(SideOf.Right), new(SideOf.BoxEdge, 0), new(SideOf.BoxLeft, 0), new SideTag(SideOf.Head)], survey.Sides.Skip(1).Take(4));
    }

    [Fact]
    public void Of_two_soffits_side_by_side_the_one_that_hangs_lower_has_the_side_between_them()
    {
        var survey = Draw(new SurveyBox("beam", true, Mm(0), Mm(700), Mm(2200), Mm(2200)), new SurveyBox("soffit", true, Mm(700), null, Mm(2100), Mm(2100)));

        Assert.Equal([new(SideOf.Right), new(SideOf.BoxEdge, 1), new(SideOf.BoxLeft, 1), new(SideOf.BoxEdge, 0), new SideTag(SideOf.Left)], survey.Sides.Skip(1));
    }

    [Theory]
    [InlineData(0, 700, 600, 900, "fixtures[1]", "beginning before")]
    [InlineData(-5, 700, 800, 900, "fixtures[0].from", "beyond the left corner")]
    [InlineData(0, 700, 800, 1701, "fixtures[1].to", "beyond the right corner")]
    [InlineData(700, 700, 800, 900, "fixtures[0].to", "700 mm")]
    public void Fixtures_that_overlap_or_stand_beyond_the_wall_are_refused(long from, long to, long nextFrom, long nextTo, string path, string found)
    {
        var fault = Assert.Single(Draw(Foot("bath", from, to, 550), Foot("bench", nextFrom, nextTo, 450)).Faults);

        Assert.Equal($"faces[0].{path}", fault.Path);
        Assert.Contains(found, fault.Found, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(300)]
    public void A_fixture_as_high_as_the_wall_is_refused(long from)
    {
        var fault = Assert.Single(Draw(Foot("cupboard", from, 900, 2400)).Faults);

        Assert.Equal("faces[0].fixtures[0]", fault.Path);
    }

    [Fact]
    public void A_fixture_that_runs_into_a_soffit_is_refused_by_both_names()
    {
        var fault = Assert.Single(Draw(Foot("bench", 300, 900, 2200), new SurveyBox("soffit", true, Mm(600), Mm(1200), Mm(2100), Mm(2100))).Faults);

        Assert.Contains("'soffit' running into 'bench'", fault.Found, StringComparison.Ordinal);
    }

    private static Survey Draw(params SurveyBox[] boxes) => ReadingsToOutline.Draw(TrueWall(1700, 2400), boxes.ToSequence(), Metric);

    private static SurveyBox Foot(string name, long from, long? to, long height) =>
        new(name, false, Mm(from), to is { } t ? Mm(t) : null, Mm(height), Mm(height));
}
