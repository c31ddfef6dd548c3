using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bonds;

/// <summary>One course of a repeat of planks: where each begins, and which product it is.</summary>
/// <param name="Planks">The planks, one after another.</param>
/// <param name="Period">The length of them all with their joints.</param>
internal sealed record PlankRow((long At, int Product)[] Planks, long Period)
{
    /// <summary>One plank of every length, in chance order, the first at zero.</summary>
    public static PlankRow InChanceOrder(long[] lengths, Chance chance)
    {
        var order = Enumerable.Range(0, lengths.Length).ToArray();
        for (var i = order.Length - 1; i > 0; i--)
        {
            var j = (int)chance.Below(i + 1);
            (order[i], order[j]) = (order[j], order[i]);
        }

        var planks = new (long At, int Product)[order.Length];
        var at = 0L;
        for (var i = 0; i < order.Length; i++)
        {
            planks[i] = (at, order[i]);
            at += lengths[order[i]];
        }

        return new(planks, at);
    }

    /// <summary>The course moved to a place by chance at which no end is nearer to an end of some others than it may be; null when there is no such place.</summary>
    public PlankRow? Anywhere((PlankRow Row, long Apart)[] others, Chance chance)
    {
        var free = Free(others);
        var count = free.Sum(stretch => stretch.To - stretch.From);
        if (count == 0) return null;
        var place = chance.Below(count);
        foreach (var (from, to) in free)
        {
            if (place < to - from) return this with { Planks = Array.ConvertAll(Planks, plank => (plank.At + from + place, plank.Product)) };
            place -= to - from;
        }

        throw new InvalidOperationException("A number under the sum of the stretches lies in one of them.");
    }

    /// <summary>The stretches of moves, from but not to, that bring no two ends too near.</summary>
    private List<(long From, long To)> Free((PlankRow Row, long Apart)[] others)
    {
        var barred = new List<(long From, long To)>();
        foreach (var (row, apart) in others)
        {
            if (apart == 0) continue;
            foreach (var (mine, _) in Planks)
            {
                foreach (var (theirs, _) in row.Planks)
                {
                    var (from, length) = (Grid.Mod(theirs - mine - apart + 1, Period), Math.Min((apart * 2) - 1, Period));
                    barred.Add((from, Math.Min(from + length, Period)));
                    // What runs over the end of the repeat goes on at its beginning.
                    if (from + length > Period) barred.Add((0, from + length - Period));
                }
            }
        }

        barred.Sort();
        var free = new List<(long From, long To)>();
        var at = 0L;
        foreach (var (from, to) in barred)
        {
            if (from > at) free.Add((at, from));
            at = Math.Max(at, to);
        }

        if (at < Period) free.Add((at, Period));
        return free;
    }
}
