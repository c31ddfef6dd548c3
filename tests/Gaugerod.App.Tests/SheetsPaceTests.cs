using System.Diagnostics;
using System.Globalization;
using Xunit.Abstractions;
using static Gaugerod.App.Tests.SheetsAsked;

namespace Gaugerod.App.Tests;

/// <summary>How the page fares while sheets are made.</summary>
[Collection(RigCollection.Name)]
[Trait("Category", "Long")]
public sealed class SheetsPaceTests(Rig rig, ITestOutputHelper output)
{
    /// <summary>Ours. Drawn on the page's own thread the shower's sheets take more than twice as long, so this tells the two apart.</summary>
    private const double LongestGap = 400;

    /// <summary>The throttle slows the page's thread; the worker's keeps its speed.</summary>
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public async Task The_page_never_stands_still_meanwhile_and_a_second_time_is_quicker(int slower)
    {
        await using var device = await rig.DeviceAsync();
        var page = await AtSheetsAsync(device, Shower);
        var session = await device.Context.NewCDPSessionAsync(page);
        await session.SendAsync("Emulation.setCPUThrottlingRate", new Dictionary<string, object> { ["rate"] = slower });
        var times = new List<double>();
        for (var i = 0; i < 2; i++)
        {
            await page.EvaluateAsync(WatchFrames);
            var clock = Stopwatch.StartNew();
            await Device.DownloadAsync(page, Key(page));
            times.Add(clock.Elapsed.TotalSeconds);
            var gap = await page.EvaluateAsync<double>("() => stopFrames()");
            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{slower} times slower, time {i + 1}: {times[i]:0.00} s, longest gap between frames {gap:0} ms"));
            Assert.InRange(gap, 1, LongestGap);
        }

        Assert.True(times[1] < times[0], "The runtime that waits should save its start.");
    }

    private const string WatchFrames = """
        () => {
          let last = performance.now(), longest = 0, on = true;
          const frame = () => {
            const now = performance.now();
            [longest, last] = [Math.max(longest, now - last), now];
            if (on) requestAnimationFrame(frame);
          };
          requestAnimationFrame(frame);
          window.stopFrames = () => { on = false; return longest; };
        }
        """;
}
