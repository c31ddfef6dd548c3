using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Planning;

/// <summary>Where the lower side of a course still to be set keeps a must; in steps. Any course may be the one.</summary>
/// <param name="Low">No lower.</param>
/// <param name="High">No higher.</param>
/// <param name="Joint">The height that the middle of the joint over that course must have; null where the course alone keeps the must.</param>
internal readonly record struct AgainTarget(long Low, long High, long? Joint);

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
        if (plan.Request.Limits.Smallest is { } smallest && plan.Best.Score.SmallestCut >= smallest) targets.AddRange(Edges(null).SelectMany(edge => AtLeast(edge, smallest.Steps)));
        targets.Sort((one, other) => (one.Low, one.High).CompareTo((other.Low, other.High)));
        return [.. targets.Distinct()];
    }

    private IEnumerable<AgainTarget> Of(Want want) => want switch
    {
        Want.JointAtHeight at when face.Face.IsCalled(at.Face) && at.Height.Steps > _top =>
            [new(at.Height.Steps - set.Depth - (_joint.Most.Steps / 2), at.Height.Steps - set.Depth - (_joint.Least.Steps / 2), at.Height.Steps)],
        Want.AtLeast least when face.Face.IsCalled(least.Edge.Face) => Edges(least.Edge.Edge).SelectMany(edge => AtLeast(edge, Asked(least))),
        Want.JointOnEdge on when face.Face.IsCalled(on.Edge.Face) => Edges(on.Edge.Edge).SelectMany(edge => AtLeast(edge, set.Depth - mark)),
        Want.FullCourse full when face.Face.IsCalled(full.Edge.Face) => Edges(full.Edge.Edge).SelectMany(Whole),
        _ => [],
    };

    private long Asked(Want.AtLeast least) => least.PartOfTile is var (over, under) ? ((set.Depth * over) + under - 1) / under : least.Size!.Value.Steps;

    /// <summary>The edges of the face, or those with a name, that lie level above what is set.</summary>
    private IEnumerable<(long Low, long High, bool TileAbove)> Edges(string? name) =>
        from edge in face.Face.Edges
        where (name is null || string.Equals(edge.Name, name, StringComparison.Ordinal)) && EdgeClasses.Of(edge) == EdgeClass.Level
        let low = Math.Min(edge.From.Y.Steps, edge.To.Y.Steps)
        where low > _top + _joint.Most.Steps
        select (low, Math.Max(edge.From.Y.Steps, edge.To.Y.Steps), edge.To.X > edge.From.X);

    // Where the edge falls into a joint, there is no cut at all.
    private IEnumerable<AgainTarget> AtLeast((long Low, long High, bool TileAbove) edge, long size) => edge.TileAbove
        ? Within(edge.High + size - set.Depth, edge.Low + _joint.Least.Steps)
        : Within(edge.High - set.Depth - _joint.Least.Steps, edge.Low - size);

    private IEnumerable<AgainTarget> Whole((long Low, long High, bool TileAbove) edge) => edge.TileAbove
        ? Within(edge.Low - mark, edge.Low + _joint.Least.Steps)
        : Within(edge.High - set.Depth - _joint.Least.Steps, edge.High - set.Depth + mark);

    private static IEnumerable<AgainTarget> Within(long low, long high) => low <= high ? [new(low, high, null)] : [];
}
