using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>From a new job to the first proposal, by touch on a phone; and what becomes of a job that is not finished.</summary>
[Collection(RigCollection.Name)]
public sealed class MeasureTests(Rig rig)
{
    /// <summary>Our own measure of a person's time, in seconds: a tap, a figure typed, a new screen taken in. Common practice, no source.</summary>
    private const double Tap = 2.5, Typed = 5, Screen = 6;

    private const double MostSeconds = 180;

    [Fact]
    public async Task An_alcove_with_a_niche_is_on_its_way_to_a_plan_in_under_three_minutes_of_a_persons_time()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        var walk = new Walk(page);

        await walk.TapAsync(Button(page, "New job"), newScreen: true);
        await walk.TapAsync(Unit(page, "feet and inches"));
        await walk.TapAsync(Button(page, "Three walls"), newScreen: true);
        await walk.TypeAsync("At the foot", "36 1/8");
        await walk.TypeAsync("At the left", "80");
        await walk.TapAsync(Button(page, "Next: back wall").First, newScreen: true);
        await Expect(page.GetByLabel("At the left", new() { Exact = true })).ToHaveValueAsync("80");
        await walk.TypeAsync("At the foot", "60 1/4");
        await walk.TapAsync(Button(page, "+ Opening"));
        await walk.TypeAsync("Width", "12 1/4");
        await walk.TypeAsync("Height", "23 1/2");
        await walk.TypeAsync("Up to its bottom", "30");
        await walk.TapAsync(Button(page, "Centred on the wall"));
        await Expect(page.GetByLabel("From the left corner", new() { Exact = true })).ToHaveValueAsync("24");
        await walk.TapAsync(Button(page, "Next: right wall").Last, newScreen: true);
        await walk.TypeAsync("At the foot", "36");
        await walk.TapAsync(Button(page, "Next: tiles"), newScreen: true);
        await walk.TapAsync(Button(page, "12 × 24"));
        await walk.TypeAsync("Thickness", "3/8");
        await walk.TapAsync(Button(page, "Next: runs"), newScreen: true);
        await walk.TapAsync(Button(page, "Next: lines"), newScreen: true);
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Places" })).ToBeVisibleAsync(new() { Timeout = 90_000 });
        await Expect(page.Locator(".place").First).ToBeVisibleAsync();

        Assert.True(walk.Seconds < MostSeconds, walk.ToString());
        Assert.Equal((11, 8, 7), (walk.Taps, walk.Fields, walk.Screens));
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_new_wall_asks_quietly_until_a_reading_was_passed_over()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await NewAsync(page, "One wall");
        await Expect(page.GetByLabel("At the foot", new() { Exact = true })).ToBeFocusedAsync();
        await Expect(page.GetByLabel("At the foot", new() { Exact = true })).ToHaveValueAsync("");
        await Expect(page.Locator(".trouble")).ToHaveCountAsync(0);
        await Expect(page.GetByText("figures are still needed before there is a plan")).ToBeVisibleAsync();
        await Expect(page.Locator("#pad")).ToBeVisibleAsync();

        await page.Locator("#pad [data-do=next]").TapAsync();
        await Expect(page.Locator(".trouble")).ToHaveTextAsync("Still to be read.");
        await page.GetByLabel("At the foot", new() { Exact = true }).FillAsync("60");
        await Expect(page.Locator(".trouble")).ToHaveCountAsync(0);
        await page.GetByLabel("At the foot", new() { Exact = true }).FillAsync("6o");
        await Expect(page.Locator(".trouble")).ToContainTextAsync("Not read");

        // What is missing is said where the plan would stand.
        await page.GetByLabel("At the foot", new() { Exact = true }).FillAsync("60");
        await Device.GoAsync(page, "Lines");
        await Expect(page.Locator("main .notice")).ToContainTextAsync("Still to be read at Measure");
        await Expect(page.Locator("main .notice")).ToContainTextAsync("height at the left of wall 1");
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_width_that_no_wall_has_is_taken_and_asked_after()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await NewAsync(page, "One wall");
        var echo = page.Locator("#f-faces-0--readings-width-foot-say .echo");
        foreach (var (typed, asked) in new[] { ("1/8", true), ("3 7/8", true), ("4", false), ("60", false), ("98'", false), ("99'", true) })
        {
            await page.GetByLabel("At the foot", new() { Exact = true }).FillAsync(typed);
            await (asked ? Expect(echo).ToContainTextAsync("Is that right for a wall?") : Expect(echo).Not.ToContainTextAsync("Is that right"));
        }

        await page.GetByLabel("At the foot", new() { Exact = true }).FillAsync("1/8");
        await Expect(echo).ToHaveTextAsync("= 1/8 in. Is that right for a wall?");
        await Expect(page.Locator("#f-faces-0--readings-width-foot-say .trouble")).ToHaveCountAsync(0);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_wall_to_the_right_takes_over_what_the_corner_tells_and_nothing_else()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await NewAsync(page, "Three walls");
        await page.GetByLabel("At the foot", new() { Exact = true }).FillAsync("36");
        await page.GetByLabel("At the left", new() { Exact = true }).FillAsync("80");
        await page.GetByLabel("At the right").FillAsync("80 1/8");
        await Button(page, "+ Fixture").ClickAsync();
        await page.GetByLabel("Height of its rim or top").FillAsync("18");
        await Button(page, "+ Wall to the right").ClickAsync();

