namespace Gaugerod.Engine.Prices;

/// <summary>What stands beside an amount and says what it is in.</summary>
internal static class CurrencySigns
{
    // Of a sign that several use, any of them may be meant.
    private static readonly (string Sign, string[] Codes)[] s_signs =
    [
        ("€", ["EUR"]), ("£", ["GBP"]), ("$", ["USD", "CAD", "AUD", "NZD", "SGD", "HKD", "MXN"]), ("¥", ["JPY", "CNY"]), ("kr", ["SEK", "NOK", "DKK", "ISK"]), ("zł", ["PLN"]), ("Kč", ["CZK"]), ("Fr.", ["CHF"]), ("₹", ["INR"]),
    ];

    /// <summary>Whether it is a sign or a code.</summary>
    public static bool IsOne(string sign) => Currency.IsCode(sign) || s_signs.Any(one => string.Equals(one.Sign, sign, StringComparison.Ordinal));

    /// <summary>Whether it may stand for a currency; nothing may stand for any.</summary>
    public static bool Fits(string sign, Currency currency) =>
        sign.Length == 0 || string.Equals(sign, currency.Code, StringComparison.Ordinal) || s_signs.Any(one => string.Equals(one.Sign, sign, StringComparison.Ordinal) && one.Codes.Contains(currency.Code, StringComparer.Ordinal));
}
