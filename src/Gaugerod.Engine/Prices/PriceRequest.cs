using Gaugerod.Plane;

namespace Gaugerod.Engine.Prices;

/// <summary>What costs are gathered under.</summary>
public enum CostGroup
{
    /// <summary>What is bought.</summary>
    Materials,

    /// <summary>Work.</summary>
    Labour,

    /// <summary>The way there and back.</summary>
    Travel,

    /// <summary>What is carted away.</summary>
    Waste,
}

/// <summary>The price of something bought. All prices are the setter's own.</summary>
/// <param name="Item">What it is: the name it has in the job, or one of its own where a quantity is given.</param>
/// <param name="Unit">What the price is for.</param>
/// <param name="Price">The price, more than nothing; null where others buy it and it costs this job nothing.</param>
public sealed record ItemPrice(string Item, PriceUnit Unit, Spread? Price)
{
    /// <summary>How many units; null, the default, for as many as the plan says.</summary>
    public Spread? Quantity { get; init; }

    /// <summary>How many packs more than the plan says may be needed. Default none.</summary>
    public Spread More { get; init; }

    /// <summary>Where the price is from, and of when; empty, the default, where nothing is said.</summary>
    public string Note { get; init; } = "";

    /// <summary>The list and line it was read from; empty, the default, for the job itself.</summary>
    public string From { get; init; } = "";
}

/// <summary>A task and what it costs.</summary>
/// <param name="Task">What is done, in the setter's words.</param>
/// <param name="Per">What the rate is for.</param>
/// <param name="Rate">The rate, more than nothing.</param>
public sealed record LabourPrice(string Task, PriceUnit Per, Spread Rate)
{
    /// <summary>How many of what the rate is for: hours, pieces. Null, the default, where the plan says how much.</summary>
    public Spread? Quantity { get; init; }

    /// <summary>What of the plan it is done to; null, the default, where a quantity is given.</summary>
    public LabourOf? Of { get; init; }

    /// <summary>Of which run; null, the default, for all.</summary>
    public string? Run { get; init; }

    /// <summary>How much of that is done in an hour; only and always where the rate is for an hour and the plan says how much.</summary>
    public Pace? Pace { get; init; }

    /// <summary>So many times as much work, for a pattern or for many cuts: the setter's own figure. Default 1.</summary>
    public decimal Factor { get; init; } = 1;

    /// <summary>What is to be said of it. Default nothing.</summary>
    public string Note { get; init; } = "";
}

/// <summary>How much is done in an hour.</summary>
/// <param name="Amount">How much, more than nothing.</param>
/// <param name="Unit">Of what: an area, a length, or pieces (each).</param>
public sealed record Pace(Spread Amount, PriceUnit Unit);

/// <summary>The way, or what is carted away.</summary>
/// <param name="Price">The price of one, more than nothing.</param>
public sealed record Charge(Spread Price)
{
    /// <summary>How many. Default one.</summary>
    public Spread Quantity { get; init; } = Spread.Of(1);

    /// <summary>What one is called, such as <c>trip</c>; empty, the default, for all of it.</summary>
    public string Called { get; init; } = "";

    /// <summary>What is to be said of it. Default nothing.</summary>
    public string Note { get; init; } = "";
}

/// <summary>What the setter puts on top.</summary>
/// <param name="Percent">How much, in hundredths; zero or more.</param>
/// <param name="OnCost">Hundredths of the cost; else of the price before tax, so less than a hundred.</param>
public sealed record Margin(decimal Percent, bool OnCost);

/// <summary>What is paid to the state on top.</summary>
/// <param name="Percent">How much, in hundredths; zero to 100.</param>
/// <param name="On">What it is paid on; at least one group.</param>
public sealed record Tax(decimal Percent, Sequence<CostGroup> On)
{
    /// <summary>All groups.</summary>
    public static Sequence<CostGroup> Everything { get; } = [CostGroup.Materials, CostGroup.Labour, CostGroup.Travel, CostGroup.Waste];

    /// <summary>What it is called there. Default <c>tax</c>.</summary>
    public string Name { get; init; } = "tax";
}

/// <summary>The setter's prices and rates, and how a price is made of them.</summary>
/// <param name="Currency">What they are in.</param>
public sealed record PriceRequest(Currency Currency)
{
    /// <summary>Prices of what is bought. Default none.</summary>
    public Sequence<ItemPrice> Items { get; init; } = [];

    /// <summary>Tasks and their rates. Default none.</summary>
    public Sequence<LabourPrice> Labour { get; init; } = [];

    /// <summary>What the way costs; null, the default, where it is not reckoned.</summary>
    public Charge? Travel { get; init; }

    /// <summary>What it costs to have waste carted away; null, the default, where it is not reckoned.</summary>
    public Charge? Waste { get; init; }

    /// <summary>What is put on top; null, the default, for nothing.</summary>
    public Margin? Margin { get; init; }

    /// <summary>Tax; null, the default, for none.</summary>
    public Tax? Tax { get; init; }

    /// <summary>What the total is rounded to, such as 0.05; null, the default, for the least that is paid.</summary>
    public decimal? Rounding { get; init; }

    /// <summary>What stands on the client's sheet.</summary>
    public QuoteTerms Quote { get; init; } = new();
}
