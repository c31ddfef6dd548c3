namespace Gaugerod.Plane.Shapes;

/// <summary>One straight upright cut through an area.</summary>
internal static class HalfPlane
{
    /// <summary>What lies to the right of x = <paramref name="at"/>; sides along the cut get <paramref name="tag"/>.</summary>
    public static List<TaggedCorner[]> KeepRight(IEnumerable<TaggedCorner[]> rings, long at, int tag)
    {
        var kept = new List<TaggedCorner[]>();
        var chains = new List<List<TaggedCorner>>();
        var crossings = new List<Crossing>();
        foreach (var ring in rings)
        {
            var inside = Array.FindIndex(ring, node => node.X > at);
            if (inside < 0) continue;
            var outside = Array.FindIndex(ring, node => node.X <= at);
            if (outside < 0) kept.Add(ring);
            else Follow(ring, outside, at, tag, chains, crossings);
        }

        if (crossings.Count > 0) Join(chains, crossings, kept);
        return kept;
    }

    /// <summary>Walks a ring from a corner outside and gathers the chains of sides that lie inside.</summary>
    private static void Follow(TaggedCorner[] ring, int start, long at, int tag, List<List<TaggedCorner>> chains, List<Crossing> crossings)
    {
        List<TaggedCorner>? chain = null;
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[(start + i) % ring.Length], ring[(start + i + 1) % ring.Length]);
            if (a.X <= at && b.X > at)
            {
                var crossing = Crossing.Of(a, b, at, chains.Count, entering: true);
                chain = [new(at, crossing.Rounded, a.Tag)];
                crossings.Add(crossing);
            }

            if (chain is null) continue;
            if (b.X > at)
            {
                chain.Add(b);
            }
            else
            {
                var crossing = Crossing.Of(b, a, at, chains.Count, entering: false);
                chain.Add(new(at, crossing.Rounded, tag));
                crossings.Add(crossing);
                chains.Add(chain);
                chain = null;
            }
        }
    }

    /// <summary>
    /// Along the cut the area lies between each odd crossing from below and the next even one. The lower one enters, the
    /// upper one leaves; the new side runs down from where a chain leaves to where the next enters.
    /// </summary>
    private static void Join(List<List<TaggedCorner>> chains, List<Crossing> crossings, List<TaggedCorner[]> kept)
    {
        crossings.Sort(Crossing.FromBelow);
        var next = new int[chains.Count];
        for (var i = 0; i + 1 < crossings.Count; i += 2)
        {
            var (low, high) = (crossings[i], crossings[i + 1]);
            if (low.Entering == high.Entering) throw new InvalidOperationException("The rings to be clipped cross or run the wrong way.");
            var (enters, leaves) = low.Entering ? (low, high) : (high, low);
            next[leaves.Chain] = enters.Chain;
        }

        var used = new bool[chains.Count];
        for (var first = 0; first < chains.Count; first++)
        {
            if (used[first]) continue;
            var ring = new List<TaggedCorner>();
            for (var chain = first; !used[chain]; chain = next[chain])
            {
                used[chain] = true;
                ring.AddRange(chains[chain]);
            }

            kept.Add([.. ring]);
        }
    }

    /// <summary>Where a side crosses the cut: an exact fraction of a step, and which way the side goes on from there.</summary>
    private readonly record struct Crossing(Int128 Numerator, long Denominator, long Rise, int Chain, bool Entering)
    {
        public long Rounded => Grid.NearestStep(Numerator, Denominator);

        public static Crossing Of(TaggedCorner outside, TaggedCorner inside, long at, int chain, bool entering)
        {
            var (run, rise) = (inside.X - outside.X, inside.Y - outside.Y);
            return new(((Int128)outside.Y * run) + ((Int128)(at - outside.X) * rise), run, rise, chain, entering);
        }

        public static int FromBelow(Crossing one, Crossing other)
        {
            var place = (one.Numerator * other.Denominator).CompareTo(other.Numerator * one.Denominator);
            // Two sides that start from one point of the cut are in the order in which they fan out to the right.
            return place != 0 ? place : ((Int128)one.Rise * other.Denominator).CompareTo((Int128)other.Rise * one.Denominator);
        }
    }
}
