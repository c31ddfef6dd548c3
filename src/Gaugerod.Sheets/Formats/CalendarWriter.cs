using System.Text;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;
using Ical.Net;
using Ical.Net.CalendarComponents;
using Ical.Net.DataTypes;
using Ical.Net.Serialization;

namespace Gaugerod.Sheets.Formats;

/// <summary>Writes appointments as iCalendar (RFC 5545).</summary>
public static class CalendarWriter
{
    /// <summary>The calendar in UTF-8. Times are without a zone: they are read where the job is. The same appointments give the same bytes.</summary>
    /// <param name="appointments">What to write.</param>
    /// <param name="title">What the calendar is called.</param>
    public static byte[] Write(Sequence<Appointment> appointments, string title)
    {
        ArgumentNullException.ThrowIfNull(appointments);
        var calendar = new Calendar { ProductId = "-//Gaugerod//order of work//EN" };
        calendar.AddProperty("X-WR-CALNAME", title);
        foreach (var one in appointments) calendar.Events.Add(Event(one));
        return Encoding.UTF8.GetBytes(new CalendarSerializer().SerializeToString(calendar) ?? "");
    }

    private static CalendarEvent Event(Appointment one) => new()
    {
        Uid = one.Id,
        Summary = one.Title,
        Description = one.Words,
        DtStart = Floating(one.Begins),

        // What takes no time has no end: RFC 5545, 3.8.2.2, asks for one that is later than the beginning.
        DtEnd = one.Ends > one.Begins ? Floating(one.Ends) : null,

        // The format asks when it was written; the same job is to give the same bytes, so it is the first day at midnight.
        DtStamp = new CalDateTime(one.Begins.Date, "UTC"),
        Transparency = one.IsBusy ? TransparencyType.Opaque : TransparencyType.Transparent,
    };

    private static CalDateTime Floating(DateTime at) => new(at.Year, at.Month, at.Day, at.Hour, at.Minute, at.Second);
}
