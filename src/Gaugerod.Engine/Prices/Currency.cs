namespace Gaugerod.Engine.Prices;

/// <summary>What prices are in. It is shown as it was typed; only how finely it is paid is known of it.</summary>
/// <param name="Code">Three capital letters, such as <c>EUR</c> (ISO 4217).</param>
public sealed record Currency(string Code)
{
    // ISO 4217, from memory: what is not paid in hundredths. Where it should be found: the list of current currencies kept by its agency.
    private static readonly string[] s_whole = ["BIF", "CLP", "DJF", "GNF", "ISK", "JPY", "KMF", "KRW", "PYG", "RWF", "UGX", "VND", "VUV", "XAF", "XOF", "XPF"];
    private static readonly string[] s_thousandths = ["BHD", "IQD", "JOD", "KWD", "LYD", "OMR", "TND"];

    /// <summary>How many places stand after the point of an amount that is paid: 0, 2 or 3.</summary>
    public int Places => s_whole.Contains(Code, StringComparer.Ordinal) ? 0 : s_thousandths.Contains(Code, StringComparer.Ordinal) ? 3 : 2;

    /// <summary>The least that is paid, such as 0.01.</summary>
    public decimal Least => new(1, 0, 0, false, (byte)Places);

    /// <summary>Whether a code has the form of one.</summary>
    public static bool IsCode(string code)
    {
        ArgumentNullException.ThrowIfNull(code);
        return code.Length == 3 && code.All(char.IsAsciiLetterUpper);
    }

    /// <summary>Whether a sign or a code beside an amount may stand for it; nothing may stand for any.</summary>
    public bool Fits(string sign)
    {
        ArgumentNullException.ThrowIfNull(sign);
        return CurrencySigns.Fits(sign, this);
    }

    /// <summary>An amount with as many places as are paid, a point before them.</summary>
    public string Write(decimal amount) => amount.ToString(Places switch { 0 => "0", 3 => "0.000", _ => "0.00" }, System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>An amount as it is paid: half of the least is rounded away from nought, as a till does.</summary>
    public decimal Paid(decimal amount) => decimal.Round(amount, Places, MidpointRounding.AwayFromZero);
}
