using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>Looks whether a floor can fall to a drain: it lies on the floor, and nothing stands between it and any place at the edge.</summary>
internal static class DrainChecks
{
    /// <summary>Whether all of the floor's edge is seen from the drain; else says why not and where it would be.</summary>
    public static bool SeesAll(FinishedFace whole, Hole drain, string path, Remarks remarks)
    {
        var (points, names) = (whole.Outline.Points, whole.OutlineNames);
        var at = path + ".falls.to";
        var place = $"\"{drain.Name}\" at {Say(drain.Centre, remarks)}";
        if (RingChecks.Locate(whole.Outline, drain.Centre) != Whereabouts.Inside)
        {
            var (off, side) = Nearby.Off(whole.Outline, drain.Centre);
            var (found, marks) = (Grid.Nearest(off), LengthText.Finer(Grid.Nearest(off), remarks.Tape));
            remarks.Refuse(
                at, found == Length.Zero ? $"{place}, on the edge \"{names[side]}\" itself" : $"{place}, {marks} off the floor \"{whole.Name}\", beyond its edge \"{names[side]}\"",
                "a drain on the floor that falls to it", Nearest(whole, drain, remarks));
            return false;
        }

        var sides = Enumerable.Range(0, points.Count).Where(i => Segments.Turn(drain.Centre, points[i], points[(i + 1) % points.Count]) <= 0).ToList();
        if (sides.Count == 0) return true;
        var hidden = Enumerable.Range(0, points.Count).Where(i => IsHidden(points, drain.Centre, i)).DefaultIfEmpty(sides[0]).Select(Called).Distinct(StringComparer.Ordinal);
        remarks.Refuse(at, $"{place}, from where {string.Join(", ", hidden)} cannot be seen", "a drain from which every corner is seen in a straight line", Nearest(whole, drain, remarks));
        return false;

        string Called(int i)
        {
            var (one, other) = (names[(i + points.Count - 1) % points.Count], names[i]);
            return string.Equals(one, other, StringComparison.Ordinal) ? $"the arc \"{one}\"" : $"the corner of \"{one}\" and \"{other}\" at {Say(points[i], remarks)}";
        }
    }

    /// <summary>A place, as the job would have it.</summary>
    public static string Say(Point place, Remarks remarks) => $"[{remarks.Say(place.X)}, {remarks.Say(place.Y)}]";

    private static bool IsHidden(Sequence<Point> points, Point drain, int corner)
    {
        for (var i = 0; i < points.Count; i++)
        {
            var next = (i + 1) % points.Count;
            if (i != corner && next != corner && Segments.Meet(drain, points[corner], points[i], points[next])) return true;
        }

        return false;
    }

    /// <summary>The nearest place from which all of the floor is seen: to the left of every side. With its rim on the floor if there is room.</summary>
    private static string Nearest(FinishedFace whole, Hole drain, Remarks remarks)
    {
        var (points, here) = (whole.Outline.Points, Nearby.Of(drain.Centre));
        // A place that is said to the mark lies off by as much as two halves of one.
        var mark = remarks.Tape.Mark.Steps * 0.75;
        foreach (var clear in new[] { mark + (drain.Diameter.Steps / 2.0), mark })
        {
            var seeing = ConvexRegion.Of(whole.Outline.Bounds, points.Select((point, i) => new Bound(point, points[(i + 1) % points.Count], clear)));
            if (seeing.Count < 3) continue;
            var best = seeing.Select((corner, i) => Nearby.On(corner, seeing[(i + 1) % seeing.Count], here)).MinBy(place => Nearby.Distance(place, here));
            return Say(Nearby.Of(best), remarks);
        }

        return "no place sees all of this floor: \"lines\", folds of its own from edge to edge, or the floor in parts";
    }
}
