using Gaugerod.Plane;

namespace Gaugerod.Engine.Prices;

/// <summary>Brings priced lines to a total: margin, tax and rounding, the same way for all lows, all likely numbers and all highs.</summary>
internal static class Summing
{
    /// <summary>The estimate of lines whose costs are known.</summary>
    public static Estimate Of(PriceRequest request, IReadOnlyList<EstimateLine> lines)
    {
        var (low, lowAsked) = Sum(request, lines, cost => cost.Low);
        var (likely, likelyAsked) = Sum(request, lines, cost => cost.Likely);
        var (high, highAsked) = Sum(request, lines, cost => cost.High);
        return new(request, lines.Select((line, i) => line.Cost is null ? line : line with { Asked = new(lowAsked[i], likelyAsked[i], highAsked[i]) }).ToSequence(), low, likely, high);
    }

    private static (Sums Sums, decimal[] Asked) Sum(PriceRequest request, IReadOnlyList<EstimateLine> lines, Func<Spread, decimal> which)
    {
        var costs = lines.Select(line => line.Cost is { } cost ? which(cost) : 0).ToArray();
        var cost = costs.Sum();
        var margin = request.Margin is { } on ? request.Currency.Paid(on.OnCost ? cost * on.Percent / 100 : cost * on.Percent / (100 - on.Percent)) : 0;
        var shares = Apportion.Of(margin, costs, request.Currency.Least);
        var asked = costs.Select((one, i) => one + shares[i]).ToArray();
        var taxed = request.Tax is { } tax ? lines.Select((line, i) => tax.On.Contains(line.Group) ? asked[i] : 0).Sum() : 0;
        var paid = request.Currency.Paid(taxed * (request.Tax?.Percent ?? 0) / 100);
        var total = cost + margin + paid;
        var rounded = request.Rounding is { } step ? decimal.Round(total / step, 0, MidpointRounding.AwayFromZero) * step : total;
        return (new(cost, margin, taxed, paid, rounded - total), asked);
    }
}
