using Gaugerod.Engine;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>The results of the checks, the gravest first, and the usual cautions.</summary>
internal static class FindingSheets
{
    /// <summary>The trade's usual cautions: common practice, no source. They defer to local code, the product's instructions and licensed trades.</summary>
    private static readonly string[] Cautions =
    [
        "Dust: cutting and grinding tile and mortar raises silica dust. Cut wet or with extraction and wear the breathing protection the product's instructions and local rules ask for.",
        "Old finishes: what is under old tile, board or paint may hold asbestos or lead. Have it tested before it is broken, where local rules ask for that.",
        "Electricity: keep wet saws on a protected outlet and keep water off it. Have outlets, switches and heating in a tiled wall seen to by a licensed electrician.",
        "Cement: wet mortar and grout burn skin and eyes. Wear gloves and glasses.",
        "Lifting: boxes of tile are heavy. Carry few at a time, or two of you.",
        "Water: tile and grout do not keep water out. What is behind them in a wet place goes by local code and the maker's instructions.",
        "Blades and edges: cut tile is sharp. Ease cut edges before they are set.",
    ];

    public static void Add(SheetBook book)
    {
        var flow = book.Flow("Findings and cautions", "The results of the checks with limit, value and source, the gravest first; then the usual cautions.");
        var findings = book.Plan.Findings.OrderByDescending(f => f.Level).Select(Row).ToArray();
        if (findings.Length == 0)
        {
            flow.Add(Block.Together(Block.Heading("Findings", flow.Width), Block.Words("No check found anything to say. A check knows only what was entered.", flow.Width, after: 5)));
        }
        else
        {
            var (head, rows) = Table.Of([new("", 16, Bold: true), new("Where", 26), new("What", 62), new("Limit", 28), new("Value", 24), new("Source", 36)], findings, flow.Width);
            flow.Add(Block.Together(Block.Heading("Findings", flow.Width), Block.Words("They say what the published limit is and whether the entered numbers meet it, nothing more.", flow.Width, ink: Ink.Quiet, after: 1.5), head), rows, head);
            flow.Add(Block.Gap(5));
        }

        var cautions = Cautions.Select(c => Block.Words(c, flow.Width, after: 1.8)).ToList();
        flow.Add(Block.Heading("Cautions", flow.Width), cautions);
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
