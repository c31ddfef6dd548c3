namespace Gaugerod.Engine.Sharing;

/// <summary>
/// Which blanks share a tile when each keeps a corner of it. Every one lies in a corner of its own, so that it is enough to
/// try who lies where. Two in neighbouring corners need room beside, or above, each other; two across need one of the two.
/// Three such always come apart by straight cuts; four do where an upright or a level cut parts them two and two (the argument
/// stands in docs/cutting.md).
/// </summary>
internal sealed class CornerFits
{
    private readonly Stock _stock;
    private readonly (int Corner, long Width, long Height)[]?[] _ways;
    private readonly int[] _kinds = new int[4];
    private readonly (long Width, long Height)[] _at = new (long Width, long Height)[4];

    public CornerFits(Wanted wanted)
    {
        _stock = wanted.Stock;
        _ways = new (int Corner, long Width, long Height)[wanted.Kinds.Length][];
        for (var kind = 0; kind < _ways.Length; kind++)
        {
            if (Corner(wanted.Kinds[kind].Blank.Kept) < 0) continue;
            _ways[kind] = Array.ConvertAll(wanted.Ways(kind), b => (Corner(b.Kept), b.Width, b.Height));
        }
    }

    /// <summary>Whether all of these keep a corner and no other side.</summary>
    public bool Knows(ReadOnlySpan<int> kinds)
    {
        foreach (var kind in kinds)
        {
            if (_ways[kind] is null) return false;
        }

        return true;
    }

    /// <summary>Whether they share a tile; each keeps a corner.</summary>
    public bool Fit(ReadOnlySpan<int> kinds)
    {
        if (kinds.Length > 4) return false;
        kinds.CopyTo(_kinds);
        Array.Clear(_at);
        return Put(0, kinds.Length);
    }

    private bool Put(int next, int count)
    {
        if (next == count) return count < 4 || ComeApart();
        foreach (var (corner, width, height) in _ways[_kinds[next]]!)
        {
            if (_at[corner].Width > 0) continue;

            // Corners go round: left bottom, right bottom, right top, left top.
            var (beside, above) = (corner ^ 1, 3 - corner);
            var (b, a, across) = (_at[beside], _at[above], _at[(corner + 2) & 3]);
            if (b.Width > 0 && b.Width + _stock.Kerf + width > _stock.Width) continue;
            if (a.Width > 0 && a.Height + _stock.Kerf + height > _stock.Height) continue;
            if (across.Width > 0 && across.Width + _stock.Kerf + width > _stock.Width && across.Height + _stock.Kerf + height > _stock.Height) continue;
            _at[corner] = (width, height);
            if (Put(next + 1, count)) return true;
            _at[corner] = default;
        }

        return false;
    }

    private bool ComeApart() =>
        Math.Max(_at[0].Width, _at[3].Width) + _stock.Kerf + Math.Max(_at[1].Width, _at[2].Width) <= _stock.Width
        || Math.Max(_at[0].Height, _at[1].Height) + _stock.Kerf + Math.Max(_at[2].Height, _at[3].Height) <= _stock.Height;

    /// <summary>Which corner these sides meet in, going round from the lower left; -1 where they are no two that meet.</summary>
    public static int Corner(Sides kept) => kept switch
    {
        Sides.Left | Sides.Bottom => 0,
        Sides.Right | Sides.Bottom => 1,
        Sides.Right | Sides.Top => 2,
        Sides.Left | Sides.Top => 3,
        _ => -1,
    };
}
