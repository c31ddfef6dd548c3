namespace Gaugerod.Plane.Shapes;

/// <summary>
/// What of an area lies in a convex outline: a tile of any shape. Rings run, and tags are kept, as for <see cref="BoxClip"/>;
/// a side that the outline's side k cut gets the tag -1 - k.
/// </summary>
/// <remarks>
/// Method: the area is first cut to a box a step larger than the outline, which leaves little of it and small numbers;
/// then one straight cut after another along the outline's sides, as <see cref="BoxClip"/> cuts. What is cut off by the
/// box never bounds what is left. A crossing is brought to whole steps at each cut, so a corner is at most one step
/// (0.0003 mm) from its true place.
/// </remarks>
public static class ConvexClip
{
    /// <summary>The largest outline that can be cut to, in steps either way: 5 m.</summary>
    public const long MostSteps = (1L << 24) - 4;

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
        var kept = BoxClip.Cut(rings, left, bottom, right, top).ConvertAll(ring => Moved(ring, -left, -bottom));
        var from = outline[^1];
        var side = outline.Length - 1;
        foreach (var to in outline)
        {
            kept = HalfPlane.Keep(kept, new SlantedCut((from.X - left, from.Y - bottom), (to.X - left, to.Y - bottom)), -1 - side);
            (from, side) = (to, (side + 1) % outline.Length);
        }

        return BoxClip.Tidied(kept.ConvertAll(ring => Moved(ring, left, bottom)));
    }

    private static TaggedCorner[] Moved(TaggedCorner[] ring, long right, long up) =>
        Array.ConvertAll(ring, node => node with { X = node.X + right, Y = node.Y + up });
}
