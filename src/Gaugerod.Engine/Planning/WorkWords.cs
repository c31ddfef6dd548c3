using System.Globalization;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Says tasks, holds and mixes, on sheets, on the command line and in calendars alike.</summary>
public static class WorkWords
{
    /// <summary>When a task is done: <c>Mon 8 Mar 08:00 to 11:30</c>; what takes no time by its beginning alone.</summary>
    public static string When(WorkTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        if (task.Begins is not { } begins || task.Ends is not { } ends) return "no day comes";
        if (begins == ends) return $"{Day(begins)} {Clock(begins)}";
        return begins.Date == ends.Date ? $"{Day(begins)} {Clock(begins)} to {Clock(ends)}" : $"{Day(begins)} {Clock(begins)} to {Day(ends)} {Clock(ends)}";
    }

    /// <summary>A day: <c>Mon 8 Mar 2027</c>.</summary>
    public static string Day(DateTime day) => day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A time of the day.</summary>
    public static string Clock(DateTime at) => at.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>How long a task takes, and of how much; what has no pace says so.</summary>
    public static string Takes(WorkTask task, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(task);
        ArgumentNullException.ThrowIfNull(tape);
        if (task.IsEvent) return "";
        var amounts = string.Join(", ", task.Amounts.Select(amount => Amount(amount, tape)));
        var time = task.Minutes is { } minutes ? SpanText.Say(minutes) : "no pace given";
        return amounts.Length == 0 ? time : $"{time}; {amounts}";
    }

    /// <summary>What holds a task up: the holds, those that nobody gave with what is printed; then what it only comes after is not said.</summary>
    public static Sequence<string> Holds(WorkTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        return task.Waits.Where(wait => wait.Hold is not null).GroupBy(wait => (wait.Hold, wait.Minutes, wait.From, wait.Product)).Select(group =>
        {
            var wait = group.First();
            var after = string.Join(", ", group.Select(one => one.Task));
            var until = group.Max(one => one.Until) is { } end ? $", until {Day(end)} {Clock(end)}" : "";
            return $"{HoldWords.Of(wait.Hold!.Value)}: {SpanText.Say(wait.Minutes)} after {after}{until}{By(wait)}";
        }).ToSequence();
    }

    /// <summary>What may run at the same time, had one the hands, the first few of it by name: <c>lines of tray; set left, below the line; set right; and 2 more</c>; empty for nothing.</summary>
    public static string Beside(WorkTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        const int most = 3;
        var more = task.Beside.Count - most;

        // A task's own name may hold a comma.
        return string.Join("; ", task.Beside.Take(most)) + (more > 0 ? Text($"; and {more} more") : "");
    }

    /// <summary>What a mix covers: <c>courses 5 to 8</c>, <c>course 9, tiles 1 to 3 of 7</c>.</summary>
    public static string Covers(Batch batch)
    {
        ArgumentNullException.ThrowIfNull(batch);
        var (parts, face) = (new List<string>(), (string?)null);
        for (var i = 0; i < batch.Courses.Count;)
        {
            var (first, last) = (i, i);
            while (last + 1 < batch.Courses.Count && GoesOn(batch.Courses[last], batch.Courses[last + 1])) last++;
            var words = last > first ? Text($"courses {batch.Courses[first].Course} to {batch.Courses[last].Course}") : One(batch.Courses[first]);

            // Of a task over several faces each is named where it begins.
            parts.Add(batch.Courses[first].Face is { } named && !string.Equals(named, face, StringComparison.Ordinal) ? $"{named}, {words}" : words);
            (face, i) = (batch.Courses[first].Face, last + 1);
        }

        return string.Join("; ", parts);
    }

    /// <summary>How much a mix is.</summary>
    public static string Much(Batch batch, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(tape);
        return $"{Amounts.Volume(batch.Litres * 1e6, tape)}, {batch.Packs.ToString("0.00", CultureInfo.InvariantCulture)} of a pack";
    }

    private static bool GoesOn(BatchCourse course, BatchCourse next) => course.IsWhole && next.IsWhole && next.Course == course.Course + 1 && string.Equals(course.Face, next.Face, StringComparison.Ordinal);

    private static string One(BatchCourse course)
    {
        if (course.IsWhole) return Text($"course {course.Course}");
        return course.First == course.Last ? Text($"course {course.Course}, tile {course.First} of {course.Of}") : Text($"course {course.Course}, tiles {course.First} to {course.Last} of {course.Of}");
    }

    private static string By(WorkWait wait) => wait.From switch
    {
        HoldFrom.Product => $" ({wait.Product})",
        HoldFrom.Published => $" (nobody gave it: the longest that is printed, {wait.Published!.Source})",
        HoldFrom.Nobody => " (nobody gave it: no time is kept, read the product)",
        _ => "",
    };

    private static string Amount(WorkAmount amount, Tape tape) => amount.Unit switch
    {
        PaceUnit.SquareMetres => Amounts.Area(amount.Amount * 1e6, tape),
        PaceUnit.Metres => Amounts.Distance(amount.Amount * 1e3, tape),
        PaceUnit.Pieces => Text($"{amount.Amount} {(amount.Amount == 1 ? "piece" : "pieces")}"),
        PaceUnit.Cuts => Text($"{amount.Amount} cut"),
        _ => Text($"{amount.Amount} {(amount.Amount == 1 ? "line or rod" : "lines and rods")}"),
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
