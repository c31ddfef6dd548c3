using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>Sides of an outline one after another, from one true corner to the next: what one plane falls from, or a cone.</summary>
/// <param name="First">The first of them.</param>
/// <param name="Count">How many there are, chords counted.</param>
/// <param name="Names">The names of their edges, each once.</param>
/// <param name="Rounds">The names of the arcs among them.</param>
internal sealed record FloorSides(int First, int Count, Sequence<string> Names, Sequence<string> Rounds)
{
    // An arc is drawn through places read to the tape: half a millimetre turns the end of one of 50 mm by 1 in 35.
    private const double InLine = 1 / 16.0;

    /// <summary>What they are called together.</summary>
    public string Name => Names.Count == 1 ? Names[0] : $"{Names[0]} to {Names[^1]}";

    /// <summary>
    /// All sides of an outline, parted at its true corners: where two sides meet at an angle. The corners between the chords of
    /// an arc are none, nor is one where an arc runs on into a side, or a side into the next as far as a tape can tell. One without a corner comes as a whole.
    /// </summary>
    /// <param name="outline">The outline, counter-clockwise.</param>
    /// <param name="names">The names of its sides; the chords of an arc have the same.</param>
    /// <param name="mark">The tape's mark, in steps.</param>
    /// <param name="corners">The true corners.</param>
    public static IReadOnlyList<FloorSides> Of(Ring outline, Sequence<string> names, double mark, out IReadOnlyList<int> corners)
    {
        var count = names.Count;
        var spans = Enumerable.Range(0, count).Select(side => Span(names, side)).ToArray();
        corners = [.. Enumerable.Range(0, count).Where(i => IsCorner(outline, spans, i, mark))];
        if (corners.Count == 0) return [From(0, count)];
        var (parts, at) = (new List<FloorSides>(), corners);
        for (var k = 0; k < at.Count; k++) parts.Add(From(at[k], k + 1 < at.Count ? at[k + 1] - at[k] : at[0] + count - at[k]));
        return parts;

        FloorSides From(int first, int sides)
        {
            var of = Enumerable.Range(first, sides).Select(i => i % count).ToList();
            return new(first, sides, of.Select(i => names[i]).Distinct(StringComparer.Ordinal).ToSequence(), of.Where(i => spans[i].Count > 1).Select(i => names[i]).Distinct(StringComparer.Ordinal).ToSequence());
        }
    }

    /// <summary>The first side of the edge that a side is of, and how many it has.</summary>
    private static (int First, int Count) Span(Sequence<string> names, int side)
    {
        var (first, count) = (side, names.Count);
        while (IsOne(first - 1) && first > side - count + 1) first--;
        var last = side;
        while (IsOne(last) && last < first + count - 1) last++;
        return (first, last - first + 1);

        bool IsOne(int one) => string.Equals(names[((one % count) + count) % count], names[(one + 1 + count) % count], StringComparison.Ordinal);
    }

    private static bool IsCorner(Ring outline, (int First, int Count)[] spans, int corner, double mark)
    {
        var (points, count) = (outline.Points, spans.Length);
        var (arriving, leaving) = ((corner + count - 1) % count, corner);
        var (a, b, c) = (points[arriving], points[corner], points[(corner + 1) % count]);
        var (one, next) = (spans[arriving], spans[leaving]);
        if (one.Count == count || (one.Count > 1 && (one.First - next.First) % count == 0)) return false;
        var bend = Segments.Cross(a, b, b, c);
        if (one.Count == 1 && next.Count == 1) return Nearby.Off(a, c, b) > mark;
        // A chord stands askew to its arc's end by half of what the arc turns from chord to chord.
        var turn = Math.Atan2((double)bend, (double)Segments.Dot(a, b, b, c));
        return Math.Abs(turn - (Turn(outline, one) / 2) - (Turn(outline, next) / 2)) > InLine;
    }

    /// <summary>What an arc turns from one chord to the next; nothing for a straight side.</summary>
    private static double Turn(Ring outline, (int First, int Count) span)
    {
        if (span.Count == 1) return 0;
        Point At(int i) => outline.Points[(span.First + i + outline.Points.Count) % outline.Points.Count];
        return (Arc.Of(At(0), At(span.Count / 2), At(span.Count))?.Sweep ?? 0) / span.Count;
    }
}
