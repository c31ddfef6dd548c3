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
        var uses = string.Join("; ", line.Uses.Select(use => $"{use.Run}: {use.How}, {Amounts.Volume(use.Litres * 1e6, tape)}"));
        var loss = line.Supply.LossPercent == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $", with {line.Supply.LossPercent} % of loss");
        return $"A {line.Supply.Pack} makes {Amounts.Volume(line.Supply.Makes * 1e6, tape)}. {uses}. In all {Amounts.Volume(line.Litres * 1e6, tape)}{loss}; {Amounts.Volume(line.Over * 1e6, tape)} left over.";
    }

    /// <summary>How many packs, by what they are called: <c>2 × 50 lb bag</c>.</summary>
    public static string Packs(SupplyLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return string.Create(CultureInfo.InvariantCulture, $"{line.Packs} × {line.Supply.Pack}");
    }
}
