using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>Which way the courses run.</summary>
public enum Lay
{
    /// <summary>Courses run level; a tile's width lies along them.</summary>
    Level,

    /// <summary>Courses run upright; a tile's width stands up.</summary>
    Upright,
}

/// <summary>How the offset goes on from course to course.</summary>
public enum Stepping
{
    /// <summary>Always the same way.</summary>
    OneWay,

    /// <summary>There and back.</summary>
    BackAndForth,
}

/// <summary>The bond a run asks for.</summary>
/// <param name="Lay">Which way the courses run; of no account for bonds other than grid and running, which are turned instead.</param>
public abstract record BondRequest(Lay Lay)
{
    /// <summary>How far the whole bond is turned on the faces, counter-clockwise; default not at all.</summary>
    public Angle Turn { get; init; }

    /// <summary>The turns among which the search may choose; null, the default, for <see cref="Turn"/> alone.</summary>
    public TurnRange? Free { get; init; }

    /// <summary>The names of the products it takes beside the run's own, in the order that the bond says.</summary>
    public Sequence<string> With { get; init; } = [];

    /// <summary>Whether its courses lie level or upright with joints in line: a grid or a running bond that is not turned.</summary>
    public bool IsStraight => this is Grid or Running && Turn == Angle.Zero && Free is null;

    /// <summary>Joints in line both ways.</summary>
    public sealed record Grid(Lay Lay) : BondRequest(Lay);

    /// <summary>Each course set off from the one before by a part of a tile and its joint.</summary>
    /// <param name="Lay">Which way the courses run.</param>
    /// <param name="Numerator">The part's numerator; 1 or more.</param>
    /// <param name="Denominator">The part's denominator; more than the numerator, at most 64.</param>
    /// <param name="Stepping">How it goes on.</param>
    public sealed record Running(Lay Lay, int Numerator, int Denominator, Stepping Stepping) : BondRequest(Lay);

    /// <summary>Tiles square to each other, each with its end against the side of the next, in zigzags that climb at 45 degrees; turned by 45, the zigzags stand plumb.</summary>
    /// <param name="Abreast">How many tiles lie side by side before the turn: 1 single, 2 double; up to 4.</param>
    public sealed record Herringbone(int Abreast) : BondRequest(Lay.Level);

    /// <summary>Blocks of tiles side by side, the next block turned a quarter. How many lie in a block follows from the tile.</summary>
    public sealed record Basketweave() : BondRequest(Lay.Level);

    /// <summary>Squares of two sizes, a small one at a corner of each large one. With: the small square.</summary>
    public sealed record Pinwheel() : BondRequest(Lay.Level);

    /// <summary>Four tiles around a small square. With: the square.</summary>
    public sealed record Windmill() : BondRequest(Lay.Level);

    /// <summary>Six-sided tiles. The product's width is across the flats, its height from point to point.</summary>
    /// <param name="PointedUp">Whether a point stands up, else a flat.</param>
    /// <param name="Point">How far a point stands out beyond the flats' ends; null for a regular hexagon.</param>
    public sealed record Hexagon(bool PointedUp, Length? Point) : BondRequest(Lay.Level);

    /// <summary>Eight-sided tiles with small squares between them. With: the square.</summary>
    /// <param name="Corner">How much of each side the cut corner takes; null when it is such that all joints are alike.</param>
    public sealed record Octagon(Length? Corner) : BondRequest(Lay.Level);

    /// <summary>Planks that slope up and down by turns, their ends mitred plumb. The product's width is its long side, its height the plank's width. With, if named: the planks that slope down.</summary>
    /// <param name="Slope">How far the planks slope up from level: more than zero, less than 90 degrees.</param>
    public sealed record Chevron(Angle Slope) : BondRequest(Lay.Level);

    /// <summary>Four sizes that make one repeat of twelve: 2, 4, 2 and 4 of them. The product is the largest, three units by two. With: two by two, two by one, one by one.</summary>
    public sealed record Modular() : BondRequest(Lay.Level);

    /// <summary>Planks in courses that begin at chance, repeatably. With: planks of other lengths, laid with the run's own in chance order.</summary>
    /// <param name="Stagger">No joint is nearer than this to one of the next course.</param>
    /// <param name="Start">A word; another word gives another order.</param>
    public sealed record Planks(Length Stagger, string Start) : BondRequest(Lay.Level);

    /// <summary>Sheets of chips, side by side. The product is the sheet; the joint between sheets is that between chips.</summary>
    /// <param name="Across">How many chips a sheet is wide.</param>
    /// <param name="Up">How many it is high.</param>
    public sealed record Mosaic(int Across, int Up) : BondRequest(Lay.Level);
}

/// <summary>Turns a bond may have.</summary>
/// <param name="From">The first.</param>
/// <param name="To">None beyond this; no less than the first.</param>
/// <param name="Step">From one to the next; more than nothing.</param>
public sealed record TurnRange(Angle From, Angle To, Angle Step)
{
    /// <summary>At most so many turns are tried.</summary>
    public const int Most = 181;

    /// <summary>How many turns there are.</summary>
    public int Count => ((To.Thousandths - From.Thousandths) / Step.Thousandths) + 1;

    /// <summary>The turns.</summary>
    public IEnumerable<Angle> Turns => Enumerable.Range(0, Count).Select(i => Angle.FromThousandths(From.Thousandths + (i * Step.Thousandths)));
}

/// <summary>The joint width a run allows.</summary>
/// <param name="Least">No narrower than this.</param>
/// <param name="Wanted">The width to use when nothing asks for another.</param>
/// <param name="Most">No wider than this.</param>
public sealed record JointRange(Length Least, Length Wanted, Length Most)
{
    /// <summary>One width and no other.</summary>
    public static JointRange Only(Length width) => new(width, width, width);
}
