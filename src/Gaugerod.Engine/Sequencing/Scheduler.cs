namespace Gaugerod.Engine.Sequencing;

/// <summary>Where a task came to lie.</summary>
/// <param name="Begins">When it begins, in minutes as time runs.</param>
/// <param name="Ends">When it ends.</param>
/// <param name="Worked">How many minutes are worked before it begins; null where it takes none.</param>
internal readonly record struct PlacedTask(long Begins, long Ends, long? Worked);

/// <summary>
/// Gives tasks their times: one after another in the trade's order, each as early as what it waits for and the hands let it. That is how one
/// plans on site. It is not claimed that no shorter way is there.
/// </summary>
internal static class Scheduler
{
    /// <summary>The times, by the tasks' places; null for what comes later than is looked, and what waits for it.</summary>
    /// <param name="graph">The tasks; no loop among them.</param>
    /// <param name="clock">The minutes that are worked.</param>
    /// <param name="hands">How many people work.</param>
    public static PlacedTask?[] Place(WorkGraph graph, WorkClock clock, int hands)
    {
        var (placed, done, booked) = (new PlacedTask?[graph.Tasks.Count], new bool[graph.Tasks.Count], new Bookings(clock, hands));
        var waits = graph.Links.ToLookup(link => link.To);
        for (var count = 0; count < graph.Tasks.Count; count++)
        {
            var next = Enumerable.Range(0, graph.Tasks.Count).First(task => !done[task] && waits[task].All(link => done[link.From]));
            done[next] = true;
            if (Release(waits[next], placed, clock.Start) is { } release) placed[next] = Place(graph.Tasks[next], release, clock, booked);
        }

        return placed;
    }

    /// <summary>A moment as the clock then shows it.</summary>
    public static DateTime Shown(Clocks clocks, long moment) => new(ClockChanges.Shown(clocks, moment) * TimeSpan.TicksPerMinute, DateTimeKind.Unspecified);

    private static long? Release(IEnumerable<WorkLink> waits, PlacedTask?[] placed, long start)
    {
        foreach (var link in waits)
        {
            if (placed[link.From] is not { } before) return null;
            start = Math.Max(start, before.Ends + link.Minutes);
        }

        return start;
    }

    private static PlacedTask? Place(WorkTask task, long release, WorkClock clock, Bookings booked)
    {
        if (task.IsEvent) return release <= DateOnly.MaxValue.DayNumber * ClockChanges.Day ? new(release, release, null) : null;
        if (task.Minutes is not ({ } minutes and > 0)) return clock.Moment(release) is { } moment ? new(moment, moment, null) : null;
        if (clock.WorkedAt(release) is not { } earliest || booked.Book(earliest, minutes, task.Hands, task.IsWhole) is not { } begin) return null;
        return new(clock.Begin(begin)!.Value, clock.End(begin + minutes)!.Value, begin);
    }
}
