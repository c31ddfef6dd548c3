using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;

namespace Gaugerod.Engine.Planning;

/// <summary>Finds edges of two faces that are one corner of the room: of neighbours on a run, and what the job says of beds and of sides read twice.</summary>
internal static class SameCorners
{
    public static IReadOnlyList<(EdgeOfFace One, EdgeOfFace Other)> Of(Job job, IEnumerable<RunPlan> runs) => [.. runs.SelectMany(Neighbours), .. job.Faces.SelectMany(OnBeds), .. job.Faces.SelectMany(face => ReadTwice(job, face))];

    private static IEnumerable<(EdgeOfFace, EdgeOfFace)> Neighbours(RunPlan run)
    {
        for (var i = 1; i < run.Faces.Count; i++)
        {
            var (left, right) = (run.Faces[i - 1].Face, run.Faces[i].Face);
            // The planes of a floor that falls are one face.
            if (string.Equals(left.Wall, right.Wall, StringComparison.Ordinal)) continue;
            foreach (var one in Towards(left, Hand.Right))
            {
                foreach (var other in Towards(right, Hand.Left)) yield return (one, other);
            }
        }
    }

    private static IEnumerable<EdgeOfFace> Towards(FinishedFace face, Hand hand) =>
        face.Edges.Where(edge => edge.Hand == hand && edge.Kind == EdgeKind.InsideCorner).Select(edge => new EdgeOfFace(face.Wall, edge.Name)).Distinct().Take(1);

    private static IEnumerable<(EdgeOfFace, EdgeOfFace)> OnBeds(Face face) => face.Beds.Select(on => (new EdgeOfFace(face.Name, on.Side), new EdgeOfFace(on.Floor, on.Edge)));

    private static IEnumerable<(EdgeOfFace, EdgeOfFace)> ReadTwice(Job job, Face face)
    {
        if (face.Shape is not FaceShape.Surveyed own) yield break;
        foreach (var shared in own.Survey.Same)
        {
            if (job.Faces.FirstOrDefault(other => string.Equals(other.Name, shared.Face, StringComparison.Ordinal))?.Shape is not FaceShape.Surveyed there) continue;
            yield return (new(face.Name, own.Edges[shared.Side].Name), new(shared.Face, there.Edges[shared.Other].Name));
        }
    }
}
