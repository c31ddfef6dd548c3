namespace Gaugerod.Plane.Shapes;

/// <summary>One straight cut after another through an area. Keeps its room between cuts; not for two threads at once.</summary>
internal sealed class HalfPlane
{
    private readonly RingRow _chains = new();
    private readonly List<Crossing> _crossings = [];
    private readonly Stack<Crossing> _open = [];
    private int[] _next = new int[8];
    private RingRow _spare = new();

    /// <summary>What the cuts so far have kept.</summary>
    public RingRow Kept { get; private set; } = new();

    /// <summary>What a cut keeps of what was kept before; sides along the cut get <paramref name="tag"/>.</summary>
    public void Keep<TLine>(TLine line, int tag)
        where TLine : struct, ICutLine => Keep(Kept, line, tag);

    /// <summary>What a cut keeps of an area, which is left as it is.</summary>
    public void Keep<TLine>(RingRow area, TLine line, int tag)
        where TLine : struct, ICutLine
    {
        var kept = _spare;
        kept.Clear();
        _chains.Clear();
        _crossings.Clear();
        for (var r = 0; r < area.Count; r++)
        {
            ReadOnlySpan<TaggedCorner> ring = area[r];
            var (inside, outside) = (-1, -1);
            for (var i = 0; i < ring.Length && (inside < 0 || outside < 0); i++)
            {
                if (line.Keeps(ring[i])) inside = i;
                else if (outside < 0) outside = i;
            }

            if (inside < 0) continue;
            if (outside >= 0)
            {
                Follow(ring, outside, line, tag);
                continue;
            }

            kept.Add(ring);
            kept.Close();
        }

        if (_crossings.Count > 0) Join(kept);
        (Kept, _spare) = (kept, Kept);
    }

    /// <summary>Walks a ring from a corner outside and gathers the chains of sides that lie inside.</summary>
    private void Follow<TLine>(ReadOnlySpan<TaggedCorner> ring, int start, TLine line, int tag)
        where TLine : struct, ICutLine
    {
        var (at, within) = (start, false);
        for (var i = 0; i < ring.Length; i++)
        {
            var next = at + 1 == ring.Length ? 0 : at + 1;
            ref readonly var a = ref ring[at];
            ref readonly var b = ref ring[next];
            at = next;
            var keeps = line.Keeps(b);
            if (keeps && !within)
            {
                var crossing = line.Cross(a, b, _chains.Count, entering: true);
                _chains.Add(new TaggedCorner(crossing.At.X, crossing.At.Y, a.Tag));
                _crossings.Add(crossing);
            }

            if (keeps)
            {
                _chains.Add(b);
            }
            else if (within)
            {
                var crossing = line.Cross(b, a, _chains.Count, entering: false);
                _chains.Add(new TaggedCorner(crossing.At.X, crossing.At.Y, tag));
                _crossings.Add(crossing);
                _chains.Close();
            }

            within = keeps;
        }
    }

    /// <summary>
    /// Along the cut the area lies between each odd crossing from below and the next even one. The lower one enters, the
    /// upper one leaves; the new side runs down from where a chain leaves to where the next enters. Sides that an earlier
    /// cut brought to whole steps may cross by a step, and two of them may then enter one after the other: each that
    /// leaves goes with the nearest that is still open, as brackets do, so that nothing is lost or taken twice.
    /// </summary>
    private void Join(RingRow kept)
    {
        _crossings.Sort(Crossing.FromBelow);
        if (_next.Length < _chains.Count) _next = new int[2 * _chains.Count];
        Array.Clear(_next, 0, _chains.Count);
        _open.Clear();
        foreach (var crossing in _crossings)
        {
            if (!_open.TryPeek(out var below) || below.Entering == crossing.Entering)
            {
                _open.Push(crossing);
                continue;
            }

            _open.Pop();
            var (enters, leaves) = crossing.Entering ? (crossing, below) : (below, crossing);
            _next[leaves.Chain] = enters.Chain;
        }

        for (var first = 0; first < _chains.Count; first++)
        {
            if (_next[first] == Used) continue;
            for (var chain = first; _next[chain] != Used;)
            {
                kept.Add(_chains[chain]);
                var next = _next[chain];
                _next[chain] = Used;
                chain = next;
            }

            kept.Close();
        }
    }

    // In place of the next chain, once a chain is in its ring.
    private const int Used = -1;
}
