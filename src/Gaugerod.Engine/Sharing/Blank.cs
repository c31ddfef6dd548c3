namespace Gaugerod.Engine.Sharing;

/// <summary>Sides of a tile, as it lies on the bench.</summary>
[Flags]
internal enum Sides
{
    None = 0,
    Left = 1,
    Bottom = 2,
    Right = 4,
    Top = 8,
}

/// <summary>The rectangle a piece is cut from: how large it is, and which of its sides must be sides of the tile.</summary>
/// <param name="Width">Its width in steps; above zero.</param>
/// <param name="Height">Its height in steps; above zero.</param>
/// <param name="Kept">The sides that must be factory sides.</param>
internal readonly record struct Blank(long Width, long Height, Sides Kept)
{
    /// <summary>The blank turned a quarter counter-clockwise: its left side comes to lie at the bottom.</summary>
    public Blank Quarter() => new(Height, Width, (Sides)((((int)Kept << 1) | ((int)Kept >> 3)) & 15));

    /// <summary>The blank turned half round.</summary>
    public Blank Half() => new(Width, Height, (Sides)((((int)Kept << 2) | ((int)Kept >> 2)) & 15));
}

/// <summary>A blank, and what is cut out of it.</summary>
/// <param name="Blank">The blank.</param>
/// <param name="Shape">The outline as it lies in the tile; null where the whole rectangle is the piece.</param>
internal readonly record struct Cutout(Blank Blank, Outline? Shape)
{
    /// <summary>How it lies when its whole tile is turned.</summary>
    public Cutout Turned(int quarters, Stock stock)
    {
        var blank = Blank;
        for (var i = 0; i < quarters; i++) blank = blank.Quarter();
        return new(blank, Shape?.Turned(quarters, stock));
    }

    /// <summary>What a piece is cut from: the box around it; where a side of it lies on a side of the tile, that is kept.</summary>
    /// <param name="piece">The piece as it lies in the tile.</param>
    /// <param name="stock">The tile.</param>
    public static Cutout Of(Outline piece, Stock stock)
    {
        var corners = piece.Corners;
        var (left, bottom, right, top, kept) = (long.MaxValue, long.MaxValue, long.MinValue, long.MinValue, Sides.None);
        for (var i = 0; i < corners.Length; i++)
        {
            var (a, b) = (corners[i], corners[i + 1 == corners.Length ? 0 : i + 1]);
            (left, right, bottom, top) = (Math.Min(left, a.X), Math.Max(right, a.X), Math.Min(bottom, a.Y), Math.Max(top, a.Y));
            if (a.X == b.X) kept |= a.X == 0 ? Sides.Left : a.X == stock.Width ? Sides.Right : Sides.None;
            if (a.Y == b.Y) kept |= a.Y == 0 ? Sides.Bottom : a.Y == stock.Height ? Sides.Top : Sides.None;
        }

        var isBox = corners.Length == 4 && piece.Area >= (double)(right - left) * (top - bottom);
        return new(new(right - left, top - bottom, kept), isBox ? null : piece);
    }
}

/// <summary>How a blank may be turned to lie in a tile.</summary>
internal enum Turns
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>Half round.</summary>
    Half,

    /// <summary>Any number of quarters; the tile is square.</summary>
    Quarters,
}

/// <summary>The tile that blanks are cut from.</summary>
/// <param name="Width">Its width in steps.</param>
/// <param name="Height">Its height in steps.</param>
/// <param name="Kerf">What each cut turns to dust; zero where the tile is scored and snapped.</param>
/// <param name="Turns">How blanks may be turned.</param>
internal sealed record Stock(long Width, long Height, long Kerf, Turns Turns)
{
    /// <summary>The ways a blank may lie in the tile, no two alike, with the quarters turned.</summary>
    public IEnumerable<(Cutout Lies, int Quarters)> Ways(Cutout cutout)
    {
        var seen = new List<Cutout>();
        for (var quarters = 0; quarters < 4; quarters++)
        {
            if (quarters != 0 && Turns != Turns.Quarters && (Turns != Turns.Half || quarters != 2)) continue;
            var way = cutout.Turned(quarters, this);
            if (seen.Contains(way)) continue;
            seen.Add(way);
            yield return (way, quarters);
        }
    }

    /// <summary>Of all ways a blank may lie, the first in a fixed order: blanks that are one by turning have the same.</summary>
    public Cutout Settled(Cutout cutout) => Ways(cutout).Select(way => way.Lies)
        .OrderByDescending(way => way.Blank.Height).ThenBy(way => way.Blank.Width).ThenBy(way => (int)way.Blank.Kept).ThenBy(way => way.Shape, Outline.Order).First();
}
