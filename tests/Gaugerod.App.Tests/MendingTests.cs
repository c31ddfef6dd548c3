using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>What a stranger stumbled over at the editors: a fault is said as a person says it, and one key sets it right.</summary>
[Collection(RigCollection.Name)]
public sealed class MendingTests(Rig rig)
{
    [Fact]
    public async Task A_band_that_parts_its_wall_is_said_without_program_text_and_one_key_adds_the_zone_above_it_with_its_run()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Floor);
        await Button(page, "+ Band").ClickAsync();
        await page.Locator("summary").Filter(new() { HasText = "above band" }).ClickAsync();
        await page.Locator("details.thing").Filter(new() { HasText = "above band" }).GetByRole(AriaRole.Button, new() { Name = "Remove" }).ClickAsync();
        await Device.GoAsync(page, "Lines");
        var notice = page.Locator(".notice.bad");
        await Expect(notice).ToContainTextAsync("a band \"above band\" from 1003 mm up");
        await Expect(notice).Not.ToContainTextAsync("{");

        // To the fault is to the zones, where the key stands too.
        await notice.GetByRole(AriaRole.Button).First.ClickAsync();
        await Expect(page.Locator("#f-faces-0--zones")).ToBeInViewportAsync();
        await page.Locator("#f-faces-0--zones").GetByRole(AriaRole.Button, new() { Name = "Set it right" }).ClickAsync();
        await Device.PlannedAsync(page);
        var job = await JobAsync(page);
        Same(JsonNode.Parse("""{ "kind": "band", "name": "above band", "from": "1003 mm", "joint": 3 }"""), job["faces"]![0]!["zones"]![1]);
        Assert.Equal("above band", job["runs"]![2]!["faces"]![0]!.ToString());
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task What_begins_where_a_band_ends_goes_on_beginning_there()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Floor);
        await Button(page, "+ Band").ClickAsync();
        await page.GetByLabel("Ends at a height of").First.FillAsync("1206");
        await Device.PlannedAsync(page);
        Assert.Equal("1206", (await JobAsync(page))["faces"]![0]!["zones"]![1]!["from"]!.ToString());
    }

    [Fact]
    public async Task A_key_is_pressed_though_it_slides_from_under_the_pointer()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Floor);
        await page.Locator("button.part", new() { HasText = "Tiles" }).ClickAsync();
        await page.GetByLabel("Tile's name").FillAsync("a tile with a name so long that the keys beside it are slid away");
        var key = (await Button(page, "+ Tile").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(key.X + (key.Width / 2), key.Y + (key.Height / 2));
        await page.Mouse.DownAsync();
        await page.WaitForTimeoutAsync(300);
        await page.Mouse.UpAsync();
        await Expect(page.GetByRole(AriaRole.Group, new() { Name = "Tiles" }).GetByRole(AriaRole.Button)).ToHaveCountAsync(4);
    }

    [Fact]
    public async Task What_may_move_may_move_from_the_first_and_between_its_studs()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Wall);
        await page.Locator("summary").Filter(new() { HasText = "niche" }).First.ClickAsync();
        await page.Locator("summary").Filter(new() { HasText = "May give way" }).ClickAsync();
        await page.GetByText("It stands between two studs").ClickAsync();
        await page.GetByLabel("Left stud's face").FillAsync("280");
        await page.GetByLabel("Right stud's face").FillAsync("730");
        await page.WaitForTimeoutAsync(400);
        await page.GetByText("its place from the left may move").ClickAsync();
        await page.GetByText("its bottom may move").ClickAsync();
        // The niche goes from 300 to 700 mm: 20 to the left stud, 30 to the right; up and down 50 mm.
        Same(JsonNode.Parse("""{ "studs": ["280", "730"], "left": ["280", "330"], "bottom": ["950", "1050"] }"""), (await JobAsync(page))["faces"]![0]!["openings"]![0]!["range"]);
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Lines");
        await Expect(page.Locator(".to-build")).ToContainTextAsync("Frame niche: left ");
    }

    [Fact]
    public async Task The_picture_of_a_bond_turns_while_the_turn_is_typed()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Floor);
        await Button(page, "Runs").ClickAsync();
        var straight = await page.Locator(".bond-picture path").First.GetAttributeAsync("d");
        await page.GetByLabel("Turned, in degrees").FillAsync("45");
        await Expect(page.Locator(".bond-picture path").First).Not.ToHaveAttributeAsync("d", straight!);
        await Expect(page.GetByLabel("Turned, in degrees")).ToBeFocusedAsync();
    }

    [Fact]
    public async Task Chips_too_small_to_be_made_are_refused_and_one_key_takes_the_count_that_can_be()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Floor);
        await Button(page, "Runs").ClickAsync();
        await page.GetByLabel("Bond", new() { Exact = true }).SelectOptionAsync("mosaic");
        await Expect(page.Locator("main")).ToContainTextAsync("One chip is then");
        await page.GetByLabel("Chips a sheet is wide").FillAsync("60");
        await Button(page, "Set it right").First.ClickAsync();
        await Expect(page.Locator(".trouble")).ToHaveCountAsync(0);
        await Device.PlannedAsync(page);
    }

    [Fact]
    public async Task Sheets_of_another_job_are_no_news_of_this_one()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Floor);
        await Device.GoAsync(page, "Sheets");
        await Device.DownloadAsync(page, Button(page, "Job sheets"));
        await Expect(page.Locator("main")).ToContainTextAsync("handed to your downloads");
        await Device.GoAsync(page, "Jobs");
        await OpenFileAsync(page, System.Text.Encoding.UTF8.GetBytes(Wall));
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Sheets");
        await Expect(Button(page, "Job sheets")).ToBeVisibleAsync();
        await Expect(page.Locator("main")).Not.ToContainTextAsync("handed to your downloads");
    }
}
