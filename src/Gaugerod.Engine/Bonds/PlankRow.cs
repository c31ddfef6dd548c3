using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bonds;

/// <summary>One course of a repeat of planks: where each begins, and which product it is.</summary>
/// <param name="Planks">The planks, one after another.</param>
/// <param name="Period">The length of them all with their joints.</param>
internal sealed record PlankRow((long At, int Product)[] Planks, long Period)
{
    /// <summary>One plank of every length, in chance order from a place by chance.</summary>
    public static PlankRow ByChance(long[] lengths, Chance chance)
    {
        var order = Enumerable.Range(0, lengths.Length).ToArray();
        for (var i = order.Length - 1; i > 0; i--)
        {
            var j = (int)chance.Below(i + 1);
            (order[i], order[j]) = (order[j], order[i]);
        }

        var period = lengths.Sum();
        var at = chance.Below(period);
        var planks = new (long At, int Product)[order.Length];
        for (var i = 0; i < order.Length; i++)
        {
            planks[i] = (at, order[i]);
            at += lengths[order[i]];
        }

        return new(planks, period);
    }

    /// <summary>The least distance from an end in this course to one in another, along the course.</summary>
    public long Clearance(PlankRow other)
    {
        var least = long.MaxValue;
        foreach (var (one, _) in Planks)
        {
            foreach (var (two, _) in other.Planks)
            {
                var off = Grid.Mod(one - two, Period);
                least = Math.Min(least, Math.Min(off, Period - off));
            }
        }

        return least;
    }
}
