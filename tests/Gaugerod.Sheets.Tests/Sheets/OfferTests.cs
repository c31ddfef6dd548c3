using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Prices;
using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.Sheets.Tests.Sheets;

/// <summary>What a client reads, and what only the setter does. The prices are invented.</summary>
public sealed class OfferTests
{
    private static readonly PriceRequest Prices = new(new("EUR"))
    {
        Items = [new("wall tile", PriceUnit.Box, Spread.Of(1200, 1300))], Labour = [new("setting", PriceUnit.Lump, Spread.Of(2000))], Margin = new(10, OnCost: true), Tax = new(20, Tax.Everything) { Name = "VAT" }, Rounding = 5,
        Quote = new() { For = "A client", ValidUntil = "2031-04-14", Included = ["setting and grouting"], Excluded = ["plumbing"], Terms = "Half on the first day.\nThe rest when it is done." },
    };

    [Fact]
    public void An_offer_has_the_total_what_is_in_it_what_is_not_and_the_terms()
    {
        var (plan, words) = Offer(Prices);
        Assert.Equal((plan.Order[0].Packs * 1250m) + 2000, plan.Price!.Likely.Cost);
        foreach (var said in (string[])["For: A client", "Valid until 2031-04-14.", "Materials", "wall tile", "Labour", "setting", "•  setting and grouting", "Not included", "•  plumbing", "Half on the first day.", "The rest when it is done."]) Assert.Contains(said, words);
        Assert.Contains(words, line => line.StartsWith("Total ", StringComparison.Ordinal) && line.EndsWith(" EUR", StringComparison.Ordinal));
        Assert.Contains(words, line => line.StartsWith("VAT, 20 % of ", StringComparison.Ordinal));
        Assert.Contains(words, line => line.Contains("entered by hand", StringComparison.Ordinal));
    }

    [Fact]
    public void A_hidden_margin_is_in_every_line_and_a_shown_one_on_a_line_of_its_own()
    {
        var (_, hidden) = Offer(Prices);
        Assert.Contains("2\u00A0200.00", hidden);
        Assert.DoesNotContain("Margin", hidden);
        var (_, shown) = Offer(Prices with { Quote = Prices.Quote with { ShowsMargin = true } });
        Assert.Contains("2\u00A0000.00", shown);
        Assert.Contains("Margin", shown);
    }

    [Fact]
    public void An_offer_that_lacks_a_price_says_so_and_one_for_what_others_buy_lists_it_as_not_included()
    {
        Assert.Contains(Offer(Prices with { Items = [] }).Words, line => line.StartsWith("■ Not complete. No total holds: wall tile", StringComparison.Ordinal));
        Assert.Contains("•  wall tile, which others buy", Offer(Prices with { Items = [new("wall tile", PriceUnit.Each, null)] }).Words);
    }

    [Fact]
    public void The_client_s_picture_tells_nothing_of_cuts_and_the_setter_s_sheet_is_not_the_client_s()
    {
        var plan = Priced(Prices);
        Assert.DoesNotContain(QuoteSheets.Pages(plan).SelectMany(page => page.Marks).OfType<Mark.Area>(), area => area.Fill is Fill.Straight or Fill.Corner or Fill.Notch or Fill.Hole);
        Assert.Contains(Words(EstimateSheets.Pages(plan)), line => line.Contains("not for the client", StringComparison.Ordinal));
        Assert.Empty(QuoteSheets.Pages(Samples.GuestShower));
        Assert.Empty(EstimateSheets.Pages(Samples.GuestShower));
    }

    [Fact]
    public void Pages_of_terms_go_on_over_as_many_sheets_as_they_take()
    {
        var terms = string.Join('\n', Enumerable.Range(1, 120).Select(i => $"Clause {i}: what is agreed by word of mouth is written here before it holds, whoever said it and whenever."));
        var pages = QuoteSheets.Pages(Priced(Prices with { Quote = Prices.Quote with { Terms = terms } }));
        Assert.InRange(pages.Count, 2, 8);
        Assert.All(pages.SelectMany(page => page.Marks.OfType<Mark.Text>().Select(text => (text, page.Height))), mark => Assert.InRange(mark.text.At.Y, 0, mark.Height));
        Assert.Contains(Words(pages), line => line.StartsWith("Clause 120", StringComparison.Ordinal));
    }

    [Fact]
    public void A_sum_stands_on_one_page_however_many_lines_come_before_it()
    {
        var broken = 0;
        foreach (var count in Enumerable.Range(1, 36))
        {
            var pages = QuoteSheets.Pages(Priced(Prices with { Items = [.. Prices.Items, .. Enumerable.Range(1, count).Select(i => new ItemPrice($"thing {i}", PriceUnit.Each, Spread.Of(2)) { Quantity = Spread.Of(3) })] }));
            if (pages.Count > 1) broken++;
            var page = Words([pages.Single(page => Words([page]).Any(line => line.StartsWith("Total ", StringComparison.Ordinal)))]);
            foreach (var said in (string[])["Sum", "Before tax", "Rounding"]) Assert.Contains(said, page);
        }

        Assert.InRange(broken, 1, 35);
    }

    [Fact]
    public void A_price_has_the_places_that_are_paid_and_more_where_it_has_more()
    {
        var words = Words(EstimateSheets.Pages(Priced(Prices with { Items = [new("wall tile", PriceUnit.Box, Spread.Of(31.5m)), new("clip", PriceUnit.Each, Spread.Of(0.125m)) { Quantity = Spread.Of(100) }, new("pail", PriceUnit.Each, Spread.Of(1200, 1210)) { Quantity = Spread.Of(1) }] })));
        foreach (var said in (string[])["31.50", "0.125"]) Assert.Contains(said, words);
        Assert.Contains("1\u00A0200.00 to", words);
        Assert.DoesNotContain("31.5", words);
    }

    private static Plan Priced(PriceRequest prices) => JobPricing.Priced(Samples.GuestShower with { Job = Samples.GuestShower.Job with { Prices = prices } });

    private static (Plan Plan, List<string> Words) Offer(PriceRequest prices) => (Priced(prices), Words(QuoteSheets.Pages(Priced(prices))));

    private static List<string> Words(Sequence<Drawing> pages) => [.. pages.SelectMany(page => page.Marks).OfType<Mark.Text>().Select(text => text.Words)];
}
