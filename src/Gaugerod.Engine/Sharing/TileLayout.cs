namespace Gaugerod.Engine.Sharing;

/// <summary>A rectangle in a tile.</summary>
internal readonly record struct Area(long Left, long Bottom, long Right, long Top)
{
    public long Width => Right - Left;

    public long Height => Top - Bottom;
}

/// <summary>A blank in its tile.</summary>
/// <param name="Blank">Its place in the list of the tile's blanks.</param>
/// <param name="Lies">How it lies.</param>
/// <param name="At">Where.</param>
internal readonly record struct LaidBlank(int Blank, Blank Lies, Area At);

/// <summary>A straight cut from side to side of what is left on the bench.</summary>
/// <param name="Upright">Whether it runs from bottom to top.</param>
/// <param name="At">Where the kept edge lies, from the tile's left or lower side.</param>
/// <param name="BladeBefore">Whether the blade runs on the near side of that edge; otherwise on the far side.</param>
/// <param name="Over">The rectangle it cuts.</param>
internal readonly record struct Saw(bool Upright, long At, bool BladeBefore, Area Over);

/// <summary>How a tile is cut: the cuts in an order that can be sawn, where each blank comes out, and what is left.</summary>
internal sealed class TileLayout
{
    private readonly Stock _stock;
    private readonly Wanted _wanted;
    private readonly Parcels _parcels;
    private readonly Sections _sections = new();
    private int[] _kinds = [];

    public TileLayout(Wanted wanted)
    {
        (_wanted, _stock) = (wanted, wanted.Stock);
        _parcels = new(_stock);
    }

    /// <summary>The blanks, as they come out.</summary>
    public List<LaidBlank> Blanks { get; } = [];

    /// <summary>The cuts, in order.</summary>
    public List<Saw> Cuts { get; } = [];

    /// <summary>What is left over, in the order it falls off.</summary>
    public List<Area> Left { get; } = [];

    /// <summary>Lays a tile out.</summary>
    /// <param name="kinds">The kinds of its blanks, in rising order.</param>
    /// <exception cref="ArgumentException">They share no tile.</exception>
    public void Lay(int[] kinds)
    {
        _kinds = kinds;
        Blanks.Clear();
        Cuts.Clear();
        Left.Clear();
        if (!_sections.Fill(_wanted, kinds) || !_parcels.Fit(_sections.Ways)) throw new ArgumentException("These blanks share no tile.", nameof(kinds));
        var all = (1 << _sections.Ways.Length) - 1;
        Place(all, 0, new(0, 0, _stock.Width, _stock.Height));
    }

    private void Place(int set, int at, Area room)
    {
        var parcel = _parcels.Of(set)[at];
        if ((set & (set - 1)) == 0)
        {
            var section = int.Log2(set);
            var lies = _sections.Ways[section][parcel.First.At];
            var where = Trim(lies, room);
            if (_sections.Blank[section] is >= 0 and var blank) Blanks.Add(new(blank, lies, where));
            else Split(where);
            return;
        }

        var first = _parcels.Of(parcel.First.Set)[parcel.First.At];
        var cut = parcel.Upright ? room.Left + first.Width : room.Bottom + first.Height;
        Cuts.Add(new(parcel.Upright, cut, false, room));
        var (one, other) = parcel.Upright
            ? (room with { Right = cut }, room with { Left = cut + _stock.Kerf })
            : (room with { Top = cut }, room with { Bottom = cut + _stock.Kerf });
        Place(parcel.First.Set, parcel.First.At, one);
        Place(parcel.Second.Set, parcel.Second.At, other);
    }

    /// <summary>Cuts a rectangle down to a blank; of the two orders the one that leaves the larger offcut.</summary>
    private Area Trim(Blank lies, Area room)
    {
        var (beside, above) = (room.Width - lies.Width - _stock.Kerf, room.Height - lies.Height - _stock.Kerf);
        var uprightFirst = Math.Max(beside * room.Height, above * lies.Width) >= Math.Max(above * room.Width, beside * lies.Height);
        return uprightFirst ? Level(lies, Upright(lies, room)) : Upright(lies, Level(lies, room));
    }

    private Area Upright(Blank lies, Area room)
    {
        if (lies.Width == room.Width) return room;
        var atRight = (lies.Kept & Sides.Right) != Sides.None;
        var cut = atRight ? room.Right - lies.Width : room.Left + lies.Width;
        Cuts.Add(new(true, cut, atRight, room));
        Keep(atRight ? room with { Right = cut - _stock.Kerf } : room with { Left = cut + _stock.Kerf });
        return atRight ? room with { Left = cut } : room with { Right = cut };
    }

    private Area Level(Blank lies, Area room)
    {
        if (lies.Height == room.Height) return room;
        var atTop = (lies.Kept & Sides.Top) != Sides.None;
        var cut = atTop ? room.Top - lies.Height : room.Bottom + lies.Height;
        Cuts.Add(new(false, cut, atTop, room));
        Keep(atTop ? room with { Top = cut - _stock.Kerf } : room with { Bottom = cut + _stock.Kerf });
        return atTop ? room with { Bottom = cut } : room with { Top = cut };
    }

    private void Split(Area room)
    {
        for (var i = 0; i < _sections.Middle.Count; i++)
        {
            var blank = _sections.Middle[i];
            var length = _wanted.Length(_kinds[blank]);
            var cut = (_sections.Upright ? room.Left : room.Bottom) + length;
            var own = _sections.Upright ? room with { Right = cut } : room with { Top = cut };
            if (i < _sections.Middle.Count - 1)
            {
                Cuts.Add(new(_sections.Upright, cut, false, room));
                room = _sections.Upright ? room with { Left = cut + _stock.Kerf } : room with { Bottom = cut + _stock.Kerf };
            }

            Blanks.Add(new(blank, _wanted.Ways(_kinds[blank])[0], own));
        }
    }

    private void Keep(Area left)
    {
        if (left.Width > 0 && left.Height > 0) Left.Add(left);
    }
}
