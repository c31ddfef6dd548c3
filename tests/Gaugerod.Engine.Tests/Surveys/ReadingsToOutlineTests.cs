using Gaugerod.Engine.Surveys;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Surveys;

/// <summary>Expected numbers are worked by hand from the sketch each test describes.</summary>
public sealed class ReadingsToOutlineTests
{
    [Fact]
    public void A_true_wall_is_a_rectangle_and_nothing_is_assumed_of_it()
    {
        var survey = ReadingsToOutline.Draw(TrueWall(900, 2400), [], Metric);

        Assert.Equal(RingMm((0, 0), (900, 0), (900, 2400), (0, 2400)), survey.Outline);
        Assert.Equal([new(SideOf.Foot), new(SideOf.Right), new(SideOf.Head), new(SideOf.Left)], survey.Sides);
        Assert.Equal(Mm(1000), survey.LevelLine);
        Assert.Empty(survey.Findings);
        Assert.Empty(survey.Faults);
    }

    [Fact]
    public void A_level_line_three_eighths_higher_at_the_right_says_the_floor_falls_to_the_right()
    {
        var survey = ReadingsToOutline.Draw(Wall(In(60), In(96), level: (In(48), In(48, 3, 8))), [], Inches);

        Assert.Equal(new(In(60), -In(0, 3, 8)), survey.Outline!.Points[1]);
        Assert.Equal(new(In(60), In(96)), survey.Outline.Points[2]); // no height read at the right: the ceiling is level
        Assert.Equal(In(48), survey.LevelLine);
    }

    [Fact]
    public void The_height_at_the_right_corner_is_measured_from_the_floor_there()
    {
        var survey = ReadingsToOutline.Draw(Wall(In(60), In(96), right: In(96), level: (In(48), In(48, 3, 8))), [], Inches);

        Assert.Equal(new(In(60), In(96) - In(0, 3, 8)), survey.Outline!.Points[2]);
    }

    [Fact]
    public void Without_a_level_line_the_floor_is_taken_as_level_and_a_note_says_so()
    {
        var survey = ReadingsToOutline.Draw(Wall(Mm(900), Mm(2400), leanLeft: Mm(0), leanRight: Mm(0)), [], Metric);

        Assert.Null(survey.LevelLine);
        Assert.Equal(Length.Zero, survey.Outline!.Points[1].Y);
        var note = Assert.Single(survey.Findings);
        Assert.Equal((FindingLevel.Note, "level-line"), (note.Level, note.Rule));
    }

    [Fact]
    public void A_corner_that_leans_in_makes_the_wall_narrower_at_the_top()
    {
        var survey = ReadingsToOutline.Draw(Wall(Mm(900), Mm(2400), leanLeft: Mm(5), leanRight: -Mm(3)), [], Metric);

        Assert.Equal(At(903, 2400), survey.Outline!.Points[2]);
        Assert.Equal(At(5, 2400), survey.Outline.Points[3]);
    }

