using Gaugerod.Engine.Surveys;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Tests.Surveys;

public sealed class SurveyToOutlineTests
{
    private static readonly ReadingPlace Place = new("floor", "faces[0]", Tape.Millimetres);

    [Fact]
    public void Four_sides_alone_take_one_corner_for_square_and_say_what_would_settle_it()
    {
        var drawn = Draw(Box([(0, 1, 3000), (1, 2, 2000), (2, 3, 3000), (3, 0, 2000)]));
        Assert.Empty(drawn.Faults);
        Assert.Equal(["a square corner at A"], drawn.Weighed!.Assumed);
        Assert.Equal("read D to B", drawn.Weighed.Next);
        Assert.Contains(drawn.Findings, f => f.Rule == "assumed" && f.Text == "Too few readings: a square corner at A is assumed. To settle it, read D to B.");
        Assert.Equal(Ring((0, 0), (3000, 0), (3000, 2000), (0, 2000)), drawn.Outline);
    }

    [Fact]
    public void Two_sides_take_every_corner_for_square()
    {
        var drawn = Draw(Box([(0, 1, 3000), (1, 2, 2000)]));
        Assert.Equal(["a square corner at A", "a square corner at B", "a square corner at C"], drawn.Weighed!.Assumed);
        Assert.Equal(Ring((0, 0), (3000, 0), (3000, 2000), (0, 2000)), drawn.Outline);
    }

    [Fact]
    public void A_side_that_nothing_tells_of_is_asked_for_by_name()
    {
        var fault = Assert.Single(Draw(Box([(0, 1, 3000)])).Faults);
        Assert.Equal("faces[0].survey.readings", fault.Path);
        Assert.Equal("read A to C", fault.Nearest);
    }

    [Fact]
    public void Sides_and_one_diagonal_close_exactly_and_nothing_checks_them()
    {
        // Source: Pythagoras, 3000 by 4000 by 5000.
        var drawn = Draw(Box([(0, 1, 3000), (1, 2, 4000), (2, 3, 3000), (3, 0, 4000), (0, 2, 5000)]));
        Assert.Equal(Ring((0, 0), (3000, 0), (3000, 4000), (0, 4000)), drawn.Outline);
        var finding = Assert.Single(drawn.Findings);
        Assert.Equal("unchecked", finding.Rule);
        Assert.EndsWith("To check, read B to D.", finding.Text, StringComparison.Ordinal);
        Assert.All(drawn.Weighed!.Readings, reading => Assert.Null(reading.ByOthers));
    }

