using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>
/// Moves every side of a ring to its left by what it takes; neighbours meet where their moved lines cross. What falls
/// between two steps comes back to the grid in <see cref="Grid"/>.
/// </summary>
internal static class EdgeMoves
{
    /// <summary>The moved sides in order, without those that came to nothing; null, with remarks, when the sides take too much.</summary>
    public static Sequence<MovedSide>? Move(DrawnRing drawn, bool tileInside, Func<int, Take> takes, Remarks remarks)
    {
        var lines = Lines(drawn, tileInside, takes);
        var n = lines.Count;
        if (lines.Where((line, i) => IsUsedUp(line, lines[(i + 1) % n])).Select(line => line.Side).FirstOrDefault() is { } gone)
        {
            NothingOfArc(drawn, gone, remarks);
            return null;
        }

        var meetings = lines.Select((line, i) => MovedLine.Meet(lines[(i + n - 1) % n], line)).ToList();
        if (!Swallow(drawn, lines, meetings, remarks)) return null;
        n = lines.Count;
        var moved = new List<MovedSide>();
        for (var i = 0; i < n; i++)
        {
            var (here, next) = (meetings[i]!.Value, meetings[(i + 1) % n]!.Value);
            if (here.Start != next.End) moved.Add(new(here.Start, next.End, lines[i].Side));

            // The jog is the side of whatever stands out further.
            if (next.End != next.Start) moved.Add(new(next.End, next.Start, (lines[i].Takes > lines[(i + 1) % n].Takes ? lines[i] : lines[(i + 1) % n]).Side) { IsJog = true });
        }

        return Checked(drawn, tileInside, Joined(moved), remarks);
    }

    private static List<MovedLine> Lines(DrawnRing drawn, bool tileInside, Func<int, Take> takes)
    {
        var (points, n) = (drawn.Ring.Points, drawn.Sides.Count);
        var lines = Enumerable.Range(0, n)
            .Select(i => new MovedLine(points[i], points[(i + 1) % n], takes(i).Inward, drawn.Sides[i], EdgeSpans.IsChord(drawn, i)));

        // Round a hole the tile is to the left when it is run clockwise: the last side first, from its far end.
        return tileInside ? [.. lines] : [.. lines.Reverse().Select(line => line with { From = line.To, To = line.From })];
    }

    /// <summary>Whether two chords are of an arc about a middle in the tile, and take as much as its radius.</summary>
    private static bool IsUsedUp(MovedLine one, MovedLine next) =>
        one.IsChord && one.Side.Edge == next.Side.Edge && Segments.Turn(one.From, one.To, next.To) > 0
        && Arc.Of(one.From, one.To, next.To) is { } arc && arc.Radius <= one.Takes.Steps;

    /// <summary>
    /// Leaves out the chords of arcs that come out backwards: what the next side takes swallows the end of an arc that meets it
    /// square. False, with remarks, where another side comes out so, or a whole arc.
    /// </summary>
    private static bool Swallow(DrawnRing drawn, List<MovedLine> lines, List<MovedCorner?> meetings, Remarks remarks)
    {
        for (var (i, forward) = (0, 0); forward < lines.Count; i = (i + 1) % lines.Count)
        {
            var n = lines.Count;
            var (line, next) = (lines[i], (i + 1) % n);
            if (meetings[i] is { } here && meetings[next] is { } there && Segments.Dot(here.Start, there.End, line.From, line.To) >= 0)
            {
                forward++;
                continue;
            }

            var (before, after) = (lines[(i + n - 1) % n], lines[next]);
            if (!line.IsChord || n <= 3)
            {
                TooMuch(drawn, [before.Side, line.Side, after.Side], remarks);
                return false;
            }

            if (before.Side.Edge != line.Side.Edge && after.Side.Edge != line.Side.Edge)
            {
                NothingOfArc(drawn, line.Side, remarks);
                return false;
            }

            // The two beside it are looked at again with it gone.
            lines.RemoveAt(i);
            meetings.RemoveAt(i);
            meetings[i % lines.Count] = MovedLine.Meet(before, after);
            (i, forward) = ((i + lines.Count - 2) % lines.Count, 0);
        }

        return true;
    }

    /// <summary>Sides that run straight on from a side of the same name become one.</summary>
    private static Sequence<MovedSide> Joined(List<MovedSide> sides)
    {
        var joined = new List<MovedSide>();
        foreach (var side in sides)
        {
            if (joined.Count > 0 && GoesOn(joined[^1], side)) joined[^1] = joined[^1] with { To = side.To };
            else joined.Add(side);
        }

        if (joined.Count > 1 && GoesOn(joined[^1], joined[0]))
        {
            joined[0] = joined[0] with { From = joined[^1].From };
            joined.RemoveAt(joined.Count - 1);
        }

        return joined.ToSequence();
    }

    private static bool GoesOn(MovedSide one, MovedSide next) =>
        string.Equals(one.Side.Name, next.Side.Name, StringComparison.Ordinal)
        && Segments.Turn(one.From, one.To, next.To) == 0
        && Segments.Dot(one.From, one.To, next.From, next.To) > 0;

    private static Sequence<MovedSide>? Checked(DrawnRing drawn, bool tileInside, Sequence<MovedSide> sides, Remarks remarks)
    {
        if (sides.Count < 3)
        {
            TooMuch(drawn, drawn.Sides, remarks);
            return null;
        }

        var ring = OpeningChecks.RingOf(sides);
        if (RingChecks.FirstCrossing(ring) is var (first, second))
        {
            TooMuch(drawn, [sides[first].Side, sides[second].Side], remarks);
            return null;
        }

        if (ring.DoubledArea > 0 == tileInside) return sides;
        TooMuch(drawn, drawn.Sides, remarks);
        return null;
    }

    private static void NothingOfArc(DrawnRing drawn, Side side, Remarks remarks) => remarks.Refuse(
        drawn.Path, $"'{side.Name}', an arc whose radius is smaller than what its edge takes", "an arc of which something is left when its joint, cover and trim are taken off",
        "a smaller joint or trim there, or a plain corner in its place");

    private static void TooMuch(DrawnRing drawn, IEnumerable<Side> sides, Remarks remarks)
    {
        var names = string.Join(", ", sides.Select(s => $"'{s.Name}'").Distinct(StringComparer.Ordinal));
        remarks.Refuse(
            drawn.Path, $"joints, covers and trims at the edges {names} that together take more than there is", $"some tile left on '{drawn.Name}' between its edges",
            "smaller covers, joints or trims there, or a step so small left out of the outline");
    }
}
