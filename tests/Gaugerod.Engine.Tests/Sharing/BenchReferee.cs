using Gaugerod.Engine.Sharing;

namespace Gaugerod.Engine.Tests.Sharing;

/// <summary>
/// Whether blanks share a tile, by the definition and nothing else: cut what lies on the bench from side to side anywhere that a
/// sum of sizes reaches from its near side, share the blanks out between the two parts in every way, and go on. It knows no
/// parcels, no strips and no corners.
/// </summary>
internal static class BenchReferee
{
    public static bool Share(Stock stock, IReadOnlyList<Blank> blanks) =>
        Fit(stock, stock.Width, stock.Height, Sides.Left | Sides.Bottom | Sides.Right | Sides.Top, blanks);

    private static bool Fit(Stock stock, long width, long height, Sides factory, IReadOnlyList<Blank> blanks)
    {
        if (width <= 0 || height <= 0) return blanks.Count == 0;
        if (blanks.Count == 0) return true;
        if (blanks.Count == 1) return Turned(stock, blanks[0]).Exists(b => b.Width <= width && b.Height <= height && (b.Kept & ~factory) == 0 && Reaches(b, width, height));
        for (var set = 1; set < (1 << blanks.Count) - 1; set++)
        {
            var one = blanks.Where((_, i) => (set >> i & 1) == 1).ToList();
            var other = blanks.Where((_, i) => (set >> i & 1) == 0).ToList();
            foreach (var at in Sums(stock, one).Where(at => at < width))
            {
                if (Fit(stock, at, height, factory & ~Sides.Right, one) && Fit(stock, width - at - stock.Kerf, height, factory & ~Sides.Left, other)) return true;
            }

            foreach (var at in Sums(stock, one).Where(at => at < height))
            {
                if (Fit(stock, width, at, factory & ~Sides.Top, one) && Fit(stock, width, height - at - stock.Kerf, factory & ~Sides.Bottom, other)) return true;
            }
        }

        return false;
    }

    // A blank that keeps two sides across from each other is as long as what lies there.
    private static bool Reaches(Blank blank, long width, long height) =>
        ((blank.Kept & (Sides.Left | Sides.Right)) != (Sides.Left | Sides.Right) || blank.Width == width)
        && ((blank.Kept & (Sides.Bottom | Sides.Top)) != (Sides.Bottom | Sides.Top) || blank.Height == height);

    private static List<Blank> Turned(Stock stock, Blank blank)
    {
        var all = new List<Blank> { blank };
        if (stock.Turns != Turns.None) all.Add(blank.Half());
        if (stock.Turns == Turns.Quarters) all.AddRange([blank.Quarter(), blank.Quarter().Half()]);
        return all;
    }

    private static HashSet<long> Sums(Stock stock, List<Blank> blanks)
    {
        var sums = new HashSet<long> { -stock.Kerf };
        foreach (var blank in blanks)
        {
            long[] sizes = stock.Turns == Turns.Quarters ? [blank.Width, blank.Height] : blank.Width == blank.Height ? [blank.Width] : [blank.Width, blank.Height];
            foreach (var sum in sums.ToList())
            {
                foreach (var size in sizes) sums.Add(sum + stock.Kerf + size);
            }
        }

        sums.Remove(-stock.Kerf);
        return sums;
    }
}
