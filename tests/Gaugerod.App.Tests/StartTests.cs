using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace Gaugerod.App.Tests;

/// <summary>
/// How soon the page can be used, from the start of its navigation to the mark it sets when a key may be pressed. What is
/// asked is 1.5 s without a network on the machine this was made on, with nothing else running. The machine that runs
/// these tests may be slower or busy, so the quickest of the starts is held to that figure, which nothing but the app can
/// spoil, and the middle one to twice as much.
/// </summary>
[Collection(RigCollection.Name)]
[Trait("Category", "Long")]
public sealed class StartTests(Rig rig, ITestOutputHelper output)
{
    private const int Starts = 7;
    private const int WantedPort = 5400;
    private const double MostMilliseconds = 1500;

    /// <summary>When the page was first painted, when it could be used, and when the last file of the runtime had come.</summary>
    private const string Times = """
        () => {
          const ended = what => Math.max(0, ...performance.getEntriesByType("resource").filter(entry => what.test(entry.name)).map(entry => entry.responseEnd));
          const painted = performance.getEntriesByName("first-contentful-paint")[0]?.startTime ?? -1;
          return JSON.stringify({ painted, ready: window.readyAt, native: ended(/dotnet\.native\.wasm$/), all: ended(/\.wasm$/) });
        }
        """;

    private const string MarkReady = """
        new MutationObserver((_, watch) => {
          if (document.body?.dataset.ready !== "yes") return;
          window.readyAt = performance.now();
          watch.disconnect();
        }).observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ["data-ready"] });
        """;

    [Fact]
    public async Task Without_a_network_the_page_can_be_used_within_a_second_and_a_half()
    {
        var (device, page, address) = await rig.OfflineAsync(WantedPort, MarkReady);
        await using var owned = device;
        var starts = new List<Start>();
        for (var i = 0; i < Starts; i++)
        {
            await page.GotoAsync("about:blank");
            await page.GotoAsync(address);
            starts.Add(await StartOfAsync(page));
        }

        var ready = starts.Select(start => start.Ready).Order().ToList();
        Say($"without a network: ready after {ready[Starts / 2]:0} ms (middle of {Starts}), {ready[0]:0} to {ready[^1]:0}; first painted after {starts.Select(start => start.Painted).Order().ElementAt(Starts / 2):0} ms");
        Assert.InRange(ready[0], 1, MostMilliseconds);
        Assert.InRange(ready[Starts / 2], 1, 2 * MostMilliseconds);
        Assert.All(starts, start => Assert.InRange(start.Painted, 1, start.Ready));
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task On_a_first_visit_the_page_is_painted_before_the_runtime_has_come()
    {
        await using var device = await rig.DeviceAsync();
        await device.Context.AddInitScriptAsync(MarkReady);
        var start = await StartOfAsync(await device.OpenAsync());
        Say($"first visit, nothing kept yet: painted after {start.Painted:0} ms, the runtime's own file had come after {start.Native:0} ms and all files after {start.All:0} ms, ready after {start.Ready:0} ms");
        Assert.InRange(start.Painted, 1, start.All);
        Assert.Empty(device.Troubles);
    }

    private static async Task<Start> StartOfAsync(IPage page)
    {
        await Device.ReadyAsync(page);
        using var times = JsonDocument.Parse(await page.EvaluateAsync<string>(Times));
        double Of(string name) => times.RootElement.GetProperty(name).GetDouble();
        return new(Of("painted"), Of("ready"), Of("native"), Of("all"));
    }

    private void Say(FormattableString words) => output.WriteLine(words.ToString(CultureInfo.InvariantCulture));

    /// <summary>One start, in milliseconds from that of the navigation.</summary>
    private sealed record Start(double Painted, double Ready, double Native, double All);
}
