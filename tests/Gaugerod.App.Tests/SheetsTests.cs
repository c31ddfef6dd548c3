using Microsoft.Playwright;
using static Gaugerod.App.Tests.SheetsAsked;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>The sheets that are made in the browser: the command line's, on a thread of their own.</summary>
[Collection(RigCollection.Name)]
public sealed class SheetsTests(Rig rig)
{
    private const string PlainWall = "Plain wall, by hand";
    private const int WantedPort = 5300;

    [Theory]
    [InlineData("guest-shower", Shower)]
    [InlineData("cloakroom", "Cloakroom wall, millimetres")]
    [InlineData("plain-wall", PlainWall)]
    public async Task A_sample_s_sheets_are_the_command_line_s_byte_for_byte(string sample, string title)
    {
        await using var device = await rig.DeviceAsync();
        var page = await AtSheetsAsync(device, title);
        Assert.Equal(await ByCommandLineAsync(sample), await Device.DownloadAsync(page, Key(page)));
        await Expect(page.GetByText("handed to your downloads")).ToBeVisibleAsync();
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task What_only_a_PDF_needs_is_asked_for_with_the_first_sheets_and_not_before()
    {
        await using var device = await rig.DeviceAsync();
        var asked = new List<string>();
        device.Context.Request += (_, request) => { lock (asked) asked.Add(request.Url); };
        var page = await AtSheetsAsync(device, PlainWall);
        // The single files and the pictures are drawn without it.
        await Device.DownloadAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "plan.json" }));
        await Device.DownloadAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "(SVG)" }));
        await Device.GoAsync(page, "Cuts");
        await Device.GoAsync(page, "Sheets");
        Assert.DoesNotContain(asked, url => url.Contains("PdfSharp", StringComparison.Ordinal));
        Assert.Equal(0, await page.EvaluateAsync<int>("() => performance.getEntriesByType('resource').filter(entry => /PdfSharp/.test(entry.name)).length"));

        await Device.DownloadAsync(page, Key(page));
        Assert.Contains(asked, url => url.Contains("PdfSharp", StringComparison.Ordinal));
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task With_the_server_stopped_they_are_made_from_what_is_kept_also_by_the_page_itself()
    {
        var expected = await ByCommandLineAsync("plain-wall");
        var (device, page, _) = await rig.OfflineAsync(WantedPort);
        await using var owned = device;
        await page.ReloadAsync();
        await Device.ReadyAsync(page);
        await Device.OpenSampleAsync(page, PlainWall);
        await Device.GoAsync(page, "Sheets");
        Assert.Equal(expected, await Device.DownloadAsync(page, Key(page)));

        await page.ReloadAsync();
        await Device.ReadyAsync(page);
        await page.EvaluateAsync("() => { window.Worker = function () { throw new Error('none here'); }; }");
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Sheets");
        Assert.Equal(expected, await Device.DownloadAsync(page, Key(page)));
        Assert.Empty(device.Troubles);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_browser_that_gives_no_other_thread_says_so_and_makes_them_on_the_page_s(bool blocked)
    {
        await using var device = await rig.DeviceAsync();
        // Refused by the browser itself, or let in and then without its file.
        if (blocked) await device.Context.RouteAsync("**/js/sheetmaker.js", route => route.AbortAsync());
        else await device.Context.AddInitScriptAsync("window.Worker = function () { throw new Error('none here'); };");
        var page = await AtSheetsAsync(device, PlainWall);
        // The page itself takes down what it says: while it stands still nobody else can ask it.
        await page.EvaluateAsync("""
            () => {
              window.said = "";
              new MutationObserver(() => { window.said += document.querySelector("main [role=status]")?.textContent ?? ""; })
                .observe(document.querySelector("main"), { subtree: true, childList: true, characterData: true });
            }
            """);
        Assert.Equal(await ByCommandLineAsync("plain-wall"), await Device.DownloadAsync(page, Key(page)));
        Assert.Contains("the page stands still while they are drawn", await page.EvaluateAsync<string>("() => window.said"), StringComparison.Ordinal);
        await Expect(page.GetByText("handed to your downloads")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Stop_ends_it_at_once_with_nothing_handed_over_and_it_can_be_asked_for_again()
    {
        await using var device = await rig.DeviceAsync();
        var page = await AtSheetsAsync(device, Shower);
        var handed = 0;
        page.Download += (_, _) => handed++;
        await Key(page).ClickAsync();
        // A second press, as wet fingers give it, neither ends the first nor begins another. Forced: the key says that it waits.
        await Key(page).ClickAsync(new() { Force = true });
        await page.GetByText("Planning the job").WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Stop", Exact = true }).ClickAsync();
        await Expect(page.GetByText("Stopped. No sheets were handed over.")).ToBeVisibleAsync();
        await Expect(Key(page)).ToBeFocusedAsync();
        for (var i = 0; i < 50 && page.Workers.Count > 0; i++) await Task.Delay(100);
        Assert.Empty(page.Workers);
        Assert.Equal(0, handed);

        Assert.Equal(await ByCommandLineAsync("guest-shower"), await Device.DownloadAsync(page, Key(page)));
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Stop_ends_it_also_before_it_has_begun()
    {
        await using var device = await rig.DeviceAsync();
        var go = new TaskCompletionSource();
        await device.Context.RouteAsync("**/PdfSharp.wasm", async route =>
        {
            await go.Task;
            await route.ContinueAsync();
        });
        var page = await AtSheetsAsync(device, PlainWall);
        await Key(page).ClickAsync();
        await Expect(page.GetByText("Getting ready")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Stop", Exact = true }).ClickAsync();
        await Expect(page.GetByText("Stopped. No sheets were handed over.")).ToBeVisibleAsync();
        go.SetResult();
        Assert.Equal(await ByCommandLineAsync("plain-wall"), await Device.DownloadAsync(page, Key(page)));
    }

    [Fact]
    public async Task They_are_made_also_while_a_person_looks_at_the_cuts()
    {
        await using var device = await rig.DeviceAsync();
        var page = await AtSheetsAsync(device, Shower);
        var download = page.WaitForDownloadAsync(new() { Timeout = 90_000 });
        await Key(page).ClickAsync();
        await Device.GoAsync(page, "Cuts");
        await page.Locator(".pieces input[type=checkbox]").First.CheckAsync();
        await download;
        await Device.GoAsync(page, "Sheets");
        await Expect(page.GetByText("handed to your downloads")).ToBeVisibleAsync();

        Assert.Equal(await ByCommandLineAsync("guest-shower"), await Device.DownloadAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Hand them over again" })));
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task What_goes_wrong_is_said_with_what_to_do_next()
    {
        await using var device = await rig.DeviceAsync();
        await device.Context.RouteAsync("**/js/sheetmaker.js", route => route.FulfillAsync(new()
        {
            ContentType = "text/javascript",
            Body = "postMessage({ ready: true }); addEventListener('message', () => postMessage({ trouble: 'the ink ran out' }));",
        }));
        var page = await AtSheetsAsync(device, PlainWall);
        await Key(page).ClickAsync();
        await Expect(page.GetByText("The sheets could not be made. The job is kept as it is.")).ToBeVisibleAsync();
        await Expect(page.GetByText("Try once more.")).ToBeVisibleAsync();
        await Expect(page.GetByText("the ink ran out")).ToBeVisibleAsync();

        await device.Context.UnrouteAllAsync();
        Assert.Equal(await ByCommandLineAsync("plain-wall"), await Device.DownloadAsync(page, Key(page)));
    }

    /// <summary>Source: WCAG 2.2, levels A and AA, by the rules of axe-core.</summary>
    [Fact]
    public async Task What_is_shown_meanwhile_and_after_is_fit_for_all_in_every_light()
    {
        await using var device = await rig.DeviceAsync();
        var go = new TaskCompletionSource();
        await device.Context.RouteAsync("**/PdfSharp.wasm", async route =>
        {
            await go.Task;
            await route.ContinueAsync();
        });
        var page = await AtSheetsAsync(device, PlainWall);
        var download = page.WaitForDownloadAsync(new() { Timeout = 90_000 });
        await Key(page).ClickAsync();
        var found = new List<string>();
        foreach (var stage in new[] { "Getting ready", "handed to your downloads" })
        {
            await Expect(page.GetByText(stage)).ToBeVisibleAsync(new() { Timeout = 90_000 });
            foreach (var light in new[] { "light", "dark", "strong" })
            {
                await page.EvaluateAsync("light => document.documentElement.setAttribute('data-light', light)", light);
                found.AddRange((await Access.FaultsAsync(page)).Select(fault => $"{stage}, {light}: {fault}"));
            }

            go.TrySetResult();
        }

        await download;
        Assert.Empty(found);
    }
}
