using Gaugerod.Testing;

namespace Gaugerod.House.Tests;

/// <summary>A source file as the rules of the house look at it.</summary>
/// <param name="Path">From the root of the repository, with slashes.</param>
/// <param name="Code">Its text without comment lines: what is said in a comment binds nothing.</param>
/// <param name="Lines">How many lines it has, comments and all.</param>
internal sealed record Source(string Path, string Code, int Lines)
{
    /// <summary>All C# files below a folder of the repository; a folder that is not there yet has none.</summary>
    public static IEnumerable<Source> In(string folder)
    {
        var full = System.IO.Path.Combine(Repo.Root, folder);
        if (!Directory.Exists(full)) return [];
        return
            from file in Directory.EnumerateFiles(full, "*.cs", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            let lines = File.ReadAllLines(file)
            select new Source(
                System.IO.Path.GetRelativePath(Repo.Root, file).Replace('\\', '/'),
                string.Join('\n', lines.Where(l => !l.TrimStart().StartsWith("//", StringComparison.Ordinal))),
                lines.Length);
    }
}
