namespace Gaugerod.Files.Jobs;

/// <summary>Finds the known word that a misspelt one was probably meant to be.</summary>
internal static class Near
{
    private const int LongestCompared = 64;

    /// <summary>The nearest of some words; null when none is near enough to be meant.</summary>
    public static string? Of(string word, IEnumerable<string> known)
    {
        if (word.Length is 0 or > LongestCompared) return null;
        string? best = null;
        var (least, most) = (int.MaxValue, -1);
        foreach (var candidate in known)
        {
            // Of two as near, the one that begins alike: fingers slip more often late in a word than at its beginning.
            var (distance, alike) = (Distance(Plain(word), Plain(candidate)), AlikeFromTheStart(Plain(word), Plain(candidate)));
            if (distance > least || (distance == least && alike <= most)) continue;
            (best, least, most) = (candidate, distance, alike);
        }

        // A third of the letters wrong is a slip; half of them is another word.
        if (best is not null && least <= Math.Max(1, Math.Max(word.Length, best.Length) / 3)) return best;
        return known.FirstOrDefault(k => BeginAlike(k, word));
    }

    /// <summary>How many letters must be added, left out, changed or swapped with their neighbour.</summary>
    public static int Distance(string a, string b)
    {
        var table = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++) table[i, 0] = i;
        for (var j = 0; j <= b.Length; j++) table[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var change = table[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                table[i, j] = Math.Min(change, Math.Min(table[i - 1, j], table[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1]) table[i, j] = Math.Min(table[i, j], table[i - 2, j - 2] + 1);
            }
        }

        return table[a.Length, b.Length];
    }

    private static int AlikeFromTheStart(string a, string b)
    {
        var same = 0;
        while (same < a.Length && same < b.Length && a[same] == b[same]) same++;
        return same;
    }

    // inch for in, joints for joint; the shorter one says enough to be meant.
    private static bool BeginAlike(string known, string word)
    {
        var (a, b) = (Plain(known), Plain(word));
        return Math.Min(a.Length, b.Length) >= 2 && (a.StartsWith(b, StringComparison.Ordinal) || b.StartsWith(a, StringComparison.Ordinal));
    }

    // per_box, Per-Box and "per box" are all meant as perBox.
    private static string Plain(string word) => string.Concat(word.Where(char.IsLetterOrDigit)).ToUpperInvariant();
}
