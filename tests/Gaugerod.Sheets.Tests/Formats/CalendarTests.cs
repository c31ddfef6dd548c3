using System.Globalization;
using System.Text.Json;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Formats;
using Gaugerod.Sheets.Sheets;
using Gaugerod.Sheets.Tests.Sheets;

namespace Gaugerod.Sheets.Tests.Formats;

/// <summary>The calendar file, read back by Python's icalendar.</summary>
public sealed class CalendarTests
{
    private const string Reader = """
        import sys, json, icalendar
        calendar = icalendar.Calendar.from_ical(open(sys.argv[1], 'rb').read())
        print(json.dumps([dict(id=str(e['UID']), title=str(e['SUMMARY']), begins=e['DTSTART'].dt.isoformat(), ends=e['DTEND'].dt.isoformat() if 'DTEND' in e else '', words=str(e.get('DESCRIPTION', '')), busy=str(e['TRANSP']))
            for e in calendar.walk('VEVENT')]))
        """;

    [Fact]
    public void Another_library_reads_the_same_appointments_without_a_zone()
    {
        Sequence<Appointment> all =
        [
            new("1@gaugerod", "set wall, day 1 of 2", new(2027, 3, 26, 8, 0, 0), new(2027, 3, 26, 16, 30, 0), "5 h; 3.2 m²\nMix 1, 08:00: courses 1 to 4; a comma, a \"quote\" and a back\\slash", true),
            new("2@gaugerod", "hold before grout Überbau, long enough to be folded over more lines than one in any calendar file there is", new(2027, 3, 26, 16, 30, 0), new(2027, 3, 28, 17, 30, 0), "", false),
            new("3@gaugerod", "first use", new(2027, 3, 28, 2, 30, 0), new(2027, 3, 28, 2, 30, 0), "", false),
        ];
        Assert.Equal(all, Read(CalendarWriter.Write(all, "Attic bath")));
        Assert.Equal(CalendarWriter.Write(all, "Attic bath"), CalendarWriter.Write(all, "Attic bath"));
    }

    [Fact]
    public void The_order_of_work_is_read_back_day_by_day()
    {
        var plan = WorkSamples.Plan;
        var all = WorkCalendar.Of(plan);
        Assert.Equal(all, Read(CalendarWriter.Write(all, plan.Job.Name)));
        Assert.Equal(all.Count, all.Select(one => one.Id).Distinct(StringComparer.Ordinal).Count());
        foreach (var task in plan.Work!.Tasks) Assert.Equal(Math.Max(1, task.Days.Count), all.Count(one => one.Title == task.Name || one.Title.StartsWith(task.Name + ", day ", StringComparison.Ordinal)));
        Assert.Empty(WorkCalendar.Of(Samples.GuestShower));
    }

    private static Sequence<Appointment> Read(byte[] calendar) => Tool.InFolder(folder =>
    {
        var file = Path.Combine(folder, "work.ics");
        File.WriteAllBytes(file, calendar);
        var (exit, output) = Tool.Run("/usr/bin/python3", "-c", Reader, file);
        Assert.True(exit == 0, output);
        using var read = JsonDocument.Parse(output);
        return read.RootElement.EnumerateArray().Select(one => new Appointment(
            Text(one, "id"), Text(one, "title"), At(Text(one, "begins")), Ends(one), Text(one, "words"), Text(one, "busy") == "OPAQUE")).ToSequence();
    });

    // RFC 5545, 3.8.2.2: an end is later than the beginning; what has no end lasts no time.
    private static DateTime Ends(JsonElement one)
    {
        var begins = At(Text(one, "begins"));
        if (Text(one, "ends").Length == 0) return begins;
        Assert.True(At(Text(one, "ends")) > begins);
        return At(Text(one, "ends"));
    }

    private static string Text(JsonElement one, string name) => one.GetProperty(name).GetString()!;

    // Without a zone and without a Z.
    private static DateTime At(string text) => DateTime.ParseExact(text, "yyyy-MM-dd'T'HH:mm:ss", CultureInfo.InvariantCulture);
}
