using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>
/// A person's way through a floor measured corner to corner. The rooms are invented, their diagonals by Pythagoras: an L of 3600 by
/// 2800 mm whose notch begins at 2000, 1500, and a room of 4000 by 3000. What is looked at is held to axe-core as in AccessTests.
/// </summary>
[Collection(RigCollection.Name)]
public sealed class SurveyTests(Rig rig)
{
    private static readonly (string Reading, string Is)[] s_ell =
    [
        ("A to B", "3600"), ("B to C", "1500"), ("C to D", "1600"), ("D to E", "1300"), ("E to F", "2000"), ("F to A", "2800"),
        ("A to C", "3900"), ("B to D", "2193"), ("D to F", "2385"), ("E to A", "3441"), ("A to D", "2500"),
    ];

    private static readonly (string Reading, string Is)[] s_room = [("A to B", "4000"), ("B to C", "3000"), ("C to D", "4000"), ("D to A", "3000"), ("A to C", "5000"), ("B to D", "5000")];

    [Theory]
    [ClassData(typeof(Screens))]
    public async Task An_L_is_begun_and_read_and_the_reading_that_does_not_fit_is_named_where_it_is_and_mended(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, Floor);
        await AddAsync(page, "+ An L, six corners");
        await Expect(Reading(page, "A to B")).ToBeFocusedAsync();
        // Letters and lines stand there before anything is read.
        await Expect(page.Locator("text.said.corner")).ToHaveCountAsync(6);
        await Expect(page.Locator("path.taken.open")).ToHaveCountAsync(11);
        await LookAsync(page, "survey begun", phone);
        foreach (var (reading, figure) in s_ell) await Reading(page, reading).FillAsync(reading is "A to D" ? "2530" : figure);

        var said = page.Locator(".notice.bad");
        await Expect(said).ToContainTextAsync("One reading disagrees with the others: A to D: read 2530 mm, by the others 2500 mm. Read it again.");
        await Expect(page.Locator("path.taken.doubt")).ToHaveCountAsync(1);
        await Expect(page.Locator("text.said.doubt")).ToHaveTextAsync("▲ 2530");
        await Expect(page.Locator("text.said.others")).ToHaveTextAsync("(2500)");
        await Expect(page.Locator("li[data-doubt]")).ToContainTextAsync("by the others it is 2500 mm");
        await Expect(Row(page, "▲ A to D")).ToContainTextAsync("2530");
        await LookAsync(page, "survey in question", phone);

