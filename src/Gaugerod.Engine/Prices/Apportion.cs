namespace Gaugerod.Engine.Prices;

/// <summary>Shares an amount out.</summary>
internal static class Apportion
{
    /// <summary>
    /// An amount, shared out by weights in whole steps, so that the shares add up to it exactly: each gets its share rounded down, and the steps that are
    /// left go to those that lost most by that, of two alike to the first.
    /// </summary>
    /// <param name="amount">What is shared; zero or more, whole steps.</param>
    /// <param name="weights">By what; zero or more, and not all zero unless the amount is.</param>
    /// <param name="step">The least that is paid.</param>
    public static decimal[] Of(decimal amount, IReadOnlyList<decimal> weights, decimal step)
    {
        var (all, shares) = (weights.Sum(), new decimal[weights.Count]);
        if (all == 0) return shares;
        var lost = new decimal[weights.Count];
        for (var i = 0; i < weights.Count; i++)
        {
            var share = amount * weights[i] / all;
            shares[i] = decimal.Floor(share / step) * step;
            lost[i] = share - shares[i];
        }

        var left = (int)decimal.Round((amount - shares.Sum()) / step);
        foreach (var i in Enumerable.Range(0, weights.Count).OrderByDescending(i => lost[i]).Take(left)) shares[i] += step;
        return shares;
    }
}
