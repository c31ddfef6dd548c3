using System.Diagnostics;
using Gaugerod.Testing;
using Microsoft.Playwright;

namespace Gaugerod.App.Tests;

/// <summary>Asking for sheets, in the browser and at the command line.</summary>
internal static class SheetsAsked
{
    /// <summary>The sample that takes longest.</summary>
    public const string Shower = "Guest shower, feet and inches";

    public static ILocator Key(IPage page) => page.GetByRole(AriaRole.Button, new() { Name = "Job sheets" });

    public static async Task<IPage> AtSheetsAsync(Device device, string title)
    {
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, title);
        await Device.GoAsync(page, "Sheets");
        await page.Locator("main figure").First.WaitForAsync();
        return page;
    }

    public static async Task<byte[]> ByCommandLineAsync(string sample)
    {
        var folder = Directory.CreateTempSubdirectory("gaugerod-");
        try
        {
            // Its own folder holds all that it loads; beside these tests some of it comes from a larger framework that it does not ask for.
            var program = Path.Combine(Repo.Root, "artifacts", "bin", "Gaugerod.Cli", "release", "gaugerod.dll");
            using var process = Process.Start("dotnet", [program, "plan", Path.Combine(Repo.Root, "samples", sample + ".json"), "--out", folder.FullName, "--quiet"]);
            await process.WaitForExitAsync();
            Assert.InRange(process.ExitCode, 0, 1);
            return await File.ReadAllBytesAsync(Path.Combine(folder.FullName, "sheets.pdf"));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
