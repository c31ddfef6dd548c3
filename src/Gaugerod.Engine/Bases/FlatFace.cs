using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bases;

/// <summary>How far a face may be out of flat over a length.</summary>
/// <param name="Over">The length.</param>
/// <param name="Most">How far at most.</param>
/// <param name="Source">Where that comes from.</param>
public sealed record GapLimit(Length Over, Length Most, string Source);

/// <summary>A reading, and how far off the plane that fits best it stands.</summary>
/// <param name="At">Where it was read.</param>
/// <param name="Out">What was read, plus towards the room or up.</param>
/// <param name="Off">How far it stands off the plane, plus towards the room or up.</param>
public sealed record FlatSpot(Point At, Length Out, Length Off);

/// <summary>The worst that a straightedge of some length shows.</summary>
/// <param name="Over">How long it is.</param>
/// <param name="Hollow">The widest gap under it, between the two places it rests on.</param>
/// <param name="Hump">How far the highest place stands out over a string between the two lowest places.</param>
/// <param name="From">Where what is worst begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="At">Where it is worst.</param>
public sealed record WorstGap(Length Over, Length Hollow, Length Hump, Point From, Point To, Point At)
{
    /// <summary>The worse of the two.</summary>
    public Length Worst => Length.Max(Hollow, Hump);

    /// <summary>What is allowed; null where nothing is known for this length.</summary>
    public GapLimit? Limit { get; init; }

    /// <summary>The places from its one end to its other: how far along, and how far from the line between the ends, plus below it for a hollow and over it for a hump.</summary>
    public Sequence<(Length Along, Length By)> Places { get; init; } = [];

    /// <summary>Whether it is within its limit, or has none.</summary>
    public bool IsWithin => Limit is not { } limit || Worst <= limit.Most;
}

/// <summary>How flat a face is.</summary>
/// <param name="Face">The face.</param>
/// <param name="Spots">The readings of one line or plane, with how far each is off; none where only gaps under straightedges were read.</param>
/// <param name="Gaps">The worst under each straightedge that the readings tell something of, the longest first.</param>
public sealed record FlatFace(string Face, Sequence<FlatSpot> Spots, Sequence<WorstGap> Gaps)
{
    /// <summary>How much the plane that fits best rises to the right and up, as parts of one: slope is no fault.</summary>
    public (double Right, double Up) Slope { get; init; }

    /// <summary>What must be filled or ground for the face to be within the limit over the longest length; null without readings of one plane or without a limit.</summary>
    public Levelling? ToLimit { get; init; }

    /// <summary>What fills it up to the plane through its highest place; null without readings of one plane.</summary>
    public Levelling? ToHighs { get; init; }

    /// <summary>What is filled so that no straightedge, long or short, is out along the readings; null without a limit, where none is out, and where there are too many readings to look at.</summary>
    public Levelling? ToStraightedges { get; init; }

    /// <summary>What is filled to bring it in: by all straightedges where that is known, else by the longest. Null where there is no limit.</summary>
    public Levelling? ToFill => ToStraightedges ?? ToLimit;

    /// <summary>By how much each reading is then filled, in their order; none where <see cref="ToStraightedges"/> is null.</summary>
    public Sequence<Length> Fills { get; init; } = [];

    /// <summary>The face between its readings, as triangles; none without readings of one plane.</summary>
    public Sequence<Facet> Facets { get; init; } = [];

    /// <summary>Whether it falls to a drain or along folds: no one plane is asked of it, and nothing is judged.</summary>
    public bool IsFalling { get; init; }

    /// <summary>The lengths for which no three readings lie near enough.</summary>
    public Sequence<Length> Untold { get; init; } = [];
}

/// <summary>What brings a face into a plane.</summary>
/// <param name="Area">How much of the face the readings cover, in square millimetres.</param>
/// <param name="Volume">How much filler that takes, in cubic millimetres.</param>
/// <param name="Deepest">How deep it is at the lowest place.</param>
/// <param name="Grind">How much must be ground off the highest place instead.</param>
public sealed record Levelling(double Area, double Volume, Length Deepest, Length Grind);
