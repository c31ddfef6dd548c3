namespace Gaugerod.Engine.Sharing;

/// <summary>
/// The heaviest sets of blanks that one tile gives, for weights on the kinds: exact, by branching over the kinds from the most
/// weight for the room they take, cut off where no fill can beat what is asked any more.
/// </summary>
internal sealed class TileFill
{
    /// <summary>After so much work time is given away.</summary>
    private const long Slice = 5000;

    private readonly Wanted _wanted;
    private readonly TileFits _fits;
    private readonly StripFill[] _strips;
    private readonly int[] _corners;
    private readonly List<int[]> _open = [];
    private readonly int[] _held = new int[256];
    private List<(long Weight, int[] Fill)> _found = [];
    private long[] _weights = [];
    private int[] _most = [];
    private double[] _density = [];
    private long _above;
    private long _end;
    private int _limit;
    private long _rest;

    public TileFill(Wanted wanted, TileFits fits)
    {
        (_wanted, _fits) = (wanted, fits);
        _strips = [new(wanted, Across.Upright), new(wanted, Across.Level)];
        _corners = wanted.Corners;
    }

    /// <summary>How much work was done so far, in blanks tried.</summary>
    public long Work { get; private set; }

    /// <summary>What the last search found: the heaviest fills on the way, the heaviest last, or all that are heavier than asked.</summary>
    public IReadOnlyList<(long Weight, int[] Fill)> Found => _found;

    /// <summary>Whether it went to its end: then no fill is heavier than the last found, or all are found.</summary>
    public bool IsWhole { get; private set; }

    /// <summary>Looks for the heaviest fills, a little at a time.</summary>
    /// <param name="weights">The weight of each kind.</param>
    /// <param name="above">Only fills heavier than this are looked for.</param>
    /// <param name="most">The most copies of each kind that are of use.</param>
    /// <param name="patience">After so much work it leaves off.</param>
    public IEnumerable<bool> Heaviest(long[] weights, long above, int[] most, long patience = long.MaxValue)
    {
        Begin(weights, above, most, patience, int.MaxValue);
        foreach (var strips in _strips)
        {
            var (weight, fill) = strips.Heaviest(weights, most);
            Work += strips.Work;
            if (weight > _above) Keep(weight, fill);
        }

        // Strips alone are reckoned already: every fill looked for below holds a block, and blocks come first.
        var order = Ordered();
        return Slowly(new(order, order.Length, Array.FindIndex(order, IsStrip) is >= 0 and var strip ? strip : order.Length, 0, 0, 1.0, 4));
    }

    /// <summary>Looks for every fill heavier than asked, a little at a time; it leaves off when there are more than the limit.</summary>
    public IEnumerable<bool> All(long[] weights, long above, int[] most, int limit, long patience)
    {
        Begin(weights, above, most, patience, limit);
        var order = Ordered();
        return Slowly(new(order, order.Length, order.Length, 0, 0, 1.0, 4));
    }

    private void Begin(long[] weights, long above, int[] most, long patience, int limit)
    {
        (_weights, _above, _most, _limit) = (weights, above, most, limit);
        _end = patience == long.MaxValue ? patience : Work + _fits.Work + patience;
        _density = new double[weights.Length];
        for (var kind = 0; kind < weights.Length; kind++) _density[kind] = weights[kind] / _wanted.Area[kind];
        _found = [];
        IsWhole = true;
    }

    private int[] Ordered()
    {
        var order = Enumerable.Range(0, _weights.Length).Where(kind => _weights[kind] > 0 && _most[kind] > 0).ToArray();
        Array.Sort(order, (a, b) => (IsStrip(a), _density[b], a).CompareTo((IsStrip(b), _density[a], b)));
        return order;
    }

    // The first blanks of a tile are where time can be given away: below them there is little left to try.
    private IEnumerable<bool> Slowly(Level at)
    {
        for (var i = 0; i < at.To && !Ends(at, i); i++)
        {
            var below = Down(at, i);
            if (below.N > 0 && at.Count < 3)
            {
                foreach (var _ in Slowly(below)) yield return true;
            }
            else if (below.N > 0)
            {
                Branch(below);
            }

            Remove(at.Open[i], at.Count);
            if (Work + _fits.Work < _rest) continue;
            _rest = Work + _fits.Work + Slice;
            yield return true;
        }
    }

    private void Branch(in Level at)
    {
        for (var i = 0; i < at.To && !Ends(at, i); i++)
        {
            if (Down(at, i) is { N: > 0 } below) Branch(below);
            Remove(at.Open[i], at.Count);
        }
    }

    /// <summary>Whether nothing from this kind on is of use, or there is no more patience.</summary>
    private bool Ends(in Level at, int i)
    {
        if (Work + _fits.Work < _end && _found.Count <= _limit) return (i & 7) == 0 && at.Weight + AtMost(at.Open, i, at.N, at.Room, at.Corners) <= _above;
        IsWhole = false;
        return true;
    }

    /// <summary>Puts a kind to the tile, and says which may still follow; none where it does not go in.</summary>
    private Level Down(in Level at, int i)
    {
        while (_open.Count <= at.Count) _open.Add(new int[_weights.Length]);
        var (kind, count, next) = (at.Open[i], at.Count, _open[at.Count]);
        Work++;
        Insert(kind, count);
        var heavier = at.Weight + _weights[kind];

        // What is too light to be kept need not be looked into: if it shares no tile, what is heavier for more blanks shares none either.
        var held = _held.AsSpan(0, count + 1);
        if (heavier > _above ? !_fits.Fit(held) : !_fits.MayFit(held)) return default;
        if (heavier > _above) Keep(heavier, _held[..(count + 1)]);
        var (left, free, m) = (at.Room - _wanted.Area[kind], at.Corners - _corners[kind], 0);
        for (var j = i; j < at.N; j++)
        {
            var other = at.Open[j];
            if (_corners[other] > free || _wanted.Area[other] > left + 1e-9 || !_fits.Pair(kind, other)) continue;
            if (other == kind && Copies(kind, count + 1) >= _most[kind]) continue;
            next[m++] = other;
        }

        return new(next, m, m, count + 1, heavier, left, free);
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
        if (_limit == int.MaxValue) _above = weight;
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

    /// <summary>A tile in the making.</summary>
    /// <param name="Open">The kinds that may still be added, in their order.</param>
    /// <param name="N">How many they are.</param>
    /// <param name="To">Only the first so many may be the next.</param>
    /// <param name="Count">How many blanks it holds.</param>
    /// <param name="Weight">What they weigh.</param>
    /// <param name="Room">The share of the tile that is left.</param>
    /// <param name="Corners">How many of its corners are free.</param>
    private readonly record struct Level(int[] Open, int N, int To, int Count, long Weight, double Room, int Corners);
}
