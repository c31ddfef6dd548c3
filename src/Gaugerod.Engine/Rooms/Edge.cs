using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rooms;

/// <summary>What an edge of a face meets.</summary>
public enum EdgeKind
{
    /// <summary>Another face, meeting at an angle that opens to the room.</summary>
    InsideCorner,

    /// <summary>Another face, meeting at an angle that points into the room.</summary>
    OutsideCorner,

    /// <summary>Nothing: the tile stops on an open wall.</summary>
    Free,

    /// <summary>The floor.</summary>
    Floor,

    /// <summary>The ceiling.</summary>
    Ceiling,

    /// <summary>A bath, a tray, a bench, a sill, a counter, a frame.</summary>
    Fixture,

    /// <summary>A doorway's sill.</summary>
    Threshold,

    /// <summary>Another zone of the same face; no job states it.</summary>
    Zone,
}

/// <summary>Which wall's tile runs on at an inside corner.</summary>
public enum Lap
{
    /// <summary>As the run decides: the wall that is seen from the entrance runs through.</summary>
    AsRun,

    /// <summary>This wall's tile runs into the corner.</summary>
    Through,

    /// <summary>This wall's tile is cut to the finished face of the other.</summary>
    Laps,
}

/// <summary>How an outside corner is finished.</summary>
public enum CornerFinish
{
    /// <summary>This side's rounded tile covers the other side's edge.</summary>
    BullnoseOver,

    /// <summary>This side's tile stops behind the other side's rounded tile.</summary>
    BullnoseUnder,

    /// <summary>Both sides are mitred and meet on the corner.</summary>
    Mitre,

    /// <summary>A profile stands on the corner; both sides stop at it.</summary>
    Profile,
}

/// <summary>One side of a face or of an opening, and what it takes from the tile there.</summary>
/// <param name="Name">Its name, unique on its face.</param>
/// <param name="Kind">What it meets.</param>
public sealed record Edge(string Name, EdgeKind Kind)
{
    /// <summary>The soft joint left at the edge; null for the job's own. Zero or more, at most 25 mm.</summary>
    public Length? Joint { get; init; }

    /// <summary>Whether the soft joint there is sealed from this face; false where it is counted with the other face's edge, or stays open under a base. Default true.</summary>
    public bool IsSealed { get; init; } = true;

    /// <summary>The width of the trim at a free edge, or of the profile at an outside corner; the field stops where it begins. Default zero.</summary>
    public Length Trim { get; init; }

    /// <summary>The trim that is to be set there, as wide as <see cref="Trim"/> says; null, the default, where its pieces are not planned.</summary>
    public TrimRequest? Trimmed { get; init; }

    /// <summary>
    /// The thickness of what stands in front of this edge: the other wall's build-up at a corner, the floor's finish at a
    /// floor line. Null for what the run knows: its own next face, else nothing.
    /// </summary>
    public Length? Cover { get; init; }

    /// <summary>Which wall runs on, at an inside corner. Default: as the run decides.</summary>
    public Lap Lap { get; init; }

    /// <summary>The finish, at an outside corner; null elsewhere.</summary>
    public CornerFinish? Finish { get; init; }
}
