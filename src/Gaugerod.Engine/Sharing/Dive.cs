using Gaugerod.Engine.Bonds;

namespace Gaugerod.Engine.Sharing;

/// <summary>Turns a cover in parts into one of whole tiles: the fill used most is taken whole, what is left is covered anew.</summary>
internal sealed class Dive(Relaxed relaxed, Serving serving)
{
    private readonly Chance _chance = new("dive");

    /// <summary>What the last dive came to: a plan, or null where its way led to none.</summary>
    public IReadOnlyList<int[]>? Plan { get; private set; }

    /// <summary>Looks for a plan of no more tiles than asked; a value after each step.</summary>
    /// <param name="wanted">How many of each kind are wanted.</param>
    /// <param name="most">The most tiles.</param>
    /// <param name="drawn">Whether fills are drawn by chance, the more used the likelier; otherwise the most used is taken.</param>
    public IEnumerable<int> Down(int[] wanted, int most, bool drawn)
    {
        Plan = null;
        var want = (int[])wanted.Clone();
        var taken = new List<int[]>();
        while (Array.Exists(want, count => count > 0))
        {
            var cover = relaxed.ForFills(want);
            foreach (var _ in cover.Steps()) yield return taken.Count;
            if (taken.Count + Math.Ceiling(cover.Tiles - 1e-4) > most) yield break;
            var used = cover.Used.OrderByDescending(u => u.Level).ToList();
            var whole = used.TakeWhile(u => u.Level > 1 - 1e-5).ToList();
            if (whole.Count == 0) whole.Add(used[drawn ? Drawn(used) : 0]);
            foreach (var (fill, level) in whole)
            {
                for (var copies = Math.Max(1, (int)(level + 1e-5)); copies > 0; copies--) Take(fill, want, taken);
            }
        }

        if (taken.Count <= most) Plan = taken;
    }

    private void Take(int[] fill, int[] want, List<int[]> taken)
    {
        var own = new List<int>(fill.Length);
        foreach (var kind in fill)
        {
            if (serving.Wanted(kind, want) is not (>= 0 and var served)) continue;
            want[served]--;
            own.Add(served);
        }

        own.Sort();
        if (own.Count > 0) taken.Add([.. own]);
    }

    private int Drawn(List<(int[] Fill, double Level)> used)
    {
        var left = used.Sum(u => u.Level * u.Level) * _chance.Below(1_000_000) / 1_000_000;
        for (var i = 0; i < used.Count; i++)
        {
            left -= used[i].Level * used[i].Level;
            if (left < 0) return i;
        }

        return 0;
    }
}
