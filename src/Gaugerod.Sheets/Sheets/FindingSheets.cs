using Gaugerod.Engine;
using Gaugerod.Engine.Rules;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>The results of the checks, the gravest first; the usual cautions are among them.</summary>
internal static class FindingSheets
{
    public static void Add(SheetBook book)
    {
        var flow = book.Flow("Findings and cautions", "The results of the checks with limit, value and source, the gravest first.");
        var findings = FindingsAlike.Together(book.Plan.Findings).Select(Row).ToArray();
        if (findings.Length == 0)
        {
            flow.Add(Block.Together(Block.Heading("Findings", flow.Width), Block.Words("No check found anything to say. A check knows only what was entered.", flow.Width, after: 5)));
        }
        else
        {
            var (head, rows) = Table.Of([new("", 17, Bold: true), new("Where", 23), new("What", 68), new("Limit", 29), new("Value", 20), new("Source", 43)], findings, flow.Width);
            flow.Add(Block.Together(Block.Heading("Findings", flow.Width), Block.Words("They say what the published limit is and whether the entered numbers meet it, nothing more.", flow.Width, ink: Ink.Quiet, after: 1.5), head), rows, head);
            flow.Add(Block.Gap(5));
        }

        if (book.LongNote is { } note) flow.Add(Block.Together(Block.Heading("Note on this job", flow.Width), Block.Words(note, flow.Width, after: 5)));
        flow.Add(Block.Words("Local code, the products' instructions and licensed trades come before anything on these sheets.", flow.Width, bold: true));
    }

    private static IReadOnlyList<string> Row(Finding f) => [Level(f.Level), f.Where, f.Text, f.Limit, f.Value, f.Source];

    private static string Level(FindingLevel level) => level switch
    {
        FindingLevel.Stop => "■ STOP",
        FindingLevel.Warn => "▲ warn",
        _ => "○ note",
    };
}
