using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>A person's way to a trim: it is made beside the tiles, named at an edge, and its pieces stand among the cuts.</summary>
[Collection(RigCollection.Name)]
public sealed class TrimTests(Rig rig)
{
    [Theory]
    [ClassData(typeof(Screens))]
    public async Task A_trim_is_made_beside_the_tiles_named_at_an_edge_and_ticked_off_in_cuts(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, Wall);
        await PartAsync(page, "Tiles");
        await Button(page, "+ Trim").ClickAsync();
        await page.GetByLabel("Length of a piece or bar").FillAsync("297");
        await page.GetByLabel("Width on the wall").FillAsync("50");
        await page.GetByLabel("Trim's name").FillAsync("round");
        await page.GetByLabel("Trim's name").BlurAsync();
        await LookAsync(page, "trim", phone);

        await PartAsync(page, "Walls");
        var head = page.Locator("details", new() { HasText = "head" }).Last;
        await head.Locator("summary").First.ClickAsync();
        await head.GetByLabel("Meets").SelectOptionAsync("free");
        await head.GetByLabel("Trim", new() { Exact = true }).SelectOptionAsync("round");
        await head.GetByLabel("From the field's joints at least").FillAsync("20");
        await LookAsync(page, "trim at an edge", phone);

        await PartAsync(page, "Tiles");
        await page.GetByLabel("Trim's name").FillAsync("bullnose");
        await page.GetByLabel("Trim's name").BlurAsync();
        await Expect(page.GetByText("It stands at an edge or in a band")).ToBeVisibleAsync();
        var job = await JobAsync(page);
        Same(JsonNode.Parse("""[{ "name": "bullnose", "kind": "bullnose", "length": "297", "width": "50" }]"""), job["trims"]);
        Same(JsonNode.Parse("""{ "of": "bullnose", "joints": "staggered", "stagger": "20" }"""), job["faces"]![0]!["edges"]!["head"]!["trim"]);

        await Device.PlannedAsync(page);
        // On the drawing of Lines every piece stands where it sits, and says what it is when it is picked.
        await Device.GoAsync(page, "Lines");
        await Expect(page.Locator("path.trim.cut")).ToHaveCountAsync(1);
        await Expect(page.Locator("text.of-trim").First).ToHaveTextAsync("t1");
        await LookAsync(page, "trim in lines", phone);
        await Device.GoAsync(page, "Cuts");
        var heading = page.GetByRole(AriaRole.Heading, new() { Name = "Trim: bullnose, wall, head" });
        await Expect(heading).ToContainTextAsync("0 of");
        await heading.ScrollIntoViewIfNeededAsync();
        await LookAsync(page, "trim in cuts", phone);
        var piece = page.Locator("ul.pieces li", new() { HasText = "of stock" }).First;
        await piece.GetByRole(AriaRole.Checkbox).CheckAsync();
        await Expect(heading).ToContainTextAsync("1 of");
        await Expect(page.GetByText("not in this plan as cut")).ToHaveCountAsync(0);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Another_unit_keeps_every_length_of_a_trim()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Wall.Replace("\"faces\": [{", "\"trims\": [{ \"name\": \"round\", \"kind\": \"bullnose\", \"length\": 297, \"width\": 50, \"outside\": 60, \"stop\": 30 }], \"faces\": [{", StringComparison.Ordinal));
        await PartAsync(page, "Job");
        await page.GetByLabel("Measured in").SelectOptionAsync("in");
        Same(JsonNode.Parse("""[{ "name": "round", "kind": "bullnose", "length": "297 mm", "width": "50 mm", "outside": "60 mm", "stop": "30 mm" }]"""), (await JobAsync(page))["trims"]);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_fault_in_a_trim_opens_that_trim_and_leaves_the_tiles_alone()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var trims = "\"trims\": [{ \"name\": \"round\", \"kind\": \"bullnose\", \"length\": 297, \"width\": 50 }, { \"name\": \"pencil\", \"kind\": \"liner\", \"length\": 200, \"width\": 20, \"least\": 300 }], ";
        var page = await device.OpenAsync();
        await OpenFileAsync(page, System.Text.Encoding.UTF8.GetBytes(Wall.Replace("\"faces\": [{", trims + "\"faces\": [{", StringComparison.Ordinal)));
        await Device.GoAsync(page, "Measure");
        await page.Locator("details.faults summary").ClickAsync();
        await page.Locator("details.faults li .key").First.ClickAsync();
        await Expect(page.GetByLabel("Trim's name")).ToHaveValueAsync("pencil");
        await Expect(page.GetByLabel("Tile's name")).ToBeVisibleAsync();
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_band_is_made_of_trim_where_the_band_is_edited()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Wall.Replace("\"faces\": [{", "\"trims\": [{ \"name\": \"pencil\", \"kind\": \"liner\", \"length\": 200, \"width\": 20 }], \"faces\": [{", StringComparison.Ordinal));
        await PartAsync(page, "Walls");
        await Button(page, "+ Band").ClickAsync();
        await page.GetByLabel("Trim", new() { Exact = true }).Last.SelectOptionAsync("pencil");
        var job = await JobAsync(page);
        var band = job["faces"]![0]!["zones"]![0]!;
        Assert.Equal(("pencil", null), (band["trim"]!["of"]!.ToString(), band["to"]?.ToString()));
        Assert.DoesNotContain(job["runs"]!.AsArray(), run => run!["faces"]!.AsArray().Any(face => face!.ToString() == band["name"]!.ToString()));
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_trim_is_bought_with_spares_of_its_own_and_an_edge_worked_on_the_tiles_asks_for_no_joints()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Wall.Replace("\"faces\": [{", "\"trims\": [{ \"name\": \"round\", \"kind\": \"bullnose\", \"length\": 297, \"width\": 50 }, { \"name\": \"eased\", \"kind\": \"eased edge\" }], \"faces\": [{", StringComparison.Ordinal));
        await PartAsync(page, "Tiles");
        await page.Locator("summary").Filter(new() { HasText = "Corner pieces, sale, blade, spares" }).ClickAsync();
        await page.GetByLabel("Pieces for breakage").FillAsync("2");
        await page.GetByLabel("Pieces left with the client").FillAsync("1");
        await page.GetByLabel("Flat share on top, %").Last.FillAsync("5");
        await PartAsync(page, "Walls");
        var head = page.Locator("details", new() { HasText = "head" }).Last;
        await head.Locator("summary").First.ClickAsync();
        await head.GetByLabel("Meets").SelectOptionAsync("free");
        await head.GetByLabel("Trim", new() { Exact = true }).SelectOptionAsync("round");
        await head.GetByLabel("Trim", new() { Exact = true }).SelectOptionAsync("eased");
        var job = await JobAsync(page);
        Same(JsonNode.Parse("""{ "name": "round", "kind": "bullnose", "length": 297, "width": 50, "breakage": 2, "spares": 1, "flatPercent": 5 }"""), job["trims"]![0]);
        Same(JsonNode.Parse("""{ "of": "eased" }"""), job["faces"]![0]!["edges"]!["head"]!["trim"]);
        Assert.Empty(device.Troubles);
    }

    internal static Task PartAsync(IPage page, string name) =>
        page.GetByRole(AriaRole.Group, new() { Name = "What to measure and choose" }).GetByRole(AriaRole.Button, new() { Name = name }).ClickAsync();
}