    [Fact]
    public void A_width_that_differs_at_the_top_is_shared_by_both_corners_until_one_is_plumbed()
    {
        var survey = ReadingsToOutline.Draw(Wall(Mm(900), Mm(2400), top: Mm(892), level: (Mm(1000), Mm(1000))), [], Metric);

        Assert.Equal(At(896, 2400), survey.Outline!.Points[2]);
        Assert.Equal(At(4, 2400), survey.Outline.Points[3]);
        Assert.EndsWith("Plumb one corner to settle it.", Assert.Single(survey.Findings).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(5L, null, 5, 897)]
    [InlineData(null, 5L, 3, 895)]
    public void One_lean_and_two_widths_give_the_other_lean(long? left, long? right, long topLeft, long topRight)
    {
        var wall = Wall(
            Mm(900), Mm(2400), top: Mm(892), level: (Mm(1000), Mm(1000)),
            leanLeft: left is { } l ? Mm(l) : null, leanRight: right is { } r ? Mm(r) : null);
        var survey = ReadingsToOutline.Draw(wall, [], Metric);

        Assert.Equal([At(topRight, 2400), At(topLeft, 2400)], survey.Outline!.Points.Skip(2));
        Assert.Empty(survey.Findings);
    }

    [Fact]
    public void Readings_that_disagree_by_a_quarter_inch_are_shared_and_said()
    {
        var wall = Wall(In(60), In(96), top: In(59), level: (In(48), In(48)), leanLeft: In(0, 1, 4), leanRight: In(0, 1, 2));
        var survey = ReadingsToOutline.Draw(wall, [], Inches);

        Assert.Equal(In(0, 3, 8), survey.Outline!.Points[3].X);
        Assert.Equal(In(59, 3, 8), survey.Outline.Points[2].X);
        var warning = Assert.Single(survey.Findings);
        Assert.Equal((FindingLevel.Warn, "readings-agree"), (warning.Level, warning.Rule));
        Assert.StartsWith("Readings disagree by 1/4", warning.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_that_disagree_by_an_eighth_are_shared_in_silence()
    {
        var wall = Wall(In(60), In(96), top: In(59, 1, 8), level: (In(48), In(48)), leanLeft: In(0, 1, 4), leanRight: In(0, 1, 2));

        Assert.Empty(ReadingsToOutline.Draw(wall, [], Inches).Findings);
    }

    [Fact]
    public void A_wall_that_is_wider_half_way_up_bends_both_corners_there()
    {
        var wall = Wall(Mm(900), Mm(2400), middle: Mm(910), top: Mm(900), level: (Mm(1000), Mm(1000)));
        var survey = ReadingsToOutline.Draw(wall, [], Metric);

        Assert.Equal(RingMm((0, 0), (900, 0), (905, 1200), (900, 2400), (0, 2400), (-5, 1200)), survey.Outline);
        Assert.Equal([SideOf.Foot, SideOf.Right, SideOf.Right, SideOf.Head, SideOf.Left, SideOf.Left], survey.Sides.Select(s => s.Of));
    }

    [Fact]
    public void A_middle_that_only_falls_between_two_marks_is_no_bend()
    {
        // 60 in at the foot, 59 15/16 at the top: half-way up it is 59 31/32, which a tape in sixteenths shows as 60 or 59 15/16.
        var wall = Wall(In(60), In(96), middle: In(60), top: In(59, 15, 16), leanLeft: In(0), leanRight: In(0, 1, 16));

        Assert.Equal(4, ReadingsToOutline.Draw(wall, [], Inches).Outline!.Points.Count);
    }

    [Fact]
    public void Readings_no_wall_can_have_are_refused_together()
    {
        var wall = Wall(Mm(0), -Mm(2400), top: Mm(892));

        Assert.Equal(
            ["faces[0].readings.width.foot", "faces[0].readings.height.left"],
            ReadingsToOutline.Draw(wall, [], Metric).Faults.Select(f => f.Path));
    }

    [Theory]
    [InlineData(241, true)]
    [InlineData(240, false)]
    [InlineData(-241, true)]
    public void A_lean_of_more_than_a_tenth_of_the_height_is_refused(long lean, bool refused)
    {
        var survey = ReadingsToOutline.Draw(Wall(Mm(900), Mm(2400), leanLeft: Mm(lean), leanRight: Mm(0)), [], Metric);

        Assert.Equal(refused ? ["faces[0].readings.lean.left"] : [], survey.Faults.Select(f => f.Path));
        Assert.Equal(refused, survey.Outline is null);
    }

    [Fact]
    public void A_lean_that_the_tape_would_show_along_the_corner_is_noted()
    {
        // 100² / (2 * 2400) = 2.08 mm.
        var survey = ReadingsToOutline.Draw(Wall(Mm(900), Mm(2400), level: (Mm(1000), Mm(1000)), leanLeft: Mm(100), leanRight: Mm(0)), [], Metric);

        Assert.Contains("reads 2 mm more", Assert.Single(survey.Findings).Text, StringComparison.Ordinal);
    }
}
