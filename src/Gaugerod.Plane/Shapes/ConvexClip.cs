namespace Gaugerod.Plane.Shapes;

/// <summary>
/// What of an area lies in a convex outline: a tile of any shape. Rings run, and tags are kept, as for <see cref="BoxClip"/>;
/// a side that the outline's side k cut gets the tag -1 - k.
/// </summary>
/// <remarks>
/// Method: the area is first cut to a box a step larger than the outline, which leaves little of it and small numbers;
/// then one straight cut after another along the outline's sides, as <see cref="BoxClip"/> cuts. What is cut off by the
/// box never bounds what is left. The outline's own corners stay where they are. Any other crossing is brought to whole
/// steps at each cut, so it lies within two steps (0.0006 mm) of the two sides that cross.
/// </remarks>
public static class ConvexClip
{
    /// <summary>The largest outline that can be cut to, in steps either way: 5 m.</summary>
    public const long MostSteps = (1L << 24) - 4;

    // The box's own tags would be taken for the outline's first sides.
    private const int OfBox = int.MinValue;

    /// <summary>Clips.</summary>
    /// <param name="rings">The area's rings.</param>
    /// <param name="outline">The outline: convex, counter-clockwise, at most <see cref="MostSteps"/> wide and high.</param>
    /// <returns>The rings of what is left, outlines and holes mixed, none empty.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The outline is too large.</exception>
    public static IReadOnlyList<TaggedCorner[]> Clip(IEnumerable<TaggedCorner[]> rings, ReadOnlySpan<(long X, long Y)> outline)
    {
        ArgumentNullException.ThrowIfNull(rings);
        var (left, bottom, right, top) = (long.MaxValue, long.MaxValue, long.MinValue, long.MinValue);
        foreach (var (x, y) in outline)
        {
            (left, bottom) = (Math.Min(left, x - 1), Math.Min(bottom, y - 1));
            (right, top) = (Math.Max(right, x + 1), Math.Max(top, y + 1));
        }

        ArgumentOutOfRangeException.ThrowIfGreaterThan(Math.Max(right - left, top - bottom), MostSteps + 2, nameof(outline));
        var kept = BoxClip.Cut(rings, left, bottom, right, top).ConvertAll(ring => Array.ConvertAll(
            ring, node => new TaggedCorner(node.X - left, node.Y - bottom, node.Tag < 0 ? OfBox : node.Tag)));
        var from = outline[^1];
        var side = outline.Length - 1;
        foreach (var to in outline)
        {
            var (before, after) = ((side + outline.Length - 1) % outline.Length, (side + 1) % outline.Length);
            var cut = new SlantedCut((from.X - left, from.Y - bottom), (to.X - left, to.Y - bottom), -1 - before, -1 - after);
            kept = HalfPlane.Keep(kept, cut, -1 - side);
            (from, side) = (to, after);
        }

        var places = outline.ToArray();
        return BoxClip.Tidied(kept.ConvertAll(ring => Joined(Array.ConvertAll(ring, node => node with { X = node.X + left, Y = node.Y + bottom }), places)));
    }

    /// <summary>
    /// A side that runs through a corner of the outline crosses both sides there, and each crossing comes to a step of its
    /// own. What is only a step long is rounding and no side: its ends become one, the outline's corner if it is one.
    /// </summary>
    private static TaggedCorner[] Joined(TaggedCorner[] ring, (long X, long Y)[] outline)
    {
        var kept = new List<TaggedCorner>(ring);
        for (var i = 0; i < kept.Count && kept.Count > 3; i++)
        {
            var next = (i + 1) % kept.Count;
            var (a, b) = (kept[i], kept[next]);
            if (Math.Abs(a.X - b.X) > 1 || Math.Abs(a.Y - b.Y) > 1) continue;
            kept[next] = outline.Contains((a.X, a.Y)) ? a with { Tag = b.Tag } : b;
            kept.RemoveAt(i--);
        }

        return [.. kept];
    }
}
