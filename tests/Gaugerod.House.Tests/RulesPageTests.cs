using System.Globalization;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Testing;

namespace Gaugerod.House.Tests;

/// <summary>docs/rules.md lists what is reckoned with, row by row. GOLDEN_ACCEPT=1 writes the rows anew.</summary>
public sealed class RulesPageTests
{
    private static readonly string s_page = Path.Combine(Repo.Root, "docs/rules.md");

    [Fact]
    public void The_page_lists_every_limit_as_it_is_reckoned_with() => Lists("limits",
    [
        "| region | what is compared | limit | source | known | what to do | key |", "|---|---|---|---|---|---|---|",
        .. LimitTable.All.Select(limit => $"| {RegionWords.Short(limit.Region)} | {limit.What} | {limit.Words} | {limit.Standard} | {(limit.Known == Known.Printed ? "printed" : "from memory")} | {limit.Do} | `{limit.Key}` |"),
    ]);

    [Fact]
    public void The_page_lists_the_mask_that_every_tool_asks_for() => Lists("masks",
    [
        "| tool | dust held down by | where | to 4 h a day | longer | known |", "|---|---|---|---|---|---|",
        .. SilicaTask.All.Select(task => $"| {task.Tool} | {task.Control} | {task.Air switch { Air.Inside => "indoors", Air.Outside => "outside", _ => "anywhere" }} | {Factor(task.Short)} | {Factor(task.Long)} | {(task.Known == Known.Printed ? "printed" : "from memory")} |"),
    ]);

    private static void Lists(string name, string[] rows)
    {
        var (open, close) = ($"<!-- {name} -->\n", $"<!-- end of {name} -->");
        var page = File.ReadAllText(s_page);
        var (from, to) = (page.IndexOf(open, StringComparison.Ordinal) + open.Length, page.IndexOf(close, StringComparison.Ordinal));
        var table = string.Join('\n', rows) + "\n";
        if (Environment.GetEnvironmentVariable("GOLDEN_ACCEPT") == "1")
        {
            page = page[..from] + table + page[to..];
            File.WriteAllText(s_page, page);
            to = from + table.Length;
        }

        Assert.Equal(table, page[from..to]);
    }

    private static string Factor(int factor) => factor == 0 ? "none" : string.Create(CultureInfo.InvariantCulture, $"APF {factor}");
}
