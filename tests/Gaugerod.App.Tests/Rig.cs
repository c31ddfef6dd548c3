using Gaugerod.Serve;
using Microsoft.AspNetCore.Builder;
using Microsoft.Playwright;

namespace Gaugerod.App.Tests;

/// <summary>The published app, served, and a browser to open it in.</summary>
public sealed class Rig : IAsyncLifetime
{
    /// <summary>Playwright's own driver needs no browser of its own making; Debian's is the one tested.</summary>
    private const string Chromium = "/usr/bin/chromium";
    private const int WantedPort = 5100;

    private IPlaywright _playwright = null!;
    private WebApplication _server = null!;

    internal IBrowser Browser { get; private set; } = null!;

    internal string Address { get; private set; } = "";

    internal int Port { get; private set; }

    public async Task InitializeAsync()
    {
        (_server, Port) = (await Server.StartAsync(Published.Site(), WantedPort))!.Value;
        Address = Server.Address(Port);
        _playwright = await Playwright.CreateAsync();
        Browser = await _playwright.Chromium.LaunchAsync(new()
        {
            ExecutablePath = Chromium,
            Args = ["--no-sandbox", "--disable-background-networking", "--disable-component-update"],
        });
    }

    public async Task DisposeAsync()
    {
        await Browser.DisposeAsync();
        _playwright.Dispose();
        await _server.DisposeAsync();
    }

    /// <summary>A device of its own, with nothing kept on it yet.</summary>
    internal Task<Device> DeviceAsync(bool phone = true, bool worker = false) => DeviceAsync(Address, phone, worker);

    /// <summary>A device that has kept the app on its first visit; its server is then stopped and its network off.</summary>
    /// <param name="wantedPort">The port to serve it at.</param>
    /// <param name="script">Runs in every page before anything else; null for nothing.</param>
    internal async Task<(Device Device, IPage Page, string Address)> OfflineAsync(int wantedPort, string? script = null)
    {
        var (server, port) = (await Server.StartAsync(Published.Site(), wantedPort))!.Value;
        var device = await DeviceAsync(Server.Address(port), worker: true);
        if (script is not null) await device.Context.AddInitScriptAsync(script);
        await using var serving = server;
        var page = await device.OpenAsync();
        await page.WaitForFunctionAsync("() => navigator.serviceWorker.ready.then(r => r.active?.state === 'activated')");
        await server.StopAsync();
        await device.Context.SetOfflineAsync(true);
        return (device, page, Server.Address(port));
    }

    internal async Task<Device> DeviceAsync(string address, bool phone = true, bool worker = false)
    {
        var context = await Browser.NewContextAsync(new()
        {
            ViewportSize = phone ? new() { Width = 390, Height = 844 } : new() { Width = 1366, Height = 768 },
            HasTouch = phone,
            AcceptDownloads = true,
            ServiceWorkers = worker ? ServiceWorkerPolicy.Allow : ServiceWorkerPolicy.Block,
        });
        context.SetDefaultTimeout(30_000);
        return new Device(context, address);
    }
}

[CollectionDefinition(Name)]
public sealed class RigCollection : ICollectionFixture<Rig>
{
    public const string Name = "rig";
}
