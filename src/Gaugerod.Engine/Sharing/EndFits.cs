namespace Gaugerod.Engine.Sharing;

/// <summary>
/// Which strips share a tile with blanks that keep a corner of it. The strips lie side by side between what lies at the two ends of
/// the tile: at each end a strip that needs it, or up to two corner pieces, one over the other. Nothing else can be, since a
/// strip goes from side to side, so that it parts all that is left of it from all that is right.
/// </summary>
internal sealed class EndFits
{
    private readonly Wanted _wanted;
    private readonly Stock _stock;
    private readonly Corner[]?[] _upright;
    private readonly Corner[]?[] _level;
    private readonly Corner[] _at = new Corner[4];
    private readonly int[] _corners = new int[4];

    public EndFits(Wanted wanted)
    {
        (_wanted, _stock) = (wanted, wanted.Stock);
        (_upright, _level) = (new Corner[]?[wanted.Kinds.Length], new Corner[]?[wanted.Kinds.Length]);
        for (var kind = 0; kind < wanted.Kinds.Length; kind++)
        {
            if (CornerFits.Corner(wanted.Kinds[kind].Blank.Kept) < 0) continue;
            _upright[kind] = Array.ConvertAll(wanted.Ways(kind), way => new Corner(Slot(CornerFits.Corner(way.Kept), true), way.Width, way.Height));
            _level[kind] = Array.ConvertAll(wanted.Ways(kind), way => new Corner(Slot(CornerFits.Corner(way.Kept), false), way.Height, way.Width));
        }
    }

    /// <summary>Whether all of these are strips and corner pieces.</summary>
    public bool Knows(ReadOnlySpan<int> kinds)
    {
        foreach (var kind in kinds)
        {
            if (!Knows(kind)) return false;
        }

        return true;
    }

    /// <summary>Whether this is a strip or a corner piece.</summary>
    public bool Knows(int kind) => _wanted.Across[kind] != Across.No || _upright[kind] is not null;

    /// <summary>Whether they share a tile; there is a strip among them.</summary>
    public bool Fit(ReadOnlySpan<int> kinds)
    {
        var (across, strips, near, far, corners) = (Across.No, 0L, 0, 0, 0);
        foreach (var kind in kinds)
        {
            var crossing = _wanted.Across[kind];
            if (crossing == Across.No)
            {
                if (corners == 4) return false;
                _corners[corners++] = kind;
                continue;
            }

            if (across != Across.No && across != crossing) return false;
            across = crossing;
            strips += _wanted.Length(kind) + _stock.Kerf;
            if (!_wanted.NeedsEnd(kind)) continue;
            if ((_wanted.Kinds[kind].Blank.Kept & (across == Across.Upright ? Sides.Left : Sides.Bottom)) != Sides.None) near++;
            else far++;
        }

        var upright = across == Across.Upright;
        var room = (upright ? _stock.Width : _stock.Height) + _stock.Kerf - strips;
        if (room < 0 || !Ends(near, far, out var nearTaken, out var farTaken)) return false;
        Array.Clear(_at);
        return Put(new(upright ? _upright : _level, corners, upright ? _stock.Height : _stock.Width, room, nearTaken, farTaken), 0);
    }

    // Where a tile turns half round, one end is as good as the other.
    private bool Ends(int near, int far, out bool nearTaken, out bool farTaken)
    {
        var turns = _stock.Turns != Turns.None;
        (nearTaken, farTaken) = turns ? (near + far > 0, near + far > 1) : (near > 0, far > 0);
        return turns ? near + far <= 2 : near <= 1 && far <= 1;
    }

    private bool Put(in Between between, int next)
    {
        if (next == between.Corners) return true;
        foreach (var way in between.Ways[_corners[next]]!)
        {
            var isNear = way.Slot < 2;
            if (_at[way.Slot].Along > 0 || (isNear ? between.NearTaken : between.FarTaken)) continue;
            var over = _at[way.Slot ^ 1];
            if (over.Along > 0 && over.High + _stock.Kerf + way.High > between.High) continue;
            _at[way.Slot] = way;
            if (Taken(0) + Taken(2) <= between.Room && Put(between, next + 1)) return true;
            _at[way.Slot] = default;
        }

        return false;
    }

    private long Taken(int end) => Math.Max(_at[end].Along, _at[end + 1].Along) is > 0 and var along ? along + _stock.Kerf : 0;

    /// <summary>0 and 1 at the near end, 2 and 3 at the far end.</summary>
    private static int Slot(int corner, bool upright) => (corner, upright) switch
    {
        (0, _) => 0,
        (1, true) => 2,
        (1, false) => 1,
        (2, _) => 3,
        (_, true) => 1,
        _ => 2,
    };

    /// <summary>A corner piece as it lies.</summary>
    /// <param name="Slot">In which corner.</param>
    /// <param name="Along">What it takes of the way from end to end.</param>
    /// <param name="High">What it takes across.</param>
    private readonly record struct Corner(int Slot, long Along, long High);

    /// <summary>What is left beside the strips.</summary>
    private readonly record struct Between(Corner[]?[] Ways, int Corners, long High, long Room, bool NearTaken, bool FarTaken);
}
