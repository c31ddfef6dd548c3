using System.Globalization;
using Gaugerod.Engine.Prices;
using Gaugerod.Files;
using Gaugerod.Plane;

namespace Gaugerod.Lists;

/// <summary>Reads the setter's price list: rows of text, parted by semicolons, commas or tabs, under a head of our own words.</summary>
public static class PriceListReader
{
    /// <summary>A list has no more lines: what a supplier lists in all is cut down to what one buys.</summary>
    public const int MostLines = 50_000;

    /// <summary>Reads a list: UTF-8 with or without its mark, at most 8 MB. Never throws for what is in the file.</summary>
    /// <param name="file">The file's bytes.</param>
    /// <param name="name">The name to say in messages.</param>
    public static PriceListReading Read(ReadOnlyMemory<byte> file, string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var (text, fault) = TextFile.Read(file, name, "a price list");
        if (fault is not null) return new PriceListReading.Refused(fault);
        var lines = ListRows.Lines(text);
        // The end of the last line begins no other.
        var count = lines.Length - (lines[^1].Length == 0 ? 1 : 0);
        if (count > MostLines)
        {
            return Refused(name, 1, string.Create(CultureInfo.InvariantCulture, $"{count} lines"), string.Create(CultureInfo.InvariantCulture, $"at most {MostLines}: keep those you buy"));
        }

        var (head, line, found, expected) = ListHead.Of(lines);
        if (head is null) return Refused(name, line, found, expected);
        var rows = ListRows.Of(text, head.Separator).Where(row => row.First > head.Line && !row.IsEmpty).ToList();
        var prices = rows.ConvertAll(row => head.Cell(row, "price"));
        var (mark, sure) = DecimalMarks.Of(prices, head.Separator);
        var doubted = sure ? [] : rows.Where((_, i) => DecimalMarks.IsDoubtful(prices[i])).Select(row => row.First).ToList();
        var reader = new PriceListLines(name, head, mark);
        return new PriceListReading.Understood(rows.Select(reader.Read).ToSequence(), [.. Said(head, mark), .. Doubts(doubted, mark)]);
    }

    private static PriceListReading.Refused Refused(string name, int line, string found, string expected) => new(new(name, line, 1, "", found, expected, null));

    private static IEnumerable<string> Said(ListHead head, DecimalMark mark)
    {
        var parted = head.Separator switch { ';' => "semicolons", ',' => "commas", _ => "tabs" };
        yield return $"Fields are parted by {parted}; a {(mark == DecimalMark.Point ? "point" : "comma")} stands before the parts of one.";
    }

    private static IEnumerable<string> Doubts(List<int> doubted, DecimalMark mark)
    {
        if (doubted.Count == 0) yield break;
        const int MostNamed = 20;
        var named = string.Join(", ", doubted.Take(MostNamed).Select(line => line.ToString(CultureInfo.InvariantCulture))) + (doubted.Count > MostNamed ? ", …" : "");
        var (own, other) = mark == DecimalMark.Point ? ("comma", "point") : ("point", "comma");
        yield return $"In doubt: no price of the list tells whether a point or a comma stands before the parts of one. In line {named} the {own} was taken to part thousands. If it is the mark, write one price with two places behind it, such as 12{(own is "comma" ? "," : ".")}50; a {other} is then read as parting thousands.";
    }
}