    [Fact]
    public void A_second_diagonal_off_by_more_than_a_tape_errs_is_said_of_all_six()
    {
        var drawn = Draw(Box([(0, 1, 3000), (1, 2, 4000), (2, 3, 3000), (3, 0, 4000), (0, 2, 5000), (1, 3, 5030)]));
        Assert.Equal([0, 1, 2, 3, 4, 5], drawn.Weighed!.Suspects);
        var finding = Assert.Single(drawn.Findings);
        Assert.Equal(FindingLevel.Warn, finding.Level);
        Assert.Contains("B to D: read 5030 mm, by the others 5000 mm", finding.Text, StringComparison.Ordinal);
        Assert.Contains("pull a string", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_slip_of_the_pen_cannot_close_and_is_refused_with_what_it_should_be()
    {
        // Nine lengths of an L, one read a metre long.
        double[] truth = [0, 0, 4000, 0, 4000, 1500, 2000, 1500, 2000, 3000, 0, 3000];
        var readings = from i in Enumerable.Range(0, 6) from j in Enumerable.Range(i + 1, 5 - i) select Length(i, j, Far(truth, i, j) + ((i, j) == (1, 4) ? 1000 : 0));
        var survey = new FaceSurvey("ABCDEF".Select((name, i) => new SurveyCorner(name.ToString(), i == 3, null)).ToSequence(), [], readings.ToSequence());
        var fault = Assert.Single(Draw(survey).Faults);
        Assert.StartsWith("B to E, read as 4606 mm", fault.Found, StringComparison.Ordinal);
        Assert.Equal("3606 mm", fault.Nearest);
        var mend = Assert.Single(fault.Mends);
        Assert.Equal("faces[0].survey.readings[7].is", mend.Path);
    }

    [Fact]
    public void A_triangle_whose_sides_cannot_meet_is_refused()
    {
        var survey = new FaceSurvey([Near("A", 0, 0), Near("B", 3000, 0), Near("C", 1500, 1000)], [], [Length(0, 1, 3000), Length(1, 2, 1000), Length(2, 0, 1000)]);
        Assert.Single(Draw(survey).Faults);
    }

    [Fact]
    public void A_wall_read_from_the_level_line_knows_where_the_line_runs_and_how_its_floor_falls()
    {
        var line = 4;
        var survey = Box([]) with
        {
            Readings =
            [
                Length(0, 1, 2000), Read(ReadAs.Plumb, 0, line, 1000), Read(ReadAs.Plumb, 1, line, 1010), Read(ReadAs.Plumb, 0, 3, 2400), Read(ReadAs.Plumb, 1, 2, 2410),
                Read(ReadAs.Level, 0, 3, 5), Read(ReadAs.Level, 1, 2, -4),
            ],
        };
        var drawn = Draw(survey);
        Assert.Empty(drawn.Faults);
        Assert.Equal(Mm(1000), drawn.LevelLine);
        Assert.Equal(Mm(-10), drawn.Outline!.Points[1].Y);
        Assert.Equal(Mm(2400), drawn.Outline.Points[2].Y);
        Assert.Equal(Mm(5), drawn.Outline.Points[3].X);
        Assert.Equal(0, drawn.Weighed!.Beyond);
    }

    [Fact]
    public void What_comes_off_two_walls_makes_the_room_wider_by_both()
    {
        var survey = Box([(0, 1, 3000), (1, 2, 2000), (2, 3, 3000), (3, 0, 2000), (0, 2, Far([0, 0, 3000, 0, 3000, 2000], 0, 2))]) with { ComesOff = [new(1, Mm(10), Mm(1)), new(3, Mm(15), Mm(1))] };
        var drawn = Draw(survey);
        Assert.Equal(Ring((0, 0), (3025, 0), (3025, 2000), (0, 2000)), drawn.Outline);
        Assert.Equal(Mm(3025), drawn.Weighed!.Sides[0].Value);
        Assert.True(drawn.Weighed.Sides[0].Deviation > drawn.Weighed.Readings[0].Deviation);
    }

    [Fact]
    public void A_drain_measured_off_two_walls_is_put_where_both_say()
    {
        var survey = Box([(0, 1, 3000), (1, 2, 2000), (2, 3, 3000), (3, 0, 2000), (0, 2, Far([0, 0, 3000, 0, 3000, 2000], 0, 2))]);
        survey = survey with
        {
            Spots = ["drain"],
            Readings = [.. survey.Readings, new(ReadAs.Off, new(0, 1, Plane.Measure.Length.Zero), SurveySpot.Of(4), Mm(800), Mm(2)), new(ReadAs.Off, new(3, 0, Plane.Measure.Length.Zero), SurveySpot.Of(4), Mm(1200), Mm(2))],
        };
        var drawn = Draw(survey);
        Assert.Empty(drawn.Faults);
        Assert.Equal(new PlacedSpot("drain", new(Mm(1200), Mm(800))), drawn.Weighed!.Corners[4]);
    }

    [Fact]
    public void A_shape_of_oblique_corners_needs_their_rough_places_and_keeps_to_its_readings()
    {
        double[] truth = [0, 0, 3000, 0, 3600, 1500, 1500, 2800, -300, 1600];
        var lengths = from i in Enumerable.Range(0, 5) from j in Enumerable.Range(i + 1, 4 - i) select Length(i, j, Far(truth, i, j));
        var corners = Enumerable.Range(0, 5).Select(i => Near("ABCDE"[i].ToString(), (long)truth[2 * i] + 90, (long)truth[(2 * i) + 1] - 70)).ToSequence();
        var drawn = Draw(new(corners, [], lengths.ToSequence()));
        Assert.Empty(drawn.Faults);
        for (var i = 0; i < 5; i++)
        {
            Assert.True(Math.Abs((drawn.Outline!.Points[i].X - Mm((long)truth[2 * i])).Steps) <= 2);
            Assert.True(Math.Abs((drawn.Outline.Points[i].Y - Mm((long)truth[(2 * i) + 1])).Steps) <= 2);
        }
    }

    private static SurveyedOutline Draw(FaceSurvey survey) => SurveyToOutline.Draw(survey, Place);

    private static FaceSurvey Box((int From, int To, double Is)[] lengths) => new(
        "ABCD".Select(name => new SurveyCorner(name.ToString(), false, null)).ToSequence(), [], lengths.Select(l => Length(l.From, l.To, l.Is)).ToSequence());

    private static SurveyReading Length(int from, int to, double mm) =>
        new(ReadAs.Straight, SurveySpot.Of(from), SurveySpot.Of(to), SurveyNetwork.Rounded(mm), SurveyNetwork.Rounded(1.5));

    private static SurveyReading Read(ReadAs way, int from, int to, long mm) => new(way, SurveySpot.Of(from), SurveySpot.Of(to), Mm(mm), SurveyNetwork.Rounded(1.5));

    private static SurveyCorner Near(string name, long x, long y) => new(name, false, new Point(Mm(x), Mm(y)));

    private static Length Mm(long mm) => Plane.Measure.Length.FromMillimetres(mm);

    private static double Far(double[] at, int i, int j) => Math.Sqrt(Math.Pow(at[2 * i] - at[2 * j], 2) + Math.Pow(at[(2 * i) + 1] - at[(2 * j) + 1], 2));

    private static Ring Ring(params (long X, long Y)[] corners) => new(corners.Select(c => new Point(Mm(c.X), Mm(c.Y))).ToSequence());
}
