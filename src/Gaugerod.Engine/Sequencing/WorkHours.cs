using Gaugerod.Plane;

namespace Gaugerod.Engine.Sequencing;

/// <summary>Days on which nobody works, both ends among them.</summary>
/// <param name="From">The first.</param>
/// <param name="To">The last; not before the first.</param>
public readonly record struct DaysOff(DateOnly From, DateOnly To);

/// <summary>When work is done.</summary>
/// <param name="Start">The first day.</param>
/// <param name="From">When a day begins, in minutes from midnight; 0 to 1439.</param>
/// <param name="To">When it ends; after it begins, at most 1440.</param>
/// <param name="Break">How long the break in the middle of it is, in minutes; shorter than the day.</param>
/// <param name="Days">The days of the week that are worked; one or more.</param>
/// <param name="Off">Days off beside the others.</param>
/// <param name="Clocks">By whose rule clocks are changed.</param>
public sealed record WorkHours(DateOnly Start, int From, int To, int Break, Sequence<DayOfWeek> Days, Sequence<DaysOff> Off, Clocks Clocks)
{
    /// <summary>So many days from the start are looked at, ten years; what would come later has no date.</summary>
    public const int MostDays = 3653;

    /// <summary>Whether a day is worked.</summary>
    public bool IsWorked(DateOnly day) => Days.Contains(day.DayOfWeek) && !Off.Any(off => off.From <= day && day <= off.To);

    /// <summary>The days that are worked, in their order, as far as is looked.</summary>
    internal IEnumerable<DateOnly> WorkedDays()
    {
        var last = Math.Min(Start.DayNumber + MostDays, DateOnly.MaxValue.DayNumber);
        for (var day = Start.DayNumber; day < last; day++)
        {
            if (IsWorked(DateOnly.FromDayNumber(day))) yield return DateOnly.FromDayNumber(day);
        }
    }
}
