using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Planning;

/// <summary>Which faces are floors. A job does not say it of a face; what it says of it tells.</summary>
internal static class FloorFaces
{
    /// <summary>
    /// Whether a face is one: it falls, or was read as one; or nobody read it as a wall, it has no foot, no head and no free edge, and corners, doorways or fixtures
    /// nearly all round. The app's words for a face go by the same, as far as a job that is still being typed tells it.
    /// </summary>
    public static bool Is(Face face) => face.Falls is not null || face.Flatness is { IsFloor: true }
        || (face.Flatness is null && face.Shape is FaceShape.Outline or FaceShape.Surveyed
            && Edges(face).All(edge => edge.Kind is not (EdgeKind.Floor or EdgeKind.Ceiling or EdgeKind.Free))
            && Edges(face).Count(edge => edge.Kind is EdgeKind.InsideCorner or EdgeKind.Fixture or EdgeKind.Threshold) > 2);

    /// <summary>Whether a run lies on one.</summary>
    public static bool Holds(Job job, RunRequest run) => job.Faces.Any(face => Is(face) && run.Faces.Any(name =>
        string.Equals(name, face.Name, StringComparison.Ordinal) || face.Zones.Any(zone => string.Equals(zone.Name, name, StringComparison.Ordinal))));

    /// <summary>The edges of a face that is given by its outline or a survey; none of one given by readings, which is a wall.</summary>
    public static IEnumerable<Edge> Edges(Face face) => face.Shape switch
    {
        FaceShape.Outline outline => outline.Edges,
        FaceShape.Surveyed surveyed => surveyed.Edges,
        _ => [],
    };
}
