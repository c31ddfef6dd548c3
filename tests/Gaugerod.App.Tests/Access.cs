using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Gaugerod.App.Tests;

/// <summary>Whether a page is fit for all. Source: WCAG 2.2, levels A and AA, by the rules of axe-core.</summary>
internal static class Access
{
    private static readonly AxeRunOptions s_options = new()
    {
        RunOnly = new() { Type = "tag", Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"] },
        ResultTypes = [ResultType.Violations, ResultType.Incomplete],
    };

    /// <summary>What breaks a rule, up to three of each. Letters in the colour of their ground axe-core leaves to a person to judge; here they are a fault.</summary>
    public static async Task<IReadOnlyList<string>> FaultsAsync(IPage page)
    {
        var seen = await page.RunAxe(s_options);
        var unseen = seen.Incomplete.SelectMany(rule => rule.Nodes.Select(node => (rule, node)))
            .Where(of => of.node.Any.Any(check => check.Message.Contains("1:1 contrast", StringComparison.Ordinal)));
        return [.. seen.Violations.SelectMany(rule => rule.Nodes.Take(3).Select(node => (rule, node))).Concat(unseen).Select(of => $"{of.rule.Id} at {of.node.Html}")];
    }
}
