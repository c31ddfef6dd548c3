using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Faults of what a run's wants refer to.</summary>
internal static class WantFaults
{
    public static IEnumerable<Fault> Find(Job job, int index, FinishedRun finished)
    {
        var run = job.Runs[index];
        for (var i = 0; i < run.Wants.Count; i++)
        {
            var path = string.Create(CultureInfo.InvariantCulture, $"runs[{index}].wants[{i}]");
            foreach (var fault in Of(run.Wants[i], path, run, finished, job)) yield return fault;
        }
    }

    private static IEnumerable<Fault> Of(Want want, string path, RunRequest run, FinishedRun finished, Job job) => want switch
    {
        Want.JointAtHeight at => Face(at.Face, path, finished).Concat(Height(at, path, finished, job.Tape)),
        Want.JointOnEdge on => Edge(on.Edge, path, finished),
        Want.FullCourse full => Edge(full.Edge, path, finished),
        Want.AtLeast least => Edge(least.Edge, path, finished).Concat(Size(least, path, JobRuns.ProductOf(job, run), job.Tape)),
        Want.Centred centred => Face(centred.Face, path, finished).Concat(Opening(centred, path, finished)),
        Want.HoleOn hole => Face(hole.Face, path, finished).Concat(Hole(hole, path, finished)),
        Want.InLine line => Face(line.Face, path, finished).Concat(InLine.Faults(line, path, job, Array.IndexOf([.. job.Runs], run), finished)),
        Want.EqualCuts equal => Edge(equal.One, path, finished).Concat(Edge(equal.Other, path + ".and", finished)).Concat(OneOffset(equal, path, run)),
        _ => [],
    };

    private static IEnumerable<Fault> Face(string face, string path, FinishedRun finished)
    {
        if (Find(face, finished) is null)
        {
            yield return new(path + ".face", Quoted(face), "a face of this run: " + List(finished.Faces.Select(f => f.Name)));
        }
    }

    private static IEnumerable<Fault> Height(Want.JointAtHeight at, string path, FinishedRun finished, Tape tape)
    {
        if (Find(at.Face, finished) is not { } face) yield break;
        var bounds = face.Field.Outer.Bounds;
        if (at.Height < bounds.Bottom || at.Height > bounds.Top)
        {
            // The nearest that would do is a mark inside the field, and what was found is told from it however near it is.
            var up = tape.Down(bounds.Bottom) == bounds.Bottom ? bounds.Bottom : tape.Down(bounds.Bottom) + tape.Mark;
            yield return new(
                path + ".height", LengthText.Finer(at.Height, tape),
                $"a height where {face.Name} has tile, from {LengthText.Finer(bounds.Bottom, tape)} to {LengthText.Finer(bounds.Top, tape)}",
                at.Height < bounds.Bottom ? LengthText.Nearest(up, tape) : LengthText.Down(bounds.Top, tape));
        }
    }

    private static IEnumerable<Fault> Size(Want.AtLeast least, string path, Product product, Tape tape)
    {
        var longest = Length.Max(product.Width, product.Height);
        if (least.Size is { } size && size > longest)
        {
            yield return new(path + ".size", LengthText.Finer(size, tape), $"no more than the longer side of '{product.Name}', {LengthText.Finer(longest, tape)}", LengthText.Down(longest, tape));
        }
    }

    private static IEnumerable<Fault> Edge(EdgeRef edge, string path, FinishedRun finished)
    {
        if (Find(edge.Face, finished) is not { } face) return Face(edge.Face, path, finished);
        var names = finished.Faces.Where(one => one.IsCalled(edge.Face)).SelectMany(one => one.Edges).Select(e => e.Name).Distinct(StringComparer.Ordinal).ToList();
        if (names.Contains(edge.Edge, StringComparer.Ordinal)) return [];
        var ending = names.Where(name => name.EndsWith("." + edge.Edge, StringComparison.Ordinal) || name.StartsWith(edge.Edge + ".", StringComparison.Ordinal)).ToList();
        return [new(path + ".edge", Quoted(edge.Edge), $"an edge of {face.Name}: " + List(names), ending.Count > 0 ? ending[0] : null)];
    }

    private static IEnumerable<Fault> Opening(Want.Centred centred, string path, FinishedRun finished)
    {
        if (centred.Opening is not { } opening || Find(centred.Face, finished) is not { } face) yield break;
        if (face.Openings.Any(o => string.Equals(o.Name, opening, StringComparison.Ordinal))) yield break;
        yield return new(path + ".opening", Quoted(opening), face.Openings.Count == 0
            ? $"no opening: {face.Name} has none"
            : $"an opening of {face.Name}: " + List(face.Openings.Select(o => o.Name)));
    }

    private static IEnumerable<Fault> Hole(Want.HoleOn want, string path, FinishedRun finished)
    {
        if (Find(want.Face, finished) is not { } face) yield break;
        var holes = face.Holes.Where(hole => HoleChecks.Of(hole, face.Field) != OnTile.Nowhere).Select(hole => hole.Name).ToList();
        if (holes.Contains(want.Hole, StringComparer.Ordinal)) yield break;
        var known = face.Holes.Any(hole => string.Equals(hole.Name, want.Hole, StringComparison.Ordinal));
        yield return new(
            path + ".hole", known ? $"{Quoted(want.Hole)}, which lies where no tile is" : Quoted(want.Hole),
            holes.Count == 0 ? $"no hole: {face.Name} has none in its tile" : $"a hole in the tile of {face.Name}: " + List(holes));
    }

    private static IEnumerable<Fault> OneOffset(Want.EqualCuts equal, string path, RunRequest run)
    {
        if (run.Corners == Corners.Restart && !string.Equals(equal.One.Face, equal.Other.Face, StringComparison.Ordinal))
        {
            yield return new(
                path, $"edges of {equal.One.Face} and of {equal.Other.Face}",
                "two edges of one face where each face has its own start", "\"corners\": \"wrap\"");
        }
    }

    private static FinishedFace? Find(string name, FinishedRun finished) =>
        finished.Faces.FirstOrDefault(face => face.IsCalled(name));

    private static string Quoted(string text) => $"\"{text}\"";

    private static string List(IEnumerable<string> names) => string.Join(", ", names);
}
