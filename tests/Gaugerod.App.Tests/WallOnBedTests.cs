using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>A person's way to a wall that stands on a floor's bed, on an invented shower of 900 by 1500 mm.</summary>
[Collection(RigCollection.Name)]
public sealed class WallOnBedTests(Rig rig)
{
    private const string Shower = """
        { "format": "gaugerod-job/1", "name": "Invented shower", "units": "mm", "products": [{ "name": "tile", "width": 200, "height": 200 }],
          "faces": [
            { "name": "north", "readings": { "width": { "foot": 900 }, "height": { "left": 2400 }, "levelLine": { "left": 1000, "right": 1000 } } },
            { "name": "floor", "outline": [[0, 0], [900, 0], [900, 1500], [0, 1500]], "edges": [{ "name": "south", "kind": "threshold" }, { "name": "east", "kind": "inside corner" }, { "name": "north", "kind": "inside corner" }, { "name": "west", "kind": "inside corner" }],
              "holes": [{ "name": "drain", "x": 450, "y": 750, "diameter": 100 }], "falls": { "drains": ["drain"], "least": 30 } }],
          "runs": [{ "name": "wall", "product": "tile", "faces": ["north"], "bond": { "kind": "grid" }, "joint": 3 }, { "name": "floor", "product": "tile", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": 3 }] }
        """;

    [Fact]
    public async Task A_wall_is_stood_on_a_bed_its_floor_renamed_and_its_smallest_cuts_compared_at_their_worst()
    {
        await using var device = await rig.DeviceAsync();
        var page = await OpenAsync(device, Shower);
        await page.Locator("summary", new() { HasText = "Stands on a bed" }).ClickAsync();
        await Button(page, "+ Stands on a bed").ClickAsync();
        // The floor's edge that is called as the wall is, is proposed.
        await Expect(page.GetByLabel("along its edge")).ToHaveValueAsync("north");
        await page.GetByLabel("Lowest place of the bed above").FillAsync("-20");
        await LookAsync(page, "stands on a bed", phone: true);
        await page.Locator("summary", new() { HasText = "Level line and leans" }).ClickAsync();
        await Button(page, "+ Line between the corners").ClickAsync();
        await page.GetByLabel("Reading 1: from the left").FillAsync("450");
        await page.GetByLabel("Line above floor there").FillAsync("990");
        await page.GetByRole(AriaRole.Group, new() { Name = "Walls" }).GetByRole(AriaRole.Button, new() { Name = "floor", Exact = true }).ClickAsync();
        await page.GetByLabel("Floor's name").FillAsync("tray");
        await page.GetByLabel("Floor's name").BlurAsync();
        await page.GetByRole(AriaRole.Group, new() { Name = "What to measure and choose" }).GetByRole(AriaRole.Button, new() { Name = "Runs" }).ClickAsync();
        await page.Locator("summary", new() { HasText = "Corners, laying, limits" }).ClickAsync();
        await page.GetByLabel("Smallest cuts are compared").SelectOptionAsync("at worst");
        await Device.PlannedAsync(page);
        var job = await JobAsync(page);
        Same(JsonNode.Parse("""[{ "floor": "tray", "edge": "north", "lowest": "-20" }]"""), job["faces"]![0]!["beds"]);
        Same(JsonNode.Parse("""[["450", "990"]]"""), job["faces"]![0]!["readings"]!["levelLine"]!["between"]);
        Assert.Equal("at worst", job["runs"]![0]!["limits"]!["cuts"]!.ToString());
        await Device.GoAsync(page, "Lines");
        await Expect(page.Locator("main")).ToContainTextAsync("everything off at once");
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_bench_top_falls_to_its_front_without_a_drain()
    {
        await using var device = await rig.DeviceAsync();
        var page = await OpenAsync(device, Shower.Replace("""
            "holes": [{ "name": "drain", "x": 450, "y": 750, "diameter": 100 }], "falls": { "drains": ["drain"], "least": 30 } }],
            """.Trim(), "\"levelLine\": 0 }],", StringComparison.Ordinal));
        await page.GetByRole(AriaRole.Group, new() { Name = "Walls" }).GetByRole(AriaRole.Button, new() { Name = "floor", Exact = true }).ClickAsync();
        await page.Locator("summary", new() { HasText = "Bed under it" }).ClickAsync();
        await Button(page, "+ Falls to an edge").ClickAsync();
        await page.GetByLabel("Thick along its lower edge").FillAsync("0");
        await page.GetByLabel("All of it falls to its edge").SelectOptionAsync("west");
        // 900 at 1 in 48: 18.75 at the far edge, half of it over 1.35 square metres: 12.7 litres.
        await Expect(page.Locator(".base-drawn svg")).ToHaveCountAsync(2);
        await LookAsync(page, "bench top", phone: true);
        Same(JsonNode.Parse("""{ "toward": "west", "least": "0" }"""), (await JobAsync(page))["faces"]![1]!["falls"]);
        Assert.Empty(device.Troubles);
    }
}
