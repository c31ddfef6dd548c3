using System.Diagnostics;
using Gaugerod.Serve;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>In a cellar without a network, and when a new version comes.</summary>
[Collection(RigCollection.Name)]
public sealed class OfflineTests(Rig rig)
{
    private const int WantedPort = 5200;

    /// <summary>Ours: what the reload of a kept page may take here while other tests' leftovers still run.</summary>
    private const double MostSeconds = 6;

    [Fact]
    public async Task With_the_server_stopped_it_opens_takes_a_new_job_and_draws_the_sheets()
    {
        var (device, page, address) = await rig.OfflineAsync(WantedPort);
        await using var owned = device;
        var clock = Stopwatch.StartNew();
        await page.ReloadAsync();
        await Device.ReadyAsync(page);
        Assert.InRange(clock.Elapsed.TotalSeconds, 0, MostSeconds);

        // A query behind the address is no reason to lose the page.
        await page.GotoAsync(address + "?from=home");
        await Device.ReadyAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "New job" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "millimetres", Exact = true }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "One wall" }).ClickAsync();
        await page.GetByLabel("At the foot", new() { Exact = true }).FillAsync("1500");
        await page.GetByLabel("At the left", new() { Exact = true }).FillAsync("2400");
        await page.GetByRole(AriaRole.Button, new() { Name = "Next: tiles" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "300 × 600" }).ClickAsync();
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Cuts");
        await page.Locator(".pieces input[type=checkbox]").First.CheckAsync();
        await Device.SavedAsync(page);
        await Device.GoAsync(page, "Sheets");
        using var sheets = PdfDocument.Open(await Device.DownloadAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Job sheets" })));
        Assert.NotEqual(0, sheets.NumberOfPages);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_new_version_is_offered_and_taken_only_when_asked_with_nothing_lost()
    {
        using var folder = new Scratch();
        var (first, port) = (await Server.StartAsync(Published.Site(), WantedPort))!.Value;
        await using var device = await rig.DeviceAsync(Server.Address(port), worker: true);
        var page = await device.OpenAsync();
        await page.WaitForFunctionAsync("() => navigator.serviceWorker.ready.then(r => r.active?.state === 'activated')");
        await page.ReloadAsync();
        await Device.ReadyAsync(page);
        await Device.OpenSampleAsync(page, "Plain wall, by hand");
        await first.StopAsync();
        await first.DisposeAsync();

        var (second, again) = (await Server.StartAsync(Published.SiteOf(await Published.AgainAsync(folder.Path)), port))!.Value;
        Assert.Equal(port, again);
        await using var serving = second;
        await page.EvaluateAsync("() => navigator.serviceWorker.getRegistration().then(r => r.update()).then(() => true)");
        var offer = page.GetByRole(AriaRole.Button, new() { Name = "Take it" });
        await Expect(offer).ToBeVisibleAsync();
        Assert.NotEqual(Published.NextVersion, await page.Locator("html").GetAttributeAsync("data-version"));

        // What was done a moment before is saved first.
        await Device.GoAsync(page, "Cuts");
        await page.Locator(".pieces input[type=checkbox]").First.CheckAsync();
        await offer.ClickAsync();
        await Expect(page.Locator($"html[data-version='{Published.NextVersion}']")).ToBeVisibleAsync();
        await Device.ReadyAsync(page);
        await Device.GoAsync(page, "Cuts");
        await Expect(page.Locator(".pieces input[type=checkbox]").First).ToBeCheckedAsync();
        await Expect(offer).ToHaveCountAsync(0);
        Assert.Empty(device.Troubles);
    }

    private sealed class Scratch : IDisposable
    {
        public string Path { get; } = Directory.CreateTempSubdirectory("gaugerod-").FullName;

        public void Dispose() => Directory.Delete(Path, recursive: true);
    }
}
