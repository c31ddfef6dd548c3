using Gaugerod.Engine.Prices;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Writes amounts for people: thousands parted by a blank that no line breaks at, and a true minus.</summary>
internal static class Money
{
    public static string Of(decimal amount, Currency currency)
    {
        var text = Exact(Math.Abs(amount), currency);
        var point = text.IndexOf('.', StringComparison.Ordinal);
        for (var at = (point < 0 ? text.Length : point) - 3; at > 0; at -= 3) text = text.Insert(at, "\u00A0");
        return amount < 0 ? "\u2212" + text : text;
    }

    /// <summary>An amount for programs: with the places that are paid, and more where it has more, as a price of one may.</summary>
    public static string Exact(decimal amount, Currency currency) => currency.Paid(amount) == amount ? currency.Write(amount) : PriceText.Plain(amount);

    /// <summary>A price, or from which to which.</summary>
    public static string Of(Spread price, Currency currency) => price.IsRange ? $"{Of(price.Low, currency)} to {Of(price.High, currency)}" : Of(price.Likely, currency);

    /// <summary>A number as it was typed, or a range.</summary>
    public static string Plain(Spread spread) => spread.IsRange ? $"{PriceText.Plain(spread.Low)} to {PriceText.Plain(spread.High)}" : PriceText.Plain(spread.Likely);

    /// <summary>A total as it is given to a client: the likely one, or where asked from which to which.</summary>
    public static string Total(Estimate estimate, bool range) => range && estimate.IsRange
        ? $"{Of(estimate.Low.Total, estimate.Request.Currency)} to {Of(estimate.High.Total, estimate.Request.Currency)}, likely {Of(estimate.Likely.Total, estimate.Request.Currency)}"
        : Of(estimate.Likely.Total, estimate.Request.Currency);
}
