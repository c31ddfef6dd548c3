using System.Text;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Formats;

/// <summary>Writes a table as comma-separated values (RFC 4180), in UTF-8 with its mark, without which spreadsheets take accents for something else.</summary>
public static class CsvWriter
{
    // What a spreadsheet takes for the beginning of a formula, the wide forms of some alphabets among them.
    private const string Formula = "=+-@\t\r\n＝＋－＠";

    /// <summary>The table's bytes; the same table gives the same bytes.</summary>
    public static byte[] Write(DataTable table)
    {
        ArgumentNullException.ThrowIfNull(table);
        var text = new StringBuilder("\uFEFF");
        Row(text, table.Head);
        foreach (var row in table.Rows) Row(text, row.Select(cell => cell.IsNumber ? cell.Text : Harmless(cell.Text)));
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    private static void Row(StringBuilder text, IEnumerable<string> cells) => text.AppendJoin(',', cells.Select(Quoted)).Append("\r\n");

    /// <summary>Words that a spreadsheet would reckon are shown as words: an apostrophe before them says so.</summary>
    private static string Harmless(string words) => words.TrimStart(' ') is { Length: > 0 } seen && Formula.Contains(seen[0], StringComparison.Ordinal) ? "'" + words : words;

    private static string Quoted(string cell) => cell.AsSpan().IndexOfAny("\",\r\n") < 0 && cell.AsSpan().Trim().Length == cell.Length ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
