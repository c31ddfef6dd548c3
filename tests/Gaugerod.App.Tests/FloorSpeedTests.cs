using System.Globalization;
using Xunit.Abstractions;

namespace Gaugerod.App.Tests;

/// <summary>
/// How soon a key is heard on an invented floor in an L with two drains, a bed and 130 readings. The limit of 200 ms is that of web.dev's
/// "good" interaction to next paint; the middle is held to it, since a machine that does other work as well moves the rest.
/// </summary>
[Collection(RigCollection.Name)]
[Trait("Category", "Long")]
public sealed class FloorSpeedTests(Rig rig, ITestOutputHelper output)
{
    [Theory]
    [InlineData(true, "How flat it is", "#f-faces-0--flatness-grid-heights-5--6-")]
    [InlineData(false, "How flat it is", "#f-faces-0--flatness-grid-heights-5--6-")]
    [InlineData(true, "Bed under it", "#f-faces-0--falls-least")]
    public async Task No_key_waits_for_a_bed_or_for_readings(bool falls, string part, string field)
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await EditorsTests.OpenAsync(device, Room(falls));
        await page.Locator("summary", new() { HasText = part }).ClickAsync();
        await page.Locator(field).WaitForAsync();
        await page.EvaluateAsync("""
            () => {
              window.keys = []; window.long = [];
              new PerformanceObserver(list => list.getEntries().filter(e => e.name === "keydown" || e.name === "input").forEach(e => keys.push(e.duration))).observe({ type: "event", durationThreshold: 16, buffered: false });
              new PerformanceObserver(list => list.getEntries().forEach(e => long.push(e.duration))).observe({ type: "longtask" });
            }
            """);
        await page.Locator(field).ClickAsync();
        var drawn = new List<double>();
        for (var i = 0; i < 8; i++)
        {
            var before = await page.EvaluateAsync<string>("() => [...document.querySelectorAll('.base-drawn')].map(one => one.innerHTML).join()");
            await page.Keyboard.PressAsync("Control+A");
            foreach (var digit in string.Create(CultureInfo.InvariantCulture, $"{21 + i}")) await page.Keyboard.TypeAsync(digit.ToString(), new() { Delay = 90 });
            var clock = System.Diagnostics.Stopwatch.StartNew();
            await page.WaitForFunctionAsync("before => [...document.querySelectorAll('.base-drawn')].map(one => one.innerHTML).join() !== before", before);
            drawn.Add(clock.Elapsed.TotalMilliseconds);
            await page.Keyboard.TypeAsync(".5", new() { Delay = 120 });
            await page.WaitForTimeoutAsync(300);
        }

        var keys = (await page.EvaluateAsync<double[]>("() => keys")).Order().ToArray();
        var halts = (await page.EvaluateAsync<double[]>("() => long")).Order().ToArray();
        output.WriteLine($"drawn after the last key: {Said([.. drawn.Order()])}\nkeys longer than 16 ms: {Said(keys)}\nhalts over 50 ms: {Said(halts)}");
        Assert.True(keys.Length == 0 || keys[keys.Length / 2] <= 200, Said(keys));
        Assert.Empty(device.Troubles);
    }

    private static string Said(double[] all) => $"{all.Length}{(all.Length == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $", middle {all[all.Length / 2]:0} ms, longest {all[^1]:0} ms: {string.Join(' ', all.Select(one => one.ToString("0", CultureInfo.InvariantCulture)))}"))}";

    private static string Room(bool falls)
    {
        var rows = Enumerable.Range(0, 10).Select(row => "[" + string.Join(", ", Enumerable.Range(0, 13).Select(column => string.Create(CultureInfo.InvariantCulture, $"{(7 * row * column % 11) - 5}"))) + "]");
        return $$"""
            { "format": "gaugerod-job/1", "name": "Invented hall", "units": "mm", "products": [{ "name": "tile", "width": 600, "height": 600 }],
              "faces": [{ "name": "hall", "outline": [[0, 0], [8000, 0], [8000, 3500], [4500, 3500], [4500, 6000], [0, 6000]],
                "edges": [{ "kind": "threshold" }, { "kind": "inside corner" }, { "kind": "inside corner" }, { "kind": "outside corner", "finish": "mitre" }, { "kind": "inside corner" }, { "kind": "inside corner" }],
                "holes": [{ "name": "near", "x": 2000, "y": 1700, "diameter": 100 }, { "name": "far", "x": 6500, "y": 1800, "diameter": 100 }],
                {{(falls ? "\"falls\": { \"drains\": [\"near\", \"far\"], \"least\": 30, \"perimeter\": \"constant\" }," : "")}}
                "flatness": { "grid": { "from": [100, 100], "step": [340, 360], "heights": [{{string.Join(", ", rows)}}] } } }],
              "runs": [{ "name": "hall", "product": "tile", "faces": ["hall"], "bond": { "kind": "grid" }, "joint": 3 }] }
            """;
    }
}
