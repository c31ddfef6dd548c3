using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Surveys;

/// <summary>Draws a wall from its readings.</summary>
internal static class ReadingsToOutline
{
    /// <summary>
    /// Draws the wall true to level and plumb, x to the right and y up from its left corner at the foot. Nothing is
    /// rounded to the tape; what falls between two steps of the grid goes down.
    /// </summary>
    public static Survey Draw(FaceReadings readings, Sequence<SurveyBox> boxes, ReadingPlace place)
    {
        var faults = ReadingLimits.Check(readings, place).ToList();
        if (faults.Count > 0) return Refused(faults);

        var findings = new List<Finding>();
        if (readings.LevelLine is null)
        {
            findings.Add(place.Note("level-line", "No level line was struck: the floor is taken as level."));
        }

        var corners = CornerReadings.Settle(readings, place, findings);
        if (corners.Right.Height <= Length.Zero)
        {
            return Refused([new($"{place.Path}.readings.height", $"a right corner {place.Say(corners.Right.Height)} high", "a ceiling above the floor", "read the height at the right corner")]);
        }

        var foot = Notches.Cut(atHead: false, corners, readings.Width.Foot, boxes, place, faults);
        var head = Notches.Cut(atHead: true, corners, readings.Width.Foot, boxes, place, faults);
        if (faults.Count > 0) return Refused(faults);

        var (points, sides) = Close(foot, head, corners, readings.Width.Foot);
        var outline = new Ring(points.ToSequence());
        if (Crossed(outline, sides, boxes, foot, head, place) is { } fault) return Refused([fault]);
        return new(outline, sides.ToSequence(), readings.LevelLine?.Left, findings.ToSequence(), []);
    }

    private static Survey Refused(List<Fault> faults) => new(null, [], null, [], faults.ToSequence());

    private static (List<Point> Points, List<SideTag> Sides) Close(Chain foot, Chain head, CornerPair corners, Length width)
    {
        var (points, sides) = (foot.Points.ToList(), foot.Sides.ToList());
        sides.Add(new(SideOf.Right));
        if (IsBentBetween(corners.Right, foot.Points[^1], head.Points[^1]))
        {
            points.Add(new(width - corners.Right.MiddleInset, corners.Right.MiddleHeight));
            sides.Add(new(SideOf.Right));
        }

        points.AddRange(head.Points.Reverse());
        sides.AddRange(head.Sides.Reverse());
        sides.Add(new(SideOf.Left));
        if (IsBentBetween(corners.Left, foot.Points[0], head.Points[0]))
        {
            points.Add(new(corners.Left.MiddleInset, corners.Left.MiddleHeight));
            sides.Add(new(SideOf.Left));
        }

        return (points, sides);
    }

    private static bool IsBentBetween(CornerLine corner, Point low, Point high) =>
        corner.IsBent && low.Y < corner.MiddleHeight && high.Y > corner.MiddleHeight;

    private static Fault? Crossed(Ring outline, List<SideTag> sides, Sequence<SurveyBox> boxes, Chain foot, Chain head, ReadingPlace place)
    {
        SideTag[] tags;
        if (foot.Points[0].Y >= head.Points[0].Y) tags = [foot.Sides[0], head.Sides[0]];
        else if (foot.Points[^1].Y >= head.Points[^1].Y) tags = [foot.Sides[^1], head.Sides[^1]];
        else if (RingChecks.FirstCrossing(outline) is var (first, second)) tags = [sides[first], sides[second]];
        else return outline.DoubledArea > 0 ? null : Nothing(place);
        var named = tags.Where(t => t.Box >= 0).Select(t => t.Box).Distinct().ToList();
        return named switch
        {
            [] => Nothing(place),
            [var one] => new(
                place.Fixture(one), $"'{boxes[one].Name}' reaching through the wall", "some wall left beside and above or below it",
                "check its heights, which count from the foot of the left corner"),
            [var one, var other, ..] => new(
                place.Fixture(other), $"'{boxes[other].Name}' running into '{boxes[one].Name}'", "fixtures that leave some wall between them"),
        };
    }

    private static Fault Nothing(ReadingPlace place) => new(
        $"{place.Path}.readings", "a wall whose sides cross", "readings that enclose a wall", "read the widths and leans again");
}
