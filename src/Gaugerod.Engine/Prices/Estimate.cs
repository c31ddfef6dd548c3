using Gaugerod.Plane;

namespace Gaugerod.Engine.Prices;

/// <summary>One thing that costs.</summary>
/// <param name="Group">What it is gathered under.</param>
/// <param name="What">What it is.</param>
/// <param name="Quantity">How many units, to a hundredth of one.</param>
/// <param name="Unit">What one is called.</param>
/// <param name="Price">The price of one; null where there is none.</param>
/// <param name="How">How the quantity was reckoned, in words.</param>
public sealed record EstimateLine(CostGroup Group, string What, Spread Quantity, string Unit, Spread? Price, string How)
{
    /// <summary>What it costs, each of the three as it is paid; null where there is no price.</summary>
    public Spread? Cost { get; init; }

    /// <summary>What it costs with its share of the margin.</summary>
    public Spread? Asked { get; init; }

    /// <summary>Why it has no price; empty where it has one, and where others buy it.</summary>
    public string Lacks { get; init; } = "";

    /// <summary>Whether others buy it.</summary>
    public bool IsByOthers { get; init; }

    /// <summary>What the setter said of its price.</summary>
    public string Note { get; init; } = "";

    /// <summary>The list and line that its price is from; empty for the job itself.</summary>
    public string From { get; init; } = "";
}

/// <summary>How one total comes about: of all lows, of all likely ones, or of all highs.</summary>
/// <param name="Cost">All lines.</param>
/// <param name="Margin">What is put on top.</param>
/// <param name="Taxed">What tax is paid on.</param>
/// <param name="Tax">The tax.</param>
/// <param name="Rounding">What rounding the total adds, or takes where it is less than nothing.</param>
public readonly record struct Sums(decimal Cost, decimal Margin, decimal Taxed, decimal Tax, decimal Rounding)
{
    /// <summary>Before tax.</summary>
    public decimal Net => Cost + Margin;

    /// <summary>What is asked in the end.</summary>
    public decimal Total => Net + Tax + Rounding;
}

/// <summary>What a job costs, by the setter's own prices.</summary>
/// <param name="Request">The prices.</param>
/// <param name="Lines">Every line, priced or not, by group.</param>
/// <param name="Low">With all lows.</param>
/// <param name="Likely">With all likely numbers.</param>
/// <param name="High">With all highs.</param>
public sealed record Estimate(PriceRequest Request, Sequence<EstimateLine> Lines, Sums Low, Sums Likely, Sums High)
{
    /// <summary>The lines that have no price and that nobody else buys: no total holds them.</summary>
    public IEnumerable<EstimateLine> Lacking => Lines.Where(line => line.Lacks.Length > 0);

    /// <summary>Prices that the job has no use for, and why, in words. Default none.</summary>
    public Sequence<string> NotUsed { get; init; } = [];

    /// <summary>What became of each line of the list that was opened with the job. Default none.</summary>
    public Sequence<ListLine> List { get; init; } = [];

    /// <summary>Whether low and high differ.</summary>
    public bool IsRange => Low.Total != High.Total;

    /// <summary>The groups that something stands in.</summary>
    public IEnumerable<CostGroup> Groups => Lines.Select(line => line.Group).Distinct();

    /// <summary>What a group costs, with or without its share of the margin.</summary>
    public Spread Of(CostGroup group, bool asked) => Lines.Where(line => line.Group == group).Aggregate(Spread.Zero, (sum, line) => sum + ((asked ? line.Asked : line.Cost) ?? Spread.Zero));
}
