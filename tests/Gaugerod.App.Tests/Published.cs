using System.Diagnostics;
using System.Security.Cryptography;
using System.Text.RegularExpressions;
using Gaugerod.Serve;
using Gaugerod.Testing;

namespace Gaugerod.App.Tests;

/// <summary>The app as it is handed out.</summary>
internal static partial class Published
{
    /// <summary>Where <c>dotnet publish</c> lays it.</summary>
    public static string Folder { get; } = Path.Combine(Repo.Root, "artifacts", "publish", "Gaugerod.App", "release", "wwwroot");

    public static Site Site() => SiteOf(Folder);

    public static Site SiteOf(string folder)
    {
        var (site, trouble) = Serve.Site.Read(folder);
        Assert.True(site is not null, $"{trouble} Publish it first: dotnet publish src/Gaugerod.App -c Release");
        return site;
    }

    /// <summary>The files that the service worker keeps, as their paths below the folder.</summary>
    public static IReadOnlyList<string> Kept(string folder) =>
    [
        .. Url().Matches(File.ReadAllText(Path.Combine(folder, "service-worker-assets.js"))).Select(m => m.Groups["url"].Value)
            .Where(url => !url.StartsWith("service-worker", StringComparison.Ordinal)),
    ];

    /// <summary>A copy that is a later version: its page says so, and the list of kept files knows it.</summary>
    public static string NextVersion(string into)
    {
        foreach (var file in Directory.EnumerateFiles(Folder, "*", SearchOption.AllDirectories))
        {
            var copy = Path.Combine(into, Path.GetRelativePath(Folder, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        var page = Path.Combine(into, "index.html");
        var list = Path.Combine(into, "service-worker-assets.js");
        var before = Hash(page);
        File.WriteAllText(page, File.ReadAllText(page).Replace("<html lang=\"en\">", "<html lang=\"en\" data-version=\"next\">", StringComparison.Ordinal));
        var text = File.ReadAllText(list).Replace(before, Hash(page), StringComparison.Ordinal);
        File.WriteAllText(list, Version().Replace(text, "\"version\": \"next\""));
        foreach (var packed in new[] { ".br", ".gz" }.SelectMany(ending => new[] { page + ending, list + ending })) File.Delete(packed);
        return into;
    }

    /// <summary>What the command line plans of a job file.</summary>
    public static async Task<byte[]> PlanByCommandLineAsync(string job)
    {
        using var process = Process.Start(new ProcessStartInfo("dotnet", [Path.Combine(AppContext.BaseDirectory, "gaugerod.dll"), "plan", job, "--json", "--quiet"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        })!;
        using var plan = new MemoryStream();
        await process.StandardOutput.BaseStream.CopyToAsync(plan);
        await process.WaitForExitAsync();
        Assert.InRange(process.ExitCode, 0, 1);
        return plan.ToArray();
    }

    private static string Hash(string file) => "sha256-" + Convert.ToBase64String(SHA256.HashData(File.ReadAllBytes(file)));

    [GeneratedRegex("\"url\":\\s*\"(?<url>[^\"]+)\"")]
    private static partial Regex Url();

    [GeneratedRegex("\"version\":\\s*\"[^\"]+\"")]
    private static partial Regex Version();
}
