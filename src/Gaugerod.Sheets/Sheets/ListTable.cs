using Gaugerod.Engine.Prices;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What became of every line of a price list, as a table: none is lost.</summary>
public static class ListTable
{
    /// <summary>A row for every line of the list.</summary>
    public static DataTable Of(Sequence<ListLine> list)
    {
        ArgumentNullException.ThrowIfNull(list);
        return new(["list", "line", "last line", "item", "became", "why"], list.Select(Row).ToSequence());
    }

    private static Sequence<DataCell> Row(ListLine line) =>
        [new(line.File, false), new(Figures.Number(line.First), true), new(Figures.Number(line.Last), true), new(line.Item, false), new(PriceWords.Of(line.Fate), false), new(line.Said, false)];
}
