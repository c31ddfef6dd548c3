using Gaugerod.Engine.Prices;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Writes amounts for people: thousands parted by a blank that no line breaks at, and a true minus.</summary>
internal static class Money
{
    public static string Of(decimal amount, Currency currency)
    {
        var text = currency.Write(Math.Abs(amount));
        var point = text.IndexOf('.', StringComparison.Ordinal);
        for (var at = (point < 0 ? text.Length : point) - 3; at > 0; at -= 3) text = text.Insert(at, "\u00A0");
        return amount < 0 ? "\u2212" + text : text;
    }

    /// <summary>A number as it was typed, or a range.</summary>
    public static string Plain(Spread spread) => spread.IsRange ? $"{PriceText.Plain(spread.Low)} to {PriceText.Plain(spread.High)}" : PriceText.Plain(spread.Likely);

    /// <summary>A total as it is given to a client: the likely one, or where asked from which to which.</summary>
    public static string Total(Estimate estimate, bool range) => range && estimate.IsRange
        ? $"{Of(estimate.Low.Total, estimate.Request.Currency)} to {Of(estimate.High.Total, estimate.Request.Currency)}, likely {Of(estimate.Likely.Total, estimate.Request.Currency)}"
        : Of(estimate.Likely.Total, estimate.Request.Currency);
}
