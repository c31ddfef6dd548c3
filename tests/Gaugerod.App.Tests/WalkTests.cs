using Microsoft.Playwright;
using UglyToad.PdfPig;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>The whole way, from the first reading to sheets in the hand; and a station that stops on the way.</summary>
[Collection(RigCollection.Name)]
public sealed class WalkTests(Rig rig)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_wall_is_measured_planned_cut_ordered_and_printed_in_one_walk(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await device.OpenAsync();
        await Key(page, "New job").ClickAsync();
        await page.GetByRole(AriaRole.Group, new() { Name = "Measured in" }).GetByRole(AriaRole.Button, new() { Name = "millimetres" }).ClickAsync();
        await Key(page, "One wall").ClickAsync();
        await page.GetByLabel("At the foot", new() { Exact = true }).FillAsync("2400");
        await page.GetByLabel("At the left", new() { Exact = true }).FillAsync("1200");
        await Key(page, "Next: tiles").ClickAsync();
        await page.GetByLabel("Width", new() { Exact = true }).FillAsync("300");
        await page.GetByLabel("Height", new() { Exact = true }).FillAsync("300");
        await Device.GoAsync(page, "Lines");
        await Expect(page.Locator(".place").First).ToBeVisibleAsync(new() { Timeout = 90_000 });

        // Another place than the best is taken, and the bottom rod moved by a mark.
        await page.Locator(".place").Nth(1).ClickAsync();
        await Expect(page.Locator(".place").Nth(1)).ToHaveAttributeAsync("aria-pressed", "true");
        await page.GetByRole(AriaRole.Button, new() { Name = "Right by" }).ClickAsync();
        await Expect(Key(page, "Back to the best")).ToBeVisibleAsync();

        await Device.PlannedAsync(page);
        await Expect(page.Locator(".packs").First).ToBeVisibleAsync();
        await Device.GoAsync(page, "Cuts");
        await page.Locator(".pieces input[type=checkbox]").First.CheckAsync();
        await Device.GoAsync(page, "Sheets");
        using var sheets = PdfDocument.Open(await Device.DownloadAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Job sheets" })));
        Assert.InRange(sheets.NumberOfPages, 4, 20);
        Assert.Contains(sheets.GetPages(), sheet => sheet.Text.Contains("wall 1", StringComparison.Ordinal));
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_station_that_stops_leaves_the_others_and_the_job_as_it_was_saved()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, "Plain wall, by hand");
        await Device.SavedAsync(page);
        // What no way of the page's own leads to: a job on the device that has a text where its walls should be.
        await page.EvaluateAsync("""
            async () => {
              const shelf = await import("./js/shelf.js");
              const id = shelf.opened(), job = await shelf.read(id);
              shelf.hold(id, "Odd", JSON.stringify({ ...JSON.parse(job.text), name: "Odd", faces: "three", runs: [null, 7] }), []);
              await shelf.flush();
            }
            """);
        await page.ReloadAsync();
        await Device.ReadyAsync(page);
        foreach (var station in new[] { "Measure", "Lines", "Cuts", "Order", "Sheets", "Help", "Jobs" }) await Device.GoAsync(page, station);
        await Expect(page.Locator("header .job")).ToHaveTextAsync("Odd");
        await Expect(page.Locator("#blazor-error-ui")).ToBeHiddenAsync();
        var file = await Device.DownloadAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save “Odd” to a file" }));
        Assert.Contains("\"faces\":\"three\"", System.Text.Encoding.UTF8.GetString(file), StringComparison.Ordinal);
        await Device.OpenSampleAsync(page, "Plain wall, by hand");
        await Expect(page.Locator(".packs").First).ToBeVisibleAsync();
    }

    /// <summary>A station that is left before it is ready once stopped the one that came after it.</summary>
    [Fact]
    public async Task Somebody_in_a_hurry_finds_every_station_working()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, "Plain wall, by hand");
        foreach (var wait in new[] { 0, 5, 15, 30, 60, 120 })
        {
            await page.EvaluateAsync("""
                async wait => {
                  for (const station of [...document.querySelectorAll(".station-key"), ...document.querySelectorAll(".station-key")]) {
                    station.click();
                    await new Promise(done => setTimeout(done, wait));
                  }
                }
                """, wait);
            await Device.GoAsync(page, "Order");
            await Expect(page.Locator("main table").First).ToBeVisibleAsync();
        }

        await Expect(page.GetByText("This station stopped.")).ToHaveCountAsync(0);
        Assert.Empty(device.Troubles);
    }

    private static ILocator Key(IPage page, string name) => page.GetByRole(AriaRole.Button, new() { Name = name });
}
