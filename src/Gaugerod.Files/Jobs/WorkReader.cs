using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Files.Json;
using Gaugerod.Plane;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads what is asked of the order of work.</summary>
/// <param name="values">Takes what is wrong.</param>
/// <param name="faces">What faces and zones may be named; null among them for one that could not be read.</param>
/// <param name="runs">The runs that could be read; null among them for one that could not.</param>
internal sealed class WorkReader(Values values, IReadOnlyList<string?> faces, IReadOnlyList<RunRequest?> runs)
{
    public WorkRequest? Read(Entry? entry)
    {
        if (Fields.Open(entry, WorkForms.Work, values) is not { } fields) return null;
        var hours = Hours(fields);
        var (paces, cutting) = PaceReader.Read(fields["pace"], values);
        var holds = PaceReader.Holds(fields["holds"], values);
        var (hands, coats) = (values.Whole(fields["hands"], 1, 4) ?? 1, values.Whole(fields["coats"], 0, 9) ?? 0);
        var flood = TimeReading.Span(fields["flood"], values, 1, 30 * 24 * 60);
        var floorFirst = fields.Word("floor", Words.FloorOrders, false);
        var floors = fields.Items("floors").Select(Face).OfType<string>().ToSequence();
        var own = fields.Items("tasks").Select(item => Fields.Open(item, WorkForms.Task, values)).ToList();
        var made = fields.Items("made").Select(item => Fields.Open(item, WorkForms.Made, values)).ToList();
        var names = new Uniques("the tasks", parts: false, [TaskNames.Start, .. Given()]);
        var (ownNames, madeNames) = (own.ConvertAll(Name), made.ConvertAll(Arriving));
        List<string?> known = [.. Given(), .. ownNames, .. madeNames.Select(name => name is null ? null : TaskNames.In(name)), .. runs.Contains(null) ? [null] : (string?[])[]];
        var tasks = own.Select((task, i) => task is null || ownNames[i] is not { } name ? null : Task(task, name, known)).OfType<OwnTask>().ToSequence();
        var things = made.Select((thing, i) => thing is null || madeNames[i] is not { } name ? null : Made(thing, name, known)).OfType<MadeElsewhere>().ToSequence();
        return hours is null ? null : new(hours)
        {
            Hands = hands, FloorFirst = floorFirst, Floors = floors, Paces = paces, Cutting = cutting, Holds = holds, Coats = coats, Flood = flood, Tasks = tasks, Made = things,
        };

        string? Name(Fields? group) => group is null ? null : names.Take(group["name"], values);

        // That it is in is a task too.
        string? Arriving(Fields? group)
        {
            if (Name(group) is not { } name) return null;
            if (names.Refuses(TaskNames.In(name))) values.Log.AddSaid(group!["name"]!, $"\"{name}\", and a task \"{TaskNames.In(name)}\", which is what its coming is called", "a name of its own", Values.Quoted(name + " 2"));
            names.Reserve(TaskNames.In(name));
            return name;
        }
    }

    private WorkHours? Hours(Fields fields)
    {
        var start = TimeReading.Date(fields["start"], values);
        var (from, to, rest) = (8 * 60, (16 * 60) + 30, 30);
        if (Fields.Open(fields["day"], WorkForms.Day, values) is { } day)
        {
            (from, to) = (TimeReading.Clock(day["from"], values) ?? from, TimeReading.Clock(day["to"], values) ?? to);
            rest = day["break"] is null ? 0 : TimeReading.Span(day["break"], values, 0, 23 * 60) ?? 0;
            if (to <= from && day["to"] is { } late) values.Log.AddSaid(late, "a day that ends before it begins", "a time after \"from\"", "\"16:30\"");
            else if (to - from <= rest && day["break"] is { } pause) values.Log.AddSaid(pause, "a break as long as the day", "a break shorter than the day", "\"30 min\"");
        }

        var days = fields["days"] is null ? Words.WorkDays.Take(5).ToSequence() : fields.Items("days", atLeast: 1).Select(item => values.Word(item, Words.Days)).OfType<DayOfWeek>().Distinct().ToSequence();
        var off = fields.Items("off").Select(Off).OfType<DaysOff>().ToSequence();
        var clocks = fields.Word("clocks", Words.ClockRules, Clocks.None);
        return start is { } first && to - from > rest && days.Count > 0 ? new(first, from, to, rest, days, off, clocks) : null;
    }

    private DaysOff? Off(Entry entry)
    {
        if (entry is Entry.Text) return TimeReading.Date(entry, values) is { } day ? new(day, day) : null;
        if (Fields.Open(entry, WorkForms.DaysOff, values) is not { } fields) return null;
        if (TimeReading.Date(fields["from"], values) is not { } from || TimeReading.Date(fields["to"], values) is not { } to) return null;
        if (to >= from) return new(from, to);
        values.Log.Add(fields["to"]!, "a day not before \"from\"", $"\"{TimeReading.Said(from)}\"");
        return null;
    }

    private OwnTask Task(Fields fields, string name, List<string?> known) => new(
        name, TimeReading.Span(fields["takes"], values, 0, PaceReader.MostMinutes) ?? 0, Named(fields, "after", known), Named(fields, "before", known))
    {
        Hands = values.Whole(fields["hands"], 0, 4) ?? 1,
        Hold = TimeReading.Span(fields["hold"], values, 0, HoldTime.Most) ?? 0,
    };

    private MadeElsewhere Made(Fields fields, string name, List<string?> known) => new(
        name, TimeReading.Span(fields["lead"], values, 0, HoldTime.Most) ?? 0, KnownNames.Known(fields["after"], values, "a task of this job", known),
        fields.Items("faces").Select(Face).OfType<string>().ToSequence(), fields.Items("pieces").Select(values.Name).OfType<string>().ToSequence(), Named(fields, "before", known));

    private Sequence<string> Named(Fields fields, string field, List<string?> known) =>
        fields.Items(field).Select(item => KnownNames.Known(item, values, "a task of this job", known)).OfType<string>().ToSequence();

    private string? Face(Entry entry) => KnownNames.Known(entry, values, "a face of this job", faces);

    /// <summary>What the tasks that the job itself comes to may be called.</summary>
    private IEnumerable<string> Given()
    {
        var tiled = runs.OfType<RunRequest>().ToList();
        return TaskNames.Words.Select(known => known.Word)
            .Concat([TaskNames.FirstUse, .. Enumerable.Range(1, 9).Select(TaskNames.Coat)])
            .Concat(tiled.SelectMany(run => run.Faces).SelectMany(face => new[] { TaskNames.Set(face), TaskNames.Below(face), TaskNames.Returns(face), TaskNames.Level(face), TaskNames.Bed(face) }))
            .Concat(tiled.Select(run => run.Name).SelectMany(run => new[] { TaskNames.Lines(run), TaskNames.Trims(run), TaskNames.Grout(run), TaskNames.Soft(run), TaskNames.Seal(run) })).Distinct(StringComparer.Ordinal);
    }
}
