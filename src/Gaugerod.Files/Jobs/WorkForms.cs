namespace Gaugerod.Files.Jobs;

/// <summary>The groups that ask for an order of work, and their fields.</summary>
internal static class WorkForms
{
    public const string ASpan = "how long, such as \"24 h\"";

    private const string ADate = "a date such as \"2027-03-08\"", ATime = "a time of the day such as \"08:00\"", Tasks = "a list of tasks such as [\"setting\"]";

    public static readonly Form Work = new(
        "work",
        new("start", ADate, true), new("day", "a group such as { \"from\": \"08:00\", \"to\": \"16:30\", \"break\": \"30 min\" }"), new("days", "a list such as [\"mon\", \"tue\"]"), new("off", "a list of dates [ ]"),
        new("clocks", "\"EU\""), new("hands", "a whole number such as 1"), new("floor", "\"after walls\" or \"before walls\""), new("floors", "a list of faces' names"),
        new("pace", "a group such as { \"setting\": \"1.2 m2\" }"), new("holds", "a group such as { \"grout\": \"24 h\" }"), new("coats", "a whole number such as 2"), new("flood", ASpan),
        new("tasks", "a list such as [{ \"name\": \"template\", \"takes\": \"2 h\" }]"), new("made", "a list such as [{ \"name\": \"slab\", \"lead\": \"10 days\" }]"));

    public static readonly Form Day = new("workDay", new("from", ATime, true), new("to", ATime, true), new("break", "how long, such as \"30 min\""));

    public static readonly Form DaysOff = new("daysOff", new("from", ADate, true), new("to", ADate, true));

    public static readonly Form Pace = new("pace", [.. Words.PaceFields.Select(field => new Field(field.Field, "how much an hour, such as \"1.2 m2\" or \"2 h\"")), new("cutting", "cuts an hour, such as \"12 cuts\"")]);

    public static readonly Form Holds = new("holds", [.. Words.HoldFields.Select(field => new Field(field.Field, ASpan))]);

    public static readonly Form Task = new(
        "workTask", new("name", "a name such as \"template\"", true), new("takes", "how long, such as \"2 h\"", true), new("after", Tasks), new("before", Tasks), new("hands", "a whole number such as 1"), new("hold", ASpan));

    public static readonly Form Made = new(
        "made", new("name", "a name such as \"bench slab\"", true), new("lead", "how long it takes to come, such as \"10 days\"", true), new("after", "a task's name"), new("faces", "a list of faces' names"), new("pieces", "a list of pieces such as [\"A4\"]"), new("before", Tasks));

    public static readonly IReadOnlyList<Form> All = [Work, Day, DaysOff, Pace, Holds, Task, Made];
}
