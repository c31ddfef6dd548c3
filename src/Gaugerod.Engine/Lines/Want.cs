using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Lines;

/// <summary>A named edge of a named face.</summary>
/// <param name="Face">The face's name.</param>
/// <param name="Edge">The edge's name on it.</param>
public sealed record EdgeRef(string Face, string Edge);

/// <summary>What stands on a middle line.</summary>
public enum CentreOn
{
    /// <summary>Either will do.</summary>
    Either,

    /// <summary>The middle of a tile.</summary>
    Tile,

    /// <summary>The middle of a joint.</summary>
    Joint,
}

/// <summary>Something the setter asks of the placing.</summary>
/// <param name="Must">Whether it is a must; else a wish.</param>
/// <param name="Weight">How much a wish counts; 1 or more, default 1. A must counts before all wishes.</param>
public abstract record Want(bool Must, int Weight)
{
    /// <summary>The middle of a bed joint at a height of a face (above its y = 0).</summary>
    public sealed record JointAtHeight(string Face, Length Height, bool Must, int Weight) : Want(Must, Weight);

    /// <summary>
    /// Tiles' sides lie along the whole of the edge, to a mark of the tape. Of an edge that is further out no placing holds it; it is brought
    /// to a joint where it stands furthest out all the same. An arc is met where it lies level.
    /// </summary>
    public sealed record JointOnEdge(EdgeRef Edge, bool Must, int Weight) : Want(Must, Weight)
    {
        /// <summary>Whether the tool wishes for it unasked, since the edge may be moved: it then counts after slivers.</summary>
        public bool OfMovable { get; init; }
    }

    /// <summary>No cut along the edge is under a size.</summary>
    /// <param name="Edge">The edge.</param>
    /// <param name="Size">The size; null when a part of the tile is given.</param>
    /// <param name="PartOfTile">The part of the tile, as numerator and denominator; null when a size is given.</param>
    /// <param name="Must">Whether it is a must.</param>
    /// <param name="Weight">How much a wish counts.</param>
    public sealed record AtLeast(EdgeRef Edge, Length? Size, (int Numerator, int Denominator)? PartOfTile, bool Must, int Weight) : Want(Must, Weight);

    /// <summary>A tile or a joint of the first course stands on the middle of a face or of an opening, left to right.</summary>
    /// <param name="Face">The face.</param>
    /// <param name="Opening">The opening; null for the face's own field.</param>
    /// <param name="On">What stands there.</param>
    /// <param name="Must">Whether it is a must.</param>
    /// <param name="Weight">How much a wish counts.</param>
    public sealed record Centred(string Face, string? Opening, CentreOn On, bool Must, int Weight) : Want(Must, Weight);

    /// <summary>A crossing of joints, or the middle of a tile, stands on the middle of a round hole: a drain, a pipe.</summary>
    /// <param name="Face">The face.</param>
    /// <param name="Hole">The hole's name.</param>
    /// <param name="On">What stands there.</param>
    /// <param name="Must">Whether it is a must.</param>
    /// <param name="Weight">How much a wish counts.</param>
    public sealed record HoleOn(string Face, string Hole, CentreOn On, bool Must, int Weight) : Want(Must, Weight);

    /// <summary>A plumb joint of the first course stands in line with one of another zone of the wall, which an earlier run lays.</summary>
    /// <param name="Face">The face or zone.</param>
    /// <param name="With">The other zone.</param>
    /// <param name="At">Where that joint's middle is, from the left; null until the earlier run is planned, and where it has none.</param>
    /// <param name="Must">Whether it is a must.</param>
    /// <param name="Weight">How much a wish counts.</param>
    public sealed record InLine(string Face, string With, Length? At, bool Must, int Weight) : Want(Must, Weight);

    /// <summary>The cuts at two edges are equal, to a mark of the tape.</summary>
    public sealed record EqualCuts(EdgeRef One, EdgeRef Other, bool Must, int Weight) : Want(Must, Weight);

    /// <summary>The course along the edge is whole where the edge stands furthest out; an upright edge has whole tiles in the courses that begin alike.</summary>
    public sealed record FullCourse(EdgeRef Edge, bool Must, int Weight) : Want(Must, Weight);
}
