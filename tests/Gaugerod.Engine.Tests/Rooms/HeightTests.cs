using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Surveys;
using Gaugerod.Plane.Measure;
using static Gaugerod.Engine.Tests.Rooms.Walls;
using static Gaugerod.Engine.Tests.Surveys.Sketch;

namespace Gaugerod.Engine.Tests.Rooms;

/// <summary>Heights that are slips of the pen, or mean something unusual. What to make of them: common practice, no source.</summary>
public class HeightTests
{
    [Fact]
    public void A_level_line_above_the_ceiling_is_refused_at_the_corner_where_it_was_read()
    {
        var fault = Assert.Single(Finish(Read("north", readings: Struck(2600, 2580, height: 2400))).Faults);
        Assert.Equal(("faces[0].readings.levelLine.left", "2600 mm"), (fault.Path, fault.Found));
        Assert.Equal("a level line under the ceiling, which is 2400 mm high there", fault.Expected);
    }

    [Fact]
    public void A_level_line_just_over_the_ceiling_does_not_look_like_the_ceiling()
    {
        var fault = Assert.Single(Finish(Read("north", readings: Struck(2400, 2400, height: 2400, more: 1))).Faults);
        Assert.Equal("2400.3 mm", fault.Found);
    }

    [Fact]
    public void A_level_line_above_a_half_wall_may_be_meant_and_is_noted()
    {
        var run = Finish(Read("half wall", head: Free("head"), readings: Struck(1000, 1000, height: 900)));
        Assert.Empty(run.Faults);
        var finding = Assert.Single(run.Findings, f => f.Rule == "level-line");
        Assert.Equal((FindingLevel.Note, "half wall"), (finding.Level, finding.Where));
        Assert.StartsWith("The level line runs 100 mm above the wall at its left end", finding.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(1500, "The level line runs 300 mm above this face")]
    [InlineData(-40, "The level line runs 40 mm below this face")]
    public void A_level_line_beside_a_face_given_by_its_corners_is_noted(long line, string text)
    {
        var given = Given("bench front", [(0, 0), (900, 0), (900, 1200), (0, 1200)], Stop("a"), Stop("b"), Stop("c"), Stop("d"));
        var run = Finish(given with { Shape = ((FaceShape.Outline)given.Shape) with { LevelLine = Mm(line) } });
        Assert.Empty(run.Faults);
        Assert.StartsWith(text, Assert.Single(run.Findings, f => f.Rule == "level-line").Text, StringComparison.Ordinal);
    }

    /// <summary>The floor falls 20 mm to the right: a tray at -15 lies below it at the left, and above it at the right.</summary>
    [Fact]
    public void A_tray_below_the_floor_is_warned_of_at_the_end_where_it_is()
    {
        var readings = new FaceReadings(new(Mm(900), null, null), new(Mm(2400), null), new(Mm(1000), Mm(1020)), new(Length.Zero, Length.Zero));
        var run = Finish(Read("north", readings: readings, fixtures: [Box("tray", 0, null, -15)]));
        Assert.Empty(run.Faults);
        var finding = Assert.Single(run.Findings, f => f.Rule == "fixture-height");
        Assert.Equal(FindingLevel.Warn, finding.Level);
        Assert.Equal("'tray' ends 15 mm below the floor at its left: the tile runs down to it. Read its height again unless the floor is let down there.", finding.Text);
    }

    [Fact]
    public void A_soffit_above_the_ceiling_is_warned_of() =>
        Assert.Contains("'soffit' ends 50 mm above the ceiling at its left", Assert.Single(Finish(Read("north", fixtures: [Box("soffit", 300, 600, 2450, atHead: true)])).Findings, f => f.Rule == "fixture-height").Text, StringComparison.Ordinal);

    [Fact]
    public void A_fixture_on_the_wall_is_nothing_to_speak_of() =>
        Assert.DoesNotContain(Finish(Read("north", fixtures: [Box("tray", 0, 400, 60), Box("soffit", 300, 600, 2300, atHead: true)])).Findings, f => f.Rule == "fixture-height");

    private static FaceReadings Struck(long left, long right, long height, long more = 0) => new(
        new(Mm(900), null, null), new(Mm(height), null),
        new(Mm(left) + Length.FromSteps(more * 960), Mm(right) + Length.FromSteps(more * 960)), new(Length.Zero, Length.Zero));
}
