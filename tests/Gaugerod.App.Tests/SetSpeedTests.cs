using System.Globalization;
using Microsoft.Playwright;
using Xunit.Abstractions;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>
/// How soon a key is heard, and a tick seen, at Set while the job is planned anew after each. The limit of 200 ms is that of
/// web.dev's "good" interaction to next paint; the middle is held to it, since a machine that does other work as well moves the rest.
/// </summary>
[Collection(RigCollection.Name)]
[Trait("Category", "Long")]
public sealed class SetSpeedTests(Rig rig, ITestOutputHelper output)
{
    [Fact]
    public async Task No_key_waits_while_a_wall_is_measured_again_and_a_tick_is_seen_at_once()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, "Guest shower, feet and inches");
        await Device.GoAsync(page, "Set");
        await page.GetByRole(AriaRole.Button, new() { Name = "Course 2 is set" }).ClickAsync();
        await page.GetByText("Measure again").First.ClickAsync();
        var field = page.GetByLabel("Its top, left");
        await field.WaitForAsync();
        await page.EvaluateAsync("""
            () => {
              window.keys = []; window.taps = []; window.long = [];
              new PerformanceObserver(list => list.getEntries().forEach(e => (e.name === "click" ? taps : e.name === "keydown" || e.name === "input" ? keys : []).push(e.duration))).observe({ type: "event", durationThreshold: 16, buffered: false });
              new PerformanceObserver(list => list.getEntries().forEach(e => long.push(e.duration))).observe({ type: "longtask" });
            }
            """);
        await field.ClickAsync();
        var known = new List<double>();
        for (var i = 1; i < 8; i++)
        {
            await page.Keyboard.PressAsync("Control+A");
            foreach (var digit in string.Create(CultureInfo.InvariantCulture, $"12 {1 + (2 * i)}/16")) await page.Keyboard.TypeAsync(digit.ToString(), new() { Delay = 90 });
            var clock = System.Diagnostics.Stopwatch.StartNew();
            // As planned it stands at 12 1/16.
            var off = i % 4 == 0 ? "1/2" : i % 2 == 0 ? $"{i / 2}/4" : $"{i}/8";
            await Expect(page.Locator(".again p[role=status]")).ToContainTextAsync($"stands {off} in high", new() { Timeout = 60_000 });
            known.Add(clock.Elapsed.TotalMilliseconds);
        }

        for (var course = 3; course < 10; course++)
        {
            await page.GetByRole(AriaRole.Button, new() { Name = FormattableString.Invariant($"Course {course} is set") }).ClickAsync();
            await page.WaitForTimeoutAsync(250);
        }

        await page.WaitForTimeoutAsync(500);
        var (keys, taps, halts) = (await OrderedAsync(page, "keys"), await OrderedAsync(page, "taps"), await OrderedAsync(page, "long"));
        output.WriteLine($"planned after the last key: {Said([.. known.Order()])}\nkeys longer than 16 ms: {Said(keys)}\ntaps longer than 16 ms: {Said(taps)}\nhalts over 50 ms: {Said(halts)}");
        Assert.True(keys.Length == 0 || keys[keys.Length / 2] <= 200, Said(keys));
        Assert.True(taps.Length == 0 || taps[taps.Length / 2] <= 200, Said(taps));
        Assert.Empty(device.Troubles);
    }

    private static async Task<double[]> OrderedAsync(IPage page, string what) => [.. (await page.EvaluateAsync<double[]>("what => window[what]", what)).Order()];

    private static string Said(double[] all) => $"{all.Length}{(all.Length == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $", middle {all[all.Length / 2]:0} ms, longest {all[^1]:0} ms: {string.Join(' ', all.TakeLast(12).Select(one => one.ToString("0", CultureInfo.InvariantCulture)))}"))}";
}
