using Gaugerod.Plane;

namespace Gaugerod.Engine.Rooms;

/// <summary>
/// Counts a ring's edges: an arc comes as chords with one and the same edge, one after another, and counts as one. Faults are
/// said in the counting of whoever gave the edges.
/// </summary>
internal static class EdgeSpans
{
    /// <summary>For each side of a ring, which edge it is of.</summary>
    public static int[] Of(IReadOnlyList<Edge> edges)
    {
        var of = new int[edges.Count];
        for (var i = 1; i < of.Length; i++) of[i] = of[i - 1] + (edges[i] == edges[i - 1] ? 0 : 1);
        return of;
    }

    /// <summary>The edges, each once.</summary>
    public static Sequence<Edge> Once(Sequence<Edge> edges) => edges.Where((edge, i) => i == 0 || edge != edges[i - 1]).ToSequence();

    /// <summary>For each corner of a ring, which of the corners given it is, or, on an arc, arrives at.</summary>
    public static int[] CornersOf(IReadOnlyList<Edge> edges)
    {
        var of = Of(edges);
        var count = of.Length == 0 ? 0 : of[^1] + 1;
        return [.. of.Select((edge, i) => i > 0 && of[i - 1] == edge ? (edge + 1) % count : edge)];
    }

    /// <summary>The edges of a ring that come as the chords of an arc. One of two sides is straight and bent once, as a wall is that stands in or out at half its height.</summary>
    public static HashSet<Edge> Round(DrawnRing ring) => ring.Sides.Where(side => !side.Bends).GroupBy(side => side.Edge).Where(sides => sides.Count() > 2).Select(sides => sides.Key).ToHashSet();

    /// <summary>Whether a side is one chord of an arc.</summary>
    public static bool IsChord(DrawnRing ring, int side)
    {
        var (sides, count) = (ring.Sides, ring.Sides.Count);
        return sides[side].Edge == sides[(side + 1) % count].Edge || sides[side].Edge == sides[(side + count - 1) % count].Edge;
    }
}
