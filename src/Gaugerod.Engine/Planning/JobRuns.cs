using System.Globalization;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>Joins a run with the product and the faces it names.</summary>
internal static class JobRuns
{
    public static Product ProductOf(Job job, RunRequest run) =>
        job.Products.First(product => string.Equals(product.Name, run.Product, StringComparison.Ordinal));

    /// <summary>Whether a run is reckoned course by course: its bond is straight and no face of it is folded.</summary>
    public static bool IsStraight(RunRequest run, Sequence<FinishedFace> faces) => run.Bond.IsStraight && faces.All(face => face.Plane is null);

    /// <summary>The products of the run's bond: its own, then those the bond names.</summary>
    public static Sequence<Product> ProductsOf(Job job, RunRequest run) => run.Bond.With
        .Select(name => job.Products.First(product => string.Equals(product.Name, name, StringComparison.Ordinal)))
        .Prepend(ProductOf(job, run)).ToSequence();

    /// <summary>The run's faces, finished.</summary>
    public static FinishedRun Finish(Job job, int index) => FaceByFace(job, index).Last()!;

    /// <summary>As <see cref="Finish"/>, a face at a time: nothing until the last.</summary>
    public static IEnumerable<FinishedRun?> FaceByFace(Job job, int index)
    {
        var run = job.Runs[index];
        var path = string.Create(CultureInfo.InvariantCulture, $"runs[{index}]");
        var faces = run.Faces.Select(name => FaceOf(job, name)).ToSequence();
        if (faces.Distinct().Count() < faces.Count)
        {
            var twice = faces.GroupBy(face => face).First(group => group.Count() > 1).Key.Face.Name;
            yield return new([], [], [new(path + ".faces", $"two zones of \"{twice}\"", "one zone of each face in a run", "a run of its own for each")]);
            yield break;
        }

        FinishedRun? finished = null;
        foreach (var sofar in RoomBuilder.FaceByFace(Wholes(job, run, path, faces)))
        {
            finished = sofar;
            if (sofar is null) yield return null;
        }

        yield return faces.All(face => face.Face.Zones.Count == 0 && face.Face.Falls is null) ? finished : RunZones.Of(job, run, path, faces, finished!);
    }

    /// <summary>The run's faces as wholes, whatever zones they have.</summary>
    public static FinishedRun Wholes(Job job, RunRequest run) => RoomBuilder.Finish(Wholes(job, run, "", run.Faces.Select(name => FaceOf(job, name)).ToSequence()));

    private static RunOfFaces Wholes(Job job, RunRequest run, string path, Sequence<NumberedFace> faces) =>
        new(path, faces, ProductOf(job, run).BuildUp, run.Through is { } through ? FaceOf(job, through).Face.Name : null, job.EdgeJoint, job.Tape);

    /// <summary>The face with a name, or the one that has a zone with it.</summary>
    private static NumberedFace FaceOf(Job job, string name)
    {
        var index = Enumerable.Range(0, job.Faces.Count).First(i =>
            string.Equals(job.Faces[i].Name, name, StringComparison.Ordinal) || job.Faces[i].Zones.Any(zone => string.Equals(zone.Name, name, StringComparison.Ordinal)));
        return new(index, job.Faces[index]);
    }

    public static RunProblem Problem(Job job, RunRequest run, Sequence<FinishedFace> faces) => new(
        faces, ProductOf(job, run), run.Bond, run.Corners == Corners.Restart, run.Joint, run.Limits, run.Wants, run.Order, job.Tape);
}
