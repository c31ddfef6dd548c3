using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Gaugerod.App.Tests.TrimTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>A person's way to the order of work: asked for with the job, seen day by day where tile is set, taken along as a calendar.</summary>
[Collection(RigCollection.Name)]
public sealed class WorkTests(Rig rig)
{
    private static readonly string s_mixed = Wall
        .Replace("\"faces\": [{", "\"supplies\": [{ \"name\": \"mortar\", \"kind\": \"mortar\", \"yield\": \"14 l\" }], \"faces\": [{", StringComparison.Ordinal)
        .Replace("\"joint\": 3 }]", "\"joint\": 3, \"setting\": { \"mortar\": \"mortar\", \"trowel\": { \"width\": 8, \"depth\": 8, \"tooth\": 8 } } }]", StringComparison.Ordinal);

    [Theory]
    [ClassData(typeof(Screens))]
    public async Task The_order_of_work_is_asked_for_with_the_job_and_stands_day_by_day_where_tile_is_set(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, s_mixed);
        await PartAsync(page, "Tiles");
        await page.Locator("summary", new() { HasText = "Times on the bag" }).ClickAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Pot life" }).FillAsync("2 h");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Pot life" }).BlurAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Open time" }).FillAsync("20 min");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Open time" }).BlurAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Mortar before it is grouted" }).FillAsync("24 h");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Mortar before it is grouted" }).BlurAsync();
        await LookAsync(page, "times on the bag", phone);

        await PartAsync(page, "Job");
        await page.Locator("summary", new() { HasText = "Order of work" }).ClickAsync();
        await Button(page, "+ Order of work").ClickAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = "First day" }).FillAsync("2027-02-30");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "First day" }).BlurAsync();
        await Expect(page.Locator(".field .trouble", new() { HasText = "Nearest: 2027-02-28" })).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = "First day" }).FillAsync("2027-02-28");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "First day" }).BlurAsync();
        await Expect(page.GetByText("= Sun 28 Feb 2027")).ToBeVisibleAsync();
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Day begins" }).FillAsync("07:00");
        await page.GetByRole(AriaRole.Textbox, new() { Name = "Day begins" }).BlurAsync();
        await Button(page, "Sat").ClickAsync();
        await page.Locator("summary", new() { HasText = "How quickly you work" }).ClickAsync();
        await page.GetByLabel("Setting", new() { Exact = true }).FillAsync("0.8 m2");
        await page.GetByLabel("Setting", new() { Exact = true }).BlurAsync();
        await page.GetByLabel("Grouting", new() { Exact = true }).FillAsync("5 m2");
        await page.GetByLabel("Grouting", new() { Exact = true }).BlurAsync();
        await LookAsync(page, "order of work asked for", phone);
        var job = await JobAsync(page);
        Same(
            JsonNode.Parse("""{ "start": "2027-02-28", "day": { "from": "07:00", "to": "16:30", "break": "30 min" }, "days": ["mon", "tue", "wed", "thu", "fri", "sat"], "pace": { "setting": "0.8 m2", "grouting": "5 m2" } }"""),
            job["work"]);
        Same(JsonNode.Parse("""{ "name": "mortar", "kind": "mortar", "yield": "14 l", "potLife": "2 h", "openTime": "20 min", "holds": { "grout": "24 h" } }"""), job["supplies"]![0]);

        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Set");
        await page.Locator("summary", new() { HasText = "Order of work" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Mon 1 Mar 2027", Exact = true })).ToBeVisibleAsync();
        await Expect(page.Locator(".work th", new() { HasText = "set wall" }).First).ToContainTextAsync("Mix 1, 07:00");
        await Expect(page.Locator(".work th", new() { HasText = "grout wall" }).First).ToContainTextAsync("Hold: mortar sets before grout: 24 h after set wall");
        await LookAsync(page, "order of work", phone);

        // A wall by another name is followed into the order.
        await Device.GoAsync(page, "Measure");
        await page.GetByLabel("Wall's name").FillAsync("north");
        await page.GetByLabel("Wall's name").BlurAsync();
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Sheets");
        var calendar = System.Text.Encoding.UTF8.GetString(await Device.DownloadAsync(page, Button(page, "Days and holds for a calendar")));
        Assert.Contains("SUMMARY:set north", calendar, StringComparison.Ordinal);
        Assert.Contains("DTSTART:20270301T070000", calendar, StringComparison.Ordinal);
        Assert.Empty(device.Troubles);
    }

    [Theory]
    [ClassData(typeof(Screens))]
    public async Task What_may_run_beside_a_task_stands_by_it_on_its_day(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, s_mixed.TrimEnd()[..^1] + """, "work": { "start": "2027-03-08", "pace": { "setting": "0.8 m2" }, "tasks": [{ "name": "plumber", "takes": "2 h", "hands": 0 }] } }""");
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Set");
        await page.Locator("summary", new() { HasText = "Order of work" }).ClickAsync();
        await Expect(page.Locator(".work th", new() { HasTextRegex = new("^\\s*set wall") }).First).ToContainTextAsync("∥ Beside it may run: plumber");
        await LookAsync(page, "order of work, beside", phone);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Floors_and_things_made_elsewhere_keep_their_walls_by_any_name()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var work = "\"work\": { \"start\": \"2027-03-08\", \"tasks\": [{ \"name\": \"plumber\", \"takes\": \"2 h\", \"after\": [\"set wall\"] }], \"made\": [{ \"name\": \"glass\", \"lead\": \"10 days\", \"after\": \"set wall\", \"before\": [\"grouting\"] }, { \"name\": \"slab\", \"lead\": \"5 days\", \"faces\": [\"wall\"] }] }, ";
        var page = await OpenAsync(device, Wall.Replace("\"faces\": [{", work + "\"faces\": [{", StringComparison.Ordinal));
        await page.GetByLabel("Wall's name").FillAsync("north");
        await page.GetByLabel("Wall's name").BlurAsync();
        var job = await JobAsync(page);
        Same(JsonNode.Parse("""["set north"]"""), job["work"]!["tasks"]![0]!["after"]);
        Same(JsonValue.Create("set north"), job["work"]!["made"]![0]!["after"]);
        Same(JsonNode.Parse("""["north"]"""), job["work"]!["made"]![1]!["faces"]);
        await Device.PlannedAsync(page);
        Assert.Empty(device.Troubles);
    }

    [Theory]
    [ClassData(typeof(Screens))]
    public async Task Own_tasks_what_is_made_elsewhere_and_days_off_are_typed_by_the_keyboard_alone(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, Wall.Replace("\"faces\": [{", "\"work\": { \"start\": \"2027-03-08\" }, \"faces\": [{", StringComparison.Ordinal));
        await PartAsync(page, "Job");
        await HandOverTests.PressAsync(page, HandOverTests.Fold(page, "Order of work"));
        await HandOverTests.TypeAsync(page, "Days off", "2027-03-15\n2027-03-17 to 2027-03-19");
        await Expect(page.GetByText("= Mon 15 Mar 2027; Wed 17 Mar 2027 to Fri 19 Mar 2027")).ToBeVisibleAsync();
        await HandOverTests.PressAsync(page, HandOverTests.Fold(page, "Tasks of your own"));
        await HandOverTests.PressAsync(page, Button(page, "+ Task"));
        await Expect(page.GetByLabel("Takes", new() { Exact = true })).ToBeFocusedAsync();
        await page.Keyboard.TypeAsync("2 h");
        await HandOverTests.TypeAsync(page, "Task's name", "plumber");
        await HandOverTests.PressAsync(page, HandOverTests.Fold(page, "It comes after"));
        await HandOverTests.PressAsync(page, Of("It comes after", "setting"));
        await HandOverTests.PressAsync(page, HandOverTests.Fold(page, "These wait for it"));
        await HandOverTests.PressAsync(page, Of("These wait for it", "grouting"));
        await HandOverTests.PressAsync(page, HandOverTests.Fold(page, "Made elsewhere"));
        await HandOverTests.PressAsync(page, Button(page, "+ Made elsewhere"));
        await page.Keyboard.TypeAsync("10 days");
        await HandOverTests.PressAsync(page, Of("Not set before it is in", "wall"));
        await LookAsync(page, "own tasks", phone);
        Same(
            JsonNode.Parse("""{ "start": "2027-03-08", "off": ["2027-03-15", { "from": "2027-03-17", "to": "2027-03-19" }], "tasks": [{ "name": "plumber", "takes": "2 h", "after": ["setting"], "before": ["grouting"] }], "made": [{ "name": "thing 1", "lead": "10 days", "faces": ["wall"] }] }"""),
            (await JobAsync(page))["work"]);
        await Device.PlannedAsync(page);
        Assert.Empty(device.Troubles);

        ILocator Of(string what, string name) => page.GetByRole(AriaRole.Group, new() { Name = what }).GetByRole(AriaRole.Button, new() { Name = name, Exact = true });
    }

    [Fact]
    public async Task A_job_without_an_order_of_work_gets_one_where_tile_is_set_and_it_opens_there()
    {
        // Today is the device's, wherever it is: here where the day is another one than in Greenwich.
        var (zone, hours) = DateTime.UtcNow.Hour >= 12 ? ("Pacific/Kiritimati", 14) : ("Etc/GMT+12", -12);
        var context = await rig.Browser.NewContextAsync(new() { ViewportSize = new() { Width = 390, Height = 844 }, TimezoneId = zone, ServiceWorkers = ServiceWorkerPolicy.Block });
        await using var device = new Device(context, rig.Address);
        var page = await OpenAsync(device, Wall);
        await Device.GoAsync(page, "Set");
        var today = DateTime.UtcNow.AddHours(hours).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        await Button(page, "+ Order of work, from today").ClickAsync();
        await Expect(page.Locator(".work th", new() { HasText = "set wall" }).First).ToBeVisibleAsync(new() { Timeout = 30_000 });
        await LookAsync(page, "order of work from today", phone: true);
        Assert.Equal(today, (await JobAsync(page))["work"]!["start"]!.ToString());
        await page.GetByRole(AriaRole.Button, new() { Name = "Undo: order of work" }).ClickAsync();
        await Expect(Button(page, "+ Order of work, from today")).ToBeVisibleAsync();
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task However_long_a_name_is_what_is_asked_of_the_job_is_no_wider_than_the_screen()
    {
        await using var device = await rig.DeviceAsync();
        var name = new string('w', 60);
        var asked = "\"work\": { \"start\": \"2027-03-08\", \"tasks\": [{ \"name\": \"NAME\", \"takes\": \"2 h\", \"before\": [\"grouting\"] }], \"made\": [{ \"name\": \"NAMES\", \"lead\": \"10 days\", \"after\": \"NAME\" }] }, \"handover\": { \"lots\": [{ \"of\": \"tile\", \"lot\": \"NAME\" }], \"photographs\": [{ \"of\": \"NAME\", \"what\": \"NAME\" }], \"tests\": [{ \"what\": \"NAME\", \"on\": \"2027-03-08\" }] }, ";
        var page = await OpenAsync(device, Wall.Replace("\"faces\": [{", asked.Replace("NAMES", name[1..], StringComparison.Ordinal).Replace("NAME", name, StringComparison.Ordinal) + "\"faces\": [{", StringComparison.Ordinal));
        await PartAsync(page, "Job");
        for (var closed = page.Locator("details:not([open]) > summary"); await closed.CountAsync() > 0;) await closed.First.ClickAsync();
        await LookAsync(page, "everything of the job unfolded", phone: true);
        Assert.Empty(device.Troubles);
    }
}
