using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>A job's tasks while they are gathered.</summary>
/// <param name="job">The job; it asks for an order of work.</param>
/// <param name="bases">What goes under its tile.</param>
/// <param name="boards">Its boards; none before they are planned.</param>
/// <param name="runs">Its runs as they are worked on.</param>
internal sealed class WorkMaking(Job job, JobBases bases, BoardPlan boards, Sequence<RunWork> runs)
{
    public WorkRequest Asked { get; } = job.Work!;

    public Sequence<RunWork> Runs => runs;

    public JobBases Bases => bases;

    public WorkGraph Graph { get; } = new();

    public BoardPlan Boards => boards;

    /// <summary>What goes on its faces before their tile.</summary>
    public IEnumerable<UnderTile> Under => job.Faces.Select(face => face.Under).OfType<UnderTile>();

    /// <summary>The filler of a face; null where none is named.</summary>
    public string? FillerOf(string face) => job.Faces.FirstOrDefault(one => string.Equals(one.Name, face, StringComparison.Ordinal))?.Under?.Filler;

    /// <summary>What is coated, in square metres: the faces that name a primer, or what membranes cover of theirs; null where none does.</summary>
    /// <param name="of">What one face has of it, in mm²; null for nothing.</param>
    public double? Coated(Func<DrawnFace, UnderTile, double?> of)
    {
        var areas = job.Faces.Select((face, i) => face.Under is { } under && FaceDrawing.Draw(new(i, face), new(job.Tape)) is { } drawn ? of(drawn, under) : null).OfType<double>().ToList();
        return areas.Count == 0 ? null : areas.Sum() / 1e6;
    }

    /// <summary>Whether any face is boarded.</summary>
    public bool IsBoarded => job.Faces.Any(face => face.Board is not null);

    /// <summary>The supply with a name; null for none.</summary>
    public Supply? Of(string? name) => name is null ? null : job.Supplies.FirstOrDefault(supply => string.Equals(supply.Name, name, StringComparison.Ordinal));

    /// <summary>Whether the user says how quickly it goes.</summary>
    public bool IsAsked(WorkKind kind) => Asked.PaceOf(kind) is not null;

    /// <summary>A task, by the user's pace where he gives one.</summary>
    public int Add(WorkTask task, params Sequence<WorkAmount> amounts)
    {
        var units = PaceUnits.Of(task.Kind);
        var known = amounts.Where(amount => amount.Amount > 0 && (units.Contains(amount.Unit) || amount.Unit == PaceUnit.Cuts)).ToSequence();
        return Graph.Add(task with { Amounts = known, Minutes = task.Minutes ?? Minutes(task.Kind, known), IsWhole = task.Kind is not (WorkKind.Setting or WorkKind.Own or WorkKind.TearOut or WorkKind.Boards) });
    }

    /// <summary>A task that comes after another, when what hardens has held long enough.</summary>
    /// <param name="first">The place of the one that comes first.</param>
    /// <param name="next">The place of the other.</param>
    /// <param name="hold">What has to be waited for; null where it only comes after.</param>
    /// <param name="product">What hardens; null where that is not known.</param>
    /// <param name="printed">Whether what is printed of such holds is printed of this product.</param>
    public void After(int first, int next, HoldKind? hold = null, Supply? product = null, bool printed = true)
    {
        var (minutes, from, name) = hold is { } kind ? Hold(kind, product, printed) : (0, HoldFrom.None, null);
        Graph.Link(new(first, next, minutes, hold, from, name));
    }

    /// <summary>How long a hold is, and who says so: the product first, then the job, then what is printed.</summary>
    private (int Minutes, HoldFrom From, string? Product) Hold(HoldKind kind, Supply? product, bool printed)
    {
        if (kind == HoldKind.Flood) return (Asked.Flood ?? 0, HoldFrom.Job, null);
        if (Minutes(product?.Holds ?? [], kind) is { } own) return (own, HoldFrom.Product, product!.Name);
        if (Minutes(Asked.Holds, kind) is { } said) return (said, HoldFrom.Job, null);
        return printed && PublishedHolds.Of(kind) is { } known ? (known.Most, HoldFrom.Published, null) : (0, HoldFrom.Nobody, null);
    }

    private static int? Minutes(Sequence<HoldTime> holds, HoldKind kind) => holds.Where(hold => hold.Kind == kind).Select(hold => (int?)hold.Minutes).FirstOrDefault();

    private int? Minutes(WorkKind kind, Sequence<WorkAmount> amounts)
    {
        if (Asked.PaceOf(kind) is not { } pace) return null;
        if (pace.Unit == PaceUnit.Minutes) return pace.Minutes(0);
        return pace.Minutes(amounts.Where(amount => amount.Unit == pace.Unit).Sum(amount => amount.Amount));
    }
}
