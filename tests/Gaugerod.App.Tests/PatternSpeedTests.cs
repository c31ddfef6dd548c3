using Microsoft.Playwright;
using Xunit.Abstractions;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>
/// How quick a pattern is under the hand and while it is searched: the splash's herringbone, in a browser slowed down four times
/// as a phone is. The limits are our own, and held to middles, but for the longest task of the search and the slowest turns; all figures are printed.
/// </summary>
[Collection(RigCollection.Name)]
[Trait("Category", "Long")]
public sealed class PatternSpeedTests(Rig rig, ITestOutputHelper output)
{
    private const string Splash = "Galley splash, herringbone, millimetres";

    /// <summary>Keeps how long every task that took over 50 ms took, and what lies between two frames.</summary>
    private const string Watch = """
        () => {
          window.tasks = []; window.between = [];
          new PerformanceObserver(list => tasks.push(...list.getEntries().map(one => one.duration))).observe({ type: "longtask" });
          let last = performance.now();
          (function next() { requestAnimationFrame(now => { between.push(now - last); last = now; next(); }); })();
        }
        """;

    [Theory]
    [InlineData(".rod.level")]
    [InlineData(".rod.plumb")]
    public async Task A_rod_slides_over_a_herringbone_within_two_frames_on_a_slow_phone(string rod)
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await LinesTests.LinesAsync(device, Splash);
        await Expect(page.Locator(".curve.level .under")).Not.ToHaveAttributeAsync("d", "", new() { Timeout = 60_000 });
        await SlowAsync(device, page);
        var work = await LinesSpeedTests.SlidAsync(page, rod);
        output.WriteLine(LinesSpeedTests.Said($"work a frame, {rod}, four times slowed", work));
        Assert.InRange(work.Length, 60, 2000);
        Assert.InRange(LinesSpeedTests.Part(work, 0.5), 0, 33);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task The_bond_turns_under_the_hand_without_a_halt_on_a_slow_phone()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await LinesTests.LinesAsync(device, Splash);
        await SlowAsync(device, page);
        var box = (await page.Locator("#turn-slider").BoundingBoxAsync())!;
        var y = box.Y + (box.Height / 2);
        await page.Mouse.MoveAsync(box.X + (box.Width * 0.75f), y);
        await page.Mouse.DownAsync();
        for (var i = 0; i < 20; i++) await TurnAsync(i);
        await page.EvaluateAsync(Watch);
        for (var i = 20; i < 90; i++) await TurnAsync(i);
        var (tasks, between) = (await page.EvaluateAsync<double[]>("() => tasks"), await page.EvaluateAsync<double[]>("() => between"));
        await page.Mouse.UpAsync();
        output.WriteLine(LinesSpeedTests.Said("turning, four times slowed, tasks over 50 ms", tasks));
        output.WriteLine(LinesSpeedTests.Said("turning, four times slowed, between frames", between));
        Assert.InRange(LinesSpeedTests.Part(between, 0.95), 0, 200);
        Assert.Empty(device.Troubles);

        async Task TurnAsync(int i)
        {
            await page.Mouse.MoveAsync(box.X + (box.Width * (0.75f - (i * 0.005f))), y);
            await Task.Delay(16);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public async Task A_herringbone_is_searched_in_slices(int slowed)
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await LinesTests.LinesAsync(device, Splash);
        await page.GetByRole(AriaRole.Button, new() { Name = "Straight", Exact = true }).ClickAsync();
        await Expect(page.Locator(".proposals .proof")).Not.ToContainTextAsync("Worked out anew", new() { Timeout = 90_000 });
        await Device.PlannedAsync(page);
        if (slowed > 1) await SlowAsync(device, page);
        await page.EvaluateAsync(Watch);
        // Going back to the turn it had has it searched anew; drawing what was found is in the figures too.
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo: " }).ClickAsync();
        await page.WaitForTimeoutAsync(300);
        await Device.PlannedAsync(page);
        await page.WaitForTimeoutAsync(8000);
        var tasks = await page.EvaluateAsync<double[]>("() => tasks");
        output.WriteLine(LinesSpeedTests.Said($"search, {slowed} times slowed, tasks over 50 ms", tasks));
        var between = await page.EvaluateAsync<double[]>("() => between");
        output.WriteLine(LinesSpeedTests.Said($"search, {slowed} times slowed, between frames", between));
        // Most of the time watched is idle, so the longest task counts and not the middle.
        Assert.InRange(tasks.DefaultIfEmpty(0).Max(), 0, 100 * slowed);
        Assert.InRange(between.Length, 50, int.MaxValue);
        Assert.Empty(device.Troubles);
    }

    private static async Task SlowAsync(Device device, IPage page)
    {
        var session = await device.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Emulation.setCPUThrottlingRate", new() { ["rate"] = 4 });
    }
}
