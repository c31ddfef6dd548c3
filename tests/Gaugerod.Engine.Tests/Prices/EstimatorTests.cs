using CsCheck;
using Gaugerod.Engine.Prices;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Prices;

/// <summary>Small jobs priced by hand. All prices are invented.</summary>
public sealed class EstimatorTests
{
    private static readonly Bought Tile = new("wall tile", new(8, 9, 9), [new(PriceUnit.Box, 1, "box of 10"), new(PriceUnit.Each, 10, "tile"), new(PriceUnit.SquareMetre, 0.9m, "m2")], "84 by the cut plan");

    private static readonly PriceRequest Euros = new(new("EUR"));

    [Fact]
    public void Boxes_tiles_and_square_metres_price_the_same_order()
    {
        Assert.Equal(new Spread(8 * 31.2m, 9 * 31.2m, 9 * 31.2m), Cost(new("Wall  Tile", PriceUnit.Box, Spread.Of(31.2m))));
        Assert.Equal(new Spread(80 * 3.5m, 90 * 3.5m, 90 * 3.5m), Cost(new("wall tile", PriceUnit.Each, Spread.Of(3.5m))));
        Assert.Equal(new Spread(7.2m * 35, 8.1m * 35, 8.1m * 35), Cost(new("wall tile", PriceUnit.SquareMetre, Spread.Of(35))));
        // Nought to two boxes more: one of them likely; 8 boxes at 30, 10 at 31, 11 at 32.
        Assert.Equal(new Spread(240, 310, 352), Cost(new("wall tile", PriceUnit.Box, Spread.Of(30, 32)) { More = Spread.Of(0, 2) }));

        static Spread? Cost(ItemPrice price) => Assert.Single(Estimator.Of(Euros with { Items = [price] }, [Tile], []).Lines).Cost;
    }

    [Fact]
    public void What_has_no_price_is_a_line_and_in_no_total()
    {
        var none = Estimator.Of(Euros, [Tile], []);
        Assert.Equal(("no price", 0m), (Assert.Single(none.Lacking).Lacks, none.High.Total));
        var unfit = Estimator.Of(Euros with { Items = [new("wall tile", PriceUnit.Metre, Spread.Of(3))] }, [Tile], []);
        Assert.Equal("no price: one by \"m\" does not fit; it is bought by box, each, m2", Assert.Single(unfit.Lacking).Lacks);
        var free = Estimator.Of(Euros with { Items = [new("wall tile", PriceUnit.Box, null)] }, [Tile], []);
        Assert.Empty(free.Lacking);
        Assert.Equal(0m, free.Likely.Total);
        Assert.Equal(["spare: the plan buys nothing of this name"], Estimator.Of(Euros with { Items = [new("spare", PriceUnit.Box, Spread.Of(1))] }, [], []).NotUsed);
    }

    /// <summary>12 m² at 0.8 to 1.2 m² an hour, half as much again for the pattern: 18 / 1.2 = 15 h, 18 / 1 = 18 h, 18 / 0.8 = 22.5 h; at 40 an hour.</summary>
    [Fact]
    public void Hours_come_from_the_setter_s_pace_and_the_quick_day_is_the_low_one()
    {
        var task = new LabourPrice("set", PriceUnit.Hour, Spread.Of(40)) { Of = LabourOf.TiledArea, Pace = new(Spread.Of(0.8m, 1.2m), PriceUnit.SquareMetre), Factor = 1.5m };
        var line = Assert.Single(Estimator.Of(Euros with { Labour = [task] }, [], [new(LabourOf.TiledArea, "walls", 8), new(LabourOf.TiledArea, "floor", 4), new(LabourOf.Pieces, "floor", 99)]).Lines);
        Assert.Equal((new Spread(15, 18, 22.5m), new Spread(600, 720, 900)), (line.Quantity, line.Cost!.Value));
        var floor = Assert.Single(Estimator.Of(Euros with { Labour = [task with { Run = "floor" }] }, [], [new(LabourOf.TiledArea, "walls", 8), new(LabourOf.TiledArea, "floor", 4)]).Lines);
        Assert.Equal(new Spread(5, 6, 7.5m), floor.Quantity);
        // A square foot is 0.3048² m²: 8 m² are 86.11 ft².
        var feet = new LabourPrice("set", PriceUnit.SquareFoot, Spread.Of(2)) { Of = LabourOf.TiledArea };
        Assert.Equal(Spread.Of(172.22m), Assert.Single(Estimator.Of(Euros with { Labour = [feet] }, [], [new(LabourOf.TiledArea, "walls", 8)]).Lines).Cost);
    }

    /// <summary>1,000 of cost: a fifth on cost is 200; a fifth of the price is 250, for 250 is a fifth of 1,250.</summary>
    [Fact]
    public void A_margin_on_cost_is_less_than_the_same_share_of_the_price()
    {
        var lump = Euros with { Waste = new(Spread.Of(1000)) };
        Assert.Equal(200, Estimator.Of(lump with { Margin = new(20, OnCost: true) }, [], []).Likely.Margin);
        Assert.Equal(250, Estimator.Of(lump with { Margin = new(20, OnCost: false) }, [], []).Likely.Margin);
    }

    /// <summary>Materials 100.10 and labour 300, a tenth on top: 40.01, of which materials carry 10.00 and labour 30.01 or a cent either way; tax of 8 % on 110.10 or so; all to 5.</summary>
    [Fact]
    public void Tax_is_paid_on_its_groups_with_their_share_of_the_margin_and_rounding_comes_last()
    {
        var request = Euros with
        {
            Items = [new("sheet", PriceUnit.Lump, Spread.Of(100.10m)) { Quantity = Spread.Of(1) }], Labour = [new("all", PriceUnit.Lump, Spread.Of(300))],
            Margin = new(10, OnCost: true), Tax = new(8, [CostGroup.Materials]), Rounding = 5,
        };
        var sums = Estimator.Of(request, [], []).Likely;
        Assert.Equal((400.10m, 40.01m, 110.11m, 8.81m), (sums.Cost, sums.Margin, sums.Taxed, sums.Tax));
        // 448.92 goes up to 450.
        Assert.Equal((1.08m, 450m), (sums.Rounding, sums.Total));
    }

    [Fact]
    public void Shares_add_up_to_what_was_shared_and_none_is_a_cent_off() => Gen.Select(Gen.Int[0, 1_000_000], Gen.Int[0, 100_000].Array[1, 30]).Each((cents, weights) =>
    {
        var (amount, all) = (weights.Sum() == 0 ? 0 : cents / 100m, weights.Sum());
        var shares = Apportion.Of(amount, [.. weights.Select(weight => weight / 100m)], 0.01m);
        Assert.Equal(amount, shares.Sum());
        for (var i = 0; i < weights.Length; i++) Assert.True(all == 0 || Math.Abs(shares[i] - (amount * weights[i] / all)) < 0.01m);
    }, iter: 300);
}
