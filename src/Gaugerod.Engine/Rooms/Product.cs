using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rooms;

/// <summary>How a tile may be turned when it is cut.</summary>
public enum Turning
{
    /// <summary>Any way its shape allows: half round, and a quarter when it is square.</summary>
    Free,

    /// <summary>Half round only.</summary>
    Half,

    /// <summary>Not at all: it has a direction.</summary>
    None,
}

/// <summary>How a tile's size is sorted (ANSI A137.1).</summary>
public enum TileClass
{
    /// <summary>Not sorted by size.</summary>
    Natural,

    /// <summary>Sorted by size.</summary>
    Calibrated,

    /// <summary>Edges ground to size.</summary>
    Rectified,
}

/// <summary>Which side of a tile its veins or its printed grain run along.</summary>
public enum Grain
{
    /// <summary>Along its width.</summary>
    AlongWidth,

    /// <summary>Along its height.</summary>
    AlongHeight,
}

/// <summary>A tile as it is bought. Sizes are the real ones, not the names on the box.</summary>
/// <param name="Name">Its name, unique in the job.</param>
/// <param name="Width">Its size along the course when laid level; 5 mm to 4 m.</param>
/// <param name="Height">Its size across the course when laid level; 5 mm to 4 m.</param>
/// <param name="Thickness">Zero or more; default zero in the file means unknown.</param>
public sealed record Product(string Name, Length Width, Length Height, Length Thickness)
{
    /// <summary>No side of a tile is shorter.</summary>
    public static Length LeastSide { get; } = Length.FromMillimetres(5);

    /// <summary>No side of a tile is longer.</summary>
    public static Length MostSide { get; } = Length.FromMillimetres(4000);

    /// <summary>The bond coat under it, as set.</summary>
    public Length BondCoat { get; init; }

    /// <summary>Tiles in a box; 1 or more.</summary>
    public int PerBox { get; init; } = 1;

    /// <summary>How it may be turned.</summary>
    public Turning Turning { get; init; }

    /// <summary>Which side its grain runs along; null for a tile without one.</summary>
    public Grain? Grain { get; init; }

    /// <summary>Out of how many open boxes its tiles are taken in turn, 2 or more; null where boxes are not planned.</summary>
    public int? Blend { get; init; }

    /// <summary>Whether a piece of it may be turned a quarter: only a square may, and a grain would then run across all others.</summary>
    public bool TurnsAQuarter => Turning == Turning.Free && Grain is null && Width == Height;

    /// <summary>How it is sorted; null when not known.</summary>
    public TileClass? Class { get; init; }

    /// <summary>The difference between the largest and the smallest tile supplied; null when not measured.</summary>
    public Length? Variation { get; init; }

    /// <summary>The warp of the longest edge of the tiles supplied; null when not measured.</summary>
    public Length? Warpage { get; init; }

    /// <summary>What the blade turns to dust; zero where the tile is scored and snapped.</summary>
    public Length Kerf { get; init; }

    /// <summary>Of a tile that is scored and snapped, the narrowest strip that breaks off clean; null for a tile that is sawn wet, the default.</summary>
    public Length? Snaps { get; init; }

    /// <summary>Tiles allowed for breakage, beside the cut plan.</summary>
    public int Breakage { get; init; }

    /// <summary>Tiles to leave with the client.</summary>
    public int Spares { get; init; }

    /// <summary>A flat share on top of everything, in hundredths, only because the setter asked for it; null for none.</summary>
    public int? FlatPercent { get; init; }

    /// <summary>Bond coat and tile: what this tiling takes off the next wall's width at an inside corner.</summary>
    public Length BuildUp => Thickness + BondCoat;
}
