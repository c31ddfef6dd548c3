namespace Gaugerod.Engine.Sequencing;

/// <summary>
/// Counts the minutes that are worked, from the first of the job on: what takes two hours takes 120 of them, whatever nights, breaks, days off and
/// changes of the clock lie between. Moments are minutes as time runs (<see cref="ClockChanges"/>).
/// </summary>
internal sealed class WorkClock : IDisposable
{
    private readonly WorkHours _hours;
    private readonly IEnumerator<DateOnly> _days;
    private readonly List<Window> _windows = [];

    public WorkClock(WorkHours hours) => (_hours, _days) = (hours, hours.WorkedDays().GetEnumerator());

    /// <summary>A stretch of a day that is worked through.</summary>
    private readonly record struct Window(int Day, long Begins, long Ends, long Before)
    {
        public long After => Before + Ends - Begins;
    }

    /// <summary>Midnight before the first day.</summary>
    public long Start => ClockChanges.Standard(_hours.Clocks, _hours.Start.DayNumber * ClockChanges.Day);

    /// <summary>How many minutes were worked before the first that is worked at a moment or after it; null where none comes.</summary>
    public long? WorkedAt(long moment) => First(window => window.Ends > moment) is { } at ? _windows[at].Before + Math.Max(0, moment - _windows[at].Begins) : null;

    /// <summary>When the minute begins before which so many were worked; null where none comes.</summary>
    public long? Begin(long worked) => First(window => window.After > worked) is { } at ? _windows[at].Begins + worked - _windows[at].Before : null;

    /// <summary>When so many minutes, more than none, have been worked; null where that never comes.</summary>
    public long? End(long worked) => Begin(worked - 1) + 1;

    /// <summary>A moment at or after one given at which something may be done that takes no time: within hours, or as they end.</summary>
    public long? Moment(long from) => First(window => window.Ends >= from) is { } at ? Math.Max(from, _windows[at].Begins) : null;

    /// <summary>What is worked on the day to which a minute belongs: before it and with it.</summary>
    public (long Before, long After)? DayOf(long worked)
    {
        if (First(window => window.After > worked) is not { } at) return null;
        var (first, last) = (at, at);
        while (first > 0 && _windows[first - 1].Day == _windows[at].Day) first--;
        while ((last + 1 < _windows.Count || More()) && _windows[last + 1].Day == _windows[at].Day) last++;
        return (_windows[first].Before, _windows[last].After);
    }

    /// <summary>When so many minutes are worked, day by day: from the first to the last moment of each, breaks among them.</summary>
    public IEnumerable<(long Begins, long Ends)> Days(long from, long to)
    {
        while (from < to)
        {
            var day = DayOf(from)!.Value;
            var until = Math.Min(to, day.After);
            yield return (Begin(from)!.Value, End(until)!.Value);
            from = until;
        }
    }

    public void Dispose() => _days.Dispose();

    private int? First(Func<Window, bool> holds)
    {
        while (_windows.Count == 0 || !holds(_windows[^1]))
        {
            if (!More()) return null;
        }

        // What holds of one holds of all after it.
        var (low, high) = (0, _windows.Count - 1);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (holds(_windows[middle])) high = middle;
            else low = middle + 1;
        }

        return low;
    }

    private bool More()
    {
        // A change of the clock may swallow a short stretch.
        var known = _windows.Count;
        while (_windows.Count == known)
        {
            if (!_days.MoveNext()) return false;
            var (day, noon) = (_days.Current.DayNumber, _hours.From + ((_hours.To - _hours.From - _hours.Break) / 2));
            Add(day, _hours.From, noon);
            Add(day, noon + _hours.Break, _hours.To);
        }

        return true;
    }

    private void Add(int day, int from, int to)
    {
        var (begins, ends) = (At(from), At(to));
        if (ends > begins) _windows.Add(new(day, begins, ends, _windows.Count == 0 ? 0 : _windows[^1].After));

        long At(int minute) => ClockChanges.Standard(_hours.Clocks, (day * ClockChanges.Day) + minute);
    }
}
