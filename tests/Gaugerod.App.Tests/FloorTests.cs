using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>A person's way to a bed that falls and to how flat a floor is, on an invented floor of 2000 by 1600 mm.</summary>
[Collection(RigCollection.Name)]
public sealed class FloorTests(Rig rig)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_bed_is_typed_and_stands_below_as_a_picture_with_its_heights(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, WithDrain);
        await Unfold(page, "Bed under it");
        await Button(page, "+ Bed that falls").ClickAsync();
        await page.GetByLabel("Thick at the drain").FillAsync("-5");
        await Expect(page.Locator("main").GetByText("Found", new() { Exact = false }).First).ToContainTextAsync("0");
        await page.GetByLabel("Thick at the drain").FillAsync("30");
        await page.GetByLabel("How steeply it falls, from its farthest place").FillAsync("20 mm per m");
        await page.GetByLabel("How steeply it falls, from its farthest place").BlurAsync();
        // The corners are 1280.6 from the drain, 25.6 up at 2 in 100: a curb of 20 is overtopped.
        await page.GetByLabel("Top of the curb over the drain").FillAsync("20");
        await Expect(page.Locator(".trouble").First).ToContainTextAsync("25.6");
        await page.GetByLabel("Top of the curb over the drain").FillAsync("60");
        await Expect(page.Locator(".set-right")).ToHaveCountAsync(0);
        await Unfold(page, "Weight and bags");
        await page.GetByLabel("What a bag makes").FillAsync("14 l");
        await page.GetByLabel("What a bag makes").BlurAsync();
        await Expect(page.Locator(".base-drawn svg")).ToHaveCountAsync(2);
        await page.GetByLabel("From the left", new() { Exact = true }).FillAsync("1000");
        await page.GetByLabel("Up", new() { Exact = true }).FillAsync("0");
        await Expect(page.GetByText("26 mm over the drain, 56 mm thick")).ToBeVisibleAsync();
        await page.GetByLabel("Up", new() { Exact = true }).FillAsync("1700");
        await Expect(page.GetByText("is off the floor")).ToBeVisibleAsync();
        await Unfold(page, "Heights at stakes");
        await SeenAsync(page, "bed", phone);
        Same(JsonNode.Parse("""{ "drains": ["drain"], "least": "30", "fall": "20 mm per m", "curb": "60", "bag": { "yield": "14 l" } }"""), (await JobAsync(page))["faces"]![0]!["falls"]);
        await Unfold(page, "Bed under it");
        await Button(page, "Remove the bed").ClickAsync();
        Assert.Null((await JobAsync(page))["faces"]![0]!["falls"]);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_bed_keeps_its_drain_when_folds_are_cut_to_it_or_not_any_more_and_a_channel_off_the_floor_is_said_at_its_place()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, WithDrain);
        await Unfold(page, "Bed under it");
        await Button(page, "+ Bed that falls").ClickAsync();
        await page.GetByLabel("Thick at the drain").FillAsync("30");
        await Unfold(page, "Falls and folds");
        await page.GetByLabel("All of it falls to").SelectOptionAsync("drain");
        await Expect(page.GetByLabel("Drain 1")).ToHaveCountAsync(0);
        await page.GetByLabel("All of it falls to").SelectOptionAsync("");
        await Expect(page.GetByLabel("Drain 1")).ToHaveValueAsync("drain");
        await Button(page, "+ Channel").ClickAsync();
        await page.GetByLabel("Channel 2 ends: from the left").FillAsync("2100");
        await Expect(page.Locator(".group-trouble")).ToContainTextAsync("off the floor");
        await page.GetByLabel("Channel 2 ends: from the left").FillAsync("2000");
        await Expect(page.Locator(".group-trouble")).ToHaveCountAsync(0);
        Same(JsonNode.Parse("""{ "least": "30", "drains": ["drain", [["0", "0"], ["2000", "0"]]] }"""), (await JobAsync(page))["faces"]![0]!["falls"]);
        Assert.Empty(device.Troubles);
    }

    [Theory]
    [ClassData(typeof(Screens))]
    public async Task Readings_are_typed_row_by_row_and_their_map_stands_beside_them(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, Floor);
        await Unfold(page, "How flat it is");
        await Button(page, "+ Grid of readings").ClickAsync();
        await Expect(page.GetByLabel("150 across, 1350 up:")).ToBeFocusedAsync();
        // Row by row as the floor is seen, with the key for the next field.
        foreach (var figure in "0 1 2,0 -9 1,0 0 5 cm".Split(',').SelectMany(row => row.Split(' ', 3)))
        {
            await page.Keyboard.TypeAsync(figure);
            await page.Keyboard.PressAsync("Enter");
        }

        await Expect(page.GetByText("150 across, 150 up: = 0 mm")).ToHaveCountAsync(0);
        await Expect(page.Locator(".base-drawn svg")).ToHaveCountAsync(1);
        await Expect(page.Locator("table.weighed")).ToContainTextAsync("▲ out");
        await page.GetByLabel("1350 across, 150 up:").FillAsync("0 1");
        await Expect(page.Locator(".row-said .trouble")).ToContainTextAsync("1350 across, 150 up: not read");
        await page.GetByLabel("1350 across, 150 up:").FillAsync("1");
        await Expect(page.Locator("main .notice", new() { HasText = "Grinding sets silica dust free" })).ToBeVisibleAsync();
        await SeenAsync(page, "flatness", phone);
        // A grid that leaves the face is said where its step stands.
        await page.GetByLabel("From reading to reading").FillAsync("1000");
        await Expect(page.Locator(".group-trouble").First).ToContainTextAsync("off the face");
        await page.GetByLabel("From reading to reading").FillAsync("600");
        Same(JsonNode.Parse("""{ "from": ["150", "150"], "step": "600", "heights": [["0", "0", "1"], ["0", "-9", "1"], ["0", "1", "2"]] }"""), (await JobAsync(page))["faces"]![0]!["flatness"]!["grid"]);
        await Unfold(page, "How flat it is");
        await Button(page, "Remove the grid").ClickAsync();
        Assert.Null((await JobAsync(page))["faces"]![0]!["flatness"]);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Single_readings_and_a_straightedge_laid_are_typed_in_one_row_each_and_tolerances_are_the_jobs()
    {
        await using var device = await rig.DeviceAsync();
        var page = await OpenAsync(device, Floor);
        await Unfold(page, "How flat it is");
        await Button(page, "+ Straightedge laid").ClickAsync();
        await TypeAsync(page, "100", "800", "1900", "800", "0", "2", "5", "2", "0");
        await Expect(page.Locator(".base-drawn svg")).ToHaveCountAsync(1);
        for (var i = 0; i < 3; i++)
        {
            await Button(page, "+ Single reading").ClickAsync();
            await Expect(page.GetByLabel($"Reading {i + 1} from the left")).ToBeFocusedAsync();
            await TypeAsync(page, i == 2 ? "3000" : "100", i == 1 ? "1500" : "100", "1");
        }

        await Expect(page.Locator(".group-trouble, .row-said .trouble").First).ToContainTextAsync("off the face");
        await page.GetByLabel("Reading 3 from the left").FillAsync("1900");
        await SeenAsync(page, "single readings", phone: true);
        Same(JsonNode.Parse("""{ "straightedge": [{ "from": ["100", "800"], "to": ["1900", "800"], "gaps": ["0", "2", "5", "2", "0"] }], "points": [{ "at": ["100", "100"], "height": "1" }, { "at": ["100", "1500"], "height": "1" }, { "at": ["1900", "100"], "height": "1" }] }"""),
            (await JobAsync(page))["faces"]![0]!["flatness"]);
        await page.GetByRole(AriaRole.Group, new() { Name = "What to measure and choose" }).GetByRole(AriaRole.Button, new() { Name = "Job" }).ClickAsync();
        await Unfold(page, "How far things may be off");
        await page.GetByLabel("A snapped line").FillAsync("1");
        Same(JsonNode.Parse("""{ "setOut": "1" }"""), (await JobAsync(page))["tolerances"]);
        Assert.Empty(device.Troubles);
    }

    private static readonly string WithDrain = Floor.Replace("\"outline\"", """ "holes": [{ "name": "drain", "x": 1000, "y": 800, "diameter": 100 }], "outline" """, StringComparison.Ordinal);

    private static Task Unfold(IPage page, string title) => page.Locator("summary", new() { HasText = title }).ClickAsync();

    private static async Task TypeAsync(IPage page, params string[] figures)
    {
        foreach (var figure in figures)
        {
            await page.Keyboard.TypeAsync(figure);
            await page.Keyboard.PressAsync("Enter");
        }
    }

    /// <summary>Held to the rules in every light, to the size of a touch and to the screen's width, and pictured.</summary>
    private static async Task SeenAsync(IPage page, string what, bool phone)
    {
        await page.WaitForTimeoutAsync(600);
        await page.EvaluateAsync("() => document.activeElement.blur()");
        foreach (var light in new[] { "dark", "strong", "light" })
        {
            await page.EvaluateAsync("light => document.documentElement.setAttribute('data-light', light)", light);
            Assert.Empty((await Access.FaultsAsync(page)).Select(fault => $"{what}, {light}: {fault}"));
            await page.WaitForTimeoutAsync(300);
            await page.Locator("details.thing[open]").Last.ScreenshotAsync(new() { Path = Path.Combine(Directory.CreateDirectory(Path.Combine(Gaugerod.Testing.Repo.Root, "artifacts", "looked")).FullName, $"{what}, {light}, {(phone ? "phone" : "laptop")}.png") });
        }

        Assert.Empty(await page.EvaluateAsync<string[]>(AccessTests.Targets));
        Assert.False(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > document.documentElement.clientWidth"), what);
    }
}
