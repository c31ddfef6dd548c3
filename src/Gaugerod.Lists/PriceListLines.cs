using System.Globalization;
using Gaugerod.Engine.Prices;

namespace Gaugerod.Lists;

/// <summary>Reads the lines of a list under its head.</summary>
/// <param name="file">The list's name.</param>
/// <param name="head">Its head.</param>
/// <param name="mark">The mark before the parts of one.</param>
internal sealed class PriceListLines(string file, ListHead head, DecimalMark mark)
{
    private const int LongestItem = 60;

    /// <summary>A line with its price; or with what is wrong with it.</summary>
    public ListLine Read(ListRow row)
    {
        var (item, price, word) = (head.Cell(row, "item"), head.Cell(row, "price"), head.Cell(row, "unit"));
        var line = new ListLine(file, row.First, row.Last, Shown.Plain(item), ListFate.Unread, "");
        if (row.Cells.Length > head.Columns && row.Cells.Skip(head.Columns).Any(cell => cell.Length > 0)) return line with { Said = TooMany(row) };
        if (item.Length == 0) return line with { Said = "found no item, expected its name as the job has it" };
        if (item.Length > LongestItem || item.Any(char.IsControl)) return line with { Said = $"found {Shown.Of(item)}, expected a name of 1 to 60 printable characters" };
        if (price.Length == 0) return line with { Fate = ListFate.NoPrice, Said = $"found no price, expected a number or \"{PriceText.ByOthers}\"" };
        var unit = PriceUnits.Read(word);
        var free = string.Equals(price, PriceText.ByOthers, StringComparison.OrdinalIgnoreCase);
        if (unit is null && !(free && word.Length == 0)) return line with { Said = $"found {Shown.Of(word)} as the unit, expected {string.Join(", ", PriceUnits.All)}" };
        var known = new ItemPrice(item, unit ?? PriceUnit.Each, null) { Note = Note(row), From = string.Create(CultureInfo.InvariantCulture, $"{file}, line {row.First}") };
        var said = head.Cell(row, "currency");
        if (free) return line with { Fate = ListFate.NotUsed, Price = known, Currency = said };
        return PriceText.Read(price, mark) switch
        {
            PriceReading.Understood({ Low: <= 0 }, _) => line with { Said = $"found {Shown.Of(price)}, expected a price of more than nothing, or \"{PriceText.ByOthers}\"" },
            PriceReading.Understood(_, var sign) when sign.Length > 0 && said.Length > 0 && !string.Equals(sign, said, StringComparison.Ordinal) && Currency.IsCode(sign) => line with { Said = $"found a price in {sign} and {Shown.Of(said)} as its currency, expected one" },
            PriceReading.Understood(var value, var sign) => line with { Fate = ListFate.NotUsed, Price = known with { Price = value }, Currency = said.Length > 0 ? said : sign },
            PriceReading.Refused refused => line with { Said = $"found {Shown.Of(price)} as the price, expected {refused.Expected}" },
            _ => line,
        };
    }

    // What is bought is a number without quotes in most lists: its comma then parts it in two.
    private string TooMany(ListRow row)
    {
        var advice = head.Separator == ',' ? "; put what holds a comma in quotes" : "";
        return string.Create(CultureInfo.InvariantCulture, $"found {row.Cells.Length} fields, expected {head.Columns}{advice}");
    }

    private string Note(ListRow row) => Shown.Plain(string.Join(", ", ((string[])["note", "source", "date"]).Select(word => head.Cell(row, word)).Where(cell => cell.Length > 0)));
}
