using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Surveys;

/// <summary>The lower or upper line of a wall from its left corner to its right, with what stands on it or hangs from it.</summary>
/// <param name="Points">Its points, left to right.</param>
/// <param name="Sides">What lies between each two.</param>
internal sealed record Chain(Sequence<Point> Points, Sequence<SideTag> Sides);

/// <summary>Cuts boxes out of a wall's foot or head line.</summary>
internal static class Notches
{
    private readonly record struct Stretch(Point From, Point To, SideTag Tag)
    {
        public bool IsBox => Tag.Of == SideOf.BoxEdge;
    }

    public static Chain Cut(bool atHead, CornerPair corners, Length width, Sequence<SurveyBox> boxes, ReadingPlace place, List<Fault> faults)
    {
        Length LeftAt(Length height) => corners.Left.InsetAt(height);
        Length RightAt(Length height) => width - corners.Right.InsetAt(height);
        var (leftEnd, rightEnd) = atHead ? (corners.Left.Top, corners.Right.Top) : (corners.Left.Foot, corners.Right.Foot);
        var (first, last) = (new Point(LeftAt(leftEnd), leftEnd), new Point(RightAt(rightEnd), rightEnd));
        Point OnLine(Length x) => new(x, Grid.Between(first.X, first.Y, last.X, last.Y, x));

        // What begins within a leaning corner's reach begins at the corner.
        var (nearLeft, nearRight) = (Length.Max(Length.Zero, first.X), Length.Min(width, last.X));
        var line = new SideTag(atHead ? SideOf.Head : SideOf.Foot);
        var stretches = new List<Stretch>();
        var (cursor, reachedRight, before) = (first, false, "");
        foreach (var (box, index) in boxes.Select((box, index) => (box, index)).Where(b => b.box.AtHead == atHead).OrderBy(b => b.box.From))
        {
            var path = place.Fixture(index);
            var (leftmost, rightmost) = (LeftAt(box.HeightLeft), RightAt(box.HeightRight));
            var to = box.To ?? Length.Max(width, rightmost);
            if (!Fits(box, to, leftmost, rightmost, width, path, place, faults)) continue;

            var (atLeft, atRight) = (box.From <= Length.Max(leftmost, nearLeft), to >= Length.Min(rightmost, nearRight));
            var from = new Point(atLeft ? leftmost : box.From, box.HeightLeft);
            var end = new Point(atRight ? rightmost : to, box.HeightRight);
            var overlaps = reachedRight || (stretches.Count > 0 && (atLeft || from.X < cursor.X));
            if (overlaps)
            {
                faults.Add(new(path, $"'{box.Name}' beginning before '{before}' ends", "fixtures side by side", "let one end where the other begins"));
                continue;
            }

            if (!atLeft && from.X > cursor.X) stretches.Add(new(OnLine(cursor.X), OnLine(from.X), line));
            stretches.Add(new(from, end, new(SideOf.BoxEdge, index)));
            (cursor, reachedRight, before) = (end, atRight, box.Name);
        }

        if (!reachedRight) stretches.Add(new(stretches.Count == 0 ? first : OnLine(cursor.X), last, line));
        return Join(stretches, atHead);
    }

    private static bool Fits(
        SurveyBox box, Length to, Length leftmost, Length rightmost, Length width, string path, ReadingPlace place, List<Fault> faults)
    {
        var (least, most) = (Length.Min(Length.Zero, leftmost), Length.Max(width, rightmost));
        var count = faults.Count;
        if (box.From < least) faults.Add(new($"{path}.from", $"{place.Say(box.From)}, beyond the left corner", $"{place.Say(least)} or more", place.Say(least)));
        if (to > most) faults.Add(new($"{path}.to", $"{place.Say(to)}, beyond the right corner", $"{place.Say(most)} or less", "leave it out to reach the corner"));
        if (box.From >= to) faults.Add(new($"{path}.to", place.Say(to), $"more than where it begins, {place.Say(box.From)}"));
        return faults.Count == count;
    }

    /// <summary>Joins stretches by the upright sides between them.</summary>
    private static Chain Join(List<Stretch> stretches, bool atHead)
    {
        var points = new List<Point> { stretches[0].From };
        var sides = new List<SideTag>();
        for (var i = 0; i < stretches.Count; i++)
        {
            sides.Add(stretches[i].Tag);
            points.Add(stretches[i].To);
            if (i + 1 == stretches.Count || stretches[i].To == stretches[i + 1].From) continue;
            sides.Add(Between(stretches[i], stretches[i + 1], atHead));
            points.Add(stretches[i + 1].From);
        }

        return new(points.ToSequence(), sides.ToSequence());
    }

    /// <summary>The side between two stretches is a box's; between two boxes, that of the one which stands out further.</summary>
    private static SideTag Between(Stretch left, Stretch right, bool atHead)
    {
        var leftStandsOut = atHead ? left.To.Y < right.From.Y : left.To.Y > right.From.Y;
        var isLeftBoxes = left.IsBox && (!right.IsBox || leftStandsOut);
        return isLeftBoxes ? new(SideOf.BoxRight, left.Tag.Box) : new(SideOf.BoxLeft, right.Tag.Box);
    }
}
