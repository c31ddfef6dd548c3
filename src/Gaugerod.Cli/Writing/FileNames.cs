using System.Globalization;
using System.Text;

namespace Gaugerod.Cli.Writing;

/// <summary>
/// Makes file names out of names that people gave: small letters, digits and single hyphens, never two alike. Without
/// capitals two names cannot meet on a disk that holds big and small letters for the same.
/// </summary>
internal sealed class FileNames
{
    private const int MostLetters = 60;
    private readonly HashSet<string> _taken = new(StringComparer.Ordinal);

    /// <summary>A file name such as <c>face-left-wall.svg</c>, not given before by this object.</summary>
    /// <param name="prefix">What comes first; safe already.</param>
    /// <param name="name">The name a person gave.</param>
    /// <param name="extension">The ending, with its dot; safe already.</param>
    public string Make(string prefix, string name, string extension)
    {
        var stem = prefix + Safe(name);
        var tried = stem;
        for (var n = 2; !_taken.Add(tried); n++) tried = string.Create(CultureInfo.InvariantCulture, $"{stem}-{n}");
        return tried + extension;
    }

    private static string Safe(string name)
    {
        var text = new StringBuilder();
        foreach (var rune in name.EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune)) text.Append(Rune.ToLowerInvariant(rune).ToString());
            else if (text.Length > 0 && text[^1] != '-') text.Append('-');
            if (text.Length >= MostLetters) break;
        }

        var safe = text.ToString().TrimEnd('-');
        return safe.Length == 0 ? "unnamed" : safe;
    }
}
