using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bonds;

/// <summary>A step from a tile to its like one repeat further on.</summary>
/// <param name="Along">Along the course.</param>
/// <param name="Across">Across the courses.</param>
public readonly record struct Repeat(Length Along, Length Across);

/// <summary>The two steps by which a bond repeats over the whole plane.</summary>
/// <param name="First">The first; along the course where the bond has courses.</param>
/// <param name="Second">The second; not in line with the first.</param>
public sealed record Lattice(Repeat First, Repeat Second)
{
    /// <summary>The area of one repeat, in square steps.</summary>
    public Int128 Area => Int128.Abs(
        ((Int128)First.Along.Steps * Second.Across.Steps) - ((Int128)First.Across.Steps * Second.Along.Steps));
}

/// <summary>A tile of a bond's motif.</summary>
/// <param name="Shape">Its outline, joints left out: convex, counter-clockwise.</param>
/// <param name="Product">Which of the bond's products it is: 0 for the run's own, then those the bond names, in its order.</param>
public sealed record BondTile(Ring Shape, int Product = 0)
{
    /// <summary>Its row within one repeat, where the bond has rows to set one after another; default 0.</summary>
    public int Row { get; init; }

    /// <summary>How far the tile's width is turned counter-clockwise from along; of no account for an oblong, whose cell tells. Default not at all.</summary>
    public Angle Lies { get; init; }

    /// <summary>The box around it.</summary>
    public Box Cell { get; } = Shape.Bounds;

    /// <summary>Whether it is an upright rectangle.</summary>
    public bool IsBox => Shape.Points.Count == 4 && Shape == Ring.Of(Cell);

    /// <summary>A rectangle with its lower left corner at a place.</summary>
    internal static BondTile At(Length along, Length across, Length width, Length height, int product = 0) =>
        new(Ring.Of(new(along, across, along + width, across + height)), product);
}

/// <summary>
/// How tiles repeat: a motif of tiles, set down again at every step of a lattice. Places are along the course and across
/// it; <paramref name="Lay"/> says whether along is level or upright.
/// </summary>
/// <param name="Lattice">The lattice.</param>
/// <param name="Motif">The tiles of one repeat, joints left out, the first with the lower left corner of its box at the origin.</param>
/// <param name="Lay">Which way along is.</param>
public sealed record Bond(Lattice Lattice, Sequence<BondTile> Motif, Lay Lay)
{
    /// <summary>How many rows of tiles one repeat has; default 1.</summary>
    public int Rows { get; init; } = 1;

    /// <summary>Where each tile of the motif is one sheet of chips: the chips, as a bond of their own. Null where tiles are tiles.</summary>
    public Bond? Chips { get; init; }

    /// <summary>A bond laid upright as one that is laid level: along and across exchanged, and so each outline the other way round.</summary>
    internal Bond Transposed() => new(
        new(new(Lattice.First.Across, Lattice.First.Along), new(Lattice.Second.Across, Lattice.Second.Along)),
        Motif.Select(tile => new BondTile(Ring.Of(new(tile.Cell.Bottom, tile.Cell.Left, tile.Cell.Top, tile.Cell.Right)), tile.Product) { Row = tile.Row }).ToSequence(),
        Lay.Level) { Rows = Rows };

    /// <summary>The bond's courses, when it is a straight one: equal courses of equal tiles with joints in line.</summary>
    internal Courses? Courses => Bonds.Courses.Of(this);
}
