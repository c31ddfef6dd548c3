using System.Diagnostics;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>A first visit, with the service worker at work.</summary>
[Collection(RigCollection.Name)]
public sealed class OpeningTests(Rig rig)
{
    [Fact]
    public async Task The_page_opens_without_a_complaint_and_asks_nobody_else()
    {
        await using var device = await rig.DeviceAsync(worker: true);
        var page = await device.OpenAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "Jobs on this device" })).ToBeVisibleAsync();
        await Device.OpenSampleAsync(page, "Plain wall, by hand");
        await page.WaitForFunctionAsync("() => navigator.serviceWorker.ready.then(() => true)");
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task The_first_key_of_a_keyboard_leads_past_the_bar_to_the_station()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await page.Locator("a.skip").FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator("main#station")).ToBeFocusedAsync();
        Assert.Empty(device.Troubles);
    }

    /// <summary>Our own limit for this machine's loopback; a real network adds to it.</summary>
    [Fact]
    public async Task A_first_visit_is_ready_within_ten_seconds_even_on_a_busy_machine()
    {
        await using var device = await rig.DeviceAsync();
        var clock = Stopwatch.StartNew();
        await device.OpenAsync();
        Assert.InRange(clock.Elapsed.TotalSeconds, 0, 10);
    }

    [Fact]
    public async Task Something_is_painted_before_any_program_runs()
    {
        await using var context = await rig.Browser.NewContextAsync(new() { JavaScriptEnabled = false });
        var page = await context.NewPageAsync();
        await page.GotoAsync(rig.Address);
        await Expect(page.GetByText("Where the first tile goes, and every cut after it")).ToBeVisibleAsync();
    }

    [Fact]
    public async Task Names_typed_by_people_are_text_in_the_page_and_in_its_drawings()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        var job = (await File.ReadAllTextAsync(Path.Combine(Gaugerod.Testing.Repo.Root, "samples/plain-wall.json")))
            .Replace("\"Plain wall\"", "\"<img src=x onerror=alert(1)>\"", StringComparison.Ordinal)
            .Replace("\"wall\"", "\"<b>wall</b>\"", StringComparison.Ordinal);
        await page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "odd.json", MimeType = "application/json", Buffer = System.Text.Encoding.UTF8.GetBytes(job) });
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Sheets");
        await Expect(page.Locator("header .job")).ToContainTextAsync("<img src=x");
        await Expect(page.Locator("main figcaption").First).ToHaveTextAsync("<b>wall</b>");
        Assert.Equal(0, await page.Locator("img, figure b").CountAsync());
        Assert.Empty(device.Troubles);
    }

    [Theory]
    [InlineData("not a job", "odd.json")]
    [InlineData("{ \"format\": \"gaugerod-job/99\" }", "later.json")]
    public async Task A_file_that_is_no_job_is_refused_in_words_and_changes_nothing(string text, string name)
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = name, MimeType = "application/json", Buffer = System.Text.Encoding.UTF8.GetBytes(text) });
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Nothing was opened or changed.");
        await Expect(page.Locator("header .job")).ToHaveTextAsync("Gaugerod");
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_field_that_is_not_known_here_is_kept_through_a_change_and_in_the_file()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        var job = (await File.ReadAllTextAsync(Path.Combine(Gaugerod.Testing.Repo.Root, "samples/plain-wall.json")))
            .Replace("\"joint\": 3,", "\"joint\": 3, \"paint\": { \"name\": \"white\" },", StringComparison.Ordinal);
        await page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "later.json", MimeType = "application/json", Buffer = System.Text.Encoding.UTF8.GetBytes(job) });
        await Device.PlannedAsync(page);
        await Expect(page.GetByText("runs[0].paint: this field is not known here.")).ToBeVisibleAsync();
        await Device.GoAsync(page, "Measure");
        await page.GetByRole(AriaRole.Button, new() { Name = "Job", Exact = true }).ClickAsync();
        await page.GetByLabel("Job's name").FillAsync("Later wall");
        await Device.GoAsync(page, "Jobs");
        var kept = await Device.DownloadAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save “Later wall” to a file" }));
        using var file = System.Text.Json.JsonDocument.Parse(kept);
        Assert.Equal("Later wall", file.RootElement.GetProperty("name").GetString());
        Assert.Equal("white", file.RootElement.GetProperty("runs")[0].GetProperty("paint").GetProperty("name").GetString());
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Back_leads_to_where_one_was_and_a_page_loaded_anew_opens_there()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, "Plain wall, by hand");
        await Device.GoAsync(page, "Cuts");
        await page.Locator(".pieces button").First.ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Next" }).ClickAsync();
        await page.GoBackAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "What to cut" })).ToBeVisibleAsync();
        await page.ReloadAsync();
        await Device.ReadyAsync(page);
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "What to cut" })).ToBeVisibleAsync();
        await page.GoBackAsync();
        await Expect(page.GetByRole(AriaRole.Heading, new() { Name = "What to buy" })).ToBeVisibleAsync();
        Assert.Empty(device.Troubles);
    }
}
