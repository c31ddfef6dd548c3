using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>One side of the field, run so that the tile lies to its left.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Name">The name of the face's edge it comes from, with its opening's or fixture's name before it.</param>
/// <param name="Kind">What it meets.</param>
public readonly record struct FieldEdge(Point From, Point To, string Name, EdgeKind Kind)
{
    /// <summary>The width of the trim or the profile beyond the edge; default zero for none.</summary>
    public Length Trim { get; init; }

    /// <summary>The joint between the field and what stands along the edge; known where a trim is asked for.</summary>
    public Length Joint { get; init; }

    /// <summary>How wide the soft joint along the edge is; zero, the default, where there is none or it is sealed elsewhere.</summary>
    public Length Soft { get; init; }

    /// <summary>The trim asked for there; null, the default, for none.</summary>
    public TrimRequest? Trimmed { get; init; }

    /// <summary>Towards which neighbour of its face on the run it looks; an opening's sides look towards none.</summary>
    internal Hand Hand { get; init; }

    /// <summary>Whether it is one chord of an arc.</summary>
    public bool IsRound { get; init; }

    /// <summary>Whether it is only the step between two sides that bend gently and take differently: no trim stands along it.</summary>
    public bool IsJog { get; init; }

    /// <summary>Whether the sides of tiles along it are seen: it is open, or they are the rounded ones of a corner, and no trim covers them.</summary>
    public bool Shows { get; init; }
}

/// <summary>A named ring on a face.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Ring">Its corners, counter-clockwise.</param>
public sealed record NamedRing(string Name, Ring Ring);

/// <summary>A face with its field: what tile covers when joints, trims, laps and openings are taken off.</summary>
/// <param name="Name">The face's name.</param>
/// <param name="Outline">The face as measured; its lower left corner at or near the origin.</param>
/// <param name="Openings">The openings as measured.</param>
/// <param name="Holes">The holes.</param>
/// <param name="Field">What tile covers.</param>
/// <param name="Edges">The field's sides: the outer ring's, then each hole's.</param>
/// <param name="Unrolled">Where this face's x = 0 lies on its run, unrolled left to right.</param>
/// <param name="Raised">Where this face's y = 0 lies above the first face's.</param>
public sealed record FinishedFace(
    string Name, Ring Outline, Sequence<NamedRing> Openings, Sequence<Hole> Holes,
    Polygon Field, Sequence<FieldEdge> Edges, Length Unrolled, Length Raised)
{
    private readonly string? _wall;

    /// <summary>The name of the whole face that this is, or is a part of: a zone, a strip of a border, a plane of a floor that falls.</summary>
    public string Wall
    {
        get => _wall ?? Name;
        init => _wall = value;
    }

    /// <summary>How many of the edges are the outer ring's. Two that lie in one line are one side of the ring but two edges.</summary>
    internal int OuterEdges
    {
        get
        {
            for (var i = 0; i < Edges.Count; i++)
            {
                if (Edges[i].To == Edges[0].From) return i + 1;
            }

            return Edges.Count;
        }
    }

    /// <summary>The field's sides as rings, outlines counter-clockwise and holes clockwise, each side tagged with its place among the edges.</summary>
    internal IReadOnlyList<TaggedCorner[]> TaggedRings()
    {
        var rings = new List<TaggedCorner[]>();
        var ring = new List<TaggedCorner>();
        for (var i = 0; i < Edges.Count; i++)
        {
            ring.Add(new(Edges[i].From.X.Steps, Edges[i].From.Y.Steps, i));
            if (Edges[i].To != ring[0].Point) continue;
            rings.Add([.. ring]);
            ring.Clear();
        }

        return rings;
    }

    /// <summary>The names of the edges that the outline's sides are of; the chords of an arc have the same. None for a plane.</summary>
    internal Sequence<string> OutlineNames { get; init; } = [];

    /// <summary>Where it falls to a drain from a round edge.</summary>
    public Sequence<Cone> Cones { get; init; } = [];

    /// <summary>The face that this is one plane of; null for a face that is not folded.</summary>
    public PlaneOf? Plane { get; init; }

    /// <summary>What is set out as one: the whole of a folded face, for one pattern runs over all of its planes.</summary>
    public FinishedFace SetOut => Plane?.Whole ?? this;

    /// <summary>Whether a name is this face's or that of the face it is a plane of.</summary>
    internal bool IsCalled(string name) => string.Equals(Name, name, StringComparison.Ordinal) || string.Equals(Plane?.Face, name, StringComparison.Ordinal);

    /// <summary>How high above y = 0 the struck level line crosses the face; null when none was struck on the run.</summary>
    public Length? LevelLine { get; init; }
}
