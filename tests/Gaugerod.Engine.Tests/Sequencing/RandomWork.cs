using CsCheck;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Tests.Sequencing;

/// <summary>A job's tasks drawn at random.</summary>
/// <param name="Request">When and by how many it is worked.</param>
/// <param name="Tasks">Minutes, hands, whether each is done in a day, whether it comes of itself.</param>
/// <param name="Waits">Which waits for which, and how long.</param>
public sealed record RandomWork(WorkRequest Request, IReadOnlyList<(int? Minutes, int Hands, bool IsWhole, bool IsEvent)> Tasks, IReadOnlyList<(int From, int To, int Minutes)> Waits)
{
    private static readonly DateOnly[] s_nearChanges =
        [new(2027, 3, 26), new(2027, 10, 29), new(2028, 3, 10), new(2027, 11, 5), new(2027, 10, 1), new(2028, 3, 31), new(2027, 9, 24), new(2026, 12, 30), new(2028, 2, 27)];

    private static readonly Gen<WorkHours> Hours = Gen.Select(
        Gen.Int[0, 8].Select(i => s_nearChanges[i]), Gen.Int[0, 6], Gen.Int[0, 14 * 60], Gen.Int[60, 600], Gen.Int[0, 90], Gen.Enum<Clocks>(),
        Gen.Enum<DayOfWeek>().HashSet[1, 7], Gen.Select(Gen.Int[0, 20], Gen.Int[0, 4]).List[0, 3]).Select((start, later, from, length, rest, clocks, days, off) =>
    {
        var first = start.AddDays(later);
        return new WorkHours(first, from, from + length, Math.Min(rest, length - 30), days.Order().ToSequence(), off.Select(one => new DaysOff(first.AddDays(one.Item1), first.AddDays(one.Item1 + one.Item2))).ToSequence(), clocks);
    });

    private static readonly Gen<int> Holds = Gen.Frequency((2, Gen.Const(0)), (3, Gen.Int[1, 600]), (3, Gen.Int[601, 3 * 1440]), (1, Gen.Int[4320, 10 * 1440]));

    /// <summary>Random jobs of 1 to 14 tasks, many of them near a change of the clock.</summary>
    public static Gen<RandomWork> Jobs { get; } = Gen.Int[1, 14].SelectMany(count => Gen.Select(
        Hours, Gen.Int[1, 4], Gen.Select(Gen.Int[-1, 700], Gen.Int[0, 4], Gen.Bool, Gen.Int[0, 9]).Array[count],
        Gen.Select(Gen.Int[0, count - 1], Gen.Int[0, count - 1], Holds).List[0, 2 * count])).Select((hours, hands, tasks, waits) => new RandomWork(
            new(hours) { Hands = hands },
            [.. tasks.Select(task => (task.Item4 == 0 || task.Item1 < 0 ? (int?)null : task.Item1, task.Item4 == 0 ? 0 : Math.Min(task.Item2, hands), task.Item3, task.Item4 == 0))],
            [.. waits.Where(wait => wait.Item1 != wait.Item2).Select(wait => (Math.Min(wait.Item1, wait.Item2), Math.Max(wait.Item1, wait.Item2), wait.Item3))]));

    /// <summary>The order of work that the engine makes of it.</summary>
    public WorkPlan Plan()
    {
        var graph = new WorkGraph();
        for (var i = 0; i < Tasks.Count; i++)
        {
            graph.Add(new(Name(i), Tasks[i].IsEvent ? WorkKind.Arrival : WorkKind.Own) { Minutes = Tasks[i].Minutes, Hands = Tasks[i].Hands, IsWhole = Tasks[i].IsWhole });
        }

        foreach (var (from, to, minutes) in Waits) graph.Link(new(from, to, minutes, HoldKind.Own, HoldFrom.Job, null));
        return WorkPlanner.Plan(Request, graph);
    }

    /// <summary>What a task is called.</summary>
    public static string Name(int task) => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"task {task}");
}
