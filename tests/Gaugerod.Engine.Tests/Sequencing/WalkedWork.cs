using Gaugerod.Engine.Sequencing;
using NodaTime;
using NodaTime.TimeZones;

namespace Gaugerod.Engine.Tests.Sequencing;

/// <summary>Walks through a job's time a minute at a time with NodaTime's zones, and says of each whether it is worked: a referee that knows nothing of how the engine counts.</summary>
internal sealed class WalkedWork
{
    private readonly WorkHours _hours;
    private readonly DateTimeZone _zone;
    private readonly Dictionary<DateOnly, long[]> _days = [];
    private ZoneInterval? _interval;

    public WalkedWork(WorkHours hours) => (_hours, _zone) = (hours, DateTimeZoneProviders.Tzdb[hours.Clocks switch
    {
        Clocks.Eu => "Europe/Berlin",
        Clocks.Uk => "Europe/London",
        Clocks.Us => "America/New_York",
        Clocks.Au => "Australia/Sydney",
        Clocks.Nz => "Pacific/Auckland",
        _ => "Etc/UTC",
    }]);

    /// <summary>The moments at which a clock shows a time, in minutes of universal time: none, one or two.</summary>
    public IReadOnlyList<long> At(DateTime shown)
    {
        var map = _zone.MapLocal(LocalDateTime.FromDateTime(shown));
        return map.Count switch
        {
            0 => [],
            1 => [Minutes(map.Single().ToInstant())],
            _ => [Minutes(map.First().ToInstant()), Minutes(map.Last().ToInstant())],
        };
    }

    /// <summary>Whether the minute that begins at a moment is worked: a day's hours run from one moment to another, each the first at which the clock shows it.</summary>
    public bool IsWorked(long minute) => IsWorked(minute, Of(Day(minute)));

    /// <summary>How many minutes are worked from one on until its day ends, and how many on the next day that is worked.</summary>
    public (int Left, int Next) Around(long minute)
    {
        var (day, left) = (Day(minute), 0);
        for (var at = minute; at < Of(day)[^1]; at++) left += IsWorked(at, Of(day)) ? 1 : 0;
        for (var next = day.AddDays(1); ; next = next.AddDays(1))
        {
            if (Of(next) is [var begins, var rests, var goesOn, var ends] && (rests - begins) + (ends - goesOn) is > 0 and var worked) return (left, (int)worked);
        }
    }

    private static bool IsWorked(long minute, long[] hours) =>
        hours is [var begins, var rests, var goesOn, var ends] && minute >= begins && minute < ends && (minute < rests || minute >= goesOn);

    private DateOnly Day(long minute)
    {
        var at = Instant.FromUnixTimeSeconds(minute * 60);
        if (_interval is null || !_interval.Contains(at)) _interval = _zone.GetZoneInterval(at);
        return new DateOnly(1970, 1, 1).AddDays((int)((minute + (_interval.WallOffset.Seconds / 60)) / 1440));
    }

    private long[] Of(DateOnly day)
    {
        if (!_days.TryGetValue(day, out var hours)) _days[day] = hours = Hours(day);
        return hours;
    }

    private long[] Hours(DateOnly day)
    {
        if (day < _hours.Start || !_hours.Days.Contains(day.DayOfWeek) || _hours.Off.Any(off => day >= off.From && day <= off.To)) return [];
        var rest = _hours.From + ((_hours.To - _hours.From - _hours.Break) / 2);
        return [.. new[] { _hours.From, rest, rest + _hours.Break, _hours.To }.Select(minute => Moment(day, minute))];
    }

    private long Moment(DateOnly day, int minute)
    {
        var shown = new LocalDateTime(day.Year, day.Month, day.Day, 0, 0).PlusMinutes(minute);
        return Minutes(_zone.ResolveLocal(shown, Resolvers.CreateMappingResolver(Resolvers.ReturnEarlier, Resolvers.ReturnStartOfIntervalAfter)).ToInstant());
    }

    private static long Minutes(Instant at) => at.ToUnixTimeSeconds() / 60;
}
