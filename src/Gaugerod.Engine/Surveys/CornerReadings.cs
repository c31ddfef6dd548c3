using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Surveys;

/// <summary>
/// Settles how the corners stand from widths and leans, which say the same thing twice: width at the top = width at
/// the foot less both leans.
/// </summary>
internal static class CornerReadings
{
    /// <summary>How far readings may disagree before it is said: a reading's usual slip, common practice, no source.</summary>
    private static readonly Length SlipInches = Length.FromInches(0, 1, 8);

    private static readonly Length SlipMillimetres = Length.FromMillimetres(3);

    public static CornerPair Settle(FaceReadings readings, ReadingPlace place, List<Finding> findings)
    {
        var (width, height) = (readings.Width, readings.Height);
        var rightFoot = readings.LevelLine is { } line ? line.Left - line.Right : Length.Zero;
        var rightHeight = height.Right ?? height.Left - rightFoot;
        var (left, right) = Leans(readings, place, findings);

        var straightMiddle = width.Foot - Grid.HalfDown(left) - Grid.HalfDown(right);
        var narrower = width.Middle is { } middle ? straightMiddle - middle : Length.Zero;

        // Half of an odd number of marks falls between two of them: that is the tape's, not the wall's.
        var bend = narrower.Abs() * 2 > place.Tape.Mark ? Grid.HalfDown(narrower) : Length.Zero;

        NoteTapeAlong("left", left, height.Left, place, findings);
        NoteTapeAlong("right", right, rightHeight, place, findings);
        return new(new(Length.Zero, height.Left, left, bend), new(rightFoot, rightHeight, right, bend));
    }

    private static (Length Left, Length Right) Leans(FaceReadings readings, ReadingPlace place, List<Finding> findings)
    {
        var (width, lean) = (readings.Width, readings.Lean);
        switch (lean.Left, lean.Right)
        {
            case ({ } left, { } right):
                if (width.Top is not { } readTop) return (left, right);
                var apart = width.Foot - left - right - readTop;
                var limit = place.Tape.Unit == LengthUnit.Inch ? SlipInches : SlipMillimetres;
                if (apart.Abs() > limit)
                {
                    findings.Add(new(
                        FindingLevel.Warn, "readings-agree", place.Face,
                        $"Readings disagree by {place.Say(apart.Abs())}: width at the foot less both leans is {place.Say(width.Foot - left - right)}, "
                        + $"width at the top was read as {place.Say(readTop)}. The difference is shared by both corners; read them again.",
                        place.Say(limit), place.Say(apart.Abs()), ReadingPlace.NoSource));
                }

                var share = Grid.HalfDown(apart);
                return (left + share, right + share);

            case (null, null):
                if (Top(width) is not { } top)
                {
                    findings.Add(place.Note("plumb", "Neither corner was plumbed: both are taken as plumb."));
                    return default;
                }

                if (width.Foot == top) return default;
                findings.Add(place.Note(
                    "plumb", $"The wall is {place.Say((width.Foot - top).Abs())} {(top < width.Foot ? "narrower" : "wider")} at the top: shared by both corners. Plumb one corner to settle it."));
                var each = Grid.HalfDown(width.Foot - top);
                return (each, each);

            case ({ } left, null):
                return (left, Other("right", left));

            case (null, { } right):
                return (Other("left", right), right);
        }

        Length Other(string name, Length read)
        {
            if (Top(width) is { } top) return width.Foot - top - read;
            findings.Add(place.Note("plumb", $"The {name} corner was not plumbed and no width was read at the top: it is taken as plumb."));
            return Length.Zero;
        }
    }

    /// <summary>The width at the top; where only the middle was read, corners that run straight on through it.</summary>
    private static Length? Top(WidthReadings width) => width.Top ?? (width.Middle is { } middle ? (middle * 2) - width.Foot : null);

    /// <summary>Heights are taken straight up. A tape laid along a leaning corner reads about lean² / (2 height) more.</summary>
    private static void NoteTapeAlong(string corner, Length lean, Length height, ReadingPlace place, List<Finding> findings)
    {
        var more = Length.FromSteps((long)((Int128)lean.Steps * lean.Steps / (2 * (Int128)Math.Max(1, height.Steps))));
        if (more * 2 <= place.Tape.Mark) return;
        findings.Add(place.Note(
            "plumb", $"The {corner} corner leans so far that a tape along it reads {place.Say(more)} more than straight up. The height is taken as straight up."));
    }
}
