using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tests.Surveys;

/// <summary>What the app sees of a survey while it is being taken. Lengths by Pythagoras, 3000 by 4000 by 5000.</summary>
public sealed class SurveyViewTests
{
    private static readonly (int From, int To, long Is)[] s_room = [(0, 1, 4000), (1, 2, 3000), (2, 3, 4000), (3, 0, 3000), (0, 2, 5000), (1, 3, 5000)];

    [Fact]
    public void Before_anything_is_read_corners_stand_roughly_and_square()
    {
        var seen = SurveyView.Of(Room([]), "floor", Tape.Millimetres);
        Assert.Null(seen.Outline);
        Assert.Equal(["A", "B", "C", "D"], seen.Rough.Select(corner => corner.Name));
        Assert.Equal(seen.Rough[1].Place.X, seen.Rough[2].Place.X);
        Assert.Equal(seen.Rough[2].Place.Y, seen.Rough[3].Place.Y);
        Assert.True(seen.Rough[1].Place.X > Length.Zero && seen.Rough[2].Place.Y > Length.Zero);
    }

    [Fact]
    public void What_would_settle_an_assumed_corner_is_asked_for_as_a_reading_across_it()
    {
        var weighed = SurveyView.Of(Room(s_room[..4]), "floor", Tape.Millimetres).Weighed!;
        Assert.Equal("read D to B", weighed.Next);
        Assert.Equal((ReadAs.Straight, SurveySpot.Of(3), SurveySpot.Of(1)), (weighed.Asked!.As, weighed.Asked.First, weighed.Asked.Second));
    }

    [Fact]
    public void What_tells_four_sides_and_two_diagonals_apart_is_asked_for_as_strings()
    {
        var weighed = SurveyView.Of(Room([.. s_room[..5], (1, 3, 5030)]), "floor", Tape.Millimetres).Weighed!;
        Assert.Equal(6, weighed.Suspects.Count);
        Assert.Equal(ReadAs.Strings, weighed.Asked!.As);
        Assert.StartsWith("pull a string from ", weighed.Next, StringComparison.Ordinal);
    }

    [Fact]
    public void Readings_that_cannot_close_are_weighed_all_the_same_and_by_the_others_is_what_the_fault_says()
    {
        var seen = SurveyView.Of(Room([.. s_room[..5], (1, 3, 6000)]), "floor", Tape.Millimetres);
        var fault = Assert.Single(seen.Faults);
        Assert.Null(seen.Outline);
        var first = seen.Weighed!.Suspects[0];
        Assert.Equal(fault.Nearest, LengthText.Nearest(seen.Weighed.Readings[first].ByOthers!.Value, Tape.Millimetres));

        // What was read by mistake, were it left out, is 5000 by the five others.
        Assert.Equal("5000 mm", LengthText.Nearest(seen.Weighed.Readings[5].ByOthers!.Value, Tape.Millimetres));
    }

    [Fact]
    public void No_string_is_asked_for_that_would_not_check_what_nothing_checks()
    {
        var room = Room(s_room) with { Spots = ["drain"] };
        var off = new[] { (0, 1, 1200L), (3, 0, 900L) }.Select(one => new SurveyReading(
            ReadAs.Off, new(one.Item1, one.Item2, Length.Zero), SurveySpot.Of(4), Length.FromMillimetres(one.Item3), Length.FromMillimetres(2)));
        var seen = SurveyView.Of(room with { Readings = [.. room.Readings, .. off] }, "floor", Tape.Millimetres);
        Assert.EndsWith("a slip there would not show.", Assert.Single(seen.Findings).Text, StringComparison.Ordinal);
        Assert.Null(seen.Weighed!.Asked);
    }

    private static FaceSurvey Room((int From, int To, long Is)[] lengths) => new(
        "ABCD".Select(name => new SurveyCorner(name.ToString(), false, null)).ToSequence(), [],
        lengths.Select(one => new SurveyReading(ReadAs.Straight, SurveySpot.Of(one.From), SurveySpot.Of(one.To), Length.FromMillimetres(one.Is), Length.FromMillimetres(2))).ToSequence());
}
