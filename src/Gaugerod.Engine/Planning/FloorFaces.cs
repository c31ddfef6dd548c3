using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Planning;

/// <summary>Which faces are floors. A job does not say it of a face; what it says of it tells.</summary>
internal static class FloorFaces
{
    /// <summary>
    /// Whether a face is one: it falls, or was read as one; or nobody read it as a wall, it has no foot and no head, and corners, doorways or fixtures nearly all round:
    /// more than two of them, and where a side is free more than two corners and doorways, for a splash wall stands between a worktop and cupboards. The app's words for a
    /// face go by much the same, as far as a job that is still being typed tells it.
    /// </summary>
    public static bool Is(Face face) => face.Falls is not null || face.Flatness is { IsFloor: true }
        || (face.Flatness is null && face.Shape is FaceShape.Outline or FaceShape.Surveyed
            && Edges(face).All(edge => edge.Kind is not (EdgeKind.Floor or EdgeKind.Ceiling)) && Edges(face).Count(edge => Shuts(face, edge.Kind)) > 2);

    /// <summary>Whether a run lies on one.</summary>
    public static bool Holds(Job job, RunRequest run) => job.Faces.Any(face => Is(face) && run.Faces.Any(name =>
        string.Equals(name, face.Name, StringComparison.Ordinal) || face.Zones.Any(zone => string.Equals(zone.Name, name, StringComparison.Ordinal))));

    private static bool Shuts(Face face, EdgeKind kind) => kind is EdgeKind.InsideCorner or EdgeKind.Threshold || (kind is EdgeKind.Fixture && Edges(face).All(edge => edge.Kind is not EdgeKind.Free));

    /// <summary>The edges of a face that is given by its outline or a survey; none of one given by readings, which is a wall.</summary>
    public static IEnumerable<Edge> Edges(Face face) => face.Shape switch
    {
        FaceShape.Outline outline => outline.Edges,
        FaceShape.Surveyed surveyed => surveyed.Edges,
        _ => [],
    };
}
