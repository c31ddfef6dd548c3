using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gaugerod.App.Tests.MeasureTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>
/// A person's way to zones, falls, things that may move, round sides and wants on holes: what is tapped and typed makes the
/// job file of docs/job-file.md, and the plan appears. WCAG 2.2, levels A and AA, by the rules of axe-core, as in AccessTests.
/// </summary>
[Collection(RigCollection.Name)]
public sealed class EditorsTests(Rig rig)
{
    [Theory]
    [InlineData("+ Border", true, """{ "kind": "border", "name": "border", "width": "201.5 mm", "joint": 3 }""")]
    [InlineData("+ Rug", false, """{ "kind": "rug", "name": "rug", "left": "500", "bottom": "400", "width": "1000", "height": "800", "joint": 3 }""")]
    [InlineData("+ Band", true, """{ "kind": "band", "name": "band", "from": "800", "to": "1003", "joint": 3 }""")]
    [InlineData("+ Other tile above", false, """{ "kind": "band", "name": "upper", "from": "800", "joint": 3 }""")]
    public async Task A_zone_is_one_tap_with_a_run_that_lays_it(string key, bool phone, string zone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, Floor);
        await Button(page, key).ClickAsync();
        var wanted = JsonNode.Parse(zone)!;
        var name = wanted["name"]!.ToString();
        await Expect(page.GetByLabel("Zone's name")).ToHaveValueAsync(name);
        await LookAsync(page, "zone " + name, phone);
        await page.GetByLabel("Laid with the tile").SelectOptionAsync("small");

