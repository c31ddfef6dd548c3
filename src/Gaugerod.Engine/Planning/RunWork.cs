using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>A face, or the zone of one, as it is worked on.</summary>
/// <param name="Face">Its name, as its run calls it.</param>
/// <param name="Wall">The whole face it is of.</param>
/// <param name="IsFloor">Whether one walks on it.</param>
internal sealed record FaceWork(string Face, string Wall, bool IsFloor)
{
    /// <summary>What is set from the starting line up, in setting order; none before it is planned.</summary>
    public Sequence<Piece> Up { get; init; } = [];

    /// <summary>The cut course below a level line.</summary>
    public Sequence<Piece> Below { get; init; } = [];

    /// <summary>How high its field begins.</summary>
    public Length Bottom { get; init; }

    /// <summary>The returns of niches and windows, in metres along their edges.</summary>
    public double Returns { get; init; }
}

/// <summary>A run as it is worked on.</summary>
/// <param name="Run">What was asked.</param>
/// <param name="Faces">Its faces in setting order.</param>
/// <param name="Mortar">What it is set with; null where that is not said.</param>
/// <param name="Grout">What it is grouted with.</param>
internal sealed record RunWork(RunRequest Run, Sequence<FaceWork> Faces, Supply? Mortar, Supply? Grout)
{
    /// <summary>How much mortar a square metre of tile takes, in litres.</summary>
    public double Litres { get; init; }

    /// <summary>How much grout a square metre of tile takes, in litres.</summary>
    public double GroutLitres { get; init; }

    /// <summary>The area of its fields, in square metres.</summary>
    public double Area { get; init; }

    /// <summary>Lines to snap and rods to mark.</summary>
    public int Lines { get; init; }

    /// <summary>The joints between its tiles, in metres.</summary>
    public double Joints { get; init; }

    /// <summary>The soft joints at its edges, in metres.</summary>
    public double Soft { get; init; }

    /// <summary>The trims beside it, in metres.</summary>
    public double Trims { get; init; }

    /// <summary>How many pieces of trim those are.</summary>
    public int TrimPieces { get; init; }

    /// <summary>A job's runs before they are planned: nothing is known of how much there is to do.</summary>
    public static Sequence<RunWork> Of(Job job) => job.Runs.Select(run => Of(job, run)).ToSequence();

    /// <summary>A run before it is planned.</summary>
    public static RunWork Of(Job job, RunRequest run) => new(
        run, run.Faces.Select(name => Of(job, name)).ToSequence(), Named(job, run.Setting?.Mortar), Named(job, run.Setting?.Grout))
    {
        Soft = 1,
        Trims = job.Trims.Count,
        TrimPieces = job.Trims.Count,
    };

    private static Supply? Named(Job job, string? name) => job.Supplies.FirstOrDefault(supply => string.Equals(supply.Name, name, StringComparison.Ordinal));

    private static FaceWork Of(Job job, string name)
    {
        var face = job.Faces.First(face => string.Equals(face.Name, name, StringComparison.Ordinal) || face.Zones.Any(zone => string.Equals(zone.Name, name, StringComparison.Ordinal)));
        return new(name, face.Name, FloorFaces.Is(face) || job.Work!.Floors.Contains(face.Name, StringComparer.Ordinal));
    }
}
