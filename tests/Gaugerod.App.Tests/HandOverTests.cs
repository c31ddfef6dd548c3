using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Gaugerod.App.Tests.TrimTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>A person's way to the sheet that stays with the client, by the keyboard alone. What is noted is invented.</summary>
[Collection(RigCollection.Name)]
public sealed class HandOverTests(Rig rig)
{
    [Theory]
    [ClassData(typeof(Screens))]
    public async Task What_stays_with_the_client_is_noted_by_the_keyboard_alone(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, Wall);
        await PartAsync(page, "Job");
        await PressAsync(page, Fold(page, "Hand-over"));
        await PressAsync(page, Button(page, "Write a hand-over"));
        await Expect(page.GetByLabel("Care")).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("Rinse with clear water.");
        await TypeAsync(page, "Where the spares are kept", "on the shelf in the cellar");
        await TypeAsync(page, "Soft joints renewed after, years", "5");

        // The next thing bought that has no lot yet is offered.
        await PressAsync(page, Fold(page, "Lots and colours"));
        await PressAsync(page, Button(page, "+ Lot"));
        await Expect(page.GetByLabel("Of what")).ToBeFocusedAsync();
        await TypeAsync(page, "Lot", "07 B");
        await PressAsync(page, Button(page, "+ Lot"));
        await Expect(page.GetByLabel("Of what").Last).ToHaveValueAsync("small");

        await PressAsync(page, Fold(page, "Photographs"));
        await PressAsync(page, Button(page, "+ Photograph"));
        await PressAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "wall", Exact = true }));
        await TypeAsync(page, "What it shows", "pipes before boards");

        await PressAsync(page, Fold(page, "Tests"));
        await PressAsync(page, Button(page, "+ Test"));
        await page.Keyboard.TypeAsync("flood test");
        await TypeAsync(page, "On which day", "2027-02-29");
        await Expect(page.Locator(".field .trouble", new() { HasText = "Nearest: 2027-02-28" })).ToBeVisibleAsync();
        await TypeAsync(page, "On which day", "2027-02-28");
        await Expect(page.GetByText("= Sun 28 Feb 2027")).ToBeVisibleAsync();
        await TypeAsync(page, "What was found", "no drop in 24 h");
        await LookAsync(page, "hand-over", phone);

        var noted = JsonNode.Parse("""
            { "care": ["Rinse with clear water."], "kept": "on the shelf in the cellar", "renew": 5, "lots": [{ "of": "tile", "lot": "07 B" }, { "of": "small" }],
              "photographs": [{ "of": "wall", "what": "pipes before boards" }], "tests": [{ "what": "flood test", "on": "2027-02-28", "result": "no drop in 24 h" }] }
            """);
        Same(noted, (await JobAsync(page))["handover"]);
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Sheets");
        await Expect(Button(page, "Hand-over")).ToBeVisibleAsync();

        // To write none asks nothing, and is taken back as everything is.
        await OpenHandOverAsync(page);
        await Button(page, "Write none").ClickAsync();
        await Expect(page.GetByText("↶ at the top brings it back")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo: no hand-over" }).ClickAsync();
        Same(noted, (await JobAsync(page))["handover"]);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task What_was_noted_is_copied_moved_and_taken_out_and_the_last_field_leaves_the_sheet_asked_for()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await OpenAsync(device, With("""{ "kept": "cellar", "lots": [{ "of": "tile", "lot": "1" }, { "of": "small", "lot": "2" }] }"""));
        await OpenHandOverAsync(page);
        await Fold(page, "Lots and colours").ClickAsync();
        await page.Locator("details.thing > summary").First.ClickAsync();
        await Button(page, "Move tile later").ClickAsync();
        // What lay open lies open still.
        await Expect(page.GetByLabel("Lot", new() { Exact = true })).ToHaveValueAsync("1");
        await Button(page, "Duplicate").ClickAsync();
        await page.GetByLabel("Lot", new() { Exact = true }).Last.FillAsync("3");
        await page.GetByLabel("Lot", new() { Exact = true }).Last.BlurAsync();
        Same(JsonNode.Parse("""[{ "of": "small", "lot": "2" }, { "of": "tile", "lot": "1" }, { "of": "tile", "lot": "3" }]"""), (await JobAsync(page))["handover"]!["lots"]);
        await OpenHandOverAsync(page);
        await Fold(page, "Lots and colours").ClickAsync();
        for (var left = 3; left > 0; left--)
        {
            await page.Locator("details.thing > summary").First.ClickAsync();
            await Button(page, "Remove").First.ClickAsync();
            await Expect(page.Locator("details.thing")).ToHaveCountAsync(left - 1);
        }

        await page.GetByLabel("Where the spares are kept").FillAsync("");
        await page.GetByLabel("Where the spares are kept").BlurAsync();
        Same(new JsonObject(), (await JobAsync(page))["handover"]);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_lot_of_what_the_job_does_not_have_is_said_at_its_place_which_one_is_taken_to()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await OpenFileAsync(page, System.Text.Encoding.UTF8.GetBytes(With("""{ "lots": [{ "of": "tyle", "lot": "1" }] }""")));
        await page.Locator(".faults summary").ClickAsync(new() { Timeout = 60_000 });
        await page.Locator(".faults li").GetByRole(AriaRole.Button).First.ClickAsync();
        await Expect(page.GetByLabel("Of what")).ToBeFocusedAsync();
        await Expect(page.GetByLabel("Of what")).ToHaveValueAsync("tyle");
        await LookAsync(page, "lot of nothing", phone: true);
        await page.GetByLabel("Of what").SelectOptionAsync("tile");
        await Expect(page.Locator(".faults")).ToHaveCountAsync(0);
        Assert.Empty(device.Troubles);
    }

    internal static string With(string handover) => Wall.Replace("\"faces\": [{", $"\"handover\": {handover}, \"faces\": [{{", StringComparison.Ordinal);

    internal static ILocator Fold(IPage page, string title) => page.Locator("summary", new() { HasText = title }).First;

    /// <summary>Goes to something by the tabulator key, as one does without a mouse, and presses it.</summary>
    internal static async Task PressAsync(IPage page, ILocator what)
    {
        await ReachAsync(page, what.First);
        await page.Keyboard.PressAsync("Enter");
    }

    /// <summary>Goes to the last field of a label by the tabulator key, types, and leaves it.</summary>
    internal static async Task TypeAsync(IPage page, string label, string text)
    {
        await ReachAsync(page, page.GetByLabel(label, new() { Exact = true }).Last);
        await page.Keyboard.PressAsync("Control+a");
        await page.Keyboard.TypeAsync(text);
        await page.Keyboard.PressAsync("Tab");
    }

    private static async Task ReachAsync(IPage page, ILocator what)
    {
        await Expect(what).ToBeVisibleAsync();
        for (var presses = 0; presses < 150 && !await what.EvaluateAsync<bool>("element => element === document.activeElement"); presses++) await page.Keyboard.PressAsync("Tab");
        await Expect(what).ToBeFocusedAsync(new() { Timeout = 1_000 });
    }

    private static async Task OpenHandOverAsync(IPage page)
    {
        await Device.GoAsync(page, "Measure");
        await PartAsync(page, "Job");
        await Fold(page, "Hand-over").ClickAsync();
    }
}
