namespace Gaugerod.Plane.Shapes;

/// <summary>One straight cut through an area.</summary>
internal static class HalfPlane
{
    /// <summary>What lies to the right of x = <paramref name="at"/>; sides along the cut get <paramref name="tag"/>.</summary>
    public static List<TaggedCorner[]> KeepRight(IEnumerable<TaggedCorner[]> rings, long at, int tag) => Keep(rings, new UprightCut(at), tag);

    /// <summary>What a cut keeps; sides along the cut get <paramref name="tag"/>.</summary>
    public static List<TaggedCorner[]> Keep<TLine>(IEnumerable<TaggedCorner[]> rings, TLine line, int tag)
        where TLine : struct, ICutLine
    {
        var kept = new List<TaggedCorner[]>();
        var chains = new List<List<TaggedCorner>>();
        var crossings = new List<Crossing>();
        foreach (var ring in rings)
        {
            var (inside, outside) = (-1, -1);
            for (var i = 0; i < ring.Length && (inside < 0 || outside < 0); i++)
            {
                if (line.Keeps(ring[i])) inside = i;
                else if (outside < 0) outside = i;
            }

            if (inside < 0) continue;
            if (outside < 0) kept.Add(ring);
            else Follow(ring, outside, line, tag, chains, crossings);
        }

        if (crossings.Count > 0) Join(chains, crossings, kept);
        return kept;
    }

    /// <summary>Walks a ring from a corner outside and gathers the chains of sides that lie inside.</summary>
    private static void Follow<TLine>(TaggedCorner[] ring, int start, TLine line, int tag, List<List<TaggedCorner>> chains, List<Crossing> crossings)
        where TLine : struct, ICutLine
    {
        List<TaggedCorner>? chain = null;
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[(start + i) % ring.Length], ring[(start + i + 1) % ring.Length]);
            if (!line.Keeps(a) && line.Keeps(b))
            {
                var crossing = line.Cross(a, b, chains.Count, entering: true);
                chain = [new(crossing.At.X, crossing.At.Y, a.Tag)];
                crossings.Add(crossing);
            }

            if (chain is null) continue;
            if (line.Keeps(b))
            {
                chain.Add(b);
            }
            else
            {
                var crossing = line.Cross(b, a, chains.Count, entering: false);
                chain.Add(new(crossing.At.X, crossing.At.Y, tag));
                crossings.Add(crossing);
                chains.Add(chain);
                chain = null;
            }
        }
    }

    /// <summary>
    /// Along the cut the area lies between each odd crossing from below and the next even one. The lower one enters, the
    /// upper one leaves; the new side runs down from where a chain leaves to where the next enters. Sides that an earlier
    /// cut brought to whole steps may cross by a step, and two of them may then enter one after the other: each that
    /// leaves goes with the nearest that is still open, as brackets do, so that nothing is lost or taken twice.
    /// </summary>
    private static void Join(List<List<TaggedCorner>> chains, List<Crossing> crossings, List<TaggedCorner[]> kept)
    {
        crossings.Sort(Crossing.FromBelow);
        var next = new int[chains.Count];
        var open = new Stack<Crossing>();
        foreach (var crossing in crossings)
        {
            if (!open.TryPeek(out var below) || below.Entering == crossing.Entering)
            {
                open.Push(crossing);
                continue;
            }

            open.Pop();
            var (enters, leaves) = crossing.Entering ? (crossing, below) : (below, crossing);
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
}
