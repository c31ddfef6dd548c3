using Gaugerod.Engine.Prices;

namespace Gaugerod.Engine.Tests.Prices;

/// <summary>Which line of a list prices what, worked by hand.</summary>
public sealed class ListMatchingTests
{
    private static readonly Bought Tile = new("tile", Spread.Of(9), [new(PriceUnit.Box, 1, "box of 10"), new(PriceUnit.Each, 10, "tile")], "");

    private static readonly Bought Grout = new("grout", Spread.Of(1), [new(PriceUnit.Pack, 1, "bag")], "");

    [Fact]
    public void A_line_is_used_where_the_plan_buys_it_and_the_job_says_nothing_itself()
    {
        var own = new PriceRequest(new("EUR")) { Items = [new("grout", PriceUnit.Pack, Spread.Of(20))] };
        var (request, list) = ListMatching.Of(own, [Line(2, "TILE", 30), Line(3, "grout", 18, PriceUnit.Pack), Line(4, "cement", 5)], [Tile, Grout]);
        Assert.Equal([(ListFate.Used, ""), (ListFate.NotUsed, "the job has a price of its own"), (ListFate.NotUsed, "the plan buys nothing of this name")], list.Select(line => (line.Fate, line.Said)));
        Assert.Equal(["grout", "TILE"], request.Items.Select(item => item.Item));
    }

    [Fact]
    public void Of_two_lines_that_differ_none_is_taken_and_both_are_named()
    {
        var (request, list) = ListMatching.Of(new(new("EUR")), [Line(4, "tile", 32.40m), Line(9, "tile", 34)], [Tile]);
        Assert.Empty(request.Items);
        Assert.All(list, line => Assert.Equal((ListFate.Doubled, "priced more than once (line 4: 32.4 by box, line 9: 34 by box): none of them is used"), (line.Fate, line.Said)));
    }

    [Fact]
    public void Of_two_lines_that_agree_the_first_is_taken()
    {
        var (request, list) = ListMatching.Of(new(new("EUR")), [Line(4, "tile", 34), Line(9, "tile", 34.00m)], [Tile]);
        Assert.Single(request.Items);
        Assert.Equal([(ListFate.Used, ""), (ListFate.Doubled, "says the same as line 4")], list.Select(line => (line.Fate, line.Said)));
    }

    [Fact]
    public void Another_currency_and_a_unit_that_does_not_fit_are_said()
    {
        var (request, list) = ListMatching.Of(new(new("EUR")), [Line(2, "tile", 30) with { Currency = "USD" }, Line(3, "grout", 3, PriceUnit.Metre) with { Currency = "€" }], [Tile, Grout]);
        Assert.Empty(request.Items);
        Assert.Equal([(ListFate.Unread, "found a price in USD, expected EUR"), (ListFate.NotUsed, "no price: one by \"m\" does not fit; it is bought by pack")], list.Select(line => (line.Fate, line.Said)));
    }

    [Fact]
    public void One_line_never_prices_two_things_of_one_name()
    {
        var (request, list) = ListMatching.Of(new(new("EUR")), [Line(2, "tile", 30)], [Tile, Grout with { Item = "Tile" }]);
        Assert.Empty(request.Items);
        Assert.Equal((ListFate.NotUsed, "the plan buys two things of this name: rename one of them in the job"), (list[0].Fate, list[0].Said));
    }

    private static ListLine Line(int line, string item, decimal price, PriceUnit unit = PriceUnit.Box) => new("list.csv", line, line, item, ListFate.NotUsed, "") { Price = new(item, unit, Spread.Of(price)) };
}
