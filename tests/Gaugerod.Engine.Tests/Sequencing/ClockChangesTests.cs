using Gaugerod.Engine.Sequencing;
using NodaTime;

namespace Gaugerod.Engine.Tests.Sequencing;

/// <summary>Changes of the clock against the time zone data that NodaTime carries, over fifty years.</summary>
public sealed class ClockChangesTests
{
    [Theory]
    [InlineData(Clocks.None, "Etc/UTC", 0)]
    [InlineData(Clocks.Eu, "Europe/Berlin", 60)]
    [InlineData(Clocks.Uk, "Europe/London", 0)]
    [InlineData(Clocks.Us, "America/New_York", -300)]
    [InlineData(Clocks.Us, "America/Los_Angeles", -480)]
    [InlineData(Clocks.Au, "Australia/Sydney", 600)]
    [InlineData(Clocks.Au, "Australia/Adelaide", 570)]
    [InlineData(Clocks.Nz, "Pacific/Auckland", 720)]
    public void A_clock_shows_what_the_zone_data_say_for_fifty_years(Clocks clocks, string zone, int standard)
    {
        var data = DateTimeZoneProviders.Tzdb[zone];
        var (first, last) = (Instant.FromUtc(2010, 1, 1, 0, 0), Instant.FromUtc(2060, 1, 1, 0, 0));
        for (var at = first; at < last; at += Duration.FromMinutes(30))
        {
            var shown = at.InZone(data).LocalDateTime;
            var runs = Minutes(at.InUtc().LocalDateTime) + standard;
            Assert.Equal(Minutes(shown), ClockChanges.Shown(clocks, runs));
        }

        static long Minutes(LocalDateTime at) => (new DateOnly(at.Year, at.Month, at.Day).DayNumber * ClockChanges.Day) + (at.Hour * 60) + at.Minute;
    }

    [Theory]
    [InlineData(Clocks.Eu)]
    [InlineData(Clocks.Uk)]
    [InlineData(Clocks.Us)]
    [InlineData(Clocks.Au)]
    [InlineData(Clocks.Nz)]
    public void What_a_clock_shows_is_read_back_but_for_the_hour_it_shows_twice(Clocks clocks)
    {
        var (first, twice) = (new DateOnly(2027, 1, 1).DayNumber * ClockChanges.Day, 0);
        var before = long.MinValue;
        for (var shown = first; shown < first + (365 * ClockChanges.Day); shown++)
        {
            var read = ClockChanges.Standard(clocks, shown);
            Assert.True(read >= before, "Later on the clock is never earlier.");
            before = read;
        }

        for (var runs = first; runs < first + (365 * ClockChanges.Day); runs++)
        {
            if (ClockChanges.Standard(clocks, ClockChanges.Shown(clocks, runs)) != runs) twice++;
        }

        Assert.Equal(60, twice);
    }
}
