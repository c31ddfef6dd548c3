using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;

namespace Gaugerod.Sheets.Sheets;

/// <summary>
/// In which order the walls of a run are set: a wall that is cut to another's finished face comes after it, so the one whose
/// tile runs into its corners is set first. Common practice, no source.
/// </summary>
public static class SettingOrder
{
    /// <summary>The order in words; null where there is only one wall.</summary>
    public static string? Words(Job job, RunPlan run)
    {
        if (run.Faces.Select(face => face.Face.Wall).Distinct(StringComparer.Ordinal).Count() < 2) return null;
        if (!Plain(job, run)) return "Order of the walls: at every corner the wall whose tile runs into it or under the other's is set first, then the one that is cut to it.";

        // Going outward, each wall is cut to the one before it.
        var names = FaceOrder.Of(run).Select(f => f.Face.Name).ToList();
        return $"Order of the walls: {names[0]} first, its tile runs into the corners; then {NameList.Of(names[1..])}, cut to what is already tiled. On each work from the level line up.";
    }

    /// <summary>Whether all corners between the walls are inside corners that lap as the run decides.</summary>
    private static bool Plain(Job job, RunPlan run)
    {
        for (var i = 0; i < run.Faces.Count; i++)
        {
            var (first, last) = (i == 0, i + 1 == run.Faces.Count);
            var face = run.Faces[i].Face;
            if (!last && !face.Edges.Any(e => e.Kind == EdgeKind.InsideCorner && e.From.Y < e.To.Y)) return false;
            if (!first && !face.Edges.Any(e => e.Kind == EdgeKind.InsideCorner && e.From.Y > e.To.Y)) return false;
            if (job.Faces.FirstOrDefault(f => string.Equals(f.Name, face.Name, StringComparison.Ordinal)) is { } asked && EdgesOf(asked).Any(e => e.Lap != Lap.AsRun)) return false;
        }

        return true;
    }

    private static IEnumerable<Edge> EdgesOf(Face face) => face.Shape switch
    {
        FaceShape.Read read => [read.Left, read.Right],
        FaceShape.Outline outline => outline.Edges,
        FaceShape.Surveyed surveyed => surveyed.Edges,
        _ => [],
    };
}
