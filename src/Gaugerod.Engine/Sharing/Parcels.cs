using System.Runtime.InteropServices;

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
    private readonly double[] _most = new double[1 << Most];

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

        Measure(ways, all);
        for (var set = 1; set <= all; set++)
        {
            _of[set].Clear();
            if ((set & (set - 1)) == 0) Alone(set, int.Log2(set) == still ? ways[still].AsSpan(0, 1) : ways[int.Log2(set)]);
            else Join(set, set == all);
        }

        return _of[all].Count > 0;
    }

    /// <summary>The parcels of a set, a bit for each blank, as the last <see cref="Fit"/> left them.</summary>
    public IReadOnlyList<Parcel> Of(int set) => _of[set];

    // A parcel leaves the rest of the tile to the other blanks, each with the blade beside it; what takes more can be in no plan.
    private void Measure(ReadOnlySpan<Blank[]> ways, int all)
    {
        _most[all] = Area(_stock.Width, _stock.Height);
        for (var set = all - 1; set > 0; set--)
        {
            var other = int.Log2(all ^ set);
            _most[set] = _most[set | (1 << other)] - Area(ways[other][0].Width, ways[other][0].Height);
        }
    }

    private double Area(long width, long height) => (double)(width + _stock.Kerf) * (height + _stock.Kerf);

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
            if (Join(set, one, other, true, oneIsEnough) || Join(set, other, one, true, oneIsEnough)) return;
            if (Join(set, one, other, false, oneIsEnough) || Join(set, other, one, false, oneIsEnough)) return;
        }
    }

    /// <summary>Puts the parcels of two sets together, those of the first left of the cut or below it; true when one is enough and there is one.</summary>
    private bool Join(int set, int one, int other, bool upright, bool oneIsEnough)
    {
        var (inFirst, inSecond, room) = upright ? (Sides.Right, Sides.Left, _stock.Width - _stock.Kerf) : (Sides.Top, Sides.Bottom, _stock.Height - _stock.Kerf);
        var first = CollectionsMarshal.AsSpan(_of[one]);
        var second = CollectionsMarshal.AsSpan(_of[other]);
        var least = Least(second, inSecond, upright);
        if (least > room - Least(first, inFirst, upright)) return false;
        for (var i = 0; i < first.Length; i++)
        {
            ref readonly var a = ref first[i];
            var left = room - (upright ? a.Width : a.Height);
            if ((a.Kept & inFirst) != Sides.None || least > left) continue;
            for (var j = 0; j < second.Length; j++)
            {
                ref readonly var b = ref second[j];
                if ((b.Kept & inSecond) != Sides.None || (upright ? b.Width : b.Height) > left) continue;
                Joins++;
                Add(set, upright
                    ? new(a.Width + _stock.Kerf + b.Width, Math.Max(a.Height, b.Height), a.Kept | b.Kept, (one, i), (other, j), true)
                    : new(Math.Max(a.Width, b.Width), a.Height + _stock.Kerf + b.Height, a.Kept | b.Kept, (one, i), (other, j), false));
                if (oneIsEnough && _of[set].Count > 0) return true;
            }
        }

        return false;
    }

    /// <summary>How little of the way across the cut a parcel of these takes, if it may lie beside the cut.</summary>
    private static long Least(ReadOnlySpan<Parcel> parcels, Sides inwards, bool upright)
    {
        var least = long.MaxValue / 2;
        foreach (ref readonly var parcel in parcels)
        {
            if ((parcel.Kept & inwards) == Sides.None) least = Math.Min(least, upright ? parcel.Width : parcel.Height);
        }

        return least;
    }

    private void Add(int set, in Parcel parcel)
    {
        // With two opposite sides of the tile nothing comes beside it.
        var width = (parcel.Kept & (Sides.Left | Sides.Right)) == (Sides.Left | Sides.Right) ? _stock.Width : parcel.Width;
        var height = (parcel.Kept & (Sides.Bottom | Sides.Top)) == (Sides.Bottom | Sides.Top) ? _stock.Height : parcel.Height;
        if (Area(width, height) > _most[set]) return;
        var list = _of[set];
        foreach (var kept in list)
        {
            if (kept.AsGoodAs(parcel)) return;
        }

        // Left in the list, a worse one does no harm; taking it out would move the places that others point to.
        list.Add(parcel);
    }
}
