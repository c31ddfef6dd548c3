namespace Gaugerod.Engine.Sharing;

/// <summary>Says which kinds of blanks share one tile. Answers are kept: the same few kinds are asked for again and again.</summary>
internal sealed class TileFits
{
    private readonly Wanted _wanted;
    private readonly Parcels _parcels;
    private readonly CornerFits _corners;
    private readonly EndFits _ends;
    private readonly Dictionary<UInt128, bool> _known = [];
    private readonly Sections _sections = new();
    private readonly sbyte[] _together;

    public TileFits(Wanted wanted)
    {
        _wanted = wanted;
        _parcels = new(wanted.Stock);
        _corners = new(wanted);
        _ends = new(wanted);
        _together = new sbyte[wanted.Kinds.Length * wanted.Kinds.Length];
    }

    /// <summary>How much work was done so far beside looking up: so many joins of parcels count as one.</summary>
    public long Work => _parcels.Joins / 16;

    /// <summary>Whether two kinds share a tile.</summary>
    public bool Pair(int one, int other)
    {
        ref var known = ref _together[(Math.Min(one, other) * _wanted.Kinds.Length) + Math.Max(one, other)];
        if (known == 0) known = (sbyte)(_wanted.Nest(one, other) || Find([Math.Min(one, other), Math.Max(one, other)]) ? 1 : -1);
        return known > 0;
    }

    /// <summary>Whether blanks of these kinds share a tile.</summary>
    /// <param name="kinds">A place in the list of kinds for every blank, in rising order.</param>
    public bool Fit(ReadOnlySpan<int> kinds)
    {
        if (kinds.Length <= 1) return true;
        if (kinds.Length == 2) return Pair(kinds[0], kinds[1]);
        if (_corners.Knows(kinds)) return _corners.Fit(kinds);
        if (_ends.Knows(kinds)) return _ends.Fit(kinds);
        if (!MostFit(kinds)) return false;
        var (area, fit) = (0.0, false);
        for (var i = 0; i < kinds.Length; i++)
        {
            area += _wanted.Area[kinds[i]];
            for (var j = i + 1; j < kinds.Length; j++)
            {
                if (!Pair(kinds[i], kinds[j])) return false;
            }
        }

        if (area > 1 + 1e-9) return false;
        if (kinds.Length > Parcels.Most) return Find(kinds);
        var key = Key(kinds);
        if (!_known.TryGetValue(key, out fit)) _known[key] = fit = (kinds.Length < 4 || FitsWithoutAny(kinds)) && Find(kinds);
        return fit;
    }

    /// <summary>As <see cref="Fit"/> where that is soon said; else true.</summary>
    public bool MayFit(ReadOnlySpan<int> kinds)
    {
        if (kinds.Length <= 2 || _ends.Knows(kinds)) return Fit(kinds);
        if (!MostFit(kinds)) return false;
        return kinds.Length > Parcels.Most || !_known.TryGetValue(Key(kinds), out var fit) || fit;
    }

    /// <summary>Whether the corner pieces and strips among these share a tile.</summary>
    private bool MostFit(ReadOnlySpan<int> kinds)
    {
        Span<int> known = stackalloc int[kinds.Length];
        var count = 0;
        foreach (var kind in kinds)
        {
            if (_ends.Knows(kind)) known[count++] = kind;
        }

        return count < 2 || Fit(known[..count]);
    }

    private static UInt128 Key(ReadOnlySpan<int> kinds)
    {
        UInt128 key = 0;
        foreach (var kind in kinds) key = (key << 16) | (uint)(kind + 1);
        return key;
    }

    // What shares a tile shares it without any one of them too; that is known of most, and it is soon said that a set shares none.
    private bool FitsWithoutAny(ReadOnlySpan<int> kinds)
    {
        Span<int> others = stackalloc int[kinds.Length - 1];
        for (var i = 0; i < kinds.Length; i++)
        {
            kinds[..i].CopyTo(others);
            kinds[(i + 1)..].CopyTo(others[i..]);
            if (!Fit(others)) return false;
        }

        return true;
    }

    private bool Find(ReadOnlySpan<int> kinds) =>
        _corners.Knows(kinds) ? _corners.Fit(kinds)
        : _ends.Knows(kinds) ? _ends.Fit(kinds)
        : _sections.Fill(_wanted, kinds) && _sections.Ways.Length <= Parcels.Most && _parcels.Fit(_sections.Ways, _sections.TurnsAsOne);
}
