using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bases;

/// <summary>A bed that falls to its drains, reckoned.</summary>
/// <param name="Face">The floor it lies on.</param>
/// <param name="Request">What was asked.</param>
/// <param name="Drains">Where its drains are; a channel from one place to another.</param>
/// <param name="Area">How large it is, in square millimetres.</param>
/// <param name="Volume">How much it takes, in cubic millimetres.</param>
/// <param name="Greatest">How thick it is where it is thickest.</param>
/// <param name="Farthest">The longest way to a drain along the floor.</param>
public sealed record Bed(string Face, BedRequest Request, Sequence<FoldLine> Drains, double Area, double Volume, Length Greatest, Length Farthest)
{
    /// <summary>What a cubic metre of bed weighs where nothing else is said, in kg: 144 lb in a cubic foot, 12 lb in a square foot and inch (an answer of the Tile Council's experts, November 2021, gives 15 lb at 1 1/4 in).</summary>
    public const double UsualDensity = 144 * 0.45359237 / 0.028316846592;

    /// <summary>What its heights count from, in words: its drain, or the edge that all of it falls to.</summary>
    public string Low => $"the {Request.Toward ?? "drain"}";

    /// <summary>How thick it is where it is thinnest, at the drain.</summary>
    public Length Least => Request.Least;

    /// <summary>How much higher its highest place stands than the drain.</summary>
    public Length Rise => Greatest - Least;

    /// <summary>The gentlest fall, as a part of one.</summary>
    public required double LeastFall { get; init; }

    /// <summary>The steepest fall, as a part of one.</summary>
    public required double GreatestFall { get; init; }

    /// <summary>The shortest way from a wall or a ridge to a drain, square to it.</summary>
    public required Length Nearest { get; init; }

    /// <summary>How high the bed stands over the drain at the end of that way.</summary>
    public Length OverNearest => Request.Perimeter == Perimeter.Level ? Rise : BedMaker.Of(LeastFall * (double)Nearest.Millimetres);

    /// <summary>The wall it falls most steeply from; null for a ridge between drains, or where it falls alike everywhere.</summary>
    public string? SteepestFrom { get; init; }

    /// <summary>What it weighs, in kg.</summary>
    public double Kilograms => Volume / 1e9 * (Request.Density ?? UsualDensity);

    /// <summary>How many bags of the mix it takes; null where it is not said what a bag makes.</summary>
    public int? Bags => Request.Bag is { } bag ? (int)Math.Ceiling((Volume / 1e6 / bag.Litres) - 1e-9) : null;

    /// <summary>The sand that goes to all of its bags, in kg; null where none is asked for.</summary>
    public double? Sand => Request.Bag?.Sand is { } sand ? Bags * sand.Added : null;

    /// <summary>The straight ways from its drains to the corners that one sees: of a bed with a level edge its folds.</summary>
    public Sequence<BedWay> Ways { get; init; } = [];

    /// <summary>How high it stands along each straight edge of its floor.</summary>
    public Sequence<BedEdge> Edges { get; init; } = [];

    /// <summary>How high it stands at the drain, at corners, along walls and along the ways from the drain to the corners.</summary>
    public Sequence<Stake> Stakes { get; init; } = [];
}

/// <summary>The height of a bed along a straight edge of its floor.</summary>
/// <param name="Name">The edge.</param>
/// <param name="From">Where it begins, the floor to its left.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Line">How far along the edge and how high over the drain; straight between.</param>
public sealed record BedEdge(string Name, Point From, Point To, Sequence<Point> Line);

/// <summary>A straight way over a bed.</summary>
/// <param name="To">Which corner it goes to, by the two edges that meet there.</param>
/// <param name="From">Where it begins at the drain.</param>
/// <param name="At">Where the corner is.</param>
/// <param name="Fall">How steeply it falls, as a part of one.</param>
public sealed record BedWay(string To, Point From, Point At, double Fall);

/// <summary>A height to bring the bed to.</summary>
/// <param name="On">What it stands on: a wall's name, <c>drain</c>, or <c>to</c> and a corner.</param>
/// <param name="Along">How far along that, from its beginning.</param>
/// <param name="Place">Where on the floor.</param>
/// <param name="Over">How high over the drain's level.</param>
/// <param name="Thickness">How thick the bed is there, over a level base.</param>
public sealed record Stake(string On, Length Along, Point Place, Length Over, Length Thickness);
