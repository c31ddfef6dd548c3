using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>Joints that run on from one zone of a wall into another: what was laid by an earlier run says where the later has one.</summary>
internal static class InLine
{
    /// <summary>The run with every plumb joint it is to take up given its place.</summary>
    /// <param name="request">The run.</param>
    /// <param name="finished">Its faces.</param>
    /// <param name="planned">The runs before it, planned.</param>
    public static RunRequest Resolved(RunRequest request, FinishedRun finished, IReadOnlyList<RunPlan> planned) => request.Wants.Any(want => want is Want.InLine)
        ? request with { Wants = request.Wants.Select(want => want is Want.InLine line ? line with { At = At(line, finished, planned) } : want).ToSequence() }
        : request;

    /// <summary>What keeps a want of the kind from being looked at.</summary>
    public static IEnumerable<Fault> Faults(Want.InLine want, string path, Job job, int index, FinishedRun finished)
    {
        path += ".with";
        var found = $"\"{want.With}\"";
        if (Wall(job, want.With) is not { } wall)
        {
            yield return new(path, found, $"the name of another zone of the wall that \"{want.Face}\" is on, or of the wall itself");
            yield break;
        }

        var first = job.Runs.Take(index).FirstOrDefault(run => run.Faces.Contains(want.With, StringComparer.Ordinal));
        if (finished.Faces.FirstOrDefault(face => face.IsCalled(want.Face))?.Wall is { } own && !string.Equals(wall, own, StringComparison.Ordinal)) yield return new(path, found + ", of another wall", $"another zone of the wall that \"{want.Face}\" is on");
        else if (first is null) yield return new(path, $"{found}, laid by no run before this one", "a zone that an earlier run lays", "that run before this one");
        else if (job.Faces.Any(face => face.Zones.Any(zone => zone is Zone.Border && string.Equals(zone.Name, want.With, StringComparison.Ordinal))))
        {
            yield return new(path, found + ", a border, each strip of which lies along its own side", "a zone laid as one");
        }
        else if (!first.Bond.IsStraight) yield return new(path, $"{found}, whose bond has no plumb joints that run through", "a zone laid in grid or running bond, not turned");
    }

    /// <summary>The joint of the course beside the other zone that is nearest to the zone's middle; null where that course has none over its width.</summary>
    private static Length? At(Want.InLine want, FinishedRun finished, IReadOnlyList<RunPlan> planned)
    {
        var (own, other) = (finished.Faces.FirstOrDefault(face => face.IsCalled(want.Face)), planned.SelectMany(run => run.Faces.Select(face => (run, face))).FirstOrDefault(of => of.face.Face.IsCalled(want.With)));
        if (own is null || other.face is null) return null;
        var (bounds, half) = (own.Field.Outer.Bounds, Grid.HalfDown(other.run.Best.Placing.Joint));
        // What lies to the left or the right of the zone runs along it, not on from it.
        var beside = other.face.Pieces.Where(piece => piece.Frame is null && piece.Outline.Bounds is var box && box.Right > bounds.Left && box.Left < bounds.Right)
            .GroupBy(piece => piece.Cell.Bottom).OrderBy(course => course.Min(piece => Away(piece.Outline.Bounds, bounds))).ThenBy(course => course.Key.Steps).FirstOrDefault();
        var (middle, joints) = (Grid.HalfDown(bounds.Left + bounds.Right), beside is null ? [] : Joints(beside, half));
        return joints.Where(at => at > bounds.Left && at < bounds.Right).OrderBy(at => (at - middle).Abs().Steps).ThenBy(at => at.Steps).Select(at => (Length?)at).FirstOrDefault();
    }

    /// <summary>The middles of the joints on both sides of the tiles, where a tile has a side of its own.</summary>
    private static IEnumerable<Length> Joints(IEnumerable<Piece> course, Length half) =>
        course.SelectMany(piece => new[] { piece.Cell.Left - half, piece.Cell.Right + half }).Distinct();

    private static long Away(Box course, Box zone) => Math.Max(0, Math.Max((zone.Bottom - course.Top).Steps, (course.Bottom - zone.Top).Steps));

    private static string? Wall(Job job, string name) => job.Faces
        .FirstOrDefault(face => string.Equals(face.Name, name, StringComparison.Ordinal) || face.Zones.Any(zone => string.Equals(zone.Name, name, StringComparison.Ordinal)))?.Name;
}
