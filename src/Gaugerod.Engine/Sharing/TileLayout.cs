namespace Gaugerod.Engine.Sharing;

/// <summary>A rectangle in a tile.</summary>
internal readonly record struct Area(long Left, long Bottom, long Right, long Top)
{
    public long Width => Right - Left;

    public long Height => Top - Bottom;

    /// <summary>Where it comes to lie when the whole tile is turned.</summary>
    public Area Turned(int quarters, Stock stock) => quarters switch
    {
        0 => this,
        1 => new(stock.Height - Top, Left, stock.Height - Bottom, Right),
        2 => new(stock.Width - Right, stock.Height - Top, stock.Width - Left, stock.Height - Bottom),
        _ => new(Bottom, stock.Width - Right, Top, stock.Width - Left),
    };
}

/// <summary>A blank in its tile.</summary>
/// <param name="Blank">Its place in the list of the tile's blanks.</param>
/// <param name="Lies">How it lies.</param>
/// <param name="At">Where.</param>
/// <param name="Nests">Whether it shares the tile by its outline, or by another's: it is marked and cut along that.</param>
internal readonly record struct LaidBlank(int Blank, Cutout Lies, Area At, bool Nests = false)
{
    /// <summary>How and where it comes to lie when the whole tile is turned.</summary>
    public LaidBlank Turned(int quarters, Stock stock) => this with { Lies = Lies.Turned(quarters, stock), At = At.Turned(quarters, stock) };
}

/// <summary>A straight cut from side to side of what is left on the bench.</summary>
/// <param name="Upright">Whether it runs from bottom to top.</param>
/// <param name="At">Where the kept edge lies, from the tile's left or lower side.</param>
/// <param name="BladeBefore">Whether the blade runs on the near side of that edge; otherwise on the far side.</param>
/// <param name="Over">The rectangle it cuts.</param>
internal readonly record struct Saw(bool Upright, long At, bool BladeBefore, Area Over)
{
    /// <summary>The cut when the whole tile is turned.</summary>
    public Saw Turned(int quarters, Stock stock)
    {
        var edge = Upright ? Over with { Left = At, Right = At } : Over with { Bottom = At, Top = At };
        var turned = edge.Turned(quarters, stock);
        var upright = Upright == (quarters % 2 == 0);

        // What lay beyond the edge, right of it or above, comes to lie on the near side after a half turn, or where right becomes top and top becomes left.
        var flips = quarters == 2 || (Upright ? quarters == 3 : quarters == 1);
        return new(upright, upright ? turned.Left : turned.Bottom, BladeBefore != flips, Over.Turned(quarters, stock));
    }
}

/// <summary>How a tile is cut: the cuts in an order that can be sawn, where each blank comes out, and what is left.</summary>
internal sealed class TileLayout
{
    private readonly Wanted _wanted;
    private readonly Stock _stock;
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
        if (!_sections.Fill(_wanted, kinds) || _sections.Ways.Length > Parcels.Most || !_parcels.Fit(_sections.Ways, _sections.TurnsAsOne))
        {
            if (kinds.Length != 2 || !_wanted.Nest(kinds[0], kinds[1])) throw new ArgumentException("These blanks share no tile.", nameof(kinds));
            Nest();
            return;
        }

        var all = (1 << _sections.Ways.Length) - 1;
        Place(all, 0, new(0, 0, _stock.Width, _stock.Height));
    }

    /// <summary>The first with an outline stays as it lies; the other lies beside it.</summary>
    private void Nest()
    {
        var first = _wanted.Kinds[_kinds[0]].Shape is null ? 1 : 0;
        var one = Ways(first)[0];
        var other = new Nesting(_stock).Beside(one, Ways(1 - first)[0]);
        Add(first, one);
        Add(1 - first, other ?? throw new InvalidOperationException("Found to share a tile, they share none."));
        Blanks.Sort((a, b) => a.Blank.CompareTo(b.Blank));

        void Add(int blank, Cutout lies)
        {
            var corners = lies.Shape!.Corners.ToArray();
            var at = new Area(corners.Min(c => c.X), corners.Min(c => c.Y), corners.Max(c => c.X), corners.Max(c => c.Y));
            Blanks.Add(new(blank, _wanted.Kinds[_kinds[blank]].Shape is null ? lies with { Shape = null } : lies, at, Nests: true));
        }
    }

    private List<Cutout> Ways(int blank) => [.. _stock.Ways(_wanted.Kinds[_kinds[blank]].Cutout).Select(way => way.Lies)];

    /// <summary>The way of a blank's kind in which its rectangle lies so.</summary>
    private Cutout Way(int blank, Blank lies) => Ways(blank).Find(way => way.Blank == lies);

    private void Place(int set, int at, Area room)
    {
        var parcel = _parcels.Of(set)[at];
        if ((set & (set - 1)) == 0)
        {
            var section = int.Log2(set);
            var lies = _sections.Ways[section][parcel.First.At];
            var where = Trim(lies, room);
            if (_sections.Blank[section] is >= 0 and var blank) Blanks.Add(new(blank, Way(blank, lies), where));
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

            Blanks.Add(new(blank, Ways(blank)[0], own));
        }
    }

    private void Keep(Area left)
    {
        if (left.Width > 0 && left.Height > 0) Left.Add(left);
    }
}
