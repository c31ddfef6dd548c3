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
    public IEnumerable<(Blank Lies, int Quarters)> Ways(Blank blank)
    {
        var seen = new List<Blank>();
        var lies = blank;
        for (var quarters = 0; quarters < 4; quarters++)
        {
            var allowed = quarters == 0 || Turns == Turns.Quarters || (Turns == Turns.Half && quarters == 2);
            if (allowed && !seen.Contains(lies))
            {
                seen.Add(lies);
                yield return (lies, quarters);
            }

            lies = lies.Quarter();
        }
    }

    /// <summary>Of all ways a blank may lie, the first in a fixed order: blanks that are one by turning have the same.</summary>
    public Blank Settled(Blank blank) =>
        Ways(blank).Select(w => w.Lies).OrderByDescending(b => b.Height).ThenBy(b => b.Width).ThenBy(b => (int)b.Kept).First();
}
