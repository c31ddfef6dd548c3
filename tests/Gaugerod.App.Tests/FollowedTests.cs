using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Gaugerod.App.Tests.TrimTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>What is called anew in the page is called so wherever the job speaks of it; what is taken out is spoken of no more. All prices are invented.</summary>
[Collection(RigCollection.Name)]
public sealed class FollowedTests(Rig rig)
{
    private static readonly string s_job = Wall.Replace("\"faces\": [{", """
        "supplies": [{ "name": "grey mortar", "kind": "mortar", "yield": "14 l" }],
        "prices": { "currency": "EUR", "items": [{ "item": "tile", "unit": "box", "price": "30" }, { "item": "grey mortar", "unit": "pack", "price": "20" }, { "item": "small", "unit": "each", "price": "1" }],
          "labour": [{ "task": "setting", "per": "hour", "rate": "45", "of": "tiled area", "run": "wall", "pace": "1 m2" }] },
        "handover": { "lots": [{ "of": "tile", "lot": "07 B" }, { "of": "grey mortar", "lot": "3" }, { "of": "small", "lot": "1" }], "photographs": [{ "of": "wall", "what": "pipes" }] },
        "work": { "start": "2027-03-08", "tasks": [{ "name": "plumber", "takes": "2 h", "after": ["grout wall"] }, { "name": "mirror", "takes": "1 h", "after": ["plumber", "glass is in"] }], "made": [{ "name": "glass", "lead": "10 days", "after": "plumber" }] },
        "faces": [{
        """, StringComparison.Ordinal);

    [Fact]
    public async Task A_tile_a_supply_and_a_run_called_anew_are_called_so_in_prices_lots_and_the_order_of_work()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, s_job);
        await NameAsync(page, "Wall's name", "north");
        await PartAsync(page, "Tiles");
        await NameAsync(page, "Tile's name", "white tile");
        await NameAsync(page, "Supply's name", "white mortar");
        await PartAsync(page, "Runs");
        await NameAsync(page, "Run's name", "shower");
        var job = await JobAsync(page);
        Assert.Equal("white tile, white mortar, small", Said(job["prices"]!["items"], "item"));
        Assert.Equal("white tile, white mortar, small", Said(job["handover"]!["lots"], "of"));
        Assert.Equal("north", Said(job["handover"]!["photographs"], "of"));
        Assert.Equal("shower", Said(job["prices"]!["labour"], "run"));
        Same(JsonNode.Parse("""["grout shower"]"""), job["work"]!["tasks"]![0]!["after"]);
        await Device.PlannedAsync(page);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task What_is_taken_out_is_spoken_of_no_more_and_comes_back_whole()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, s_job);
        await PartAsync(page, "Tiles");
        await page.GetByRole(AriaRole.Group, new() { Name = "Tiles", Exact = true }).GetByRole(AriaRole.Button, new() { Name = "small" }).ClickAsync();
        await Button(page, "Remove").First.ClickAsync();
        await Button(page, "Remove").Last.ClickAsync();
        var job = await JobAsync(page);
        Assert.Equal("tile", Said(job["prices"]!["items"], "item"));
        Assert.Equal("tile", Said(job["handover"]!["lots"], "of"));
        Assert.Null(job["supplies"]);
        foreach (var name in (string[])["grey mortar", "small"]) await page.GetByRole(AriaRole.Button, new() { Name = "Undo: removed " + name }).ClickAsync();
        Same(JsonNode.Parse(s_job)!["handover"], (await JobAsync(page))["handover"]);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_task_of_ones_own_and_what_is_made_elsewhere_are_followed_by_what_waits_for_them()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, s_job);
        await PartAsync(page, "Job");
        foreach (var fold in (string[])["Order of work", "Tasks of your own", "plumber", "Made elsewhere", "glass"]) await HandOverTests.Fold(page, fold).ClickAsync();
        await NameAsync(page, "Task's name", "grouting");
        await Expect(page.GetByText("Another task is called grouting; this one keeps the name it had.")).ToBeVisibleAsync();
        await NameAsync(page, "Task's name", "valve");
        await NameAsync(page, "What is made", "panel");
        var work = (await JobAsync(page))["work"]!;
        Same(JsonNode.Parse("""["valve", "panel is in"]"""), work["tasks"]![1]!["after"]);
        Same(JsonValue.Create("valve"), work["made"]![0]!["after"]);

        await PartAsync(page, "Job");
        foreach (var fold in (string[])["Order of work", "Tasks of your own", "valve"]) await HandOverTests.Fold(page, fold).ClickAsync();
        await Button(page, "Remove").First.ClickAsync();
        work = (await JobAsync(page))["work"]!;
        Same(JsonNode.Parse("""["panel is in"]"""), work["tasks"]![0]!["after"]);
        Assert.Null(work["made"]![0]!["after"]);
        await Device.PlannedAsync(page);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_rate_stays_what_it_is_when_it_is_for_something_else()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, s_job);
        await Device.GoAsync(page, "Order");
        await HandOverTests.Fold(page, "setting").ClickAsync();
        await page.GetByLabel("Rate for").SelectOptionAsync("m2");
        await Expect(page.GetByLabel("Rate", new() { Exact = true })).ToHaveValueAsync("45");
        Assert.Equal("45", Said((await JobAsync(page))["prices"]!["labour"], "rate"));
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_slip_in_a_price_is_there_still_after_the_page_was_loaded_anew()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, s_job);
        await Device.GoAsync(page, "Order");
        await page.GetByLabel("tile, price by").First.FillAsync("2,50");
        await page.GetByLabel("tile, price by").First.BlurAsync();
        var slip = page.Locator("p.trouble", new() { HasText = "Found \"2,50\"; expected a number to 10,000,000 such as" }).First;
        await Expect(slip).ToBeVisibleAsync();
        await page.WaitForTimeoutAsync(400);
        await Device.SavedAsync(page);
        await page.ReloadAsync();
        await Device.ReadyAsync(page);
        await Device.GoAsync(page, "Order");
        await Expect(slip).ToBeVisibleAsync();
        Assert.Empty(device.Troubles);
    }

    internal static async Task NameAsync(IPage page, string label, string name)
    {
        await page.GetByLabel(label).First.FillAsync(name);
        await page.GetByLabel(label).First.BlurAsync();
    }

    private static string Said(JsonNode? list, string field) => string.Join(", ", list!.AsArray().Select(one => one![field]!.ToString()));
}
