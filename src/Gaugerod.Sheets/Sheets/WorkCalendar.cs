using System.Globalization;
using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>The order of work as appointments: each day of a task, and each hold that something waits for.</summary>
public static class WorkCalendar
{
    /// <summary>The appointments; none where no order of work was asked for.</summary>
    public static Sequence<Appointment> Of(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Work is { } work ? work.Tasks.Where(task => task.Begins is not null).SelectMany(task => Days(plan, task).Concat(Holds(plan, work, task))).ToSequence() : [];
    }

    private static IEnumerable<Appointment> Days(Plan plan, WorkTask task)
    {
        var words = string.Join("\n", (string[])[WorkWords.Takes(task, plan.Job.Tape), .. task.Batches.Select(batch => Mix(plan, batch)), .. WorkNotes.Of(plan, task)]).Trim();
        if (task.Days.Count == 0)
        {
            yield return new(Id(plan, task, 1), task.Name, task.Begins!.Value, task.Ends!.Value, words, IsBusy: false);
            yield break;
        }

        for (var i = 0; i < task.Days.Count; i++)
        {
            var title = task.Days.Count == 1 ? task.Name : string.Create(CultureInfo.InvariantCulture, $"{task.Name}, day {i + 1} of {task.Days.Count}");
            yield return new(Id(plan, task, i + 1), title, task.Days[i].Begins, task.Days[i].Ends, words, task.Hands > 0);
        }
    }

    private static string Mix(Plan plan, Batch batch) => string.Create(CultureInfo.InvariantCulture, $"Mix {batch.Number}, {WorkWords.Clock(batch.Begins)}: {WorkWords.Covers(batch)}; {WorkWords.Much(batch, plan.Job.Tape)}.");

    private static IEnumerable<Appointment> Holds(Plan plan, WorkPlan work, WorkTask task)
    {
        // The hold that ends last is the one that counts.
        if (task.Waits.Where(wait => wait is { Minutes: > 0, Until: not null }).OrderByDescending(wait => wait.Until).FirstOrDefault() is not { } wait) yield break;
        if (work.Tasks.First(other => string.Equals(other.Name, wait.Task, StringComparison.Ordinal)).Ends is not { } from) yield break;
        yield return new(Id(plan, task, 0), $"hold before {task.Name}", from, wait.Until!.Value, string.Join("\n", WorkWords.Holds(task)), IsBusy: false);
    }

    // Made of what names it, so that a calendar that is read in anew replaces it.
    private static string Id(Plan plan, WorkTask task, int part)
    {
        var text = $"{plan.Job.Name}\n{task.Name}";
        var hash = text.Aggregate(14695981039346656037UL, (sum, letter) => unchecked((sum ^ letter) * 1099511628211UL));
        return string.Create(CultureInfo.InvariantCulture, $"{hash:x16}-{part}@gaugerod");
    }
}
