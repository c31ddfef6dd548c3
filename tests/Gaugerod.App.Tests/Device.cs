using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>One person's device: what it keeps, its tabs, and everything that went wrong or left it.</summary>
internal sealed class Device : IAsyncDisposable
{
    private readonly string _address;

    public Device(IBrowserContext context, string address)
    {
        (Context, _address) = (context, address);
        context.Console += (_, message) =>
        {
            // The tests themselves forbid the service worker where it is not what is looked at, and Playwright says so.
            if (message.Text.StartsWith("Service Worker registration blocked by Playwright", StringComparison.Ordinal)) return;
            if (message.Type is "error" or "warning") Troubles.Add($"{message.Type}: {message.Text}");
        };
        context.WebError += (_, error) => Troubles.Add("thrown: " + error.Error);
        context.Request += (_, request) =>
        {
            if (!request.Url.StartsWith(address, StringComparison.Ordinal) && !request.Url.StartsWith("blob:" + address, StringComparison.Ordinal) && !request.Url.StartsWith("data:", StringComparison.Ordinal)) Troubles.Add("left for " + request.Url);
        };
    }

    public IBrowserContext Context { get; }

    /// <summary>What the console said, what was thrown, and every request to another place.</summary>
    public List<string> Troubles { get; } = [];

    public async Task<IPage> OpenAsync()
    {
        var page = await Context.NewPageAsync();
        await page.GotoAsync(_address);
        await ReadyAsync(page);
        return page;
    }

    /// <summary>Waits until the app itself stands where its static shell stood.</summary>
    public static Task ReadyAsync(IPage page) => page.Locator("body[data-ready=yes]").WaitForAsync();

    public static async Task GoAsync(IPage page, string station)
    {
        await page.GetByRole(AriaRole.Navigation, new() { Name = "Stations" }).GetByRole(AriaRole.Button, new() { Name = station, Exact = true }).ClickAsync();
        await page.Locator($"main[data-station={station}]").WaitForAsync();
    }

    /// <summary>Unfolds every setting and every line of trim at Cuts.</summary>
    public static async Task UnfoldAsync(IPage page)
    {
        await Expect(page.Locator("details.setting").Last).ToBeVisibleAsync();
        // They are drawn one after another; the choice of settings names them all.
        await page.WaitForFunctionAsync("() => document.querySelectorAll('details.setting').length >= document.querySelectorAll('.jump option').length - 1");
        await page.EvaluateAsync("() => document.querySelectorAll('details.setting:not([open]) > summary').forEach(fold => fold.click())");
        await Expect(page.Locator("details.setting:not([open])")).ToHaveCountAsync(0, new() { Timeout = 30_000 });
    }

    /// <summary>Opens a sample and waits for its plan.</summary>
    public static async Task OpenSampleAsync(IPage page, string title)
    {
        await GoAsync(page, "Jobs");
        await page.GetByRole(AriaRole.Button, new() { Name = title, Exact = true }).ClickAsync();
        await PlannedAsync(page);
    }

    /// <summary>Waits for the plan of the job as it stands, and stays at Order.</summary>
    public static async Task PlannedAsync(IPage page)
    {
        await GoAsync(page, "Order");
        await Expect(page.Locator("main table").First).ToBeVisibleAsync(new() { Timeout = 90_000 });
        await Expect(page.Locator("main").GetByText("Working it out")).ToHaveCountAsync(0, new() { Timeout = 90_000 });
    }

    /// <summary>What pressing a key hands to the person.</summary>
    public static async Task<byte[]> DownloadAsync(IPage page, ILocator key)
    {
        var download = await page.RunAndWaitForDownloadAsync(() => key.ClickAsync(), new() { Timeout = 90_000 });
        await using var stream = await download.CreateReadStreamAsync();
        using var bytes = new MemoryStream();
        await stream.CopyToAsync(bytes);
        return bytes.ToArray();
    }

    /// <summary>Waits until what was done is on the device.</summary>
    public static Task SavedAsync(IPage page) => Expect(page.Locator("header .state")).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^saved "));

    public ValueTask DisposeAsync() => Context.DisposeAsync();
}
