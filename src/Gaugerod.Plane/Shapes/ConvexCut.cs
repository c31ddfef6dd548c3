namespace Gaugerod.Plane.Shapes;

/// <summary>
/// What of an area lies outside a convex outline: what a saw as wide as a joint leaves on both sides of it. Rings run, and tags are
/// kept, as for <see cref="ConvexClip"/>, whose corners these are: what lies inside and what lies outside share each of them.
/// </summary>
/// <remarks>
/// Method: the area's sides less the stretches of them that lie in the outline, and the outline's sides within the area, run the
/// other way. Each goes on where the next begins.
/// </remarks>
public static class ConvexCut
{
    /// <summary>The rings of what is left, outlines and holes mixed, none empty.</summary>
    /// <param name="rings">The area's rings.</param>
    /// <param name="outline">The outline, as <see cref="ConvexClip.To"/> takes it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The outline is too large.</exception>
    public static IReadOnlyList<TaggedCorner[]> Without(IReadOnlyList<TaggedCorner[]> rings, ReadOnlySpan<(long X, long Y)> outline)
    {
        ArgumentNullException.ThrowIfNull(rings);
        var sides = rings.SelectMany(Sides).ToList();
        var number = 0;
        // Sides of one tag are told apart while they are cut.
        var inside = ConvexClip.Clip([.. rings.Select(ring => Array.ConvertAll(ring, node => node with { Tag = number++ }))], outline).SelectMany(Sides).ToList();
        if (inside.Count == 0) return rings;
        var cut = inside.Where(side => side.Tag >= 0).ToLookup(side => side.Tag);
        var left = new List<Side>();
        for (var i = 0; i < sides.Count; i++)
        {
            var (side, from) = (sides[i], sides[i].From);
            foreach (var gone in cut[i].OrderBy(gone => Segments.Dot(side.From, side.To, side.From, gone.From)))
            {
                if (from != gone.From) left.Add(side with { From = from, To = gone.From });
                from = gone.To;
            }

            if (from != side.To) left.Add(side with { From = from });
        }

        left.AddRange(inside.Where(side => side.Tag < 0).Select(side => new Side(side.To, side.From, side.Tag)));
        return Linked(left);
    }

    private readonly record struct Side(Point From, Point To, int Tag);

    private static IEnumerable<Side> Sides(TaggedCorner[] ring) => ring.Select((node, i) => new Side(node.Point, ring[(i + 1) % ring.Length].Point, node.Tag));

    private static List<TaggedCorner[]> Linked(List<Side> sides)
    {
        var (rings, next) = (new List<TaggedCorner[]>(), new Dictionary<Point, Queue<int>>());
        for (var i = 0; i < sides.Count; i++)
        {
            if (!next.TryGetValue(sides[i].From, out var here)) next.Add(sides[i].From, here = new());
            here.Enqueue(i);
        }

        foreach (var first in sides)
        {
            var ring = new List<TaggedCorner>();
            // Where rings touch it does not matter which way is gone: what touches itself is taken apart.
            for (var at = first.From; next.TryGetValue(at, out var from) && from.TryDequeue(out var side); at = sides[side].To)
            {
                ring.Add(new(at.X.Steps, at.Y.Steps, sides[side].Tag));
            }

            Join(ring);
            BoxClip.Tidied(ring, rings);
        }

        return rings;
    }

    /// <summary>What is only a step long is rounding and no side, as for <see cref="ConvexClip"/>: its ends become one.</summary>
    private static void Join(List<TaggedCorner> ring)
    {
        for (var i = 0; i < ring.Count && ring.Count > 3; i++)
        {
            var next = i + 1 == ring.Count ? 0 : i + 1;
            if (Math.Abs(ring[i].X - ring[next].X) <= 1 && Math.Abs(ring[i].Y - ring[next].Y) <= 1) ring.RemoveAt(i--);
        }
    }
}
