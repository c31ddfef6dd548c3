namespace Gaugerod.Cli;

/// <summary>Finds the word a person probably meant.</summary>
internal static class Spelling
{
    /// <summary>The nearest of the known words; null when none comes near. Of two as near, the one that sorts first.</summary>
    public static string? Nearest(string word, IEnumerable<string> known) => known
        .Select(k => (Word: k, Steps: Steps(word, k)))
        .Where(c => c.Steps <= (word.Length + 2) / 3)
        .OrderBy(c => c.Steps).ThenBy(c => c.Word, StringComparer.Ordinal)
        .Select(c => c.Word).FirstOrDefault();

    /// <summary>How many letters must be put in, taken out or changed to come from one word to the other.</summary>
    private static int Steps(string from, string to)
    {
        var row = Enumerable.Range(0, to.Length + 1).ToArray();
        for (var i = 1; i <= from.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= to.Length; j++)
            {
                var same = char.ToUpperInvariant(from[i - 1]) == char.ToUpperInvariant(to[j - 1]) ? 0 : 1;
                (diagonal, row[j]) = (row[j], Math.Min(Math.Min(row[j], row[j - 1]) + 1, diagonal + same));
            }
        }

        return row[^1];
    }
}
