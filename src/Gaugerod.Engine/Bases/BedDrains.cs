using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bases;

/// <summary>Finds the drains of a bed on its floor, and refuses those that do not lie on it.</summary>
internal static class BedDrains
{
    /// <summary>Where they are, a round one from its middle to its middle; null, with remarks, where one is not on the floor.</summary>
    public static Sequence<FoldLine>? Of(DrawnFace face, Falls falls, Remarks remarks)
    {
        var (found, before) = (new List<FoldLine>(), remarks.Faults.Count);
        // The folds say themselves what is wrong with a drain that they run to.
        if (falls.Drain is { } name) return At(face, name) is var only && IsOn(face, only) ? [new(only, only)] : null;
        for (var i = 0; i < falls.Bed!.Drains.Count; i++)
        {
            var path = string.Create(CultureInfo.InvariantCulture, $"{face.Path}.falls.drains[{i}]");
            var drain = falls.Bed.Drains[i];
            if (drain.Edge is { } edge)
            {
                if (AlongEdge(face, edge, remarks) is { } front) found.Add(front);
                continue;
            }

            var line = drain.Hole is { } hole ? new FoldLine(At(face, hole), At(face, hole)) : drain.Line!;
            if (drain.Hole is not null) CheckRound(face, drain.Hole, line.From, path, remarks);
            else CheckChannel(face, line, path, remarks);
            if (found.FindIndex(other => Touch(other, line)) is var same && same >= 0)
            {
                remarks.Refuse(path, $"a drain where drain {(same + 1).ToString(CultureInfo.InvariantCulture)} is", "drains that do not touch", "leave it out");
            }

            found.Add(line);
        }

        return remarks.Faults.Count > before ? null : found.ToSequence();
    }

    private static FoldLine? AlongEdge(DrawnFace face, string edge, Remarks remarks)
    {
        var (points, n, straight) = (face.Outline.Ring.Points, face.Outline.Sides.Count, new List<(string Name, FoldLine Line)>());
        for (var i = 0; i < n; i++)
        {
            if (!EdgeSpans.IsChord(face.Outline, i)) straight.Add((face.Outline.Sides[i].Name, new(points[i], points[(i + 1) % n])));
        }

        if (straight.Find(side => string.Equals(side.Name, edge, StringComparison.Ordinal)) is { Line: { } line }) return line;
        remarks.Refuse(face.Path + ".falls.toward", $"\"{edge}\"", $"a straight edge of \"{face.Face.Name}\": {string.Join(", ", straight.Select(side => $"\"{side.Name}\""))}");
        return null;
    }

    /// <summary>What of the floor the bed lies on: all but the openings that no drain lies in.</summary>
    public static OpenFloor Floor(DrawnFace face, IEnumerable<FoldLine> drains) => new(
        face.Outline.Ring, [.. face.Openings.Select(opening => opening.Ring).Where(ring => !drains.Any(drain => Covers(ring, drain)))]);

    private static readonly double Near = Length.FromMillimetres(1).Steps;

    private static bool Touch(FoldLine one, FoldLine other) => Segments.Meet(one.From, one.To, other.From, other.To)
        || new[] { Nearby.Off(one.From, one.To, other.From), Nearby.Off(one.From, one.To, other.To), Nearby.Off(other.From, other.To, one.From), Nearby.Off(other.From, other.To, one.To) }.Min() < Near;

    private static bool Covers(Ring ring, FoldLine drain) => RingChecks.Locate(ring, drain.From) != Whereabouts.Outside && RingChecks.Locate(ring, drain.To) != Whereabouts.Outside;

    private static Point At(DrawnFace face, string hole) => face.Face.Holes.First(one => string.Equals(one.Name, hole, StringComparison.Ordinal)).Centre;

    private static bool IsOn(DrawnFace face, Point place) => RingChecks.Locate(face.Outline.Ring, place) == Whereabouts.Inside;

    private static void CheckRound(DrawnFace face, string name, Point place, string path, Remarks remarks)
    {
        if (IsOn(face, place)) return;
        var (off, side) = Nearby.Off(face.Outline.Ring, place);
        var beyond = face.Outline.Sides[side].Name;
        var far = Grid.Nearest(off) == Length.Zero ? $"on the edge \"{beyond}\" itself" : $"{LengthText.Finer(Grid.Nearest(off), remarks.Tape)} off the floor \"{face.Face.Name}\", beyond its edge \"{beyond}\"";
        remarks.Refuse(
            path, $"\"{name}\" at {DrainChecks.Say(place, remarks)}, {far}",
            "a drain on the floor that falls to it", Beside(face, name, Inside(face, side, place), remarks.Tape) is { } near ? $"{DrainChecks.Say(near, remarks)}, beside that edge" : null);
    }

    /// <summary>A place on the floor beside one on its edge, to the mark of the tape: with the drain's rim on the floor if there is room.</summary>
    private static Point? Beside(DrawnFace face, string name, Point edge, Tape tape)
    {
        const int Ways = 16;
        var rim = face.Face.Holes.First(one => string.Equals(one.Name, name, StringComparison.Ordinal)).Diameter.Steps / 2.0;
        foreach (var clear in new[] { rim, 0 })
        {
            var near = Enumerable.Range(0, Ways).Select(k => Place.Towards(2 * Math.PI * k / Ways) * (clear + (2 * tape.Mark.Steps)))
                .Select(aside => Nearby.Of((edge.X.Steps + aside.X, edge.Y.Steps + aside.Y))).Select(place => new Point(tape.Nearest(place.X), tape.Nearest(place.Y)))
                .Where(place => IsOn(face, place)).Select(place => (Off: Nearby.Off(face.Outline.Ring, place).Distance, place)).ToList();
            if (near.Count > 0 && near.MaxBy(one => one.Off) is var best && best.Off >= clear) return best.place;
        }

        return null;
    }

    private static void CheckChannel(DrawnFace face, FoldLine line, string path, Remarks remarks)
    {
        var floor = Floor(face, [line]);
        if (floor.Holds(Place.Of(line.From)) && floor.Holds(Place.Of(line.To)) && floor.Sees(Place.Of(line.From), Place.Of(line.To))) return;
        var off = new[] { line.From, line.To }.Where(end => !floor.Holds(Place.Of(end))).ToList();
        var nearest = off.Select(end => $"{DrainChecks.Say(Inside(face, Nearby.Off(face.Outline.Ring, end).Side, end), remarks)} in place of {DrainChecks.Say(end, remarks)}").ToList();
        remarks.Refuse(
            path, off.Count > 0 ? $"a channel to {DrainChecks.Say(off[0], remarks)}, off the floor \"{face.Face.Name}\"" : $"a channel that leaves the floor \"{face.Face.Name}\" between its ends",
            "a channel that lies on the floor, along a wall or clear of it", nearest.Count > 0 ? string.Join(" and ", nearest) : "a channel for each stretch on the floor");
    }

    private static Point Inside(DrawnFace face, int side, Point place)
    {
        var points = face.Outline.Ring.Points;
        return Nearby.Of(Nearby.On(Nearby.Of(points[side]), Nearby.Of(points[(side + 1) % points.Count]), Nearby.Of(place)));
    }
}
