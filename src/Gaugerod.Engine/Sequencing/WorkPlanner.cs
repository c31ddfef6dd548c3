using Gaugerod.Plane;

namespace Gaugerod.Engine.Sequencing;

/// <summary>The order of work of tasks that are known, with days and mixes.</summary>
internal static class WorkPlanner
{
    /// <summary>Their times, and the tasks in the order in which they begin.</summary>
    /// <param name="request">What was asked.</param>
    /// <param name="graph">The tasks; no loop among them.</param>
    public static WorkPlan Plan(WorkRequest request, WorkGraph graph)
    {
        using var clock = new WorkClock(request.Hours);
        var (placed, behind) = (Scheduler.Place(graph, clock, request.Hands), graph.Behind());
        var waits = graph.Links.ToLookup(link => link.To);
        var order = Enumerable.Range(0, graph.Tasks.Count).OrderBy(task => placed[task]?.Begins ?? long.MaxValue).ThenBy(task => placed[task]?.Ends ?? long.MaxValue).ToList();
        return new(request, InTurn(order, graph).Select(Task).ToSequence());

        WorkTask Task(int at)
        {
            var task = graph.Tasks[at] with
            {
                Waits = waits[at].OrderByDescending(link => link.Minutes).ThenBy(link => link.From).Select(Wait).ToSequence(),
                Beside = order.Where(other => other != at && !graph.Tasks[other].IsEvent && !graph.Tasks[at].IsEvent && !behind[at][other] && !behind[other][at]).Select(other => graph.Tasks[other].Name).ToSequence(),
                Ahead = graph.Mixings.TryGetValue(at, out var mixing) ? mixing.Ahead : null,
            };
            return placed[at] is { } place ? Dated(task, place, mixing) : task;
        }

        WorkTask Dated(WorkTask task, PlacedTask place, Mixing? mixing) => task with
        {
            Begins = Shown(place.Begins),
            Ends = Shown(place.Ends),
            Days = place.Worked is { } from ? clock.Days(from, from + task.Minutes!.Value).Select(day => new WorkStretch(Shown(day.Begins), Shown(day.Ends))).ToSequence() : [],
            Batches = place.Worked is { } begin && mixing is not null ? Batching.Of(mixing, clock, begin, request.Hours.Clocks) : [],
        };

        WorkWait Wait(WorkLink link) => new(graph.Tasks[link.From].Name, link.Minutes, link.Hold, link.Source, link.Product, placed[link.From] is { } before && before.Ends + link.Minutes < DateOnly.MaxValue.DayNumber * ClockChanges.Day ? Shown(before.Ends + link.Minutes) : null);

        DateTime Shown(long moment) => Scheduler.Shown(request.Hours.Clocks, moment);
    }

    // Two that begin together, as tasks that take no time do, are said in the order in which they wait for each other.
    private static IEnumerable<int> InTurn(List<int> order, WorkGraph graph)
    {
        var (waits, said) = (graph.Links.ToLookup(link => link.To, link => link.From), new HashSet<int>());
        while (said.Count < order.Count)
        {
            var next = order.First(task => !said.Contains(task) && waits[task].All(said.Contains));
            said.Add(next);
            yield return next;
        }
    }
}
