using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>A soft joint to seal, or a run's part of it.</summary>
/// <param name="Run">The run's name.</param>
/// <param name="At">Where it stands.</param>
/// <param name="Kind">What tile meets there; null where it stands across a field.</param>
/// <param name="Width">How wide it is; more than zero.</param>
/// <param name="Length">How long, in mm.</param>
internal sealed record SoftJoint(string Run, EdgeOfFace At, EdgeKind? Kind, Length Width, double Length);

/// <summary>A run's faces, left to right.</summary>
/// <param name="Run">The run's name.</param>
/// <param name="Faces">Its faces.</param>
internal sealed record RunFaces(string Run, IEnumerable<FinishedFace> Faces);

/// <summary>
/// Finds the joints that are sealed. A joint between two faces is one joint though both have an edge there: it is counted by the
/// face where it measures longer.
/// </summary>
internal static class SoftJoints
{
    /// <param name="runs">The runs.</param>
    /// <param name="alike">Edges of two faces that are one corner.</param>
    public static IReadOnlyList<SoftJoint> Of(IEnumerable<RunFaces> runs, IReadOnlyList<(EdgeOfFace One, EdgeOfFace Other)> alike)
    {
        var joints = runs.SelectMany(run => run.Faces.SelectMany(face => Soft(face).GroupBy(edge => (edge.Name, edge.Kind, edge.Soft)).Select(edges =>
            new SoftJoint(run.Run, new(face.Wall, edges.Key.Name), edges.Key.Kind, edges.Key.Soft, edges.Sum(Mm))))).ToList();
        var kept = EdgesOnce.Of(joints.Select(joint => (joint.At, joint.Length)), alike);
        return [.. joints.Where(joint => kept.Contains(joint.At))];
    }

    private static IEnumerable<FieldEdge> Soft(FinishedFace face) => face.Edges.Where(edge => edge.Soft > Length.Zero);

    private static double Mm(FieldEdge edge)
    {
        var (x, y) = ((double)(edge.To.X - edge.From.X).Steps, (double)(edge.To.Y - edge.From.Y).Steps);
        return Math.Sqrt((x * x) + (y * y)) / 3200;
    }
}
