using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Prices;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What the setter keeps: every line with how it was reckoned, low, likely and high, and what became of the price list. It is not for the client.</summary>
public static class EstimateSheets
{
    private const string Rule =
        "Low takes every quantity and every price at its lowest, high at its highest, likely at what you said or the middle. Nothing is said of how probable any of them is. Each line is rounded to the least coin; tax is reckoned on the sum.";

    // A list of thousands of lines is in the table of the list; here are those to be set right.
    private const int MostNamed = 300;

    /// <summary>The sheets on the job's paper; none where the job has no price.</summary>
    public static Sequence<Drawing> Pages(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Price is not { } price) return [];
        var book = new SheetBook(plan) { FootWords = "For the setter, not for the client. All prices are your own, entered by hand." };
        var (flow, code) = (book.Flow("How it was reckoned", $"Every line of the price of {plan.Job.Name} with its quantity, price and amount, low, likely and high."), price.Request.Currency);
        flow.Add(Block.Together(
            Block.Words($"Likely {Money.Of(price.Likely.Total, code)} {code.Code}, from {Money.Of(price.Low.Total, code)} to {Money.Of(price.High.Total, code)}", flow.Width, 14, bold: true, after: 1.5), Block.Words(Rule, flow.Width, 8.5, ink: Ink.Quiet, after: 2)));
        foreach (var line in price.Lacking) flow.Add(Block.Words($"■ {line.What}: {line.Lacks}. No total holds it.", flow.Width, 10, bold: true, after: 1));
        foreach (var group in price.Groups) Group(flow, price, group);
        Sums(flow, price);
        foreach (var idle in price.NotUsed) flow.Add(Block.Words($"○ A price is not used. {idle}.", flow.Width, 9, after: 1));
        List(flow, price.List);
        return book.Drawings();
    }

    private static void Group(Flow flow, Estimate price, CostGroup group)
    {
        var code = price.Request.Currency;
        var rows = price.Lines.Where(line => line.Group == group).Select(line => (IReadOnlyList<string>)
        [
            line.What, PriceUnits.Say(Money.Plain(line.Quantity), line.Unit), line.Price is { } known ? Money.Of(known, code) : line.IsByOthers ? "by others" : "none", Amount(line.Cost?.Low), Amount(line.Cost?.Likely), Amount(line.Cost?.High), "", How(line),
        ]);
        var sum = price.Of(group, asked: false);
        rows = rows.Append(["Sum", "", "", Amount(sum.Low), Amount(sum.Likely), Amount(sum.High), "", ""]);
        var (head, body) = Table.Of(
            [new("What", 30, Bold: true), new("How much", 24), new("Price of one", 24, Right: true), new("Low", 19, Right: true), new("Likely", 19, Right: true), new("High", 19, Right: true), new("", 2), new("How", 49)], rows, flow.Width, 8);
        flow.Add(Block.Together(Block.Heading(char.ToUpperInvariant(PriceWords.Of(group)[0]) + PriceWords.Of(group)[1..], flow.Width), head), body, head);
        flow.Add(Block.Gap(3));

        string Amount(decimal? amount) => amount is { } known ? Money.Of(known, code) : "";
    }

    private static string How(EstimateLine line) => string.Join(". ", new[] { line.How.TrimEnd('.'), line.Note, line.From.Length > 0 ? $"From {line.From}" : "" }.Where(part => part.Length > 0)) + ".";

    private static void Sums(Flow flow, Estimate price)
    {
        var (request, code) = (price.Request, price.Request.Currency);
        var rows = new List<IReadOnlyList<string>> { Row("Cost", sums => sums.Cost) };
        if (request.Margin is { } margin) rows.Add(Row($"Margin, {PriceText.Plain(margin.Percent)} % {(margin.OnCost ? "on cost" : "of the price before tax")}", sums => sums.Margin));
        rows.Add(Row("Before tax", sums => sums.Net));
        if (request.Tax is { } tax)
        {
            rows.Add(Row($"Taxed: {string.Join(", ", tax.On.Select(PriceWords.Of))}, with their share of the margin", sums => sums.Taxed));
            rows.Add(Row($"{tax.Name}, {PriceText.Plain(tax.Percent)} %", sums => sums.Tax));
        }

        if (request.Rounding is { } step) rows.Add(Row($"Rounding to {Money.Of(step, code)}; it is not taxed", sums => sums.Rounding));
        rows.Add(Row($"Total, {code.Code}", sums => sums.Total));
        var (head, body) = Table.Of([new("", 98, Bold: true), new("Low", 29, Right: true), new("Likely", 29, Right: true), new("High", 29, Right: true)], rows, flow.Width, 9.5);
        flow.Add(Block.Together(Block.Heading("Sum", flow.Width), head), body, head, whole: true);
        flow.Add(Block.Gap(3));

        IReadOnlyList<string> Row(string what, Func<Sums, decimal> which) => [what, Money.Of(which(price.Low), code), Money.Of(which(price.Likely), code), Money.Of(which(price.High), code)];
    }

    private static void List(Flow flow, Sequence<ListLine> list)
    {
        if (list.Count == 0) return;
        var counted = list.GroupBy(line => line.Fate).OrderBy(group => group.Key).Select(group => $"{Figures.Number(group.Count())} {PriceWords.Of(group.Key)}");
        var named = list.Where(line => line.Fate is not (ListFate.Used or ListFate.NotUsed)).ToList();
        var more = named.Count > MostNamed ? $" The first {Figures.Number(MostNamed)} of {Figures.Number(named.Count)} to be set right stand here; price-list.csv names every line." : " price-list.csv names every line.";
        flow.Add(Block.Together(Block.Heading("The price list", flow.Width), Block.Words($"{Figures.Count(list.Count, "line", "lines")}: {string.Join(", ", counted)}.{(named.Count == 0 ? " price-list.csv names every line." : more)}", flow.Width, 9, after: 1.5)));
        var (head, body) = Table.Of(
            [new("Line", 16), new("Item", 40), new("Became", 20, Bold: true), new("Why", 110)],
            named.Take(MostNamed).Select(line => (IReadOnlyList<string>)[line.First == line.Last ? Figures.Number(line.First) : $"{Figures.Number(line.First)} to {Figures.Number(line.Last)}", line.Item, PriceWords.Of(line.Fate), line.Said]), flow.Width, 8.5);
        flow.Add(head, body, head);
    }
}
