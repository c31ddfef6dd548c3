using System.Globalization;

namespace Gaugerod.Engine.Prices;

/// <summary>
/// The text of prices and quantities: <c>12.50</c>, <c>12 to 15</c>, <c>12 to 15, likely 13</c>, with or without a currency. Where nothing is said of the likely
/// number, it is the middle.
/// </summary>
public static class PriceText
{
    /// <summary>What stands in place of a price where others buy it.</summary>
    public const string ByOthers = "by others";

    /// <summary>No number is larger.</summary>
    public const decimal Most = 10_000_000;

    /// <summary>So many places after the point, at most.</summary>
    public const int Places = 4;

    private const string Likely = "likely";

    /// <summary>Reads a number or a range.</summary>
    /// <param name="text">What stands there.</param>
    /// <param name="mark">The mark before the parts of one; the other may part thousands.</param>
    public static PriceReading Read(string text, DecimalMark mark)
    {
        ArgumentNullException.ThrowIfNull(text);
        var (head, likely) = Halved(text.Trim(), Likely);
        var (first, last) = Ends(head.TrimEnd(' ', ',', ';'));
        if (Number(first, mark) is not { } one || (last is not null && Number(last, mark) is null) || (likely is not null && Number(likely, mark) is null)) return new PriceReading.Refused(Expected(mark), Nearest(text, mark));
        var other = last is null ? one : Number(last, mark)!.Value;
        var middle = likely is null ? (one.Value + other.Value) / 2 : Number(likely, mark)!.Value.Value;
        var sign = one.Sign.Length > 0 ? one.Sign : other.Sign;
        if (other.Sign.Length > 0 && !string.Equals(other.Sign, sign, StringComparison.Ordinal)) return new PriceReading.Refused("one currency", null);
        if (one.Value > other.Value) return new PriceReading.Refused("the lower first, such as \"12 to 15\"", string.Create(CultureInfo.InvariantCulture, $"{last!.Trim()} to {first.Trim()}"));
        if (middle < one.Value || middle > other.Value) return new PriceReading.Refused("a likely number between the two", null);
        return new PriceReading.Understood(new(one.Value, middle, other.Value), sign);
    }

    /// <summary>A number as it is written in files: with a point, and no more places than it has.</summary>
    public static string Plain(decimal number) => number.ToString("0.############################", CultureInfo.InvariantCulture);

    /// <summary>A number or a range as <see cref="Read"/> reads it again.</summary>
    public static string Plain(Spread spread)
    {
        if (!spread.IsRange) return Plain(spread.Likely);
        var ends = $"{Plain(spread.Low)} to {Plain(spread.High)}";
        return spread == Spread.Of(spread.Low, spread.High) ? ends : $"{ends}, likely {Plain(spread.Likely)}";
    }

    private static (string Head, string? Behind) Halved(string text, string word)
    {
        var at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase);
        return at < 0 ? (text, null) : (text[..at].Trim(), text[(at + word.Length)..].Trim(' ', ':'));
    }

    private static (string First, string? Last) Ends(string text)
    {
        foreach (var between in (string[])[" to ", "–", "—", " - "])
        {
            var at = text.IndexOf(between, StringComparison.OrdinalIgnoreCase);
            if (at > 0) return (text[..at], text[(at + between.Length)..]);
        }

        // A minus stands before a number, a hyphen between two.
        var hyphen = text.IndexOf('-', StringComparison.Ordinal);
        return hyphen > 0 && char.IsAsciiDigit(text[hyphen - 1]) ? (text[..hyphen], text[(hyphen + 1)..]) : (text, null);
    }

    private static (decimal Value, string Sign)? Number(string text, DecimalMark mark)
    {
        var (number, sign) = Parted(text.Trim());
        if (number.Length == 0 || sign is null) return null;
        var (point, other) = mark == DecimalMark.Point ? ('.', ',') : (',', '.');
        var minus = number[0] is '-' or '−';
        var digits = minus ? number[1..] : number;
        var halves = digits.Split(point);
        if (halves.Length > 2 || Whole(halves[0], other) is not { } whole) return null;
        var parts = halves.Length == 2 ? halves[1] : "";
        if ((halves.Length == 2 && parts.Length is 0 or > Places) || !parts.All(char.IsAsciiDigit)) return null;
        if (!decimal.TryParse($"{(minus ? "-" : "")}{whole}.{(parts.Length == 0 ? "0" : parts)}", NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value)) return null;
        return value is >= -Most and <= Most ? (value, sign) : null;
    }

    // Thousands may be parted, but only by threes and by one mark.
    private static string? Whole(string text, char other)
    {
        if (text.Length == 0) return null;
        var parting = text.FirstOrDefault(letter => !char.IsAsciiDigit(letter));
        if (parting == '\0') return text.Length <= 12 ? text : null;
        if (parting != other && !IsBlank(parting) && parting is not ('\'' or '’')) return null;
        var groups = text.Split(parting);
        return groups[0].Length is >= 1 and <= 3 && (groups[0] is not "0" || groups.Length == 1) && groups.Skip(1).All(group => group.Length == 3) && groups.All(group => group.All(char.IsAsciiDigit)) && groups.Length <= 4 ? string.Concat(groups) : null;
    }

    /// <summary>The number in a text and the currency before or behind it; no currency where what stands there is none.</summary>
    private static (string Number, string? Sign) Parted(string text)
    {
        var (from, to) = (text.Length, -1);
        for (var i = 0; i < text.Length; i++)
        {
            if (!char.IsAsciiDigit(text[i]) && text[i] is not ('-' or '−')) continue;
            from = Math.Min(from, i);
            to = i;
        }

        if (to < from) return ("", "");
        var (before, behind) = (text[..from].Trim(), text[(to + 1)..].Trim());
        var sign = before.Length == 0 ? behind : behind.Length == 0 ? before : null;
        return (text[from..(to + 1)].Trim(), sign is null || sign.Length == 0 || CurrencySigns.IsOne(sign) ? sign : null);
    }

    private static bool IsBlank(char letter) => letter is ' ' or '\u00A0' or '\u202F' or '\u2009';

    private static string Expected(DecimalMark mark) => mark == DecimalMark.Point ? "a number to 10,000,000 such as \"12.50\", or \"12 to 15\"" : "a number to 10 000 000 such as \"12,50\", or \"12 to 15\"";

    // Written with the other mark it would be a number: that is what was meant, unless it parts thousands.
    private static string? Nearest(string text, DecimalMark mark)
    {
        if (text.Contains(mark == DecimalMark.Point ? '.' : ',', StringComparison.Ordinal)) return null;
        var other = mark == DecimalMark.Point ? text.Replace(',', '.') : text.Replace('.', ',');
        return !string.Equals(other, text, StringComparison.Ordinal) && Read(other, mark) is PriceReading.Understood ? other.Trim() : null;
    }
}
