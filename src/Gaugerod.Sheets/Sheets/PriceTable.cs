using Gaugerod.Engine.Prices;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>An estimate as a table from which whoever doubts it can reckon it again.</summary>
public static class PriceTable
{
    private static readonly Sequence<string> s_head =
    [
        "kind", "group", "what", "quantity low", "quantity likely", "quantity high", "unit", "price low", "price likely", "price high", "amount low", "amount likely", "amount high",
        "asked low", "asked likely", "asked high", "taxed", "currency", "how", "note", "from",
    ];

    /// <summary>A row for every line, then how the totals come about. A line's amount is its quantity by its price, as it is paid; asked is that with its share of the margin.</summary>
    public static DataTable Of(Estimate estimate)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        var request = estimate.Request;
        var rows = estimate.Lines.Select(line => Line(request, line)).ToList();
        var cost = All(sum => sum.Cost);
        rows.Add(Sum("cost", null, "", null, cost));
        if (request.Margin is { } margin) rows.Add(Sum("margin", cost, margin.OnCost ? "% on cost" : "% of price", margin.Percent, All(sum => sum.Margin)));
        if (request.Tax is { } tax) rows.Add(Sum("tax", All(sum => sum.Taxed), "%", tax.Percent, All(sum => sum.Tax), tax.Name));
        if (request.Rounding is { } step) rows.Add(Sum("rounding", null, "to", step, All(sum => sum.Rounding)));
        rows.Add(Sum("total", null, "", null, All(sum => sum.Total), string.Join("; ", estimate.Lacking.Select(line => $"without {line.What}: {line.Lacks}"))));
        return new(s_head, rows.ToSequence());

        Spread All(Func<Sums, decimal> which) => new(which(estimate.Low), which(estimate.Likely), which(estimate.High));

        Sequence<DataCell> Sum(string what, Spread? of, string unit, decimal? price, Spread amount, string how = "") =>
            Row("sum", "", what, of, unit, price is { } known ? Spread.Of(known) : null, amount, null, "", how, "", "", request.Currency, isMoney: !unit.Contains('%', StringComparison.Ordinal));
    }

    private static Sequence<DataCell> Line(PriceRequest request, EstimateLine line) => Row(
        line.IsByOthers ? "by others" : line.Lacks.Length > 0 ? "no price" : "line", PriceWords.Of(line.Group), line.What, line.Quantity, line.Unit, line.Price, line.Cost, line.Asked,
        request.Tax?.On.Contains(line.Group) == true ? "yes" : "no", line.Lacks.Length > 0 ? $"{line.Lacks}; {line.How}" : line.How, line.Note, line.From, request.Currency);

    private static Sequence<DataCell> Row(
        string kind, string group, string what, Spread? quantity, string unit, Spread? price, Spread? amount, Spread? asked, string taxed, string how, string note, string from, Currency currency, bool isMoney = true) =>
    [
        Words(kind), Words(group), Words(what), .. Numbers(quantity, PriceText.Plain), Words(unit), .. Numbers(price, isMoney ? number => Money.Exact(number, currency) : PriceText.Plain), .. Numbers(amount, currency.Write), .. Numbers(asked, currency.Write),
        Words(taxed), Words(currency.Code), Words(how), Words(note), Words(from),
    ];

    private static DataCell Words(string words) => new(words, false);

    private static IEnumerable<DataCell> Numbers(Spread? spread, Func<decimal, string> write) =>
        new[] { spread?.Low, spread?.Likely, spread?.High }.Select(number => new DataCell(number is { } known ? write(known) : "", true));
}
