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
public sealed class ConvexClip
{
    /// <summary>The largest outline that can be cut to, in steps either way: 5 m.</summary>
    public const long MostSteps = (1L << 24) - 4;

    // The box's own tags would be taken for the outline's first sides.
    private const int OfBox = int.MinValue;

    private readonly RingRow _area = new();
    private readonly HalfPlane _cut = new();
    private readonly List<TaggedCorner> _ring = [];

    /// <summary>An area that is to be cut to many outlines, one after the other.</summary>
    /// <param name="rings">The area's rings.</param>
    public ConvexClip(IEnumerable<TaggedCorner[]> rings)
    {
        ArgumentNullException.ThrowIfNull(rings);
        foreach (var ring in rings)
        {
            _area.Add(ring);
            _area.Close();
        }
    }

    /// <summary>Clips an area to one outline.</summary>
    /// <param name="rings">The area's rings.</param>
    /// <param name="outline">The outline, as <see cref="To"/> takes it.</param>
    /// <returns>The rings of what is left, outlines and holes mixed, none empty.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The outline is too large.</exception>
    public static IReadOnlyList<TaggedCorner[]> Clip(IEnumerable<TaggedCorner[]> rings, ReadOnlySpan<(long X, long Y)> outline) => new ConvexClip(rings).To(outline);

    /// <summary>What of the area lies in an outline. Not for two threads at once.</summary>
    /// <param name="outline">The outline: convex, counter-clockwise, at most <see cref="MostSteps"/> wide and high.</param>
    /// <returns>The rings of what is left, outlines and holes mixed, none empty.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The outline is too large.</exception>
    public IReadOnlyList<TaggedCorner[]> To(ReadOnlySpan<(long X, long Y)> outline)
    {
        var (left, bottom, right, top) = (long.MaxValue, long.MaxValue, long.MinValue, long.MinValue);
        foreach (var (x, y) in outline)
        {
            (left, bottom) = (Math.Min(left, x - 1), Math.Min(bottom, y - 1));
            (right, top) = (Math.Max(right, x + 1), Math.Max(top, y + 1));
        }

        ArgumentOutOfRangeException.ThrowIfGreaterThan(Math.Max(right - left, top - bottom), MostSteps + 2, nameof(outline));
        BoxClip.Cut(_area, _cut, left, bottom, right, top);
        foreach (ref var node in _cut.Kept.All) node = new(node.X - left, node.Y - bottom, node.Tag < 0 ? OfBox : node.Tag);
        var from = outline[^1];
        var side = outline.Length - 1;
        foreach (var to in outline)
        {
            var (before, after) = ((side + outline.Length - 1) % outline.Length, (side + 1) % outline.Length);
            var cut = new SlantedCut((from.X - left, from.Y - bottom), (to.X - left, to.Y - bottom), -1 - before, -1 - after);
            _cut.Keep(cut, -1 - side);
            (from, side) = (to, after);
        }

        var rings = new List<TaggedCorner[]>(_cut.Kept.Count);
        for (var r = 0; r < _cut.Kept.Count; r++)
        {
            _ring.Clear();
            foreach (ref readonly var node in _cut.Kept[r]) _ring.Add(new(node.X + left, node.Y + bottom, node.Tag));
            Join(_ring, outline);
            BoxClip.Tidied(_ring, rings);
        }

        return rings;
    }

    /// <summary>
    /// A side that runs through a corner of the outline crosses both sides there, and each crossing comes to a step of its
    /// own. What is only a step long is rounding and no side: its ends become one, the outline's corner if it is one.
    /// </summary>
    private static void Join(List<TaggedCorner> kept, ReadOnlySpan<(long X, long Y)> outline)
    {
        for (var i = 0; i < kept.Count && kept.Count > 3; i++)
        {
            var next = i + 1 == kept.Count ? 0 : i + 1;
            var (a, b) = (kept[i], kept[next]);
            if (Math.Abs(a.X - b.X) > 1 || Math.Abs(a.Y - b.Y) > 1) continue;
            kept[next] = outline.Contains((a.X, a.Y)) ? a with { Tag = b.Tag } : b;
            kept.RemoveAt(i--);
        }
    }
}
