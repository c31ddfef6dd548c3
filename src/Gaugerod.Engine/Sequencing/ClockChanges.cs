namespace Gaugerod.Engine.Sequencing;

/// <summary>
/// When clocks show an hour more, by the published rules as they stand: a hold goes on whatever the clock shows. Times are minutes from the
/// first day of the first year, once as a clock shows them and once as it would show them were it never changed.
/// </summary>
internal static class ClockChanges
{
    public const long Day = 24 * 60;

    private const long Hour = 60;

    /// <summary>What the clock shows.</summary>
    /// <param name="clocks">Whose rule.</param>
    /// <param name="standard">The time as it runs.</param>
    public static long Shown(Clocks clocks, long standard) => standard + (IsSummer(clocks, standard) ? Hour : 0);

    /// <summary>The time as it runs. Of an hour that the clock shows twice the first is meant; one that it leaves out is the moment of the change.</summary>
    /// <param name="clocks">Whose rule.</param>
    /// <param name="shown">What the clock shows.</param>
    public static long Standard(Clocks clocks, long shown)
    {
        if (IsSummer(clocks, shown - Hour)) return shown - Hour;
        return IsSummer(clocks, shown) ? Of(clocks, YearOf(shown)).Begins : shown;
    }

    private static bool IsSummer(Clocks clocks, long standard)
    {
        if (clocks == Clocks.None) return false;
        var (begins, ends) = Of(clocks, YearOf(standard));
        return begins < ends ? standard >= begins && standard < ends : standard >= begins || standard < ends;
    }

    private static int YearOf(long minutes) => DateOnly.FromDayNumber((int)Math.Clamp(minutes / Day, 0, DateOnly.MaxValue.DayNumber)).Year;

    // Both as times that run: the end of summer is written in the law an hour later, as clocks still show it.
    private static (long Begins, long Ends) Of(Clocks clocks, int year) => clocks switch
    {
        // Directive 2000/84/EC, articles 2 and 3: 01:00 universal time, which is 02:00 in the middle of the Union.
        Clocks.Eu => (Last(year, 3) + (2 * Hour), Last(year, 10) + (2 * Hour)),

        // Summer Time Act 1972 as amended by the Summer Time Order 2002: 01:00 universal time.
        Clocks.Uk => (Last(year, 3) + Hour, Last(year, 10) + Hour),

        // 15 U.S.C. 260a as amended by the Energy Policy Act of 2005, section 110: 02:00 as the clock shows.
        Clocks.Us => (Sunday(year, 3, 2) + (2 * Hour), Sunday(year, 11, 1) + Hour),

        // New South Wales, Standard Time Act 1987, and alike where clocks are changed; from memory.
        Clocks.Au => (Sunday(year, 10, 1) + (2 * Hour), Sunday(year, 4, 1) + (2 * Hour)),

        // New Zealand Daylight Time Order 2007; from memory.
        _ => (Last(year, 9) + (2 * Hour), Sunday(year, 4, 1) + (2 * Hour)),
    };

    private static long Sunday(int year, int month, int number)
    {
        var first = new DateOnly(year, month, 1);
        return (first.DayNumber + ((7 - (int)first.DayOfWeek) % 7) + (7 * (number - 1))) * Day;
    }

    private static long Last(int year, int month)
    {
        var last = new DateOnly(year, month, DateTime.DaysInMonth(year, month));
        return (last.DayNumber - (int)last.DayOfWeek) * Day;
    }
}
