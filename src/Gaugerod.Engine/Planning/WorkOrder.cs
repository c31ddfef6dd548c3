using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>A job's tasks and which waits for which.</summary>
/// <param name="Graph">The tasks; no loop among them.</param>
/// <param name="Loops">What the user asked for and cannot be.</param>
/// <param name="Absent">Names of tasks that the job does not come to.</param>
internal sealed record WorkOrder(WorkGraph Graph, IReadOnlyList<WorkLoop> Loops, IReadOnlyList<(string Path, string Name)> Absent)
{
    /// <summary>The tasks of a job that asks for an order of work.</summary>
    public static WorkOrder Of(Job job, JobBases bases, BoardPlan boards, Sequence<RunWork> runs)
    {
        var making = new WorkMaking(job, bases, boards, runs);
        var (own, arrivals) = (WorkAsked.Own(making), WorkAsked.Arrivals(making));
        WorkFinish.Add(making, new WorkSetting(making, WorkUnder.Add(making)).Add());
        var asked = new WorkAsked(making, own, arrivals);
        asked.Link();
        return new(making.Graph, asked.Loops, asked.Absent);
    }

    /// <summary>The order of work of a job whose runs are planned, and what there is to say of it.</summary>
    public static (WorkPlan Plan, Sequence<Finding> Findings) Plan(Job job, JobBases bases, BoardPlan boards, Sequence<RunWork> runs)
    {
        var order = Of(job, bases, boards, runs);
        var plan = WorkPlanner.Plan(job.Work!, order.Graph);
        var pieces = runs.SelectMany(run => run.Faces).SelectMany(face => face.Up.Concat(face.Below)).Select(piece => piece.Id).ToHashSet(StringComparer.Ordinal);
        var strange = job.Work!.Made.SelectMany(made => made.Pieces.Where(piece => !pieces.Contains(piece)).Select(piece => (made.Name, Piece: piece)));
        return (plan,
        [
            .. order.Loops.Select(loop => Said(FindingLevel.Stop, $"{loop.Path}: {WorkFaults.Words(loop)}. This wait is left out.")),
            .. order.Absent.Select(absent => Said(FindingLevel.Warn, $"{absent.Path}: there is no task \"{absent.Name}\" in this plan. Nothing waits for it.")),
            .. strange.Select(one => Said(FindingLevel.Warn, $"{one.Name}: there is no piece {one.Piece} in this plan. Nothing waits for it.")),
            .. WorkRules.Findings(plan, job.Region, job.Tape),
        ]);
    }

    private static Finding Said(FindingLevel level, string text) => new(level, "work-order", "the order of work", text, "", "", "docs/order-of-work.md");
}
