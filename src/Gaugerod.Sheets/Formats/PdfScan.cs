using System.Globalization;
using System.Text;

namespace Gaugerod.Sheets.Formats;

/// <summary>
/// Finds the few things in a written PDF that are written anew. By hand, since patterns would bring the browser 50 kB for
/// these lines alone.
/// </summary>
internal static class PdfScan
{
    private const int UuidLength = 36, HashLength = 32, SubsetLength = 6;

    /// <summary>The number at a place, blanks before it passed over.</summary>
    public static int Number(string text, int at)
    {
        while (char.IsWhiteSpace(text[at])) at++;
        var end = at;
        while (end < text.Length && char.IsAsciiDigit(text[end])) end++;
        return int.Parse(text.AsSpan(at, end - at), CultureInfo.InvariantCulture);
    }

    /// <summary>The entries of the table of offsets: ten digits, five digits and n or f.</summary>
    public static (int At, bool Used)[] Entries(string text, int xref)
    {
        const int Long = 18;
        var entries = new List<(int At, bool Used)>();
        for (var i = xref; i + Long <= text.Length; i++)
        {
            if (!All(text, i, 10, char.IsAsciiDigit) || text[i + 10] != ' ' || !All(text, i + 11, 5, char.IsAsciiDigit) || text[i + 16] != ' ' || text[i + 17] is not ('n' or 'f')) continue;
            entries.Add((int.Parse(text.AsSpan(i, 10), CultureInfo.InvariantCulture), text[i + 17] == 'n'));
            i += Long - 1;
        }

        return [.. entries];
    }

    /// <summary>Where an object's stream begins; -1 when it has none.</summary>
    public static int StreamOf(string item)
    {
        const string Word = "stream";
        for (var at = item.IndexOf(Word, StringComparison.Ordinal); at >= 0; at = item.IndexOf(Word, at + 1, StringComparison.Ordinal))
        {
            var end = at + Word.Length;
            if (end < item.Length && item[end] == '\r') end++;
            if (end < item.Length && item[end] == '\n' && item.AsSpan(0, at).TrimEnd().EndsWith(">>", StringComparison.Ordinal)) return end + 1;
        }

        return -1;
    }

    /// <summary>The text with every identity of the form <c>uuid:...</c> replaced.</summary>
    public static string WithUuid(string text, string uuid) => Replaced(
        text, "uuid:", 0, UuidLength, after => All(text, after, UuidLength, c => char.IsAsciiHexDigitLower(c) || c == '-'), _ => uuid);

    /// <summary>The trailer with its pair of identities replaced.</summary>
    public static string WithIdentity(string trailer, string identity) => Replaced(
        trailer, "/ID[<", 0, HashLength + 2 + HashLength + 2,
        after => All(trailer, after, HashLength, char.IsAsciiHexDigitUpper) && All(trailer, after + HashLength + 2, HashLength, char.IsAsciiHexDigitUpper), _ => identity);

    /// <summary>The text with the name of every subset of our font, <c>/ABCDEF+</c>, replaced.</summary>
    public static string WithSubsets(string text, Func<string, string> name) => Replaced(
        text, "+Inter", SubsetLength + 1, -"Inter".Length,
        after => after - "+Inter".Length - SubsetLength - 1 is >= 0 and var slash && text[slash] == '/' && All(text, slash + 1, SubsetLength, char.IsAsciiLetterUpper), name);

    /// <summary>Replaces every place of a word, with some characters before and behind it, that is what it should be.</summary>
    private static string Replaced(string text, string word, int before, int behind, Func<int, bool> holds, Func<string, string> by)
    {
        var (made, from) = (new StringBuilder(text.Length), 0);
        for (var at = text.IndexOf(word, StringComparison.Ordinal); at >= 0; at = text.IndexOf(word, at + word.Length, StringComparison.Ordinal))
        {
            var (start, end) = (at - before, at + word.Length + behind);
            if (start < from || end > text.Length || !holds(at + word.Length)) continue;
            made.Append(text, from, start - from).Append(by(text[start..end]));
            from = end;
        }

        return from == 0 ? text : made.Append(text, from, text.Length - from).ToString();
    }

    private static bool All(string text, int at, int count, Func<char, bool> kind)
    {
        if (at < 0 || at + count > text.Length) return false;
        for (var i = at; i < at + count; i++)
        {
            if (!kind(text[i])) return false;
        }

        return true;
    }
}
