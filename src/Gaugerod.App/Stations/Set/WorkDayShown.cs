using System.Globalization;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Sequencing;

namespace Gaugerod.App.Stations.Set;

/// <summary>What is done of a task on one day.</summary>
/// <param name="Task">The task.</param>
/// <param name="Clock">From when to when.</param>
/// <param name="Part">Which of its days it is; empty where it has but one.</param>
/// <param name="Takes">How long it takes in all; on its first day only.</param>
/// <param name="Holds">What held it up; on its first day only.</param>
/// <param name="Beside">What may run at the same time; on its first day only.</param>
/// <param name="Mixes">What is mixed on this day.</param>
internal sealed record WorkEntry(WorkTask Task, string Clock, string Part, string Takes, IReadOnlyList<string> Holds, string Beside, IReadOnlyList<Batch> Mixes);

/// <summary>A day of the order of work. Tasks for which no day comes stand under a day of their own, the last.</summary>
/// <param name="Id">What its heading is called on the page.</param>
/// <param name="Name">The day.</param>
/// <param name="Tasks">What is done on it, in order.</param>
internal sealed record WorkDayShown(string Id, string Name, IReadOnlyList<WorkEntry> Tasks)
{
    /// <summary>The days on which something is done.</summary>
    public static IReadOnlyList<WorkDayShown> Of(Plan plan)
    {
        if (plan.Work is not { } work) return [];
        var entries = work.Tasks.SelectMany(task => Entries(plan, task)).GroupBy(entry => entry.Day).OrderBy(day => day.Key ?? DateTime.MaxValue);
        return [.. entries.Select((day, i) => new WorkDayShown(
            string.Create(CultureInfo.InvariantCulture, $"work-day-{i}"), day.Key is { } date ? WorkWords.Day(date) : "No day comes", [.. day.OrderBy(entry => entry.Begins).Select(entry => entry.Entry)]))];
    }

    private static IEnumerable<(DateTime? Day, DateTime Begins, WorkEntry Entry)> Entries(Plan plan, WorkTask task)
    {
        var (takes, holds, beside) = (WorkWords.Takes(task, plan.Job.Tape), WorkWords.Holds(task), WorkWords.Beside(task));
        if (task.Days.Count == 0)
        {
            var at = task.Begins ?? DateTime.MaxValue;
            yield return (task.Begins?.Date, at, new(task, task.Begins is null ? "" : Said(at, task.Ends ?? at), "", takes, holds, beside, [.. task.Batches]));
            yield break;
        }

        for (var i = 0; i < task.Days.Count; i++)
        {
            var stretch = task.Days[i];
            var part = task.Days.Count == 1 ? "" : string.Create(CultureInfo.InvariantCulture, $", day {i + 1} of {task.Days.Count}");
            IReadOnlyList<string> held = i == 0 ? holds : [];
            yield return (stretch.Begins.Date, stretch.Begins, new(task, Said(stretch.Begins, stretch.Ends), part, i == 0 ? takes : "", held, i == 0 ? beside : "", [.. task.Batches.Where(batch => batch.Begins.Date == stretch.Begins.Date)]));
        }
    }

    private static string Said(DateTime begins, DateTime ends) =>
        begins == ends ? WorkWords.Clock(begins)
        : begins.Date == ends.Date ? $"{WorkWords.Clock(begins)} to {WorkWords.Clock(ends)}"
        : $"{WorkWords.Clock(begins)} to {WorkWords.Day(ends)} {WorkWords.Clock(ends)}";
}
