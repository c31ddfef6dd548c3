using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>Towards which neighbour on its run a side of a face looks.</summary>
internal enum Hand
{
    Neither,
    Left,
    Right,
}

/// <summary>One side of a ring and all that is known of it before its neighbours are asked.</summary>
/// <param name="Edge">The edge it comes from.</param>
/// <param name="Name">Its full name on the face.</param>
/// <param name="Hand">Towards which neighbour it looks.</param>
/// <param name="Path">Where its edge stands in the job.</param>
internal sealed record Side(Edge Edge, string Name, Hand Hand, string Path)
{
    /// <summary>Whether it is one of several sides that the edge has because it bends gently; they are no chords of an arc.</summary>
    public bool Bends { get; init; }

    public bool IsCorner => Edge.Kind is EdgeKind.InsideCorner or EdgeKind.OutsideCorner;
}

/// <summary>A counter-clockwise ring, with what each of its sides is.</summary>
/// <param name="Name">The opening's name, or the face's.</param>
/// <param name="Path">Where it stands in the job.</param>
/// <param name="Ring">The ring.</param>
/// <param name="Sides">Its sides, the first from the first point to the second.</param>
internal sealed record DrawnRing(string Name, string Path, Ring Ring, Sequence<Side> Sides);

/// <summary>A face as measured, checked and drawn.</summary>
/// <param name="Face">The face.</param>
/// <param name="Path">Where it stands in the job.</param>
/// <param name="Outline">Its outline.</param>
/// <param name="Openings">Its openings.</param>
/// <param name="LevelLine">How high above y = 0 the level line crosses it; null when none was struck.</param>
internal sealed record DrawnFace(Face Face, string Path, DrawnRing Outline, Sequence<DrawnRing> Openings, Length? LevelLine);

/// <summary>What an edge takes from the tile.</summary>
/// <param name="Inward">How far the field's edge moves in from the face's; less than zero where it grows.</param>
/// <param name="Joint">Of that, the soft joint.</param>
/// <param name="Laps">Whether the tile is cut to the finished face of the other wall there.</param>
internal readonly record struct Take(Length Inward, Length Joint, bool Laps = false);

/// <summary>One side of the field, run so that the tile lies to its left.</summary>
/// <param name="From">Where it begins.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Side">The side it comes from.</param>
internal readonly record struct MovedSide(Point From, Point To, Side Side)
{
    /// <summary>Whether it is only the step between two sides that bend gently and take differently.</summary>
    public bool IsJog { get; init; }
}
