using Gaugerod.Plane;

namespace Gaugerod.Lists;

/// <summary>Which column of a list holds what.</summary>
/// <param name="Line">The line it stands in, counted from 1.</param>
/// <param name="Separator">What parts fields.</param>
/// <param name="Columns">How many columns there are.</param>
/// <param name="At">Where each known word stands.</param>
internal sealed record ListHead(int Line, char Separator, int Columns, IReadOnlyDictionary<string, int> At)
{
    /// <summary>The words of a head, the needed ones first.</summary>
    public static readonly Sequence<string> Words = ["item", "unit", "price", "currency", "note", "source", "date"];

    private const int Needed = 3;

    private static readonly char[] s_separators = [';', ',', '\t'];

    /// <summary>The head of a list, found by its words, which tell what parts fields too; or what stands in its place and what is wrong with it.</summary>
    public static (ListHead? Head, int Line, string Found, string Expected) Of(string[] lines)
    {
        var at = Array.FindIndex(lines, line => !string.IsNullOrWhiteSpace(line) && !line.StartsWith("sep=", StringComparison.OrdinalIgnoreCase));
        if (at < 0) return (null, 1, "a file without a line", "a head with item, unit and price");
        foreach (var separator in s_separators)
        {
            var cells = ListRows.Fields(lines[at], separator).Select(cell => cell.ToLowerInvariant()).ToArray();
            if (!Words.Take(Needed).All(word => cells.Contains(word, StringComparer.Ordinal))) continue;
            var twice = Words.FirstOrDefault(word => cells.Count(cell => string.Equals(cell, word, StringComparison.Ordinal)) > 1);
            if (twice is not null) return (null, at + 1, $"two columns \"{twice}\"", "every column once");
            return (new(at + 1, separator, cells.Length, Words.Where(cells.Contains).ToDictionary(word => word, word => Array.IndexOf(cells, word), StringComparer.Ordinal)), at + 1, "", "");
        }

        return (null, at + 1, Shown.Of(lines[at]), "a head that names the columns: item, unit and price, and if you like currency, note, source, date, parted by ; or , or a tab");
    }

    /// <summary>What stands in a column of a row; empty where there is no such column.</summary>
    public string Cell(ListRow row, string word) => At.TryGetValue(word, out var at) && at < row.Cells.Length ? row.Cells[at] : "";
}
