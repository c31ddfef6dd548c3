using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Pieces;

/// <summary>
/// The legs of a piece: at each cut, how much tile is left between the cut and the tile's other side, or the next cut that
/// faces it, measured square to the tile. The narrowest leg says how small a piece really is; an L with a leg of 1/4 in
/// has a box the size of the tile. docs/lines.md has the whole rule.
/// </summary>
internal static class Legs
{
    /// <summary>
    /// The narrowest neck between a round and a tile's side that holds, 1 mm: what is less breaks as it is cut, and the tile is then two pieces, or one
    /// with a bay in its side, that run out to nothing beside the round wherever the bond lies. Common practice, no source.
    /// </summary>
    public const long Neck = Length.StepsPerMillimetre;

    // What doubles make of no width at all, in steps.
    private const double Nothing = 1e-3;

    /// <summary>The leg of what is so wide at the least and at the most along a cut. A piece that runs out to nothing is as wide as it is where it begins.</summary>
    public static long? Of(long least, long most) => least > 0 ? least : most > 0 ? most : null;

    /// <summary>The same where it is reckoned and not counted in steps.</summary>
    public static double? Of(double least, double most) => least > Nothing ? least : most > Nothing ? most : null;

    /// <summary>The narrowest leg of a piece, or null when no plumb or level edge cuts it, or what such edges leave runs out beside a round.</summary>
    /// <param name="piece">The piece's outline and holes, sides tagged; a tag of zero or more is a cut.</param>
    /// <param name="tile">The same of all that is left of the tile.</param>
    /// <param name="cell">The whole tile.</param>
    /// <param name="counts">Whether the side with a tag counts: round holes do not.</param>
    /// <param name="edges">How the face's edges make legs.</param>
    public static long? Narrowest(IReadOnlyList<TaggedCorner[]> piece, IReadOnlyList<TaggedCorner[]> tile, Box cell, Func<int, bool> counts, EdgeLegs edges)
    {
        var (own, all) = (Cuts(piece, counts, edges), Cuts(tile, counts, edges));
        var across = Narrowest(Of(own, EdgeClass.Side), Of(all, EdgeClass.Side), cell.Left.Steps, cell.Right.Steps, edges);
        var up = Narrowest(Of(own, EdgeClass.Level), Of(all, EdgeClass.Level), cell.Bottom.Steps, cell.Top.Steps, edges);
        return across is null ? up : up is null ? across : Math.Min(across.Value, up.Value);
    }

    private static List<Cut> Of(List<Cut> cuts, EdgeClass kind) =>
        [.. cuts.Where(cut => cut.Class == kind).Select(cut => kind == EdgeClass.Level ? cut.Transposed() : cut)];

    private static long? Narrowest(List<Cut> cuts, List<Cut> all, long left, long right, EdgeLegs edges)
    {
        long? least = null;
        foreach (var cut in cuts)
        {
            if (cut.Round > 0 && !Holds(cut, all, left, right)) continue;
            foreach (var (low, high) in Widths(cut, cuts, left, right, edges))
            {
                if (Of(low, high) is { } leg && (least is null || leg < least)) least = leg;
            }
        }

        return least;
    }

    /// <summary>Whether a round leaves a neck on one side of it in a tile.</summary>
    private static bool Holds(Cut cut, List<Cut> all, long left, long right) =>
        all.Where(other => other.Round == cut.Round && other.TileToTheRight == cut.TileToTheRight).All(other => ToSide(other, left, right).Least >= Neck);

    /// <summary>How wide the tile is at a cut, least and most: to its side, and to each cut that faces it.</summary>
    private static IEnumerable<(long Least, long Most)> Widths(Cut cut, List<Cut> cuts, long left, long right, EdgeLegs edges)
    {
        yield return ToSide(cut, left, right);
        foreach (var other in cuts)
        {
            if (other.TileToTheRight == cut.TileToTheRight || !edges.HasStrip(cut.Edge, other.Edge)) continue;
            if (Gap(cut.TileToTheRight ? cut : other, cut.TileToTheRight ? other : cut) is { } gap) yield return gap;
        }
    }

    private static (long Least, long Most) ToSide(Cut cut, long left, long right)
    {
        var (low, high) = (Math.Min(cut.LowX, cut.HighX), Math.Max(cut.LowX, cut.HighX));
        return cut.TileToTheRight ? (right - high, right - low) : (low - left, high - left);
    }

    /// <summary>The distance from one cut to another that faces it from the right, least and most where both are at one height; null where they do not face.</summary>
    private static (long Least, long Most)? Gap(Cut left, Cut right)
    {
        var (low, high) = (Math.Max(left.LowY, right.LowY), Math.Min(left.HighY, right.HighY));
        if (low >= high) return null;
        var (one, other) = (right.At(low) - left.At(low), right.At(high) - left.At(high));
        return one >= 0 && other >= 0 ? (Math.Min(one, other), Math.Max(one, other)) : null;
    }

    private static List<Cut> Cuts(IReadOnlyList<TaggedCorner[]> rings, Func<int, bool> counts, EdgeLegs edges)
    {
        var cuts = new List<Cut>();
        foreach (var ring in rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
                if (a.Tag >= 0 && counts(a.Tag)) cuts.Add(Cut.Of(a, b, edges.ClassOf(a.Tag), edges.RoundOf(a.Tag)));
            }
        }

        return cuts;
    }

    /// <summary>A cut from its lower end to its upper, and on which side of it tile is left.</summary>
    private readonly record struct Cut(EdgeClass Class, int Edge, int Round, long LowX, long LowY, long HighX, long HighY, bool TileToTheRight)
    {
        public static Cut Of(TaggedCorner a, TaggedCorner b, EdgeClass kind, int round) =>
            // The tile lies to the left of the side's run: a side that runs down has it to the right (of x), a side that
            // runs right has it above.
            kind == EdgeClass.Level
                ? b.X >= a.X ? new(kind, a.Tag, round, a.X, a.Y, b.X, b.Y, true) : new(kind, a.Tag, round, b.X, b.Y, a.X, a.Y, false)
                : b.Y >= a.Y ? new(kind, a.Tag, round, a.X, a.Y, b.X, b.Y, false) : new(kind, a.Tag, round, b.X, b.Y, a.X, a.Y, true);

        public Cut Transposed() => new(Class, Edge, Round, LowY, LowX, HighY, HighX, TileToTheRight);

        public long At(long y) => HighY == LowY ? LowX : LowX + Grid.NearestStep((Int128)(HighX - LowX) * (y - LowY), HighY - LowY);
    }
}
