using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>The order of work: day by day, what each task waits for and minds, what each mix covers.</summary>
internal static class WorkSheets
{
    private const string Before = "Work takes working hours; holds go on by night and on days off. The products' instructions come before any time on this sheet. It is one order that keeps the holds and the hands; a shorter one may be there.";

    public static void Add(SheetBook book)
    {
        if (book.Plan.Work is not { } work) return;
        var flow = book.Flow("Order of work", "Tasks day by day from the first to the hand-over, what each waits for, and what to mind.");
        flow.Add(Block.Words(Before, flow.Width, ink: Ink.Quiet, after: 2));
        Days(book, flow, work);
        Mixes(book, flow, work);
        Notes(book, flow);
    }

    private static void Days(SheetBook book, Flow flow, WorkPlan work)
    {
        foreach (var day in work.Tasks.GroupBy(task => task.Begins?.Date))
        {
            var rows = day.Select(task => (IReadOnlyList<string>)["□", task.Name, Clock(task), WorkWords.Takes(task, book.Figures.Tape), Waits(task)]);
            var (head, lines) = Table.Of([new("", 6), new("Task", 40, Bold: true), new("When", 26), new("Takes", 40), new("Waits for; what may run beside it", 74)], rows, flow.Width, 8.5);
            var name = day.Key is { } date ? WorkWords.Day(date) : "No day comes";
            flow.Add(Block.Together(Block.Heading(name, flow.Width), head), lines, Block.Together(Block.Heading(name + ", continued", flow.Width), head));
            flow.Add(Block.Gap(3));
        }
    }

    private static string Clock(WorkTask task)
    {
        if (task.Begins is not { } begins || task.Ends is not { } ends) return "";
        if (begins == ends) return WorkWords.Clock(begins);
        return begins.Date == ends.Date ? $"{WorkWords.Clock(begins)} to {WorkWords.Clock(ends)}" : $"{WorkWords.Clock(begins)} to {WorkWords.Day(ends)} {WorkWords.Clock(ends)}";
    }

    private static string Waits(WorkTask task)
    {
        var holds = WorkWords.Holds(task);
        var after = task.Waits.Where(wait => wait.Hold is null).Select(wait => wait.Task).ToList();
        var words = holds.Count > 0 ? string.Join(". ", holds) : after.Count > 0 ? "after " + string.Join(", ", after) : "";
        if (task.Kind == WorkKind.Arrival && (task.Faces.Count > 0 || task.Pieces.Count > 0)) words += $". Kept apart until then: {string.Join(", ", task.Faces.Concat(task.Pieces))}";
        if (task is { Stage: SetStage.Waiting }) words += $". Pieces {string.Join(", ", task.Pieces)}";
        var beside = WorkWords.Beside(task) is { Length: > 0 } names ? $"beside: {names}" : "";
        return words.Length > 0 && beside.Length > 0 ? $"{words}\n{beside}" : words + beside;
    }

    private static void Mixes(SheetBook book, Flow flow, WorkPlan work)
    {
        var mixed = work.Tasks.Where(task => task.Batches.Count > 0).ToList();
        if (mixed.Count == 0) return;

        // No tile is lifted where joints are filled.
        var (sets, grouts) = (mixed.Exists(task => task.Kind == WorkKind.Setting), mixed.Exists(task => task.Kind != WorkKind.Setting));
        Block[] minded = [.. sets ? Minded("that sets tile", WorkNotes.Check(book.Plan.Job)) : [], .. grouts ? Minded("of grout", WorkNotes.GroutMixes) : []];
        flow.Add(Block.Together([Block.Heading("With every mix", flow.Width), .. minded, Block.Gap(2)]));
        foreach (var task in mixed)
        {
            var set = task.Kind == WorkKind.Setting;
            var rows = task.Batches.Select(batch => (IReadOnlyList<string>)[Figures.Number(batch.Number), $"{WorkWords.Day(batch.Begins)} {WorkWords.Clock(batch.Begins)} to {WorkWords.Clock(batch.Ends)}", WorkWords.Covers(batch), WorkWords.Much(batch, book.Figures.Tape), .. set ? (string[])["____ %"] : []]);
            var (head, lines) = Table.Of([new("Mix", 12, Bold: true), new("When", 62), new("Covers", set ? 52 : 72), new("Makes", 40), .. set ? (Column[])[new("Tile lifted", 20)] : []], rows, flow.Width, 9);
            var name = "Mixes: " + task.Name;
            Block[] ahead = task.Ahead is { } tiles ? [Block.Words($"Comb for no more than {Figures.Count(tiles, "tile", "tiles")} ahead: the mortar takes no tile for longer.", flow.Width, after: 1)] : [];
            flow.Add(Block.Together([Block.Heading(name, flow.Width), .. ahead, head]), lines, Block.Together(Block.Heading(name + ", continued", flow.Width), head));
            flow.Add(Block.Gap(4));
        }

        Block[] Minded(string when, string what) => [Block.Words(when, flow.Width, bold: true, after: 0.4), Block.Words(what, flow.Width, after: 1.2)];
    }

    private static void Notes(SheetBook book, Flow flow)
    {
        flow.Add(Block.Heading("What to mind, by task", flow.Width));
        foreach (var (name, words) in WorkNotes.ByKind(book.Plan))
        {
            flow.Add(Block.Together(Block.Words(name, flow.Width, bold: true, after: 0.4), Block.Words(words[0], flow.Width, 9, after: 0.4)));
            for (var i = 1; i < words.Count; i++) flow.Add(Block.Words(words[i], flow.Width, 9, after: 0.4));
            flow.Add(Block.Gap(1.4));
        }

        flow.Add(Block.Words("Local code, the products' instructions and licensed trades come before anything on these sheets.", flow.Width, bold: true));
    }
}
