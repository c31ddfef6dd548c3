namespace Gaugerod.Engine.Sharing;

/// <summary>
/// Whether two pieces share a tile by their outlines where their rectangles would not: two that lie on either side of one straight
/// cut, or one that lies in the corner that another leaves free.
/// </summary>
/// <param name="stock">The tile.</param>
internal sealed class Nesting(Stock stock)
{
    /// <summary>Where the other comes to lie beside the one, which stays as it is; null where it does not.</summary>
    /// <param name="one">A piece with an outline.</param>
    /// <param name="other">The other; without an outline it is a rectangle.</param>
    public Cutout? Beside(in Cutout one, in Cutout other)
    {
        if (one.Shape is not { } shape) throw new ArgumentException("The first has an outline.", nameof(one));
        if (shape.Area + (other.Shape?.Area ?? ((double)other.Blank.Width * other.Blank.Height)) > (double)stock.Width * stock.Height) return null;
        var convex = shape.IsConvex;
        foreach (var (lies, _) in stock.Ways(other))
        {
            foreach (var place in Places(lies))
            {
                if (convex ? place.Shape!.IsConvex && Parted(shape, place.Shape) : InCorner(shape, lies.Blank, place.Shape!)) return place;
            }
        }

        return null;
    }

    // An outline lies where it lies; a rectangle against each side that it keeps, and against either where it keeps none.
    private IEnumerable<Cutout> Places(Cutout lies)
    {
        if (lies.Shape is not null)
        {
            yield return lies;
            yield break;
        }

        var (blank, kept) = (lies.Blank, lies.Blank.Kept);
        foreach (var left in Ends(stock.Width - blank.Width, kept.HasFlag(Sides.Left), kept.HasFlag(Sides.Right)))
        {
            foreach (var bottom in Ends(stock.Height - blank.Height, kept.HasFlag(Sides.Bottom), kept.HasFlag(Sides.Top)))
            {
                var (right, top) = (left + blank.Width, bottom + blank.Height);
                yield return lies with { Shape = new([new(left, bottom), new(right, bottom), new(right, top), new(left, top)]) };
            }
        }
    }

    private static IEnumerable<long> Ends(long far, bool atNear, bool atFar)
    {
        if (atNear || !atFar) yield return 0;
        if (atFar ? !atNear : !atNear && far > 0) yield return far;
    }

    /// <summary>Whether a side of one of them, drawn out, has the other wholly beyond it and the blade between.</summary>
    private bool Parted(Outline one, Outline other) => Beyond(one, other) || Beyond(other, one);

    private bool Beyond(Outline one, Outline other)
    {
        var corners = one.Corners;
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[i + 1 == corners.Length ? 0 : i + 1]);
            var (run, rise) = (b.X - a.X, b.Y - a.Y);
            Int128 nearest = Int128.MaxValue;
            foreach (var spot in other.Corners)
            {
                var beyond = ((Int128)rise * (spot.X - a.X)) - ((Int128)run * (spot.Y - a.Y));
                nearest = Int128.Min(nearest, beyond);
            }

            if (nearest >= 0 && nearest * nearest >= (Int128)stock.Kerf * stock.Kerf * (((Int128)run * run) + ((Int128)rise * rise))) return true;
        }

        return false;
    }

    /// <summary>
    /// Whether the other lies in a rectangle between a corner of the tile and a corner at which the one bends inwards, the blade
    /// off both its inner sides: what falls off when such a notch is cut.
    /// </summary>
    private bool InCorner(Outline one, Blank lies, Outline other)
    {
        foreach (var inner in one.Inner)
        {
            foreach (var (x, y) in ((long, long)[])[(0, 0), (stock.Width, 0), (stock.Width, stock.Height), (0, stock.Height)])
            {
                var (left, right) = x == 0 ? (0L, inner.X) : (inner.X, stock.Width);
                var (bottom, top) = y == 0 ? (0L, inner.Y) : (inner.Y, stock.Height);
                var sides = (x == 0 ? Sides.Left : Sides.Right) | (y == 0 ? Sides.Bottom : Sides.Top);
                if (lies.Width + stock.Kerf > right - left || lies.Height + stock.Kerf > top - bottom || (lies.Kept & ~sides) != Sides.None) continue;
                if (Within(other, x, y, lies) && IsFree(one, left, bottom, right, top)) return true;
            }
        }

        return false;
    }

    private static bool Within(Outline other, long x, long y, Blank lies)
    {
        foreach (var spot in other.Corners)
        {
            if (Math.Abs(spot.X - x) > lies.Width || Math.Abs(spot.Y - y) > lies.Height) return false;
        }

        return true;
    }

    /// <summary>Whether nothing of an outline lies in a rectangle that it touches with a corner: none of its sides runs into it, and it does not hold it.</summary>
    private static bool IsFree(Outline one, long left, long bottom, long right, long top)
    {
        var corners = one.Corners;
        var holds = false;
        var (x, y) = (left + right, bottom + top);
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[i + 1 == corners.Length ? 0 : i + 1]);
            if (RunsInto(a, b, left, bottom, right, top)) return false;

            // Twice everything, so that the middle is a whole number.
            if ((2 * a.Y > y) != (2 * b.Y > y))
            {
                var side = ((Int128)(b.X - a.X) * (y - (2 * a.Y))) - ((Int128)(b.Y - a.Y) * (x - (2 * a.X)));
                if (side > 0 == b.Y > a.Y) holds = !holds;
            }
        }

        return !holds;
    }

    // A side runs into an open rectangle when its box does, and the rectangle's corners are not all on one side of it.
    private static bool RunsInto(Spot a, Spot b, long left, long bottom, long right, long top)
    {
        if (Math.Max(a.X, b.X) <= left || Math.Min(a.X, b.X) >= right || Math.Max(a.Y, b.Y) <= bottom || Math.Min(a.Y, b.Y) >= top) return false;
        var (over, under) = (false, false);
        foreach (var (x, y) in ((long, long)[])[(left, bottom), (right, bottom), (right, top), (left, top)])
        {
            var side = ((Int128)(b.X - a.X) * (y - a.Y)) - ((Int128)(b.Y - a.Y) * (x - a.X));
            over |= side > 0;
            under |= side < 0;
        }

        return over && under;
    }
}
