using System.Globalization;
using Gaugerod.Engine;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Cli.Reading;

/// <summary>
/// Stops a job that asks for very many pieces before minutes are spent on it: mostly a tile size in the wrong unit.
/// </summary>
internal static class SizeLimit
{
    /// <summary>How many pieces a job may have unless it is said to be large.</summary>
    public const int MostPieces = 10_000;

    /// <summary>A fault when the faces of the job's runs hold more tiles than the limit, reckoned by area.</summary>
    public static Sequence<Fault> Check(Job job)
    {
        var tiles = job.Runs.Sum(run => Tiles(job, run));
        return tiles <= MostPieces
            ? []
            :
            [
                new Fault(
                    "runs",
                    string.Create(CultureInfo.InvariantCulture, $"about {Math.Round(tiles):0} pieces"),
                    string.Create(CultureInfo.InvariantCulture, $"at most {MostPieces}; check the sizes of tile and faces"),
                    "--large, which plans it all the same"),
            ];
    }

    private static decimal Tiles(Job job, RunRequest run)
    {
        var product = job.Products.FirstOrDefault(p => string.Equals(p.Name, run.Product, StringComparison.Ordinal));
        if (product is null) return 0;
        var joint = run.Joint.Wanted;
        var one = (product.Width + joint).Millimetres * (product.Height + joint).Millimetres;
        if (one <= 0) return 0;
        return job.Faces.Where(f => run.Faces.Contains(f.Name, StringComparer.Ordinal)).Sum(f => Area(f.Shape)) / one;
    }

    /// <summary>The area in square millimetres; of readings, that of the largest width and height.</summary>
    private static decimal Area(FaceShape shape) => shape switch
    {
        FaceShape.Outline outline => Math.Abs((decimal)outline.Ring.DoubledArea) / 2 / Length.StepsPerMillimetre / Length.StepsPerMillimetre,
        FaceShape.Read { Readings: var r } =>
            Greatest(r.Width.Foot, r.Width.Middle, r.Width.Top).Millimetres * Greatest(r.Height.Left, r.Height.Right).Millimetres,
        _ => 0,
    };

    private static Length Greatest(params ReadOnlySpan<Length?> lengths)
    {
        var greatest = Length.Zero;
        foreach (var length in lengths) greatest = Length.Max(greatest, length ?? Length.Zero);
        return greatest;
    }
}
