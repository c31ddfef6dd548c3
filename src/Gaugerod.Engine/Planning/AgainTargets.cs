using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Planning;

/// <summary>Where the lower side of a course keeps a must; in steps. Any course may be the one.</summary>
/// <param name="Low">No lower; over <paramref name="High"/> where no course keeps it by itself.</param>
/// <param name="High">No higher.</param>
/// <param name="Joint">The height that the middle of the joint over that course must have; null where the course alone keeps the must.</param>
/// <param name="Edge">The edge that it is about, its lowest and its highest place: where all of it falls into a joint nothing is cut at it. Null for none.</param>
internal readonly record struct AgainTarget(long Low, long High, long? Joint, (long Low, long High)? Edge);

/// <summary>Says which heights of courses keep the musts that the plan held: joints at heights, and cuts at edges that lie level.</summary>
/// <param name="plan">The run as planned.</param>
/// <param name="face">The face as planned.</param>
/// <param name="set">What is set.</param>
/// <param name="mark">The tape's mark: to it a must is held.</param>
internal sealed class AgainTargets(RunPlan plan, FacePlan face, SetCourses set, long mark)
{
    private readonly JointRange _joint = plan.Request.Joint;
    private readonly long _top = Math.Max(set.Left, set.Right);

    /// <summary>The targets, the lowest first.</summary>
    public List<AgainTarget> All()
    {
        var targets = plan.Best.Wants.Where(outcome => outcome is { Held: true, Want.Must: true }).SelectMany(outcome => Of(outcome.Want)).ToList();
        if (plan.Request.Limits.Smallest is { } smallest && plan.Best.Score.SmallestCut >= smallest) targets.AddRange(Edges(null).Select(edge => AtLeast(edge, smallest.Steps)));
        targets.Sort((one, other) => (one.Low, one.High).CompareTo((other.Low, other.High)));
        return [.. targets.Distinct()];
    }

    private IEnumerable<AgainTarget> Of(Want want) => want switch
    {
        Want.JointAtHeight at when face.Face.IsCalled(at.Face) && at.Height.Steps > _top =>
            [new(at.Height.Steps - set.Depth - (_joint.Most.Steps / 2), at.Height.Steps - set.Depth - (_joint.Least.Steps / 2), at.Height.Steps, null)],
        Want.AtLeast least when face.Face.IsCalled(least.Edge.Face) => Edges(least.Edge.Edge).Select(edge => AtLeast(edge, Asked(least))),
        Want.JointOnEdge on when face.Face.IsCalled(on.Edge.Face) => Edges(on.Edge.Edge).Select(edge => AtLeast(edge, set.Depth - mark)),
        Want.FullCourse full when face.Face.IsCalled(full.Edge.Face) => Edges(full.Edge.Edge).Select(Whole),
        _ => [],
    };

    private long Asked(Want.AtLeast least) => least.PartOfTile is var (over, under) ? ((set.Depth * over) + under - 1) / under : least.Size!.Value.Steps;

    /// <summary>The edges of the face, or those with a name, that lie level above what is set.</summary>
    private IEnumerable<(long Low, long High, bool TileAbove)> Edges(string? name) =>
        from edge in face.Face.Edges
        where (name is null || string.Equals(edge.Name, name, StringComparison.Ordinal)) && EdgeClasses.Of(edge) == EdgeClass.Level
        let low = Math.Min(edge.From.Y.Steps, edge.To.Y.Steps)
        where low > _top
        select (low, Math.Max(edge.From.Y.Steps, edge.To.Y.Steps), edge.To.X > edge.From.X);

    private AgainTarget AtLeast((long Low, long High, bool TileAbove) edge, long size) => edge.TileAbove
        ? new(edge.High + size - set.Depth, edge.Low, null, (edge.Low, edge.High))
        : new(edge.High - set.Depth, edge.Low - size, null, (edge.Low, edge.High));

    private AgainTarget Whole((long Low, long High, bool TileAbove) edge) => edge.TileAbove
        ? new(edge.Low - mark, edge.Low, null, (edge.Low, edge.High))
        : new(edge.High - set.Depth, edge.High - set.Depth + mark, null, (edge.Low, edge.High));
}
