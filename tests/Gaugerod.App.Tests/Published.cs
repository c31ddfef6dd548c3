using System.Diagnostics;
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

    /// <summary>The version that the page says it is of.</summary>
    public const string NextVersion = "99.1.0";

    /// <summary>The same sources, published again as a later version.</summary>
    /// <param name="into">Where everything that is made on the way goes, so that the first version stays as it is.</param>
    /// <returns>The folder to serve.</returns>
    public static async Task<string> AgainAsync(string into)
    {
        string[] words = ["publish", Path.Combine(Repo.Root, "src", "Gaugerod.App"), "-c", "Release", "-v", "q", "-m:1", "-nodeReuse:false", "-p:RunAnalyzers=false", "-p:UseSharedCompilation=false", "-p:ArtifactsPath=" + into, "-p:Version=" + NextVersion];
        using var process = Process.Start(new ProcessStartInfo("dotnet", words) { RedirectStandardOutput = true })!;
        var said = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.True(process.ExitCode == 0, said);
        return Path.Combine(into, "publish", "Gaugerod.App", "release", "wwwroot");
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

    [GeneratedRegex("\"url\":\\s*\"(?<url>[^\"]+)\"")]
    private static partial Regex Url();
}