        // From the figure in the drawing to its field.
        await page.Locator("text.said.doubt").ClickAsync();
        await Expect(Reading(page, "A to D")).ToBeFocusedAsync();
        await Reading(page, "A to D").FillAsync("2500");
        await Expect(page.Locator("path.taken.doubt")).ToHaveCountAsync(0);
        await Expect(page.GetByText("All readings agree within what they may be off.")).ToBeVisibleAsync();
        await page.Locator("table.weighed").ScrollIntoViewIfNeededAsync();
        await LookAsync(page, "survey agreed", phone);
        var job = await JobAsync(page);
        Same(JsonNode.Parse("""["A", "B", "C", { "name": "D", "is": "outside corner" }, "E", "F"]"""), job["faces"]![1]!["survey"]!["corners"]);
        Same(JsonNode.Parse("""{ "from": "A", "to": "D", "is": "2500" }"""), job["faces"]![1]!["survey"]!["readings"]![10]);
        Same(JsonNode.Parse("""{ "name": "AB", "kind": "inside corner" }"""), job["faces"]![1]!["edges"]![0]);
        Assert.Equal("floor 1", job["runs"]![1]!["faces"]![0]!.ToString());
        await Device.PlannedAsync(page);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Four_sides_and_two_diagonals_are_all_in_question_until_what_is_asked_for_is_read()
    {
        await using var device = await rig.DeviceAsync();
        var page = await OpenAsync(device, Floor);
        await AddAsync(page, "+ Four corners");
        foreach (var (reading, figure) in s_room[..2]) await Reading(page, reading).FillAsync(figure);
        await Expect(page.Locator("path.taken.asked")).ToHaveCountAsync(1);
        await Expect(page.Locator(".drawing")).ToContainTextAsync("is assumed");
        await LookAsync(page, "survey assumed", phone: true);
        // What is asked for waits to be read already, and is gone to.
        await Button(page, "Read next: ").ClickAsync();
        await Expect(page.Locator(".taken-list li")).ToHaveCountAsync(6);
        foreach (var (reading, figure) in s_room[2..]) await Reading(page, reading).FillAsync(figure);
        await Reading(page, "B to C").FillAsync("3030");
        await Expect(page.Locator("path.taken.doubt")).ToHaveCountAsync(6);
        await Expect(page.Locator(".notice.bad")).ToContainTextAsync("nothing tells which is in error");
        await Expect(page.Locator("path.taken.asked")).ToHaveCountAsync(1);
        await Button(page, "Read next: ").ScrollIntoViewIfNeededAsync();
        await LookAsync(page, "survey of a group", phone: true);

        await Button(page, "Read next: ").ClickAsync();
        var asked = page.Locator(".taken-list li").Last;
        await Expect(asked.Locator("input[data-length]").First).ToBeFocusedAsync();
        // From which end it is read is said.
        var strings = (await asked.Locator("label").First.InnerTextAsync()).Split(' ');
        Assert.Equal(["A–C", "from", "A", "to", "where", "D–mark", "on", "B–C", "crosses"], [.. strings[..6], .. strings[7..]]);
        // By like triangles: from D to a mark m up the side of 3000, the string crosses the diagonal of 5000 at 3000 / (6000 - m) of it.
        var mark = double.Parse(strings[6], System.Globalization.CultureInfo.InvariantCulture);
        await asked.Locator("input[data-length]").First.FillAsync(Math.Round(5000 * 3000 / (6000 - mark)).ToString(System.Globalization.CultureInfo.InvariantCulture));
        await Expect(page.Locator("path.taken.doubt")).ToHaveCountAsync(1);
        await Expect(page.Locator(".notice.bad")).ToContainTextAsync("One reading disagrees with the others: B to C: read 3030 mm, by the others 300");
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_face_taken_out_takes_the_run_along_that_laid_nothing_else()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Floor);
        await AddAsync(page, "+ Four corners");
        await Expect(Reading(page, "A to B")).ToBeFocusedAsync();
        await page.Locator(".pick .key.name").First.ClickAsync();
        await Expect(page.GetByLabel("Floor's name")).ToHaveValueAsync("floor");
        await page.Locator("main").GetByRole(AriaRole.Button, new() { Name = "Remove", Exact = true }).ClickAsync();
        await Expect(page.Locator(".pick .key.name")).ToHaveCountAsync(1);
        await Expect(page.Locator(".faults")).ToHaveCountAsync(0);
        var run = Assert.Single((await JobAsync(page))["runs"]!.AsArray());
        Assert.Equal("floor 1", Assert.Single(run!["faces"]!.AsArray())!.ToString());
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_reading_that_cannot_close_is_gone_to_and_one_key_sets_it_right()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Floor);
        await AddAsync(page, "+ An L, six corners");
        foreach (var (reading, figure) in s_ell) await Reading(page, reading).FillAsync(reading is "A to D" ? "3500" : figure);
        await Expect(page.Locator(".taken-list .trouble")).ToHaveCountAsync(1);
        await Device.GoAsync(page, "Lines");
        await page.Locator(".notice.bad").GetByRole(AriaRole.Button).First.ClickAsync();
        await Expect(Reading(page, "A to D")).ToBeFocusedAsync();
        // The drawing says the same as the fault.
        await Expect(page.Locator("text.said.others")).ToHaveTextAsync("(2500)");
        await LookAsync(page, "survey that cannot close", phone: false);
        await page.Locator(".taken-list").GetByRole(AriaRole.Button, new() { Name = "Set it right: 2500 mm" }).ClickAsync();
        await Expect(page.Locator(".trouble")).ToHaveCountAsync(0);
        Assert.Equal("2500 mm", (await JobAsync(page))["faces"]![1]!["survey"]!["readings"]![10]!["is"]!.ToString());
        await Device.PlannedAsync(page);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_place_that_no_corner_has_unfolds_its_reading_and_is_marked()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await OpenFileAsync(page, System.Text.Encoding.UTF8.GetBytes(Room.Replace("\"from\": \"B\", \"to\": \"D\"", "\"from\": \"B\", \"to\": \"X\"", StringComparison.Ordinal)));
        await Device.GoAsync(page, "Measure");
        await page.Locator(".faults summary").ClickAsync();
        await page.Locator(".faults").GetByRole(AriaRole.Button).First.ClickAsync();
        await Expect(page.Locator("#f-faces-0--survey-readings-5--to")).ToBeFocusedAsync();
        await Expect(page.Locator(".taken-list details[open] .trouble")).ToHaveCountAsync(1);
        // All else is drawn.
        await Expect(page.Locator("path.taken.read, path.taken.bare")).Not.ToHaveCountAsync(0);
        await LookAsync(page, "survey at fault", phone: true);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task An_L_is_read_and_mended_with_the_keyboard_alone()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, Floor);
        await PressUntilAsync(page, "+ Floor, sides and diagonals");
        await PressUntilAsync(page, "+ An L, six corners");
        await Expect(Reading(page, "A to B")).ToBeFocusedAsync();
        foreach (var (reading, figure) in s_ell)
        {
            await Expect(Reading(page, reading)).ToBeFocusedAsync();
            await page.Keyboard.TypeAsync(reading is "A to D" ? "2530" : figure);
            if (reading is not "A to D") await page.Keyboard.PressAsync("Enter");
        }

        await Expect(page.Locator(".notice.bad")).ToContainTextAsync("A to D: read 2530 mm");
        await page.Keyboard.PressAsync("Control+A");
        await page.Keyboard.TypeAsync("2500");
        await Expect(page.Locator("path.taken.doubt")).ToHaveCountAsync(0);
        // How it was read is a Tab away.
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.GetByLabel("Read with")).ToBeVisibleAsync();
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Corners_are_named_added_and_taken_out_and_every_kind_of_reading_is_one_tap()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await OpenFileAsync(page, System.Text.Encoding.UTF8.GetBytes(Room));
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Measure");
        await page.Locator("summary").Filter(new() { HasText = "Corners and spots" }).ClickAsync();
        await page.GetByLabel("Name of corner D").FillAsync("door");
        await page.GetByLabel("Name of corner D").BlurAsync();
        await Expect(Reading(page, "B to door")).ToHaveValueAsync("5000");
        await Button(page, "+ Spot, by two offsets").ClickAsync();
        await Reading(page, "spot 1 off A–B").FillAsync("1200");
        await Reading(page, "spot 1 off door–A").FillAsync("900");
        await Button(page, "+ Three-four-five").ClickAsync();
        await Reading(page, "3-4-5 at B").FillAsync("1500");
        await Button(page, "+ Strings that cross").ClickAsync();
        await Reading(page, "A–C from A to where B–door crosses").FillAsync("2500");
        await page.Locator(".taken-list li").Last.GetByLabel("Read with").SelectOptionAsync("laser");
        await page.Locator("summary").Filter(new() { HasText = "How far readings may be off" }).ClickAsync();
        await page.GetByLabel("With the laser").FillAsync("2");
        await page.Locator("summary").Filter(new() { HasText = "What still comes off" }).ClickAsync();
        await Button(page, "+ Something comes off").ClickAsync();
        await page.GetByLabel("1: how thick").FillAsync("10");
        await LookAsync(page, "survey of every kind", phone: true);
        await page.Locator(".face-sketch").ScrollIntoViewIfNeededAsync();
        await LookAsync(page, "survey of every kind drawn", phone: true);
        var survey = (await JobAsync(page))["faces"]![0]!["survey"]!;
        Same(JsonNode.Parse("""{ "side": ["door", "A"], "to": "spot 1", "is": "900" }"""), survey["readings"]![7]);
        Same(JsonNode.Parse("""{ "corner": "B", "is": "1500" }"""), survey["readings"]![8]);
        Same(JsonNode.Parse("""{ "strings": [["A", "C"], ["B", "door"]], "is": "2500", "by": "laser" }"""), survey["readings"]![9]);
        Same(JsonNode.Parse("""[{ "side": ["A", "B"], "is": "10" }]"""), survey["comesOff"]);
        Same(JsonNode.Parse("""{ "laser": "2" }"""), survey["accuracy"]);
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Measure");
        await page.Locator("summary").Filter(new() { HasText = "Corners and spots" }).ClickAsync();
        await Button(page, "Remove door").ClickAsync();
        Assert.Equal(3, (await JobAsync(page))["faces"]![0]!["survey"]!["corners"]!.AsArray().Count);
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo: removed corner door" }).ClickAsync();
        await Device.PlannedAsync(page);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_floor_in_sixteenths_is_fit_for_all_in_every_light_at_360_px_and_stays_as_large_in_another_unit()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await page.SetViewportSizeAsync(360, 740);
        await OpenFileAsync(page, System.Text.Encoding.UTF8.GetBytes(Bath));
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Measure");
        await Expect(page.Locator("table.weighed")).ToContainTextAsync("113 7/16");
        await page.Locator("table.weighed").EvaluateAsync("table => scrollTo(0, table.getBoundingClientRect().top + scrollY - 90)");
        await LookAsync(page, "survey in sixteenths, table", phone: true);
        await LookAsync(page, "survey in sixteenths", phone: true);
        foreach (var light in new[] { "dark", "strong" })
        {
            await page.EvaluateAsync("light => document.documentElement.setAttribute('data-light', light)", light);
            Assert.Empty(await Access.FaultsAsync(page));
        }

        await page.Locator("button.part", new() { HasText = "Job" }).ClickAsync();
        await page.GetByLabel("Measured in").SelectOptionAsync("mm");
        var survey = (await JobAsync(page))["faces"]![0]!["survey"]!;
        Same(JsonNode.Parse("""{ "from": "A", "to": "C", "is": "113 7/16 in", "by": "laser" }"""), survey["readings"]![4]);
        // 36 and 48 in are not 900 and 1200 mm.
        Same(JsonNode.Parse("""{ "corner": "B", "is": "60 1/16 in", "legs": ["36 in", "48 in"] }"""), survey["readings"]![6]);
        Same(JsonNode.Parse("""{ "tape": "1/16 in", "laser": "1/16 in" }"""), survey["accuracy"]);
        await Device.PlannedAsync(page);
        Assert.Empty(device.Troubles);
    }

    // The floor of docs/job-file.md.
    private const string Bath = """
        { "format": "gaugerod-job/1", "name": "Invented", "units": "in", "products": [{ "name": "tile", "width": 12, "height": 8 }],
          "faces": [{ "name": "bath floor", "survey": { "corners": ["A", "B", "C", "D"], "spots": ["drain"], "readings": [
              { "from": "A", "to": "B", "is": "96 1/4" }, { "from": "B", "to": "C", "is": "60 1/8" }, { "from": "C", "to": "D", "is": "96 1/8" }, { "from": "D", "to": "A", "is": "60" },
              { "from": "A", "to": "C", "is": "113 7/16", "by": "laser" }, { "from": "B", "to": "D", "is": "113 3/8", "within": "1/8" }, { "corner": "B", "is": "60 1/16" },
              { "side": ["A", "B"], "to": "drain", "is": "30" }, { "side": ["D", "A"], "to": "drain", "is": "48" }],
              "accuracy": { "tape": "1/16", "laser": "1/16" }, "comesOff": [{ "side": ["A", "B"], "is": "3/8" }] },
            "edges": [{ "name": "south", "kind": "inside corner" }, { "name": "east", "kind": "inside corner" }, { "name": "north", "kind": "inside corner" }, { "name": "west", "kind": "threshold" }] }],
          "runs": [{ "name": "floor", "product": "tile", "faces": ["bath floor"], "bond": { "kind": "grid" }, "joint": "1/8" }] }
        """;

    private static readonly string Room = $$"""
        { "format": "gaugerod-job/1", "name": "Invented", "units": "mm", "products": [{ "name": "tile", "width": 300, "height": 200 }],
          "faces": [{ "name": "floor", "survey": { "corners": ["A", "B", "C", "D"], "readings": [
            {{string.Join(", ", s_room.Select(one => $$"""{ "from": "{{one.Reading[0]}}", "to": "{{one.Reading[^1]}}", "is": "{{one.Is}}" }"""))}}] },
            "edges": [{ "kind": "inside corner" }, { "kind": "inside corner" }, { "kind": "inside corner" }, { "kind": "threshold", "name": "door side" }] }],
          "runs": [{ "name": "floor", "product": "tile", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": 3 }] }
        """;

    internal static ILocator Reading(IPage page, string name) => page.Locator(".taken-list").GetByLabel(name, new() { Exact = true });

    internal static async Task AddAsync(IPage page, string key)
    {
        await Button(page, "+ Floor, sides and diagonals").ClickAsync();
        await Button(page, key).ClickAsync();
    }

    private static ILocator Row(IPage page, string name) => page.Locator("table.weighed tr").Filter(new() { HasText = name });

    private static async Task PressUntilAsync(IPage page, string name)
    {
        for (var i = 0; i < 120; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (!await page.EvaluateAsync<bool>("name => document.activeElement.textContent.trim() === name", name)) continue;
            await page.Keyboard.PressAsync("Enter");
            return;
        }

        Assert.Fail($"The Tab key never came to {name}.");
    }
}
