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
        var (one, other) = Parted(parcel.Upright, room, cut, cut + _stock.Kerf);
        Place(parcel.First.Set, parcel.First.At, one);
        Place(parcel.Second.Set, parcel.Second.At, other);
    }

    /// <summary>Cuts a rectangle down to a blank; of the two orders the one that leaves the larger offcut.</summary>
    private Area Trim(Blank lies, Area room)
    {
        var (beside, above) = (room.Width - lies.Width - _stock.Kerf, room.Height - lies.Height - _stock.Kerf);
        var uprightFirst = Math.Max(beside * room.Height, above * lies.Width) >= Math.Max(above * room.Width, beside * lies.Height);
        return Trim(!uprightFirst, lies, Trim(uprightFirst, lies, room));
    }

    private Area Trim(bool upright, Blank lies, Area room)
    {
        var (length, whole, from, to) = upright ? (lies.Width, room.Width, room.Left, room.Right) : (lies.Height, room.Height, room.Bottom, room.Top);
        if (length == whole) return room;
        var atFar = (lies.Kept & (upright ? Sides.Right : Sides.Top)) != Sides.None;
        var cut = atFar ? to - length : from + length;
        Cuts.Add(new(upright, cut, atFar, room));
        var (near, far) = atFar ? Parted(upright, room, cut - _stock.Kerf, cut) : Parted(upright, room, cut, cut + _stock.Kerf);
        Keep(atFar ? near : far);
        return atFar ? far : near;
    }

    private static (Area Near, Area Far) Parted(bool upright, Area room, long nearEnds, long farBegins) => upright
        ? (room with { Right = nearEnds }, room with { Left = farBegins })
        : (room with { Top = nearEnds }, room with { Bottom = farBegins });

    private void Split(Area room)
    {
        for (var i = 0; i < _sections.Middle.Count; i++)
        {
            var blank = _sections.Middle[i];
            var own = room;
            if (i < _sections.Middle.Count - 1)
            {
                var cut = (_sections.Upright ? room.Left : room.Bottom) + _wanted.Length(_kinds[blank]);
                Cuts.Add(new(_sections.Upright, cut, false, room));
                (own, room) = Parted(_sections.Upright, room, cut, cut + _stock.Kerf);
            }

            Blanks.Add(new(blank, _wanted.Ways(_kinds[blank])[0], own));
        }
    }

    private void Keep(Area left)
    {
        if (left.Width > 0 && left.Height > 0) Left.Add(left);
    }
}