        var job = await JobAsync(page);
        Same(wanted, job["faces"]![0]!["zones"]![0]);
        Same(JsonNode.Parse($$"""{ "name": "{{name}}", "product": "small", "faces": ["{{name}}"], "bond": { "kind": "grid" }, "joint": 3 }"""), job["runs"]![1]);
        // A band parts the wall: what lies above it goes on as the wall does.
        if (name == "band") Same(JsonNode.Parse("""{ "kind": "band", "name": "above band", "from": "1003", "joint": 3 }"""), job["faces"]![0]!["zones"]![1]);
        await Device.PlannedAsync(page);
        await Expect(page.Locator("main")).ToContainTextAsync("small");
        await Device.GoAsync(page, "Lines");
        await Expect(page.GetByRole(AriaRole.Group, new() { Name = "Run" }).GetByRole(AriaRole.Button).Nth(1)).ToContainTextAsync(name);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_zone_is_named_undone_and_its_run_is_one_tap_away()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Floor);
        await Button(page, "+ Rug").ClickAsync();
        await page.GetByLabel("Zone's name").FillAsync("floor");
        await page.GetByLabel("Zone's name").BlurAsync();
        await Expect(page.GetByText("A wall or a zone is called floor already")).ToBeVisibleAsync();
        await page.GetByLabel("Zone's name").FillAsync("carpet");
        await page.GetByLabel("Zone's name").BlurAsync();
        await page.GetByLabel("Width of the rug").FillAsync("5000");
        // What the engine says of it stands at its field or beside it.
        await Expect(page.Locator("details.thing .trouble").First).ToBeVisibleAsync();
        await page.GetByLabel("Width of the rug").FillAsync("800");
        await Expect(page.Locator("details.thing .trouble")).ToHaveCountAsync(0);
        Assert.Equal("carpet", (await JobAsync(page))["runs"]![1]!["faces"]![0]!.ToString());

        await page.Locator("details.thing > summary", new() { HasText = "carpet" }).ClickAsync();
        await Button(page, "Bond and joint: run rug").ClickAsync();
        await Expect(page.GetByLabel("Bond", new() { Exact = true })).ToBeVisibleAsync();
        await Expect(page.Locator(".order").First).ToContainTextAsync("carpet");
        await page.GetByLabel("Run's name").FillAsync("hexagons");
        await page.GetByLabel("Run's name").BlurAsync();
        foreach (var what in new[] { "name of hexagons", "width of carpet on floor", "name of carpet", "new rug on floor" }) await page.GetByRole(AriaRole.Button, new() { Name = "Undo: " + what }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Nothing to undo" })).ToBeDisabledAsync();
        Assert.Null((await JobAsync(page))["faces"]![0]!["zones"]);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_zone_in_no_run_can_be_put_on_one()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Floor);
        await Button(page, "+ Rug").ClickAsync();
        await Button(page, "Bond and joint: run rug").ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take out rug" }).ClickAsync();
        await page.GetByRole(AriaRole.Group, new() { Name = "Walls and zones in no run" }).GetByRole(AriaRole.Button, new() { Name = "+ rug" }).ClickAsync();
        Assert.Equal("rug", (await JobAsync(page))["runs"]![1]!["faces"]![0]!.ToString());
        await Device.PlannedAsync(page);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_floor_falls_to_its_drain_and_the_drain_is_asked_onto_a_crossing()
    {
        await using var device = await rig.DeviceAsync();
        var page = await OpenAsync(device, Floor);
        await page.Locator("summary", new() { HasText = "Falls and folds" }).ClickAsync();
        await Button(page, "+ Drain in the middle").ClickAsync();
        await page.GetByLabel("Diameter of the pipe, valve or drain").FillAsync("100");
        await LookAsync(page, "falls", phone: true);
        var job = await JobAsync(page);
        Same(JsonNode.Parse("""{ "to": "drain" }"""), job["faces"]![0]!["falls"]);
        Same(JsonNode.Parse("""[{ "name": "drain", "x": "1000", "y": "800", "diameter": "100" }]"""), job["faces"]![0]!["holes"]);
        await Device.PlannedAsync(page);

        await Device.GoAsync(page, "Lines");
        await Button(page, "Ask for something at the hole drain").First.ClickAsync();
        await page.GetByLabel("What stands on the middle of drain").SelectOptionAsync("joint");
        await page.GetByLabel("A must").CheckAsync();
        await LookAsync(page, "want on a drain", phone: true);
        await Button(page, "Ask for it").ClickAsync();
        Same(JsonNode.Parse("""[{ "want": "hole", "face": "floor", "hole": "drain", "on": "joint", "must": true }]"""), (await JobAsync(page))["runs"]![0]!["wants"]);
        await Expect(page.Locator(".asked .held")).ToContainTextAsync("drain", new() { Timeout = 90_000 });
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_drain_put_in_beside_a_hole_without_a_name_is_the_one_that_is_gone_to()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        // A job that is not whole yet: it cannot be planned.
        await OpenFileAsync(page, System.Text.Encoding.UTF8.GetBytes(Floor.Replace("\"outline\"", """ "holes": [{ "x": 300, "y": 300, "diameter": 20 }], "outline" """, StringComparison.Ordinal)));
        await Expect(Button(page, "+ Rug")).ToBeVisibleAsync(new() { Timeout = 60_000 });
        await page.Locator("summary", new() { HasText = "Falls and folds" }).ClickAsync();
        await Button(page, "+ Drain in the middle").ClickAsync();
        await Expect(page.Locator("#f-faces-0--holes-1--diameter")).ToBeFocusedAsync();
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_fold_line_is_added_typed_and_taken_out()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Floor);
        await page.Locator("summary", new() { HasText = "Falls and folds" }).ClickAsync();
        await Button(page, "+ Fold line").ClickAsync();
        await page.GetByLabel("Fold 1 begins: from the left").FillAsync("700");
        await page.GetByLabel("Fold 1 ends: from the left").FillAsync("700");
        Same(JsonNode.Parse("""{ "lines": [[["700", "0"], ["700", "1600"]]] }"""), (await JobAsync(page))["faces"]![0]!["falls"]);
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Measure");
        await page.Locator("summary", new() { HasText = "Falls and folds" }).ClickAsync();
        await Button(page, "Remove fold 1").ClickAsync();
        Assert.Null((await JobAsync(page))["faces"]![0]!["falls"]);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_niche_that_is_not_built_yet_gives_way_to_the_joints()
    {
        await using var device = await rig.DeviceAsync();
        var page = await OpenAsync(device, Wall);
        await page.Locator("details.thing > summary", new() { HasText = "niche" }).ClickAsync();
        await page.Locator("summary", new() { HasText = "May give way" }).ClickAsync();
        await page.GetByLabel("Not built yet: its bottom may move").CheckAsync();
        await page.GetByLabel("Most bottom", new() { Exact = true }).FillAsync("900");
        // What is asked, 1000, no longer stands between the two; it is said beside them.
        await Expect(page.Locator(".group-trouble")).ToContainTextAsync("between them");
        await page.GetByLabel("Most bottom", new() { Exact = true }).FillAsync("1150");
        await Expect(page.Locator(".group-trouble")).ToHaveCountAsync(0);
        await LookAsync(page, "range", phone: true);
        Same(JsonNode.Parse("""{ "bottom": ["950", "1150"] }"""), (await JobAsync(page))["faces"]![0]!["openings"]![0]!["range"]);
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Measure");
        await page.Locator("details.thing > summary", new() { HasText = "niche" }).ClickAsync();
        await page.Locator("summary", new() { HasText = "May give way" }).ClickAsync();
        await page.GetByLabel("Not built yet: its bottom may move").UncheckAsync();
        Assert.Null((await JobAsync(page))["faces"]![0]!["openings"]![0]!["range"]);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_niche_gets_a_round_head_whose_crown_is_typed_over()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Wall);
        await page.Locator("details.thing > summary", new() { HasText = "niche" }).ClickAsync();
        await Button(page, "Round its head").ClickAsync();
        await Expect(page.GetByLabel("Round side from corner 3 to 4")).ToBeCheckedAsync();
        // Half round over 400: the crown stands 200 over the spring at 1400.
        await Expect(page.GetByLabel("Round side 3 goes through: up")).ToHaveValueAsync("1600");
        await page.GetByLabel("Round side 3 goes through: up").FillAsync("1500");
        await LookAsync(page, "arc", phone: false);
        Same(JsonNode.Parse("""[["300", "1000"], ["700", "1000"], ["700", "1400"], { "to": ["300", "1400"], "through": ["500", "1500"] }]"""), (await JobAsync(page))["faces"]![0]!["openings"]![0]!["outline"]);
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Measure");
        await page.Locator("details.thing > summary", new() { HasText = "niche" }).ClickAsync();
        await page.GetByLabel("Round side from corner 3 to 4").UncheckAsync();
        Same(JsonNode.Parse("""["300", "1400"]"""), (await JobAsync(page))["faces"]![0]!["openings"]![0]!["outline"]![3]);
        Assert.Empty(device.Troubles);
    }

    private const string Tiles = """
        "format": "gaugerod-job/1", "name": "Invented", "units": "mm",
        "products": [{ "name": "tile", "width": 300, "height": 200, "perBox": 10 }, { "name": "small", "width": 150, "height": 150, "perBox": 20 }],
        """;

    internal const string Floor = $$"""
        { {{Tiles}} "faces": [{ "name": "floor", "outline": [[0, 0], [2000, 0], [2000, 1600], [0, 1600]],
          "edges": [{ "name": "south", "kind": "inside corner" }, { "name": "east", "kind": "inside corner" }, { "name": "north", "kind": "inside corner" }, { "name": "west", "kind": "inside corner" }] }],
          "runs": [{ "name": "floor", "product": "tile", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": 3 }] }
        """;

    internal const string Wall = $$"""
        { {{Tiles}} "faces": [{ "name": "wall", "readings": { "width": { "foot": 1800 }, "height": { "left": 2300 } },
          "openings": [{ "name": "niche", "left": "300", "bottom": "1000", "width": "400", "height": "600" }] }],
          "runs": [{ "name": "wall", "product": "tile", "faces": ["wall"], "bond": { "kind": "grid" }, "joint": 3 }] }
        """;

    internal static async Task<IPage> OpenAsync(Device device, string job)
    {
        var page = await device.OpenAsync();
        await OpenFileAsync(page, System.Text.Encoding.UTF8.GetBytes(job));
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Measure");
        await Expect(Button(page, "+ Rug")).ToBeVisibleAsync();
        return page;
    }

    /// <summary>The job as the device keeps it.</summary>
    internal static async Task<JsonNode> JobAsync(IPage page)
    {
        await page.WaitForTimeoutAsync(400);
        await Device.SavedAsync(page);
        var here = await page.Locator("main").GetAttributeAsync("data-station");
        await Device.GoAsync(page, "Jobs");
        var file = await Device.DownloadAsync(page, Button(page, "Save “Invented"));
        await Device.GoAsync(page, here!);
        return JsonNode.Parse(file)!;
    }

    internal static void Same(JsonNode? wanted, JsonNode? found) =>
        Assert.True(JsonNode.DeepEquals(wanted, found), $"wanted {wanted?.ToJsonString()}\nfound {found?.ToJsonString()}");

    /// <summary>Held to the rules of axe-core and to the screen's width, and pictured to be looked at: artifacts/looked.</summary>
    internal static async Task LookAsync(IPage page, string what, bool phone)
    {
        await page.WaitForTimeoutAsync(500);
        var folder = Path.Combine(Gaugerod.Testing.Repo.Root, "artifacts", "looked");
        Directory.CreateDirectory(folder);
        await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{what}, {(phone ? "phone" : "laptop")}.png") });
        // What the bar or the keypad hides of a field is not how large the field is.
        await page.EvaluateAsync("() => { document.activeElement.blur(); scrollTo(0, 0); }");
        var faults = (await Access.FaultsAsync(page)).Select(fault => $"{what}: {fault}").ToList();
        Assert.True(faults.Count == 0, string.Join("\n", faults));
        Assert.False(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > document.documentElement.clientWidth"), what);
    }
}
