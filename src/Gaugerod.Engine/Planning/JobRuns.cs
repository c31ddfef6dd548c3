using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>Joins a run with the product and the faces it names.</summary>
internal static class JobRuns
{
    public static Product ProductOf(Job job, RunRequest run) =>
        job.Products.First(product => string.Equals(product.Name, run.Product, StringComparison.Ordinal));

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
        var faces = run.Faces
            .Select(name => Enumerable.Range(0, job.Faces.Count).First(i => string.Equals(job.Faces[i].Name, name, StringComparison.Ordinal)))
            .Select(i => new NumberedFace(i, job.Faces[i]))
            .ToSequence();
        var path = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"runs[{index}]");
        return RoomBuilder.FaceByFace(new(path, faces, ProductOf(job, run).BuildUp, run.Through, job.EdgeJoint, job.Tape));
    }

    public static RunProblem Problem(Job job, RunRequest run, Sequence<FinishedFace> faces) => new(
        faces, ProductOf(job, run), run.Bond, run.Corners == Corners.Restart, run.Joint, run.Limits, run.Wants, run.Order, job.Tape);
}
