using System.Globalization;
using System.Text;
using Microsoft.Playwright;
using Xunit.Abstractions;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>
/// How quick the drawing is under the hand. The limits are our own: 16 ms of work a frame for 1,200 tiles on two cores at rest.
/// Only middles are held to, since a machine that does other work as well moves the rest; all figures are printed.
/// </summary>
[Collection(RigCollection.Name)]
[Trait("Category", "Long")]
public sealed class LinesSpeedTests(Rig rig, ITestOutputHelper output)
{
    [Theory]
    [InlineData(".rod.level")]
    [InlineData(".rod.plumb")]
    public async Task A_rod_slides_over_1200_tiles_within_a_frame(string rod)
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, tile: 150, width: 3100);
        Assert.InRange(await PiecesAsync(page), 1200, 1500);
        var work = await SlidAsync(page, rod);
        Say($"work a frame, {rod}", work);
        Assert.InRange(work.Length, 100, 2000);
        Assert.InRange(Part(work, 0.5), 0, 16);
        Assert.Empty(device.Troubles);
    }

    /// <summary>Slides a rod to and fro, and says what each frame of it took, in milliseconds; the first are not counted.</summary>
    internal static async Task<double[]> SlidAsync(IPage page, string rod)
    {
        var box = (await page.Locator(rod).BoundingBoxAsync())!;
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        for (var i = 0; i < 60; i++) await SlideAsync(i);
        await page.EvaluateAsync("() => { document.querySelector('.lines').frameWork.length = 0; }");
        for (var i = 0; i < 150; i++) await SlideAsync(i);
        var work = await page.EvaluateAsync<double[]>("() => [...document.querySelector('.lines').frameWork]");
        await page.Mouse.UpAsync();
        return work;

        async Task SlideAsync(int i)
        {
            var by = (float)((Math.Sin(i / 9.0) * 60) + (i * 0.3));
            await page.Mouse.MoveAsync(x + by, y + by);
            await Task.Delay(16);
        }
    }

    [Fact]
    public async Task Five_thousand_pieces_are_looked_at_nearer_and_moved_about_without_a_halt()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, tile: 75, width: 3500);
        Assert.InRange(await PiecesAsync(page), 5000, 6000);
        var box = await LinesTests.BoxAsync(page);
        var (x, y) = (box.X + (box.Width * 0.4f), box.Y + (box.Height * 0.4f));
        await page.EvaluateAsync("() => { window.between = []; let last = performance.now(); (function next() { requestAnimationFrame(now => { between.push(now - last); last = now; next(); }); })(); }");
        await page.Mouse.MoveAsync(x, y);
        await TellAsync("at rest");
        for (var i = 0; i < 40; i++) await OnceAsync(() => page.Mouse.WheelAsync(0, -60));
        await TellAsync("looking nearer");
        await page.Mouse.DownAsync();
        for (var i = 0; i < 60; i++) await OnceAsync(() => page.Mouse.MoveAsync(x + (float)(Math.Sin(i / 8.0) * 120), y + i));
        await page.Mouse.UpAsync();
        await TellAsync("moving about, near");
        for (var i = 0; i < 30; i++) await OnceAsync(() => page.Mouse.WheelAsync(0, 60));
        await page.Mouse.DownAsync();
        for (var i = 0; i < 60; i++) await OnceAsync(() => page.Mouse.MoveAsync(x + (float)(Math.Sin(i / 8.0) * 120), y + i));
        await page.Mouse.UpAsync();
        await TellAsync("moving about, far");
        Assert.Empty(device.Troubles);

        static async Task OnceAsync(Func<Task> move)
        {
            await move();
            await Task.Delay(16);
        }

        async Task TellAsync(string what)
        {
            var between = await page.EvaluateAsync<double[]>("() => between.splice(0)");
            Say($"between frames, {what}, {between.Count(one => one > 50)} over 50", between);
            Assert.InRange(Part(between, 0.5), 0, 34);
        }
    }

    private static async Task<IPage> OpenAsync(Device device, int tile, int width)
    {
        var page = await device.OpenAsync();
        await page.Locator("input[type=file]").First.SetInputFilesAsync(new FilePayload { Name = "large.json", MimeType = "application/json", Buffer = Encoding.UTF8.GetBytes(Job(tile, width)) });
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Lines");
        await Expect(page.Locator(".wall .piece").First).ToBeAttachedAsync();
        await Expect(page.Locator(".curve.level .under")).Not.ToHaveAttributeAsync("d", "", new() { Timeout = 60_000 });
        return page;
    }

    private static Task<int> PiecesAsync(IPage page) =>
        page.EvaluateAsync<int>("() => [...document.querySelectorAll('.piece')].reduce((sum, path) => sum + path.getAttribute('d').match(/z/g).length, 0)");

    /// <summary>Four walls of an invented room, wrapped as one, with openings, a hole and a bench.</summary>
    private static string Job(int tile, int width)
    {
        var faces = new[] { "west", "north", "east", "south" }.Select((name, i) => string.Create(
            CultureInfo.InvariantCulture,
            $$"""
            { "name": "{{name}}", "readings": { "width": { "foot": {{width + (i * 7)}} }, "height": { "left": 2400 } },
              {{(i == 0 ? """ "edges": { "left": { "kind": "free", "trim": 10 } }, "holes": [ { "name": "valve", "x": 2000, "y": 1100, "diameter": 110, "clearance": 3 } ],""" : "")}}
              {{(i == 1 ? """ "fixtures": [ { "name": "bench", "from": 1900, "height": 455 } ],""" : i == 2 ? """ "fixtures": [ { "name": "bench", "height": 458 } ],""" : "")}}
              "openings": [ {{(i % 2 == 0
                ? """{ "name": "niche", "left": 900, "bottom": 1000, "width": 407, "height": 603, "edge": { "kind": "outside corner", "finish": "profile", "trim": 10 } }"""
                : """{ "name": "window", "left": 700, "bottom": 1100, "width": 900, "height": 800, "edge": { "kind": "fixture" } }""")}} ] }
            """));
        return $$"""
            { "format": "gaugerod-job/1", "name": "Large room", "note": "An invented room.", "units": "mm", "edgeJoint": 3,
              "products": [ { "name": "tile", "width": {{tile}}, "height": {{tile}}, "thickness": 8, "bondCoat": 3, "perBox": 44 } ],
              "faces": [ {{string.Join(",\n", faces)}} ],
              "runs": [ { "name": "walls", "product": "tile", "faces": [ "west", "north", "east", "south" ],
                "bond": { "kind": "running", "offset": "1/2", "lay": "level", "step": "one way" }, "corners": "wrap", "joint": 3,
                "wants": [ { "want": "joint", "face": "west", "edge": "niche.bottom", "weight": 2 } ] } ] }
            """;
    }

    private void Say(string what, double[] figures) => output.WriteLine(Said(what, figures));

    internal static string Said(string what, double[] figures) => figures.Length == 0 ? what + ": none" : string.Create(
        CultureInfo.InvariantCulture,
        $"{what}: {figures.Length}, middle {Part(figures, 0.5):0.0} ms, 95 of 100 under {Part(figures, 0.95):0.0} ms, most {figures.Max():0.0} ms; {Environment.ProcessorCount} cores, load {Load()}");

    internal static double Part(double[] figures, double part) => figures.Order().ElementAt(Math.Min(figures.Length - 1, (int)(part * figures.Length)));

    private static string Load() => File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "not known";
}
