namespace Gaugerod.Engine.Sharing;

/// <summary>A rectangle of the tile that falls apart into blanks by straight cuts, each from side to side of what it cuts.</summary>
/// <param name="Width">Its least width.</param>
/// <param name="Height">Its least height.</param>
/// <param name="Kept">Which of its sides must be sides of the tile.</param>
/// <param name="First">The set and the place of the part left of or below the cut; or, of a single blank, the way it lies.</param>
/// <param name="Second">The same of the other part.</param>
/// <param name="Upright">Whether the cut that parts them is upright.</param>
internal readonly record struct Parcel(long Width, long Height, Sides Kept, (int Set, int At) First, (int Set, int At) Second, bool Upright)
{
    /// <summary>Whether a place for the other would do for this one.</summary>
    public bool AsGoodAs(in Parcel other) => Width <= other.Width && Height <= other.Height && (Kept & ~other.Kept) == Sides.None;
}

/// <summary>
/// All the parcels a few blanks can make, by dynamic programming over their subsets: two parcels beside or above each other
/// make one, the blade between them, while no side that must be the tile's comes to lie inside. Every plan of straight cuts
/// from side to side is such a tree, so that blanks share a tile exactly when a parcel of all of them fits it (the
/// bottom-up building of guillotine patterns of P. Y. Wang, Operations Research 31, 1983; from memory).
/// </summary>
internal sealed class Parcels
{
    /// <summary>Most blanks in one parcel; more are never looked at.</summary>
    public const int Most = 6;

    private readonly Stock _stock;
    private readonly List<Parcel>[] _of = new List<Parcel>[1 << Most];

    public Parcels(Stock stock)
    {
        _stock = stock;
        for (var i = 0; i < _of.Length; i++) _of[i] = [];
    }

    /// <summary>How many pairs of parcels were put together so far.</summary>
    public long Joins { get; private set; }

    /// <summary>Whether blanks share a tile.</summary>
    /// <param name="ways">For every blank the ways it may lie; at most <see cref="Most"/> blanks.</param>
    /// <param name="turnsAsOne">Whether the tile may be turned as a whole, so that one of the blanks may be taken to lie as it does.</param>
    public bool Fit(ReadOnlySpan<Blank[]> ways, bool turnsAsOne)
    {
        var (all, still) = ((1 << ways.Length) - 1, -1);
        for (var i = 0; turnsAsOne && i < ways.Length; i++)
        {
            if (still < 0 || ways[i].Length > ways[still].Length) still = i;
        }

        for (var set = 1; set <= all; set++)
        {
            _of[set].Clear();
            if ((set & (set - 1)) == 0) Alone(set, int.Log2(set) == still ? ways[still].AsSpan(0, 1) : ways[int.Log2(set)]);
            else Join(set, set == all);
            if (_of[set].Count == 0) return false;
        }

        return true;
    }

    /// <summary>The parcels of a set, a bit for each blank, as the last <see cref="Fit"/> left them.</summary>
    public IReadOnlyList<Parcel> Of(int set) => _of[set];

    private void Alone(int set, ReadOnlySpan<Blank> ways)
    {
        for (var way = 0; way < ways.Length; way++)
        {
            Add(set, new(ways[way].Width, ways[way].Height, ways[way].Kept, (0, way), default, false));
        }
    }

    private void Join(int set, bool oneIsEnough)
    {
        var lowest = set & -set;
        for (var one = (set - 1) & set; one > 0; one = (one - 1) & set)
        {
            if ((one & lowest) == 0) continue;
            var other = set ^ one;
            for (var i = 0; i < _of[one].Count; i++)
            {
                for (var j = 0; j < _of[other].Count; j++)
                {
                    Joins++;
                    Beside(set, (one, i), (other, j));
                    Beside(set, (other, j), (one, i));
                    Above(set, (one, i), (other, j));
                    Above(set, (other, j), (one, i));
                    if (oneIsEnough && _of[set].Count > 0) return;
                }
            }
        }
    }

    private void Beside(int set, (int Set, int At) left, (int Set, int At) right)
    {
        var (a, b) = (_of[left.Set][left.At], _of[right.Set][right.At]);
        if ((a.Kept & Sides.Right) != Sides.None || (b.Kept & Sides.Left) != Sides.None) return;
        var width = a.Width + _stock.Kerf + b.Width;
        if (width <= _stock.Width) Add(set, new(width, Math.Max(a.Height, b.Height), a.Kept | b.Kept, left, right, true));
    }

    private void Above(int set, (int Set, int At) lower, (int Set, int At) upper)
    {
        var (a, b) = (_of[lower.Set][lower.At], _of[upper.Set][upper.At]);
        if ((a.Kept & Sides.Top) != Sides.None || (b.Kept & Sides.Bottom) != Sides.None) return;
        var height = a.Height + _stock.Kerf + b.Height;
        if (height <= _stock.Height) Add(set, new(Math.Max(a.Width, b.Width), height, a.Kept | b.Kept, lower, upper, false));
    }

    private void Add(int set, in Parcel parcel)
    {
        var list = _of[set];
        foreach (var kept in list)
        {
            if (kept.AsGoodAs(parcel)) return;
        }

        // Left in the list, a worse one does no harm; taking it out would move the places that others point to.
        list.Add(parcel);
    }
}
