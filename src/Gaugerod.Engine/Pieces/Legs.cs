using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Pieces;

/// <summary>
/// The legs of a piece: at each cut, how much tile is left between the cut and the tile's other side, or the next cut that
/// faces it, measured square to the tile. The narrowest leg says how small a piece really is; an L with a leg of 1/4 in
/// has a box the size of the tile.
/// </summary>
internal static class Legs
{
    /// <summary>The narrowest leg of a piece, or null when no plumb or level edge cuts it.</summary>
    /// <param name="ring">The piece's outline and holes, sides tagged; a tag of zero or more is a cut.</param>
    /// <param name="cell">The whole tile.</param>
    /// <param name="counts">Whether the side with a tag counts: round holes do not.</param>
    public static long? Narrowest(IReadOnlyList<TaggedCorner[]> ring, Box cell, Func<int, bool> counts)
    {
        var cuts = Cuts(ring, counts);
        var upright = cuts.Where(cut => cut.Class == EdgeClass.Side).ToList();
        var level = cuts.Where(cut => cut.Class == EdgeClass.Level).Select(cut => cut.Transposed()).ToList();
        var across = Narrowest(upright, cell.Left.Steps, cell.Right.Steps);
        var up = Narrowest(level, cell.Bottom.Steps, cell.Top.Steps);
        return across is null ? up : up is null ? across : Math.Min(across.Value, up.Value);
    }

    private static long? Narrowest(List<Cut> cuts, long left, long right)
    {
        long? least = null;
        foreach (var cut in cuts)
        {
            var leg = cut.TileToTheRight ? right - Math.Max(cut.LowX, cut.HighX) : Math.Min(cut.LowX, cut.HighX) - left;
            foreach (var other in cuts)
            {
                if (other.TileToTheRight == cut.TileToTheRight) continue;
                leg = Math.Min(leg, Gap(cut.TileToTheRight ? cut : other, cut.TileToTheRight ? other : cut) ?? leg);
            }

            if (least is null || leg < least) least = leg;
        }

        return least;
    }

    /// <summary>The least distance from one cut to another that faces it from the right, where both are at one height; null where they do not face.</summary>
    private static long? Gap(Cut left, Cut right)
    {
        var (low, high) = (Math.Max(left.LowY, right.LowY), Math.Min(left.HighY, right.HighY));
        if (low >= high) return null;
        var gap = Math.Min(right.At(low) - left.At(low), right.At(high) - left.At(high));
        return gap >= 0 ? gap : null;
    }

    private static List<Cut> Cuts(IReadOnlyList<TaggedCorner[]> rings, Func<int, bool> counts)
    {
        var cuts = new List<Cut>();
        foreach (var ring in rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
                if (a.Tag >= 0 && counts(a.Tag)) cuts.Add(Cut.Of(a, b));
            }
        }

        return cuts;
    }

    /// <summary>A cut from its lower end to its upper, and on which side of it tile is left.</summary>
    private readonly record struct Cut(EdgeClass Class, long LowX, long LowY, long HighX, long HighY, bool TileToTheRight)
    {
        public static Cut Of(TaggedCorner a, TaggedCorner b)
        {
            var kind = EdgeClasses.Of(b.X - a.X, b.Y - a.Y);
            // The tile lies to the left of the side's run: a side that runs down has it to the right (of x), a side that
            // runs right has it above.
            return kind == EdgeClass.Level
                ? b.X >= a.X ? new(kind, a.X, a.Y, b.X, b.Y, true) : new(kind, b.X, b.Y, a.X, a.Y, false)
                : b.Y >= a.Y ? new(kind, a.X, a.Y, b.X, b.Y, false) : new(kind, b.X, b.Y, a.X, a.Y, true);
        }

        public Cut Transposed() => new(Class, LowY, LowX, HighY, HighX, TileToTheRight);

        public long At(long y) => HighY == LowY ? LowX : LowX + Grid.NearestStep((Int128)(HighX - LowX) * (y - LowY), HighY - LowY);
    }
}
