using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>What goes under the tile of a job.</summary>
/// <param name="Beds">The beds that fall.</param>
/// <param name="Flat">How flat those faces are that were read.</param>
/// <param name="Faults">What cannot lie or be read so.</param>
internal sealed record JobBases(Sequence<Bed> Beds, Sequence<FlatFace> Flat, Sequence<Fault> Faults)
{
    /// <summary>What is worth a word of walls that stand on beds.</summary>
    public Sequence<Finding> OnBeds { get; init; } = [];

    public static JobBases Of(Job job)
    {
        var (beds, flat, faults) = (new List<Bed>(), new List<FlatFace>(), new List<Fault>());
        for (var i = 0; i < job.Faces.Count; i++)
        {
            // What is wrong with the face's own shape its run says.
            if (BaseView.Of(job, i) is not { } view) continue;
            if (view.Bed is { } bed) beds.Add(bed);
            if (view.Flat is { } read) flat.Add(read);
            faults.AddRange(view.Faults);
        }

        return new(beds.ToSequence(), flat.ToSequence(), faults.ToSequence());
    }

    public IEnumerable<Finding> Findings(Job job) =>
        Beds.SelectMany(bed => BedRules.Findings(bed, job.Tape, job.Region).Concat(Follows(job, bed)))
            .Concat(Flat.SelectMany(face => FlatnessRules.Findings(face, job.Tape))).Concat(OnBeds).Concat(Showers(job));

    public static IEnumerable<RunRequest> RunsOn(Job job, Face face) => job.Runs.Where(run => run.Faces.Any(name =>
        string.Equals(name, face.Name, StringComparison.Ordinal) || face.Zones.Any(zone => string.Equals(zone.Name, name, StringComparison.Ordinal))));

    /// <summary>What is asked of showers where the job names its region.</summary>
    private IEnumerable<Finding> Showers(Job job) => job.Region is not { } region ? [] :
        Beds.SelectMany(bed => Showers(job, bed, region));

    /// <summary>What is asked of the membrane on walls, where the job names its region; no search hangs on it.</summary>
    public static IEnumerable<Finding> Membranes(Job job) => job.Region is not { } region ? [] :
        job.Faces.Where(face => !FloorFaces.Is(face)).SelectMany(face => ShowerRules.Wall(face, region, job.Tape));

    private static IEnumerable<Finding> Showers(Job job, Bed bed, Region region)
    {
        var at = job.Faces.ToList().FindIndex(face => string.Equals(face.Name, bed.Face, StringComparison.Ordinal));
        return FaceDrawing.Draw(new(at, job.Faces[at]), new(job.Tape)) is { } floor ? ShowerRules.Findings(bed, floor.Outline.Ring, region, job.Tape) : [];
    }

    /// <summary>Whether tile follows a bed that no folds are cut on.</summary>
    private static IEnumerable<Finding> Follows(Job job, Bed bed)
    {
        var face = job.Faces.First(face => string.Equals(face.Name, bed.Face, StringComparison.Ordinal));
        if (bed.Request.Perimeter == Perimeter.Level && face.Falls!.HasFolds) yield break;
        var drains = face.Falls!.Drain is { } only ? [only] : bed.Request.Drains.Select(drain => drain.Hole).OfType<string>().ToList();
        var rims = face.Holes.Where(hole => drains.Contains(hole.Name, StringComparer.Ordinal)).Select(hole => Plane.Shapes.Grid.HalfDown(hole.Diameter)).ToList();
        // Beside a channel that runs from wall to wall the bed is flat.
        if (rims.Count == 0) yield break;
        foreach (var run in RunsOn(job, face))
        {
            if (FollowRules.Of(bed, run.Name, JobRuns.ProductOf(job, run), run.Bond, run.Joint.Wanted, rims.Min(), face.Falls.HasFolds, job.Tape, job.Region) is { } finding) yield return finding;
        }
    }
}
