using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>
/// A setter at the wall: courses ticked off, what stands otherwise measured again. The figures are reckoned by hand: tiles of
/// 200 with joints of 3, which may be 4; the starting line at 153, so that course n stands at 153 + 203 (n - 2), and the
/// thirteenth is cut to 111 under the ceiling: every cut is over half a tile, so each takes a tile.
/// </summary>
[Collection(RigCollection.Name)]
public sealed class SetTests(Rig rig)
{
    [Fact]
    public async Task Courses_are_ticked_off_from_the_starting_line_and_measured_again()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await OpenFileAsync(page, System.Text.Encoding.UTF8.GetBytes(Wall));
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Set");
        await Expect(page.Locator(".courses li").First).ToContainTextAsync("at 153 mm, on the line");
        await Expect(page.Locator(".courses li").Nth(1)).ToContainTextAsync("at 356 mm, 203 mm above the line");
        await Expect(page.Locator(".courses li").Last).ToContainTextAsync("top at 150 mm, 3 mm below the line");
        // What is laid upright has nothing to be ticked off.
        await Expect(page.GetByText("This run is not laid in level courses")).ToBeVisibleAsync();
        await Expect(page.Locator("details.face")).ToHaveCountAsync(1);

        await Button(page, "Course 2 is set").TapAsync();
        await Course(page, 6).CheckAsync();
        await Expect(page.Locator("details.face > summary")).ToContainTextAsync("5 of 13 courses set");
        await Course(page, 6).UncheckAsync();
        await page.Locator("summary", new() { HasText = "Cut already" }).TapAsync();
        await Piece(page, "A1").TapAsync();
        await Piece(page, "A2").TapAsync();

        // 11 mm low is more than eight joints can take up: the cuts at the ceiling, 200 by 111, must be 122 high now. Turned, one
        // gives the corner of 103 by 122; of another nothing can be made.
        await page.Locator("summary", new() { HasText = "Measure again" }).TapAsync();
        await Expect(page.GetByText("planned 962 mm").First).ToBeVisibleAsync();
        // Which zero is meant stands at the field, and how high it is above the line that one measures from: 962 less 153.
        await Expect(page.GetByLabel("Its top, left: above the lower left corner")).ToBeVisibleAsync();
        await Expect(page.GetByText("Planned is 962 mm, which is 809 mm above the starting line: the line stands at 153 mm.")).ToBeVisibleAsync();
        await page.GetByLabel("Its top, left").FillAsync("951");
        await Expect(page.Locator(".from-line").First).ToHaveTextAsync("798 mm above the starting line");
        await Expect(page.GetByText("Course 5 stands 11 mm low.")).ToBeVisibleAsync();
        await Expect(page.Locator(".short")).ToContainTextAsync("You are short 1 tile.");
        await Expect(page.Locator(".uses li")).ToHaveTextAsync([new Regex("A8 can be sawn from it"), new Regex("A2 no longer fits anywhere")]);

        // 6 mm low is taken up by joints of 3.75.
        await page.GetByLabel("Its top, left").FillAsync("956");
        await Expect(page.Locator(".again")).ToContainTextAsync("up to course 13, which stands as planned");
        await Expect(page.Locator(".uses li").First).ToContainTextAsync("A1 fits as it is");
        await Expect(page.Locator(".short")).ToHaveCountAsync(0);
        await Expect(page.Locator(".marks tbody tr").Nth(1)).ToHaveTextAsync(new Regex(@"6\s*960\s*965\s*5 low"));
        foreach (var light in new[] { "dark", "strong", "light" })
        {
            await page.EvaluateAsync("light => document.documentElement.setAttribute('data-light', light)", light);
            await LookAsync(page, "set, " + light, phone: true);
        }

        // The next is taken to stand at its mark.
        await Button(page, "Course 6 is set").TapAsync();
        Same(JsonNode.Parse("""[{ "face": "wall", "courses": 6, "from": 2, "cut": ["A1", "A2"], "top": { "left": "1160" } }]"""), (await JobAsync(page))["runs"]![0]!["set"]);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo: course 6 of wall set" }).TapAsync();
        await Expect(page.GetByLabel("Its top, left")).ToHaveValueAsync("956");
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task What_cannot_be_is_said_at_its_place_and_kept_over_a_reload()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await OpenFileAsync(page, System.Text.Encoding.UTF8.GetBytes(Wall.Replace("\"joint\": {", """ "set": [{ "face": "wall", "from": 2, "courses": 5, "top": "1500", "cut": ["Z9"] }], "joint": {""", StringComparison.Ordinal)));
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Set");
        await Expect(page.Locator(".face .notice")).ToContainTextAsync("more than half a course off");
        await Expect(page.Locator(".face .notice")).ToContainTextAsync("Z9 is said to be cut");
        // One height in the file stands for both ends; with the other typed it is that of the left.
        await Expect(page.GetByLabel("Its top, left")).ToHaveValueAsync("1500");
        await page.GetByLabel("Its top, right").FillAsync("960");
        await Button(page, "right 1 mm higher").TapAsync();
        await page.GetByLabel("Its top, left").FillAsync("9o9");
        await Expect(page.Locator(".field .trouble")).ToContainTextAsync("Not read");
        await Device.GoAsync(page, "Cuts");
        await Expect(page.Locator("main .notice").First).ToContainTextAsync("1 thing has to be set right at Set");
        await page.Locator("main .notice .key.quiet").First.TapAsync();
        await Expect(page.GetByLabel("Its top, left")).ToBeFocusedAsync();

