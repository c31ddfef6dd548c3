using System.Globalization;
using Gaugerod.Engine.Sharing;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Sharing;

/// <summary>A published set of strips.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Tile">The length they are cut from.</param>
/// <param name="Strips">Their lengths.</param>
/// <param name="Least">The least number of lengths, as the table of bounds has it.</param>
public sealed record StripSet(string Name, long Tile, long[] Strips, int Least)
{
    public override string ToString() => Name;

    /// <summary>Strips that need no end, no blade: plain bin packing.</summary>
    internal Wanted Wanted => new(new(Tile, 1, 0, Turns.Half), Strips.Select(s => new Blank(s, 1, Sides.Top | Sides.Bottom)).ToList());
}

/// <summary>
/// Published sets of strips with known optima, read from tests/Data/strips; SOURCES.txt there says whose they are. The optima are
/// those of the table of bounds, which corrects two of the first set.
/// </summary>
internal static class StripSets
{
    private static readonly Dictionary<string, int> Bounds = File.ReadLines(In("bounds.txt"))
        .Select(line => line.Split('\t')).ToDictionary(f => f[0], f => int.Parse(f[2], CultureInfo.InvariantCulture), StringComparer.Ordinal);

    public static IEnumerable<StripSet> U120 => Listed("u120.txt");

    public static IEnumerable<StripSet> T60 => Listed("t60.txt");

    public static IEnumerable<StripSet> Hard28
    {
        get
        {
            foreach (var block in File.ReadAllText(In("hard28.txt")).Split("'BPP").Skip(1))
            {
                var words = Words(block.Replace("'", " ", StringComparison.Ordinal));
                var strips = new List<long>();
                for (var i = 3; i + 1 < words.Length; i += 2) strips.AddRange(Enumerable.Repeat(Number(words[i]), int.Parse(words[i + 1], CultureInfo.InvariantCulture)));
                yield return new("BPP" + words[0], Number(words[2]), [.. strips], Bounds["Hard28_BPP" + words[0]]);
            }
        }
    }

    private static IEnumerable<StripSet> Listed(string file)
    {
        var words = Words(File.ReadAllText(In(file)));
        var at = 1;
        for (var sets = int.Parse(words[0], CultureInfo.InvariantCulture); sets > 0; sets--)
        {
            var (name, tile, count) = (words[at], Number(words[at + 1]), int.Parse(words[at + 2], CultureInfo.InvariantCulture));
            yield return new(name, tile, words.Skip(at + 4).Take(count).Select(Number).ToArray(), Bounds["Falkenauer_" + name]);
            at += 4 + count;
        }
    }

    private static string In(string file) => Path.Combine(Repo.Root, "tests/Data/strips", file);

    private static string[] Words(string text) => text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    // One decimal at the most, so that tenths are whole.
    private static long Number(string word) => (long)Math.Round(decimal.Parse(word, CultureInfo.InvariantCulture) * 10);
}
