using Gaugerod.Engine.Sequencing;
using NodaTime;
using NodaTime.TimeZones;

namespace Gaugerod.Engine.Tests.Sequencing;

/// <summary>Walks through a job's time a minute at a time with NodaTime's zones, and says of each whether it is worked: a referee that knows nothing of how the engine counts.</summary>
internal sealed class WalkedWork
{
    private readonly WorkHours _hours;
    private readonly DateTimeZone _zone;
    private readonly Dictionary<DateOnly, bool> _days = [];
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

    /// <summary>Whether the minute that begins at a moment is worked.</summary>
    public bool IsWorked(long minute)
    {
        var at = Instant.FromUnixTimeSeconds(minute * 60);
        if (_interval is null || !_interval.Contains(at)) _interval = _zone.GetZoneInterval(at);
        var local = minute + (_interval.WallOffset.Seconds / 60);
        var (day, of) = (new DateOnly(1970, 1, 1).AddDays((int)(local / 1440)), (int)(local % 1440));
        if (of < _hours.From || of >= _hours.To) return false;
        var rest = _hours.From + ((_hours.To - _hours.From - _hours.Break) / 2);
        if (of >= rest && of < rest + _hours.Break) return false;
        if (!_days.TryGetValue(day, out var worked)) _days[day] = worked = _hours.Days.Contains(day.DayOfWeek) && !_hours.Off.Any(off => day >= off.From && day <= off.To);
        return worked && day >= _hours.Start;
    }

    private static long Minutes(Instant at) => at.ToUnixTimeSeconds() / 60;
}
