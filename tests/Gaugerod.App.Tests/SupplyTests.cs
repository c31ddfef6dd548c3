using System.Text.Json.Nodes;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Gaugerod.App.Tests.TrimTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>A person's way to mortar, sealant and membrane: named beside the tiles, taken by a run or a wall, bought by the pack.</summary>
[Collection(RigCollection.Name)]
public sealed class SupplyTests(Rig rig)
{
    [Theory]
    [ClassData(typeof(Screens))]
    public async Task A_supply_is_named_beside_the_tiles_taken_by_a_run_and_bought_by_the_pack(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, Wall);
        await PartAsync(page, "Tiles");
        await Button(page, "+ Supply").ClickAsync();
        await page.GetByLabel("A pack makes").FillAsync("14 l");
        await page.GetByLabel("A pack is called").FillAsync("20 kg bag");
        await page.GetByLabel("Supply's name").FillAsync("wall mortar");
        await page.GetByLabel("Supply's name").BlurAsync();
        await Button(page, "+ Supply").ClickAsync();
        await page.GetByLabel("What it is").SelectOptionAsync("sealant");
        await page.GetByLabel("A pack makes").FillAsync("310 ml");
        await page.GetByLabel("A pack makes").BlurAsync();
        await Button(page, "+ Supply").ClickAsync();
        await page.GetByLabel("What it is").SelectOptionAsync("membrane");
        await page.GetByLabel("A pack makes").FillAsync("7 l");
        await page.GetByLabel("How thick when dry").FillAsync("0.6 mm");
        await page.GetByLabel("How thick when dry").BlurAsync();
        await page.GetByLabel("Solids").FillAsync("60");
        await page.GetByLabel("Solids").BlurAsync();
        await LookAsync(page, "supply", phone);

        await PartAsync(page, "Runs");
        await page.Locator("summary", new() { HasText = "Mortar, grout, sealant" }).ClickAsync();
        await page.GetByLabel("Mortar", new() { Exact = true }).SelectOptionAsync("wall mortar");
        await page.GetByLabel("On the backs beside that").FillAsync("2");
        await page.GetByLabel("On the backs beside that").BlurAsync();
        await page.GetByLabel("Sealant", new() { Exact = true }).SelectOptionAsync("supply 1");
        await LookAsync(page, "setting", phone);

        await PartAsync(page, "Walls");
        await page.GetByLabel("Membrane", new() { Exact = true }).SelectOptionAsync("supply 2");
        await page.GetByLabel("How high it goes").FillAsync("1800");
        await page.GetByLabel("How high it goes").BlurAsync();
        await LookAsync(page, "under the tile", phone);

        // A new name is followed to the run that takes it; what is taken stays.
        await PartAsync(page, "Tiles");
        await page.GetByLabel("Supply's name").FillAsync("grey mortar");
        await page.GetByLabel("Supply's name").BlurAsync();
        await Expect(page.GetByText("A wall, a run or a board takes it")).ToBeVisibleAsync();
        var job = await JobAsync(page);
        Same(JsonNode.Parse("""{ "mortar": "grey mortar", "backButter": "2", "sealant": "supply 1" }"""), job["runs"]![0]!["setting"]);
        Same(JsonNode.Parse("""{ "membrane": { "of": "supply 2", "to": "1800" } }"""), job["faces"]![0]!["under"]);

        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Order");
        await Expect(page.Locator("p.packs", new() { HasText = "20 kg bag" })).ToBeVisibleAsync();
        await LookAsync(page, "packs", phone);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Another_unit_keeps_what_packs_make_and_cover()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var supplies = "\"supplies\": [{ \"name\": \"m\", \"kind\": \"membrane\", \"yield\": 7, \"dry\": 0.6, \"solids\": 60 }, { \"name\": \"b\", \"kind\": \"band\", \"yield\": 10 }, { \"name\": \"s\", \"kind\": \"spacers\", \"yield\": 100 }, { \"name\": \"p\", \"kind\": \"primer\", \"yield\": 20 }], ";
        var page = await OpenAsync(device, Wall.Replace("\"faces\": [{", supplies + "\"faces\": [{", StringComparison.Ordinal));
        await PartAsync(page, "Job");
        await page.GetByLabel("Measured in").SelectOptionAsync("in");
        Same(
            JsonNode.Parse("""[{ "name": "m", "kind": "membrane", "yield": "7 l", "dry": "0.6 mm", "solids": 60 }, { "name": "b", "kind": "band", "yield": "10 m" }, { "name": "s", "kind": "spacers", "yield": "100" }, { "name": "p", "kind": "primer", "yield": "20 m2" }]"""),
            (await JobAsync(page))["supplies"]);
        Assert.Empty(device.Troubles);
    }
}