        await Expect(page.GetByLabel("At the left", new() { Exact = true })).ToHaveValueAsync("80 1/8");
        await Expect(page.GetByLabel("At the foot", new() { Exact = true })).ToHaveValueAsync("");
        await Expect(page.GetByLabel("At the right")).ToHaveValueAsync("");
        // What is folded away is drawn when it is unfolded.
        foreach (var fold in new[] { "edges-foot", "edges-head", "edges-left", "fixtures-0-" }) await page.Locator($"[data-fold=f-faces-1--{fold}] > summary").ClickAsync();
        await Expect(page.Locator("#f-faces-1--edges-foot-kind")).ToHaveValueAsync("fixture");
        await Expect(page.Locator("#f-faces-1--edges-head-kind")).ToHaveValueAsync("free");
        await Expect(page.Locator("#f-faces-1--edges-left-kind")).ToHaveValueAsync("");
        await Expect(page.Locator("#f-faces-1--fixtures-0--height")).ToHaveValueAsync("18");
        await Expect(page.GetByText("Taken over from left wall")).ToBeVisibleAsync();
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task An_unfinished_job_can_be_saved_and_opened_on_another_device()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await NewAsync(page, "Three walls");
        await page.GetByLabel("At the foot", new() { Exact = true }).FillAsync("36");
        await page.GetByLabel("At the left", new() { Exact = true }).FillAsync("80x");
        await Device.SavedAsync(page);
        await Device.GoAsync(page, "Jobs");
        var file = await Device.DownloadAsync(page, Button(page, "Save “Job "));

        await using var other = await rig.DeviceAsync();
        var there = await other.OpenAsync();
        await OpenFileAsync(there, file);
        await Expect(there.GetByLabel("At the foot", new() { Exact = true })).ToHaveValueAsync("36");
        await Expect(there.GetByLabel("At the left", new() { Exact = true })).ToHaveValueAsync("80x");
        await Expect(there.Locator(".faults summary")).ToHaveTextAsync("1 thing has to be set right");
        Assert.Empty(other.Troubles);
    }

    [Fact]
    public async Task On_its_side_a_phone_shows_the_field_above_the_keypad()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await page.SetViewportSizeAsync(844, 390);
        await NewAsync(page, "One wall");
        foreach (var label in new[] { "At the foot", "At the right" })
        {
            await page.GetByLabel(label).TapAsync();
            await Expect(page.Locator("#pad")).ToBeVisibleAsync();
            await page.WaitForTimeoutAsync(300);
            var (field, pad, head) = ((await page.GetByLabel(label).BoundingBoxAsync())!, (await page.Locator("#pad").BoundingBoxAsync())!, (await page.Locator(".measure .head").BoundingBoxAsync())!);
            Assert.InRange(field.Y, head.Y + head.Height, pad.Y - field.Height);
        }

        await page.Locator("#pad [data-do=close]").TapAsync();
        await Expect(page.Locator("#pad")).ToBeHiddenAsync();
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_comma_is_said_as_what_it_was_read()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await NewAsync(page, "One wall");
        await page.GetByLabel("At the foot", new() { Exact = true }).FillAsync("60,5");
        await Expect(page.GetByText("The comma is read as a decimal point: 60.5")).ToBeVisibleAsync();
        Assert.Empty(device.Troubles);
    }

    internal static ILocator Button(IPage page, string name) => page.Locator("main").GetByRole(AriaRole.Button, new() { Name = name });

    private static ILocator Unit(IPage page, string name) => page.GetByRole(AriaRole.Group, new() { Name = "Measured in" }).GetByRole(AriaRole.Button, new() { Name = name });

    internal static async Task NewAsync(IPage page, string beginning)
    {
        await Button(page, "New job").TapAsync();
        await Unit(page, "feet and inches").TapAsync();
        await Button(page, beginning).TapAsync();
    }

    internal static Task OpenFileAsync(IPage page, byte[] file) =>
        page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "job.json", MimeType = "application/json", Buffer = file });

    /// <summary>Counts what a person does. To type a figure takes in the way to its field, by a tap or by the keypad's Next.</summary>
    private sealed class Walk(IPage page)
    {
        public int Taps { get; private set; }

        public int Fields { get; private set; }

        public int Screens { get; private set; }

        public double Seconds => (Taps * Tap) + (Fields * Typed) + (Screens * Screen);

        public async Task TapAsync(ILocator what, bool newScreen = false)
        {
            await what.TapAsync();
            Taps++;
            if (newScreen) Screens++;
        }

        public async Task TypeAsync(string label, string figure)
        {
            var field = page.GetByLabel(label, new() { Exact = true });
            var focused = page.Locator("input:focus");
            if (await focused.CountAsync() == 0 || !string.Equals(await focused.GetAttributeAsync("id"), await field.GetAttributeAsync("id"), StringComparison.Ordinal)) await field.TapAsync();
            await Expect(field).ToBeFocusedAsync();
            await page.Keyboard.TypeAsync(figure);
            Fields++;
            await Expect(field).ToHaveValueAsync(figure);
            // No person types as fast as this; the drawing follows when the typing rests.
            await page.WaitForTimeoutAsync(600);
        }

        public override string ToString() => FormattableString.Invariant($"{Taps} taps, {Fields} fields typed, {Screens} screens: {Seconds} s");
    }
}
