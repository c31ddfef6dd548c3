using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What stays with the client when the room is done: care, lots, spares, soft joints, photographs and tests. What nobody noted has a line to write on.</summary>
public static class HandOverSheets
{
    private const string Blank = "________", Dot = "•  ";

    /// <summary>The sheets on the job's paper; none where the job asks for no hand-over.</summary>
    public static Sequence<Drawing> Pages(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (HandingOver.Of(plan) is not { } given) return [];
        var book = new SheetBook(plan) { FootWords = "Keep this sheet with the spares. What is written by hand goes before what is printed." };
        var flow = book.Flow("Hand-over", $"What stays with the client of {plan.Job.Name}: how it is used and cared for, lots, spares, soft joints, photographs and tests.");
        flow.Add(Block.Words(plan.Job.Name, flow.Width, 16, bold: true, after: 1));
        flow.Add(Block.Words($"Handed over on {Blank}{Blank} by {Blank}{Blank} to {Blank}{Blank}", flow.Width, 9.5, after: 3));
        Lines(flow, "Using it first", HandOverWords.FirstUse(plan));
        Lines(flow, "Care", [.. given.Request.Care, HandOverWords.Clean]);
        Lots(flow, given);
        Left(flow, given);
        HandOverJoints.Add(flow, given, book.Figures);
        Tests(flow, plan, given.Request);
        Photographs(flow, given);
        Lines(flow, "Before you drill, cut or renew", [.. HandOverWords.Cautions.Select(caution => "▲ " + caution)], dotted: false);
        flow.Add(Block.Together(Block.Heading("What this sheet does not say", flow.Width), Block.Words(HandOverWords.NotCovered, flow.Width, bold: true)));
        return book.Drawings();
    }

    private static void Lines(Flow flow, string heading, IReadOnlyList<string> lines, bool dotted = true)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var line = Block.Words((dotted ? Dot : "") + lines[i], flow.Width, 9.5, after: 0.8);
            flow.Add(i == 0 ? Block.Together(Block.Heading(heading, flow.Width), line) : line);
        }

        if (lines.Count > 0) flow.Add(Block.Gap(2.5));
    }

    private static void Lots(Flow flow, HandedOver given)
    {
        var rows = given.Lots.SelectMany(lots => lots.Notes.Select(note => Row(lots, note)).DefaultIfEmpty(Row(lots, new(lots.Of, null, null, null, null))));
        Rows(flow, "Lots and colours used", "As they stand on boxes and bags. A repair is bought by them; another lot may be another shade.", [new("Of", 44, Bold: true), new("What", 24), new("Lot", 30), new("Colour", 30), new("Caliber", 24), new("Note", 34)], rows);

        static IReadOnlyList<string> Row(UsedLots lots, LotNote note) => [lots.Of, lots.What, note.Lot ?? Blank, note.Colour ?? Blank, note.Caliber ?? (lots.What is "tile" ? Blank : ""), note.Note ?? ""];
    }

    private static void Left(Flow flow, HandedOver given)
    {
        var rows = given.Left.Select(left => (IReadOnlyList<string>)[left.Of, Figures.Count(left.Spares, left.Unit, left.Unit + "s"), Number(left.Over), Number(left.Breakage), left.Unit is "tile" ? Number(left.Offcuts) : "", Blank]);
        var words = $"By the plan, of the lots above: count what there is. {(given.Request.Kept is { } place ? $"Kept: {place}." : $"Kept: {Blank}{Blank}")}";
        Rows(flow, "Spares left", words, [new("Of", 44, Bold: true), new("Ordered as spares", 30), new("Over in the packs", 28), new("If nothing broke, more", 28), new("Offcuts to keep", 24), new("Counted", 32)], rows);
    }

    private static void Tests(Flow flow, Plan plan, HandOverRequest request)
    {
        var rows = request.Tests.Select(test => (IReadOnlyList<string>)[test.What, Day(test.On), test.By ?? Blank, test.Result ?? Blank, test.Again is null ? "" : Day(test.Again)]).ToList();

        // A test that was planned and that nobody noted is the first thing that is asked for later.
        if (!request.Tests.Any(test => test.What.Contains("flood", StringComparison.OrdinalIgnoreCase)) && plan.Work?.Tasks.FirstOrDefault(task => task.Kind == WorkKind.FloodTest) is { } flood)
        {
            rows.Add([$"{flood.Name}, planned for {(flood.Begins is { } day ? WorkWords.Day(day) : "no day")}", Blank, Blank, Blank, ""]);
        }

        var due = request.Tests.Where(test => test.Again is not null).OrderBy(test => test.Again).ToList();
        var words = due.Count == 0 ? "" : $"Due again: {string.Join("; ", due.Select(test => $"{test.What} on {Day(test.Again)}"))}.";
        Rows(flow, "Tests", words, [new("What", 46, Bold: true), new("Done on", 34), new("By", 30), new("Found", 42), new("Due again", 34)], rows);
        if (rows.Count == 0) flow.Add(Block.Together(Block.Heading("Tests", flow.Width), Block.Words($"No test was noted. {Blank}{Blank}{Blank}", flow.Width, 9.5, after: 2.5)));
    }

    private static void Photographs(Flow flow, HandedOver given)
    {
        Rows(flow, "Photographs", "", [new("Of", 50, Bold: true), new("What it shows", 76), new("Where it is kept", 60)], given.Request.Photographs.Select(one => (IReadOnlyList<string>)[one.Of, one.What, one.Where ?? Blank]));
        if (given.ToPhotograph.Count == 0) return;
        Lines(flow, "Photographs", ["None was noted. Worth one, as long as it can be seen:", .. given.ToPhotograph.Select(place => $"□ {place}; kept: {Blank}")], dotted: false);
    }

    /// <summary>A heading, what is said to it, and a table that says its head again on each sheet; nothing without rows.</summary>
    internal static void Rows(Flow flow, string heading, string words, IReadOnlyList<Column> columns, IEnumerable<IReadOnlyList<string>> rows)
    {
        var (head, body) = Table.Of(columns, rows, flow.Width, 9);
        if (body.Count == 0) return;
        var top = Block.Heading(heading, flow.Width);
        flow.Add(words.Length == 0 ? Block.Together(top, head) : Block.Together(top, Block.Words(words, flow.Width, 9, after: 1.2), head), body, head);
        flow.Add(Block.Gap(3));
    }

    private static string Number(int number) => number == 0 ? "none" : Figures.Number(number);

    private static string Day(DateOnly? day) => day is { } known ? WorkWords.Day(known.ToDateTime(default)) : Blank;
}
