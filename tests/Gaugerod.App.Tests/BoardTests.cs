using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Gaugerod.App.Tests.TrimTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>A person's way to board: named beside the tiles, hung on a wall's studs, bought by the sheet.</summary>
[Collection(RigCollection.Name)]
public sealed class BoardTests(Rig rig)
{
    [Theory]
    [ClassData(typeof(Screens))]
    public async Task A_board_is_named_beside_the_tiles_hung_on_studs_and_bought_by_the_sheet(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, Wall);
        await PartAsync(page, "Tiles");
        await Button(page, "+ Supply").ClickAsync();
        await page.GetByLabel("What it is").SelectOptionAsync("screws");
        await page.GetByLabel("How many in a pack").FillAsync("200");
        await page.GetByLabel("How many in a pack").BlurAsync();
        await Button(page, "+ Board").ClickAsync();
        await page.GetByLabel("Sheet's shorter side").FillAsync("900");
        await page.GetByLabel("Sheet's longer side").FillAsync("1500");
        await page.GetByLabel("Sheet's longer side").BlurAsync();
        await page.GetByLabel("Screws", new() { Exact = true }).SelectOptionAsync("supply 1");
        await LookAsync(page, "board", phone);

        // A wall's board hangs on studs: where they stand is asked for at once. A place of its own does instead of a row.
        await PartAsync(page, "Walls");
        await page.GetByLabel("Boarded with").SelectOptionAsync("board 1");
        await Button(page, "+ Stud out of the row").ClickAsync();
        await page.GetByLabel("Middle of another, 1", new() { Exact = true }).FillAsync("1780");
        await page.GetByLabel("Middle of another, 1", new() { Exact = true }).BlurAsync();
        await page.GetByLabel("Middle of the first, from the left").FillAsync("20");
        await page.GetByLabel("From one's middle to the next").FillAsync("400");
        await page.GetByLabel("Gap over floor, bath or tray").FillAsync("10");
        await page.GetByLabel("Gap over floor, bath or tray").BlurAsync();
        await Expect(page.GetByText("What each is cut to stands on the sheets.")).ToBeVisibleAsync();
        await LookAsync(page, "boarded", phone);

        // New names are followed to the wall and to the board; what is taken stays.
        await PartAsync(page, "Tiles");
        await page.GetByLabel("Board's name").FillAsync("half inch board");
        await page.GetByLabel("Board's name").BlurAsync();
        await Expect(page.GetByText("A wall or a floor is boarded with it")).ToBeVisibleAsync();
        await page.GetByLabel("Supply's name").FillAsync("board screws");
        await page.GetByLabel("Supply's name").BlurAsync();
        await Expect(page.GetByText("A board takes it")).ToBeVisibleAsync();
        var job = await JobAsync(page);
        Same(JsonNode.Parse("""[{ "name": "half inch board", "width": "900", "length": "1500", "screws": "board screws" }]"""), job["boards"]);
        Same(JsonNode.Parse("""{ "of": "half inch board", "studs": { "at": ["1780"], "from": "20", "spacing": "400" }, "foot": "10" }"""), job["faces"]![0]!["board"]);

        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Order");
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "half inch board" })).ToBeVisibleAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "board screws" })).ToBeVisibleAsync();
        await LookAsync(page, "sheets of board", phone);

        // Without board all goes that was said of it.
        await Device.GoAsync(page, "Measure");
        await page.GetByLabel("Boarded with").SelectOptionAsync("");
        await Expect(page.GetByLabel("Gap over floor, bath or tray")).ToHaveCountAsync(0);
        Assert.Null((await JobAsync(page))["faces"]![0]!["board"]);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Another_unit_keeps_where_studs_stand_and_how_far_screws_are_apart()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var boards = "\"boards\": [{ \"name\": \"b\", \"width\": 900, \"length\": 1500, \"gap\": 3, \"screwsApart\": 200, \"inset\": 12 }], \"work\": { \"start\": \"2027-03-08\", \"day\": { \"from\": \"08:00\", \"to\": \"16:00\" }, \"holds\": { \"walk\": \"24 h\" } }, ";
        var board = "\"board\": { \"of\": \"b\", \"studs\": { \"from\": 20, \"spacing\": 400, \"at\": [1780], \"width\": 45 }, \"foot\": 6, \"edges\": 3, \"wet\": 1800 }, ";
        var page = await OpenAsync(device, Wall.Replace("\"faces\": [{", boards + "\"faces\": [{", StringComparison.Ordinal).Replace("\"openings\"", board + "\"openings\"", StringComparison.Ordinal));
        await PartAsync(page, "Job");
        await page.GetByLabel("Measured in").SelectOptionAsync("in");
        var job = await JobAsync(page);
        Same(JsonNode.Parse("""[{ "name": "b", "width": "900 mm", "length": "1500 mm", "gap": "3 mm", "screwsApart": "200 mm", "inset": "12 mm" }]"""), job["boards"]);
        Same(JsonNode.Parse("""{ "of": "b", "studs": { "from": "20 mm", "spacing": "400 mm", "at": ["1780 mm"], "width": "45 mm" }, "foot": "6 mm", "edges": "3 mm", "wet": "1800 mm" }"""), job["faces"]![0]!["board"]);
        Same(JsonNode.Parse("""{ "start": "2027-03-08", "day": { "from": "08:00", "to": "16:00" }, "holds": { "walk": "24 h" } }"""), job["work"]);
        Assert.Empty(device.Troubles);
    }
}
