using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Prices;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What the client gets: the picture, what it costs, what is and what is not in it, and the setter's terms.</summary>
public static class QuoteSheets
{
    private const string OwnPrices = "All prices are those of the person who makes this offer, entered by hand.";

    /// <summary>The sheets on the job's paper; none where the job has no price.</summary>
    public static Sequence<Drawing> Pages(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        if (plan.Price is not { } price) return [];
        var (terms, code) = (price.Request.Quote, price.Request.Currency.Code);
        var book = new SheetBook(plan) { FootWords = OwnPrices };
        var flow = book.Flow("Offer", $"The offer for {plan.Job.Name}: {Money.Total(price, terms.ShowsRange)} {code}, with a picture of the tiled faces, what is included and what is not.");
        flow.Add(Block.Words(plan.Job.Name, flow.Width, 16, bold: true, after: 1));
        flow.Add(Block.Words(Parties(terms), flow.Width, 9.5, after: 2.5));
        foreach (var row in QuotePictures.Of(book, flow.Width, 95)) flow.Add(row);
        flow.Add(Block.Gap(2));
        if (price.Lacking.Any())
        {
            var missing = $"■ Not complete. No total holds: {string.Join("; ", price.Lacking.Select(line => line.What))}.";
            flow.Add(Block.Words(missing, flow.Width, 10, bold: true, after: 2));
        }

        Amounts(flow, price);
        Listed(flow, "Included", terms.Included);
        Listed(flow, "Not included", [.. terms.Excluded, .. price.Lines.Where(line => line.IsByOthers).Select(line => $"{line.What}, which others buy")]);
        if (terms.Terms.Length > 0) Paragraphs(flow, "Terms", terms.Terms);
        return book.Drawings();
    }

    private static string Parties(QuoteTerms terms)
    {
        var lines = new List<string>();
        if (terms.For.Length > 0) lines.Add($"For: {terms.For}");
        if (terms.From.Length > 0) lines.Add($"From: {terms.From}");
        if (terms.Date.Length > 0) lines.Add($"Of {terms.Date}.");
        if (terms.ValidUntil.Length > 0) lines.Add($"Valid until {terms.ValidUntil}.");
        return string.Join('\n', lines);
    }

    private static void Amounts(Flow flow, Estimate price)
    {
        var (request, rows) = (price.Request, new List<IReadOnlyList<string>>());
        var asked = !request.Quote.ShowsMargin;
        foreach (var group in price.Groups)
        {
            foreach (var line in price.Lines.Where(line => line.Group == group)) rows.Add([line.What, PriceUnits.Say(PriceText.Plain(line.Quantity.Likely), line.Unit), Amount(line, request, asked)]);
            if (!request.Quote.ShowsLines) rows.Add(["", "", Money.Of(price.Of(group, asked).Likely, request.Currency)]);
            Rows(Capital(PriceWords.Of(group)));
        }

        var sums = price.Likely;
        if (request.Margin is not null && request.Quote.ShowsMargin) rows.Add(["Margin", "", Money.Of(sums.Margin, request.Currency)]);
        if (request.Tax is { } tax)
        {
            rows.Add(["Before tax", "", Money.Of(sums.Net, request.Currency)]);
            rows.Add([$"{Capital(tax.Name)}, {PriceText.Plain(tax.Percent)} % of {Money.Of(sums.Taxed, request.Currency)}", "", Money.Of(sums.Tax, request.Currency)]);
        }

        if (sums.Rounding != 0) rows.Add(["Rounding", "", Money.Of(sums.Rounding, request.Currency)]);
        // A total without what it is made of, on the next page, is no sum.
        var (head, body) = Under("Sum");
        flow.Add(Block.Together(
            [.. body.Count > 0 ? body.Prepend(head).Append(Block.Gap(3.7)) : [Block.Gap(2.5)], Block.Words($"Total {Money.Total(price, request.Quote.ShowsRange)} {request.Currency.Code}", flow.Width, 13, bold: true, after: 1), Block.Words(Kind(price), flow.Width, 8.5, ink: Ink.Quiet, after: 3)]));

        void Rows(string heading)
        {
            var (head, body) = Under(heading);
            flow.Add(head, body, head);
            flow.Add(Block.Gap(1.2));
            rows.Clear();
        }

        (Block Head, List<Block> Body) Under(string heading) => Table.Of([new(heading, 104), new("", 46), new(request.Currency.Code, 36, Right: true)], rows, flow.Width, 9);
    }

    private static string Kind(Estimate price) => price.Request.Quote.ShowsRange && price.IsRange
        ? "From which to which: with all quantities and prices at their lowest, and with all at their highest. The amounts above are the likely ones. Nothing is said of how probable they are."
        : "Amounts are rounded line by line to the least coin.";

    private static string Amount(EstimateLine line, PriceRequest request, bool asked)
    {
        if (line.IsByOthers) return "by others";
        if (line.Cost is not { } cost) return "no price";
        return request.Quote.ShowsLines ? Money.Of(((asked ? line.Asked : null) ?? cost).Likely, request.Currency) : "";
    }

    private static void Listed(Flow flow, string heading, IReadOnlyList<string> lines)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var line = Block.Words("•  " + lines[i], flow.Width, 9.5, after: 0.8);
            flow.Add(i == 0 ? Block.Together(Block.Heading(heading, flow.Width), line) : line);
        }

        if (lines.Count > 0) flow.Add(Block.Gap(2.5));
    }

    // Terms may be pages long: each of their paragraphs goes where it fits.
    private static void Paragraphs(Flow flow, string heading, string text)
    {
        var parts = text.Replace("\r", "", StringComparison.Ordinal).Split('\n').Select(part => part.Trim()).Where(part => part.Length > 0).ToList();
        for (var i = 0; i < parts.Count; i++)
        {
            var block = Block.Words(parts[i], flow.Width, 9, after: 1.6);
            flow.Add(i == 0 ? Block.Together(Block.Heading(heading, flow.Width), block) : block);
        }
    }

    private static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
