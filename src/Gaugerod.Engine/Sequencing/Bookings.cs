namespace Gaugerod.Engine.Sequencing;

/// <summary>Who is busy when, in minutes that are worked.</summary>
/// <param name="clock">Those minutes.</param>
/// <param name="hands">How many people work.</param>
internal sealed class Bookings(WorkClock clock, int hands)
{
    private readonly List<(long From, long To, int Hands)> _booked = [];

    /// <summary>Books the earliest stretch in which so many hands are free; null where none comes.</summary>
    /// <param name="earliest">Not before so many minutes are worked.</param>
    /// <param name="minutes">How long; more than none.</param>
    /// <param name="needs">How many hands; none are free at any time.</param>
    /// <param name="whole">Whether it is to lie on one day where it fits one.</param>
    public long? Book(long earliest, int minutes, int needs, bool whole)
    {
        var at = earliest;
        while (true)
        {
            if (clock.End(at + minutes) is null) return null;
            var later = whole ? WithinDay(at, minutes) : at;
            if (later is null) return null;
            later = Math.Max(later.Value, Free(later.Value, minutes, needs));
            if (later == at) break;
            at = later.Value;
        }

        if (needs > 0) _booked.Add((at, at + minutes, needs));
        return at;
    }

    private long? WithinDay(long at, int minutes)
    {
        if (clock.DayOf(at) is not { } day) return null;
        if (at + minutes <= day.After) return at;

        // A day after a change of the clock may be longer or shorter than others: what does not fit the next day is begun at once.
        return clock.DayOf(day.After) is { } next && minutes <= next.After - next.Before ? next.Before : at;
    }

    /// <summary>A moment before which it cannot begin: itself where enough hands are free throughout.</summary>
    private long Free(long from, int minutes, int needs)
    {
        if (needs == 0) return from;
        var over = _booked.Where(one => one.From < from + minutes && one.To > from).ToList();
        foreach (var point in over.Select(one => Math.Max(one.From, from)))
        {
            var there = over.Where(one => one.From <= point && one.To > point).ToList();
            if (there.Sum(one => one.Hands) + needs > hands) return there.Min(one => one.To);
        }

        return from;
    }
}
