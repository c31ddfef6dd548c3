using System.Text;

namespace Gaugerod.Sheets.Drawings;

/// <summary>Sets fractions as they are written by hand: 4 1/2 becomes 4 ¹⁄₂, raised, lowered and joined by a fraction bar.</summary>
internal static class Fractions
{
    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";
    private const string Lowered = "₀₁₂₃₄₅₆₇₈₉";

    /// <summary>The gap between whole and fraction is a no-break space: a length is never broken over two lines.</summary>
    private const char NoBreak = '\u00A0';

    public static string Set(string words)
    {
        var text = new StringBuilder(words.Length);
        for (var i = 0; i < words.Length; i++)
        {
            var over = FractionAt(words, i, out var bar);
            if (over == 0)
            {
                text.Append(words[i] == ' ' && UnitFollows(words, i) ? NoBreak : words[i]);
                continue;
            }

            if (i >= 2 && words[i - 1] == ' ' && char.IsAsciiDigit(words[i - 2])) text[^1] = NoBreak;
            foreach (var figure in words[i..bar]) text.Append(Raised[figure - '0']);
            text.Append('\u2044');
            foreach (var figure in words[(bar + 1)..over]) text.Append(Lowered[figure - '0']);
            i = over - 1;
        }

        return text.ToString();
    }

    /// <summary>Whether a figure stands before a space and its unit behind it.</summary>
    private static bool UnitFollows(string words, int space) =>
        space > 0 && char.IsAsciiDigit(words[space - 1])
        && (words.AsSpan(space + 1).StartsWith("in", StringComparison.Ordinal) || words.AsSpan(space + 1).StartsWith("mm", StringComparison.Ordinal))
        && (space + 3 == words.Length || !char.IsLetter(words[space + 3]));

    /// <summary>Where a fraction that begins here ends; 0 when none begins here.</summary>
    private static int FractionAt(string words, int start, out int bar)
    {
        bar = start;
        if (!char.IsAsciiDigit(words[start]) || (start > 0 && (char.IsAsciiDigit(words[start - 1]) || words[start - 1] is '/' or '.'))) return 0;
        while (bar < words.Length && char.IsAsciiDigit(words[bar])) bar++;
        if (bar == words.Length || words[bar] != '/') return 0;
        var end = bar + 1;
        while (end < words.Length && char.IsAsciiDigit(words[end])) end++;
        return end > bar + 1 && (end == words.Length || words[end] != '/') ? end : 0;
    }
}
