using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Gaugerod.App.Tests.TrimTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>A person's way to the order of work: asked for with the job, seen day by day where tile is set, taken along as a calendar.</summary>
[Collection(RigCollection.Name)]
public sealed class WorkTests(Rig rig)
{
    private static readonly string s_mixed = Wall
        .Replace("\"faces\": [{", "\"supplies\": [{ \"name\": \"mortar\", \"kind\": \"mortar\", \"yield\": \"14 l\" }], \"faces\": [{", StringComparison.Ordinal)
        .Replace("\"joint\": 3 }]", "\"joint\": 3, \"setting\": { \"mortar\": \"mortar\", \"trowel\": { \"width\": 8, \"depth\": 8, \"tooth\": 8 } } }]", StringComparison.Ordinal);

    [Theory]
    [ClassData(typeof(Screens))]
    public async Task The_order_of_work_is_asked_for_with_the_job_and_stands_day_by_day_where_tile_is_set(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, s_mixed);
        await PartAsync(page, "Tiles");
        await page.Locator("summary", new() { HasText = "Times on the bag" }).ClickAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Pot life" }).FillAsync("2 h");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Pot life" }).BlurAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Open time" }).FillAsync("20 min");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Open time" }).BlurAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Mortar before it is grouted" }).FillAsync("24 h");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Mortar before it is grouted" }).BlurAsync();
        await LookAsync(page, "times on the bag", phone);

        await PartAsync(page, "Job");
        await page.Locator("summary", new() { HasText = "Order of work" }).ClickAsync();
        await Button(page, "+ Order of work").ClickAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = "First day" }).FillAsync("2027-02-30");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "First day" }).BlurAsync();
        await Expect(page.Locator(".field .trouble", new() { HasText = "Nearest: 2027-02-28" })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = "First day" }).FillAsync("2027-02-28");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "First day" }).BlurAsync();
        await Expect(page.GetByText("= Sun 28 Feb 2027")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Day begins" }).FillAsync("07:00");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Day begins" }).BlurAsync();
        await Button(page, "Sat").ClickAsync();
        await page.Locator("summary", new() { HasText = "How quickly you work" }).ClickAsync();
        await page.GetByLabel("Setting", new() { Exact = true }).FillAsync("0.8 m2");
        await page.GetByLabel("Setting", new() { Exact = true }).BlurAsync();
        await page.GetByLabel("Grouting", new() { Exact = true }).FillAsync("5 m2");
        await page.GetByLabel("Grouting", new() { Exact = true }).BlurAsync();
        await LookAsync(page, "order of work asked for", phone);
        var job = await JobAsync(page);
        Same(
            JsonNode.Parse("""{ "start": "2027-02-28", "day": { "from": "07:00", "to": "16:30", "break": "30 min" }, "days": ["mon", "tue", "wed", "thu", "fri", "sat"], "pace": { "setting": "0.8 m2", "grouting": "5 m2" } }"""),
            job["work"]);
        Same(JsonNode.Parse("""{ "name": "mortar", "kind": "mortar", "yield": "14 l", "potLife": "2 h", "openTime": "20 min", "holds": { "grout": "24 h" } }"""), job["supplies"]![0]);

        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Set");
        await page.Locator("summary", new() { HasText = "Order of work" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Mon 1 Mar 2027", Exact = true })).ToBeVisibleAsync();
        await Expect(page.Locator(".work th", new() { HasText = "set wall" }).First).ToContainTextAsync("Mix 1, 07:00");
        await Expect(page.Locator(".work th", new() { HasText = "grout wall" }).First).ToContainTextAsync("Hold: mortar sets before grout: 24 h after set wall");
        await LookAsync(page, "order of work", phone);

        // A wall by another name is followed into the order.
        await Device.GoAsync(page, "Measure");
        await page.GetByLabel("Wall's name").FillAsync("north");
        await page.GetByLabel("Wall's name").BlurAsync();
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Sheets");
        var calendar = System.Text.Encoding.UTF8.GetString(await Device.DownloadAsync(page, Button(page, "Days and holds for a calendar")));
        Assert.Contains("SUMMARY:set north", calendar, StringComparison.Ordinal);
        Assert.Contains("DTSTART:20270301T070000", calendar, StringComparison.Ordinal);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Floors_and_things_made_elsewhere_keep_their_walls_by_any_name()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var work = "\"work\": { \"start\": \"2027-03-08\", \"tasks\": [{ \"name\": \"plumber\", \"takes\": \"2 h\", \"after\": [\"set wall\"] }], \"made\": [{ \"name\": \"glass\", \"lead\": \"10 days\", \"after\": \"set wall\", \"before\": [\"grouting\"] }, { \"name\": \"slab\", \"lead\": \"5 days\", \"faces\": [\"wall\"] }] }, ";
        var page = await OpenAsync(device, Wall.Replace("\"faces\": [{", work + "\"faces\": [{", StringComparison.Ordinal));
        await page.GetByLabel("Wall's name").FillAsync("north");
        await page.GetByLabel("Wall's name").BlurAsync();
        var job = await JobAsync(page);
        Same(JsonNode.Parse("""["set north"]"""), job["work"]!["tasks"]![0]!["after"]);
        Same(JsonValue.Create("set north"), job["work"]!["made"]![0]!["after"]);
        Same(JsonNode.Parse("""["north"]"""), job["work"]!["made"]![1]!["faces"]);
        await Device.PlannedAsync(page);
        Assert.Empty(device.Troubles);
    }
}
