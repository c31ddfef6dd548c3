using System.Net;
using System.Security.Cryptography;
using System.Text.RegularExpressions;

namespace Gaugerod.Serve;

/// <summary>
/// The published app, read once and whole: a later publish cannot mix two versions, and a path that is not a key of
/// this list leads nowhere, whatever dots it holds.
/// </summary>
internal sealed partial class Site
{
    private static readonly (string Ending, string Coding)[] s_packed = [(".br", "br"), (".gz", "gzip")];
    private readonly Dictionary<string, Shape[]> _files;

    private Site(Dictionary<string, Shape[]> files, string policy) => (_files, Policy) = (files, policy);

    /// <summary>The content security policy that the page itself states.</summary>
    public string Policy { get; }

    /// <summary>The paths that are served, each beginning with a slash.</summary>
    public IEnumerable<string> Paths => _files.Keys;

    /// <summary>Reads a published folder.</summary>
    /// <returns>Null, and why in words, when it holds no published app.</returns>
    public static (Site? Site, string Trouble) Read(string folder)
    {
        var page = Path.Combine(folder, "index.html");
        if (!File.Exists(page)) return (null, $"{folder} holds no index.html; expected the published app.");
        var policy = PolicyOfPage().Match(File.ReadAllText(page));
        if (!policy.Success) return (null, $"{page} states no content security policy; it is not served without one.");

        var files = new Dictionary<string, Shape[]>(StringComparer.Ordinal);
        foreach (var file in Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories))
        {
            if (s_packed.Any(packed => file.EndsWith(packed.Ending, StringComparison.Ordinal))) continue;
            files["/" + Path.GetRelativePath(folder, file).Replace('\\', '/')] = [.. Shapes(file)];
        }

        files["/"] = files["/index.html"];
        return (new(files, WebUtility.HtmlDecode(policy.Groups["policy"].Value)), "");
    }

    /// <summary>The shapes of a path, the smallest packing first; none where nothing is served.</summary>
    public IReadOnlyList<Shape> Find(string path) => _files.TryGetValue(path, out var shapes) ? shapes : [];

    private static IEnumerable<Shape> Shapes(string file)
    {
        foreach (var (ending, coding) in s_packed)
        {
            if (File.Exists(file + ending)) yield return ShapeOf(coding, file + ending);
        }

        yield return ShapeOf("", file);
    }

    private static Shape ShapeOf(string coding, string file)
    {
        var bytes = File.ReadAllBytes(file);
        // The packing is part of the tag: two packings of one file are not the same bytes (RFC 9110, 8.8.3).
        var mark = Convert.ToHexStringLower(SHA256.HashData(bytes).AsSpan(0, 16));
        return new(coding, coding.Length == 0 ? $"\"{mark}\"" : $"\"{mark}-{coding}\"", bytes);
    }

    [GeneratedRegex("""<meta http-equiv="Content-Security-Policy" content="(?<policy>[^"]+)"\s*/?>""", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex PolicyOfPage();
}