        await page.WaitForTimeoutAsync(400);
        await Device.SavedAsync(page);
        await page.ReloadAsync();
        await Device.ReadyAsync(page);
        await Device.GoAsync(page, "Jobs");
        var job = JsonNode.Parse(await Device.DownloadAsync(page, Button(page, "Save “Invented")))!;
        Same(JsonNode.Parse("""{ "left": "9o9", "right": "961" }"""), job["runs"]![0]!["set"]![0]!["top"]);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task What_is_set_and_what_a_bed_drains_to_go_by_the_names_they_are_given()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Shower);
        await RenameAsync(page.GetByLabel("Wall's name"), "long wall");
        await page.GetByRole(AriaRole.Button, new() { Name = "floor", Exact = true }).ClickAsync();
        await page.Locator("details.thing > summary", new() { HasText = "drain" }).First.ClickAsync();
        await RenameAsync(page.GetByLabel("Name", new() { Exact = true }), "gully");
        var job = await JobAsync(page);
        Same(JsonNode.Parse("""[{ "face": "long wall", "courses": 1 }, { "face": "south", "courses": 2 }]"""), job["runs"]![0]!["set"]);
        Same(JsonNode.Parse("""["gully"]"""), job["faces"]![2]!["falls"]!["drains"]);

        await Button(page, "south").First.ClickAsync();
        await Button(page, "Remove").Last.ClickAsync();
        await Button(page, "Runs").ClickAsync();
        await Button(page, "Take out long wall").ClickAsync();
        job = await JobAsync(page);
        Assert.Null(job["runs"]![0]!["set"]);
        Assert.Empty(device.Troubles);
    }

    private static ILocator Course(IPage page, int number) => page.Locator(".courses li").Filter(new() { Has = page.GetByText(number.ToString(System.Globalization.CultureInfo.InvariantCulture), new() { Exact = true }) }).GetByRole(AriaRole.Checkbox);

    private static ILocator Piece(IPage page, string id) => page.Locator("main").GetByRole(AriaRole.Button, new() { Name = id, Exact = true });

    private static async Task RenameAsync(ILocator field, string name)
    {
        await field.FillAsync(name);
        await field.BlurAsync();
    }

    private const string Tile = """
        "format": "gaugerod-job/1", "name": "Invented", "units": "mm",
        "products": [{ "name": "tile", "width": 200, "height": 200, "perBox": 1 }],
        """;

    [Fact]
    public async Task A_height_that_a_must_holds_is_named_with_the_course_that_comes_there()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await device.OpenAsync();
        // A joint of 3 over course n ends at 153 + 203 (n - 1): its middle over course 5 stands at 963.5.
        await OpenFileAsync(page, System.Text.Encoding.UTF8.GetBytes(Wall.Replace("\"joint\": {", """ "wants": [{ "want": "joint", "face": "wall", "height": "963.5", "must": true }], "joint": {""", StringComparison.Ordinal)));
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Set");
        await Expect(page.Locator(".musts")).ToContainTextAsync("811 mm above the starting line: the middle of a joint. The top of course 5 comes there.");
        await LookAsync(page, "set, must", phone: false);
        Assert.Empty(device.Troubles);
    }

    private const string Wall = $$"""
        { {{Tile}} "faces": [
            { "name": "wall", "readings": { "width": { "foot": 1530 }, "height": { "left": 2500 } } },
            { "name": "splash", "readings": { "width": { "foot": 600 }, "height": { "left": 600 } } }],
          "runs": [
            { "name": "wall", "product": "tile", "faces": ["wall"], "bond": { "kind": "grid" }, "place": { "x": 3, "y": 153 }, "joint": { "least": 3, "wanted": 3, "most": 4 } },
            { "name": "splash", "product": "tile", "faces": ["splash"], "bond": { "kind": "running", "offset": "1/2", "lay": "upright" }, "joint": 3 }] }
        """;

    private const string Shower = $$"""
        { {{Tile}} "faces": [
            { "name": "north", "readings": { "width": { "foot": 900 }, "height": { "left": 900 } } },
            { "name": "south", "readings": { "width": { "foot": 900 }, "height": { "left": 900 } } },
            { "name": "floor", "outline": [[0, 0], [900, 0], [900, 900], [0, 900]],
              "edges": [{ "kind": "inside corner" }, { "kind": "inside corner" }, { "kind": "inside corner" }, { "kind": "inside corner" }],
              "holes": [{ "name": "drain", "x": 450, "y": 450, "diameter": 100 }], "falls": { "drains": ["drain"], "least": 20 } }],
          "runs": [
            { "name": "walls", "product": "tile", "faces": ["north", "south"], "bond": { "kind": "grid" }, "joint": 3,
              "set": [{ "face": "north", "courses": 1 }, { "face": "south", "courses": 2 }] },
            { "name": "floor", "product": "tile", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": 3 }] }
        """;
}
