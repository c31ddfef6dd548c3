namespace Gaugerod.Engine.Sharing;

/// <summary>
/// The heaviest set of strips that one tile gives, by dynamic programming: for every length that strips add up to, the most
/// weight, and of these only the ones that no shorter length beats.
/// </summary>
internal sealed class StripFill
{
    private readonly long _room;
    private readonly (int Kind, long Length, int Copies, int Ends)[] _strips;
    private readonly bool _turns;

    // Every state ever reached: what was added last, and to which state.
    private readonly List<(int Kind, int Before)> _made = [];
    private List<State>[] _lists = [[], [], [], []];
    private List<State>[] _next = [[], [], [], []];

    /// <param name="wanted">What is wanted.</param>
    /// <param name="across">Which strips: upright ones or level ones.</param>
    public StripFill(Wanted wanted, Across across)
    {
        var (stock, upright) = (wanted.Stock, across == Across.Upright);
        _turns = stock.Turns != Turns.None;
        _room = (upright ? stock.Width : stock.Height) + stock.Kerf;
        var strips = new List<(int, long, int, int)>();
        for (var kind = 0; kind < wanted.Kinds.Length; kind++)
        {
            if (wanted.Across[kind] != across) continue;
            var blank = wanted.Kinds[kind].Blank;
            var length = (upright ? blank.Width : blank.Height) + stock.Kerf;
            var near = (blank.Kept & (upright ? Sides.Left : Sides.Bottom)) != Sides.None;
            var far = (blank.Kept & (upright ? Sides.Right : Sides.Top)) != Sides.None;
            var ends = near ? 1 : far ? 2 : 0;
            var copies = (int)Math.Min(int.MaxValue, _room / length);
            strips.Add((kind, length, ends == 0 ? copies : Math.Min(copies, _turns ? 2 : 1), ends));
        }

        _strips = [.. strips];
    }

    /// <summary>How many sums the last call looked at.</summary>
    public int Work => _made.Count;

    /// <summary>The heaviest fill and its weight; none weighs nothing.</summary>
    /// <param name="weights">The weight of each kind.</param>
    /// <param name="most">The most copies of each kind that are of use.</param>
    public (long Weight, int[] Fill) Heaviest(ReadOnlySpan<long> weights, ReadOnlySpan<int> most)
    {
        _made.Clear();
        foreach (var list in _lists) list.Clear();
        _lists[0].Add(new(0, 0, -1));
        foreach (var (kind, length, copies, ends) in _strips)
        {
            if (weights[kind] <= 0) continue;
            for (var copy = 0; copy < Math.Min(copies, most[kind]); copy++) AddOne(kind, length, weights[kind], ends);
        }

        var best = new State(0, 0, -1);
        foreach (var list in _lists)
        {
            if (list.Count > 0 && list[^1].Weight > best.Weight) best = list[^1];
        }

        var fill = new List<int>();
        for (var at = best.Made; at >= 0; at = _made[at].Before) fill.Add(_made[at].Kind);
        fill.Sort();
        return (best.Weight, [.. fill]);
    }

    // The four lists are for what is taken of the two ends: nothing, near, far, both. Where the tile turns, one end is as good
    // as the other and "near" stands for one of them.
    private void AddOne(int kind, long length, long weight, int ends)
    {
        for (var taken = 0; taken < 4; taken++)
        {
            var list = _next[taken];
            list.Clear();
            var from = From(taken, ends);
            if (from < 0) list.AddRange(_lists[taken]);
            else Merge(_lists[taken], _lists[from], kind, length, weight, list);
        }

        (_lists, _next) = (_next, _lists);
    }

    private int From(int taken, int ends)
    {
        if (ends == 0) return taken;
        if (_turns) return taken switch { 1 => 0, 3 => 1, _ => -1 };
        return (taken & ends) != 0 ? taken & ~ends : -1;
    }

    private void Merge(List<State> without, List<State> before, int kind, long length, long weight, List<State> into)
    {
        var (i, j, heaviest) = (0, 0, -1L);
        while (i < without.Count || j < before.Count)
        {
            var with = j < before.Count ? before[j].Length + length : long.MaxValue;
            if (with > _room && j < before.Count)
            {
                j = before.Count;
                continue;
            }

            if (i < without.Count && without[i].Length <= with)
            {
                if (without[i].Weight > heaviest) into.Add(without[i]);
                heaviest = Math.Max(heaviest, without[i++].Weight);
            }
            else
            {
                var sum = before[j].Weight + weight;
                if (sum > heaviest)
                {
                    _made.Add((kind, before[j].Made));
                    into.Add(new(with, sum, _made.Count - 1));
                    heaviest = sum;
                }

                j++;
            }
        }
    }

    private readonly record struct State(long Length, long Weight, int Made);
}
