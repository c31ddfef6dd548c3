using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Boards;

/// <summary>Where a plumb or level line runs through an area.</summary>
internal static class Chords
{
    /// <summary>The stretches of a line that lie in the area, within two places along it, from the lowest or leftmost on.</summary>
    /// <param name="rings">The area's rings, holes among them.</param>
    /// <param name="plumb">Whether the line stands plumb, so that stretches are told by how high they lie.</param>
    /// <param name="at">Where it stands.</param>
    /// <param name="from">The least place along it.</param>
    /// <param name="to">The most.</param>
    public static List<Stretch> Of(IReadOnlyList<TaggedCorner[]> rings, bool plumb, long at, long from, long to)
    {
        var crossings = new List<long>();
        foreach (var ring in rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[i + 1 == ring.Length ? 0 : i + 1]);
                var (acrossA, alongA, acrossB, alongB) = plumb ? (a.X, a.Y, b.X, b.Y) : (a.Y, a.X, b.Y, b.X);
                // A side that lies along the line is passed on its right.
                if (acrossA > at == acrossB > at) continue;
                crossings.Add(alongA + (long)((Int128)(alongB - alongA) * (at - acrossA) / (acrossB - acrossA)));
            }
        }

        crossings.Sort();
        var stretches = new List<Stretch>();
        for (var i = 0; i + 1 < crossings.Count; i += 2)
        {
            var (low, high) = (Math.Max(crossings[i], from), Math.Min(crossings[i + 1], to));
            if (high > low) stretches.Add(new(low, high));
        }

        return stretches;
    }
}
