namespace Gaugerod.Engine.Sharing;

/// <summary>
/// The heaviest sets of blanks that one tile gives, for weights on the kinds: exact, by branching over the kinds from the most
/// weight for the room they take, cut off where no fill can beat what is asked any more.
/// </summary>
internal sealed class TileFill
{
    private readonly Wanted _wanted;
    private readonly TileFits _fits;
    private readonly StripFill[] _strips;
    private readonly int[] _corners;
    private readonly List<int[]> _open = [];
    private readonly int[] _held = new int[256];
    private readonly List<(long Weight, int[] Fill)> _found = [];
    private long[] _weights = [];
    private int[] _most = [];
    private double[] _density = [];
    private long _above;
    private bool _all;
    private long _end;
    private bool _cutOff;

    public TileFill(Wanted wanted, TileFits fits)
    {
        (_wanted, _fits) = (wanted, fits);
        _strips = [new(wanted, Across.Upright), new(wanted, Across.Level)];
        _corners = wanted.Corners;
    }

    /// <summary>How much work was done so far, in blanks tried.</summary>
    public long Work { get; private set; }

    /// <summary>The heaviest fills found on the way, the heaviest last, and whether none is heavier; no fills where nothing is heavier than asked.</summary>
    /// <param name="weights">The weight of each kind.</param>
    /// <param name="above">Only fills heavier than this are looked for.</param>
    /// <param name="most">The most copies of each kind that are of use.</param>
    /// <param name="patience">After so much work it leaves off.</param>
    public (IReadOnlyList<(long Weight, int[] Fill)> Fills, bool All) Heaviest(long[] weights, long above, int[] most, long patience = long.MaxValue)
    {
        Begin(weights, above, most, patience);
        foreach (var strips in _strips)
        {
            var (weight, fill) = strips.Heaviest(weights, most);
            Work += strips.Work;
            if (weight > _above) Keep(weight, fill);
        }

        // Strips alone are reckoned already: every fill looked for below holds a block, and blocks come first.
        var order = Ordered();
        Branch(order, order.Length, Array.FindIndex(order, IsStrip) is >= 0 and var strip ? strip : order.Length, 0, 0, 1.0, 4);
        return (_found, !_cutOff);
    }

    /// <summary>Every fill heavier than asked, and whether these are all: it ends when there are more than the limit.</summary>
    public (IReadOnlyList<(long Weight, int[] Fill)> Fills, bool All) All(long[] weights, long above, int[] most, int limit, long patience)
    {
        Begin(weights, above, most, patience);
        _all = true;
        var order = Ordered();
        _limit = limit;
        Branch(order, order.Length, order.Length, 0, 0, 1.0, 4);
        _all = false;
        return (_found, !_cutOff);
    }

    private int _limit;

    private void Begin(long[] weights, long above, int[] most, long patience)
    {
        (_weights, _above, _most) = (weights, above, most);
        _end = patience == long.MaxValue ? patience : Work + patience;
        _density = new double[weights.Length];
        for (var kind = 0; kind < weights.Length; kind++) _density[kind] = weights[kind] / _wanted.Area[kind];
        _found.Clear();
        _cutOff = false;
    }

    private int[] Ordered()
    {
        var order = Enumerable.Range(0, _weights.Length).Where(kind => _weights[kind] > 0 && _most[kind] > 0).ToArray();
        Array.Sort(order, (a, b) => (IsStrip(a), _density[b], a).CompareTo((IsStrip(b), _density[a], b)));
        return order;
    }

    /// <summary>Adds each kind that is still open, in their order, and goes on from there.</summary>
    private void Branch(int[] open, int n, int to, int count, long weight, double room, int corners)
    {
        while (_open.Count <= count) _open.Add(new int[_weights.Length]);
        var next = _open[count];
        for (var i = 0; i < to; i++)
        {
            if (Work >= _end || (_all && _found.Count > _limit))
            {
                _cutOff = true;
                return;
            }

            if ((i & 7) == 0 && weight + AtMost(open, i, n, room, corners) <= _above) return;
            var kind = open[i];
            Work++;
            Insert(kind, count);
            if (_fits.Fit(_held.AsSpan(0, count + 1)))
            {
                var heavier = weight + _weights[kind];
                if (heavier > _above) Keep(heavier, _held[..(count + 1)]);
                var (left, free) = (room - _wanted.Area[kind], corners - _corners[kind]);
                var m = 0;
                for (var j = i; j < n; j++)
                {
                    var other = open[j];
                    if (_corners[other] > free || _wanted.Area[other] > left + 1e-9 || !_fits.Pair(kind, other)) continue;
                    if (other == kind && Copies(kind, count + 1) >= _most[kind]) continue;
                    next[m++] = other;
                }

                if (m > 0) Branch(next, m, m, count + 1, heavier, left, free);
            }

            Remove(kind, count);
        }
    }

    /// <summary>No more than this can still be added: the densest first, the last in part; and no more than there are corners for.</summary>
    private double AtMost(int[] open, int from, int n, double room, int corners)
    {
        var (byRoom, byCorners, left) = (0.5, 0L, room);
        var free = false;
        Span<long> heaviest = stackalloc long[4];
        for (var i = from; i < n; i++)
        {
            var kind = open[i];
            if (_corners[kind] == 0) free = true;
            else if (_corners[kind] <= 4) Push(heaviest, _weights[kind], _corners[kind] > 1 ? 1 : Math.Min(_most[kind], 4));
        }

        for (var i = 0; i < corners; i++) byCorners += heaviest[i];
        for (int b = from, s = FirstStrip(open, from, n), strips = s; left > 0 && (b < strips || s < n);)
        {
            var kind = s >= n || (b < strips && _density[open[b]] >= _density[open[s]]) ? open[b++] : open[s++];
            var take = Math.Min(left, _wanted.Area[kind] * _most[kind]);
            byRoom += take * _density[kind];
            left -= take;
        }

        return free ? byRoom : Math.Min(byRoom, byCorners);
    }

    private int FirstStrip(int[] open, int from, int n)
    {
        while (from < n && !IsStrip(open[from])) from++;
        return from;
    }

    private static void Push(Span<long> heaviest, long weight, int copies)
    {
        for (var c = 0; c < copies && weight > heaviest[3]; c++)
        {
            var at = 3;
            for (; at > 0 && heaviest[at - 1] < weight; at--) heaviest[at] = heaviest[at - 1];
            heaviest[at] = weight;
        }
    }

    private void Keep(long weight, int[] fill)
    {
        if (!_all) _above = weight;
        _found.Add((weight, fill));
    }

    private int Copies(int kind, int count)
    {
        var copies = 0;
        for (var i = 0; i < count; i++)
        {
            if (_held[i] == kind) copies++;
        }

        return copies;
    }

    private void Insert(int kind, int count)
    {
        var at = count;
        for (; at > 0 && _held[at - 1] > kind; at--) _held[at] = _held[at - 1];
        _held[at] = kind;
    }

    private void Remove(int kind, int count)
    {
        var at = Array.IndexOf(_held, kind, 0, count + 1);
        for (; at < count; at++) _held[at] = _held[at + 1];
    }

    private bool IsStrip(int kind) => _wanted.Across[kind] != Across.No;
}
