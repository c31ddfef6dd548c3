using System.Globalization;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Says what to buy by the pack, and how it was reckoned.</summary>
public static class SupplyWords
{
    /// <summary>How it was reckoned: what a pack makes, what each run takes, loss, what is left.</summary>
    public static string Basis(SupplyLine line, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(tape);
        var uses = string.Join("; ", line.Uses.Select(use => $"{use.Where}: {use.How}{Behind(use)}"));
        var loss = line.Supply.LossPercent == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $", with {line.Supply.LossPercent} % of loss");
        var makes = line.Supply.Kind == SupplyKind.Batten ? $"is {Say(line.Supply.Makes)} long, no joint where one reaches" : $"{Does(line.Supply.Measure)} {Say(line.Supply.Makes)}";
        return $"A {line.Supply.Pack} {makes}. {uses}. In all {Say(line.Amount)}{loss}; {Say(line.Over)} left over.";

        string Say(double amount) => Amount(amount, line.Supply.Measure, tape);

        // What was measured is said already how much it is; only volumes come of a reckoning.
        string Behind(SupplyUse use) => line.Supply.Measure == SupplyMeasure.Volume ? ", " + Say(use.Amount) : "";
    }

    /// <summary>An amount in what it is measured in: <c>2.31 ft³</c>, <c>41 ft</c>, <c>64.0 ft²</c>, <c>120</c>.</summary>
    public static string Amount(double amount, SupplyMeasure measure, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(tape);
        return measure switch
        {
            SupplyMeasure.Length => Amounts.Distance(amount * 1000, tape),
            SupplyMeasure.Area => Amounts.Area(amount * 1e6, tape),
            SupplyMeasure.Count => amount.ToString("0", CultureInfo.InvariantCulture),
            _ => Amounts.Volume(amount * 1e6, tape),
        };
    }

    private static string Does(SupplyMeasure measure) => measure switch
    {
        SupplyMeasure.Area => "covers",
        SupplyMeasure.Length or SupplyMeasure.Count => "holds",
        _ => "makes",
    };

    /// <summary>How many packs, by what they are called: <c>2 × 50 lb bag</c>.</summary>
    public static string Packs(SupplyLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return string.Create(CultureInfo.InvariantCulture, $"{line.Packs} × {line.Supply.Pack}");
    }
}
