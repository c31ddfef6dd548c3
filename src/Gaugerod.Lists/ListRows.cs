using System.Globalization;
using nietras.SeparatedValues;

namespace Gaugerod.Lists;

/// <summary>Parts the text of a list into rows.</summary>
internal static class ListRows
{
    /// <summary>
    /// The rows. A quote that does not begin its field is no quote but a mark for inches, and one that is never closed quotes nothing: where either
    /// stands, line by line is read, so that no line is swallowed by another.
    /// </summary>
    /// <param name="text">The list's text.</param>
    /// <param name="separator">What parts fields.</param>
    public static List<ListRow> Of(string text, char separator)
    {
        var rows = new List<ListRow>();
        string[]? lines = null;
        var first = 1;
        using var reader = Reader(separator, quotes: true).FromText(text);
        foreach (var row in reader)
        {
            var last = first + Breaks(row.Span);
            if (IsQuotedWell(row.Span, separator))
            {
                rows.Add(new(first, last, Cells(row, unquote: true)));
            }
            else
            {
                lines ??= Lines(text);
                for (var line = first; line <= Math.Min(last, lines.Length); line++) rows.Add(Alone(lines[line - 1], line, separator));
            }

            first = last + 1;
        }

        return rows;
    }

    /// <summary>The fields of one line.</summary>
    public static string[] Fields(string line, char separator) => Alone(line, 1, separator).Cells;

    /// <summary>The lines of a text, however they end.</summary>
    public static string[] Lines(string text) => text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');

    /// <summary>How many lines end inside a row.</summary>
    private static int Breaks(ReadOnlySpan<char> row)
    {
        var breaks = 0;
        for (var i = 0; i < row.Length; i++)
        {
            if (row[i] == '\n' || (row[i] == '\r' && (i + 1 == row.Length || row[i + 1] != '\n'))) breaks++;
        }

        return breaks;
    }

    private static ListRow Alone(string line, int number, char separator)
    {
        var quoted = IsQuotedWell(line, separator);
        using var reader = Reader(separator, quoted).FromText(line);
        foreach (var row in reader) return new(number, number, Cells(row, quoted));
        return new(number, number, [""]);
    }

    private static SepReaderOptions Reader(char separator, bool quotes) => new Sep(separator).Reader(options => options with
    {
        HasHeader = false, DisableColCountCheck = true, DisableQuotesParsing = !quotes, CultureInfo = CultureInfo.InvariantCulture,
    });

    private static string[] Cells(SepReader.Row row, bool unquote)
    {
        var cells = new string[row.ColCount];
        for (var i = 0; i < cells.Length; i++)
        {
            var cell = row[i].Span;
            cells[i] = (unquote && cell is ['"', .. var inner, '"'] ? inner.ToString().Replace("\"\"", "\"", StringComparison.Ordinal) : cell.ToString()).Trim();
        }

        return cells;
    }

    /// <summary>Whether every quote opens a field, closes it, or stands twice inside one (RFC 4180, 2.5 to 2.7).</summary>
    private static bool IsQuotedWell(ReadOnlySpan<char> row, char separator)
    {
        if (!row.Contains('"')) return true;
        var (quoted, begins) = (false, true);
        for (var i = 0; i < row.Length; i++)
        {
            var (letter, next) = (row[i], i + 1 < row.Length ? row[i + 1] : separator);
            if (letter != '"')
            {
                begins = !quoted && letter == separator;
            }
            else if (!quoted)
            {
                if (!begins) return false;
                (quoted, begins) = (true, false);
            }
            else if (next == '"')
            {
                i++;
            }
            else
            {
                if (next != separator && next is not ('\r' or '\n')) return false;
                quoted = false;
            }
        }

        return !quoted;
    }
}
