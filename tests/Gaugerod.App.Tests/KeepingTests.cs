using System.IO.Compression;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>Nothing that was done is lost, whatever happens to the page.</summary>
[Collection(RigCollection.Name)]
public sealed class KeepingTests(Rig rig)
{
    private const string Sample = "Plain wall, by hand";

    [Fact]
    public async Task Ticks_survive_a_reload_and_the_job_lies_on_the_desk_again()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, Sample);
        await TickAsync(page, 0);
        await TickAsync(page, 2);
        await Device.SavedAsync(page);

        await page.ReloadAsync();
        await Device.ReadyAsync(page);
        await Device.GoAsync(page, "Cuts");
        await Expect(Ticks(page).Nth(0)).ToBeCheckedAsync();
        await Expect(Ticks(page).Nth(1)).Not.ToBeCheckedAsync();
        await Expect(Ticks(page).Nth(2)).ToBeCheckedAsync();
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Undo_takes_back_a_tick_before_what_was_done_before_it()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, Sample);
        await TickAsync(page, 0);
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Undo: .* cut$") }).ClickAsync();
        await Expect(Ticks(page).Nth(0)).Not.ToBeCheckedAsync();
        await page.GetByRole(AriaRole.Button, new() { NameRegex = new("^Redo: .* cut$") }).ClickAsync();
        await Expect(Ticks(page).Nth(0)).ToBeCheckedAsync();
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task What_was_cut_for_one_plan_does_not_pass_for_a_piece_of_another()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, Sample);
        await TickAsync(page, 0);
        await Device.GoAsync(page, "Measure");
        var width = page.GetByRole(AriaRole.Textbox, new() { Name = "At the foot" }).First;
        await width.FillAsync("1493");
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Cuts");
        await Expect(page.GetByText("1 piece that was ticked off is not in this plan as cut")).ToBeVisibleAsync();
        await Expect(Ticks(page).Nth(0)).Not.ToBeCheckedAsync();
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task What_is_being_typed_when_the_page_goes_is_kept()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, Sample);
        await Device.GoAsync(page, "Measure");
        var width = page.GetByRole(AriaRole.Textbox, new() { Name = "At the foot" }).First;
        await width.FillAsync("1493");
        await page.ReloadAsync();
        await Device.ReadyAsync(page);
        await Expect(page.GetByRole(AriaRole.Textbox, new() { Name = "At the foot" }).First).ToHaveValueAsync("1493");
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_page_killed_in_the_midst_keeps_all_that_is_older_than_a_second()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, Sample);
        for (var i = 0; i < 4; i++) await TickAsync(page, i);
        await Task.Delay(1000);
        var session = await device.Context.NewCDPSessionAsync(page);
        // The tab's own process ends at once: no page is hidden first, no last word is said.
        _ = session.SendAsync("Page.crash");
        await Task.Delay(500);

        var later = await device.OpenAsync();
        await later.Locator(".cards .card").First.ClickAsync();
        await Device.PlannedAsync(later);
        await Device.GoAsync(later, "Cuts");
        for (var i = 0; i < 4; i++) await Expect(Ticks(later).Nth(i)).ToBeCheckedAsync();
    }

    [Fact]
    public async Task A_page_that_goes_at_once_has_its_last_word_saved()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, Sample);
        await TickAsync(page, 0);
        await page.ReloadAsync();
        await Device.ReadyAsync(page);
        await Device.GoAsync(page, "Cuts");
        await Expect(Ticks(page).Nth(0)).ToBeCheckedAsync();
    }

    [Fact]
    public async Task A_second_tab_reads_only_until_it_takes_the_job_over()
    {
        await using var device = await rig.DeviceAsync();
        var first = await device.OpenAsync();
        await Device.OpenSampleAsync(first, Sample);
        await TickAsync(first, 0);
        await Device.SavedAsync(first);

        var second = await device.OpenAsync();
        await second.Locator(".cards .card").First.ClickAsync();
        await Expect(second.GetByText("Another tab writes this job.")).ToBeVisibleAsync();
        await Device.PlannedAsync(second);
        await Device.GoAsync(second, "Cuts");
        await Expect(Ticks(second).Nth(0)).ToBeDisabledAsync();

        // What the first tab has not saved yet comes along.
        await TickAsync(first, 1);
        await second.GetByRole(AriaRole.Button, new() { Name = "Write it here instead" }).ClickAsync();
        await Expect(second.GetByText("Another tab writes this job.")).ToHaveCountAsync(0);
        await Expect(first.GetByText("Another tab writes this job.")).ToBeVisibleAsync();
        await Expect(Ticks(second).Nth(1)).ToBeCheckedAsync();
        await TickAsync(second, 2);
        await Device.SavedAsync(second);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task An_earlier_state_can_be_taken_back_and_the_later_one_stays_among_them()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, Sample);
        await Device.SavedAsync(page);
        // A change of the text, written as the page writes it; the first of a job is always kept.
        await page.EvaluateAsync("""
            async () => {
              const shelf = await import("./js/shelf.js");
              const id = shelf.opened(), job = await shelf.read(id);
              shelf.hold(id, "Later", job.text.replace('"name": "', '"name": "Later '), []);
              await shelf.flush();
            }
            """);
        await page.ReloadAsync();
        await Device.ReadyAsync(page);
        await Expect(page.Locator("header .job")).ToContainTextAsync("Later");
        await Device.GoAsync(page, "Jobs");

        await page.GetByRole(AriaRole.Button, new() { Name = "Earlier states" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Take back" }).First.ClickAsync();
        await Expect(page.Locator("header .job")).Not.ToContainTextAsync("Later");
        await page.GetByRole(AriaRole.Button, new() { Name = "Earlier states" }).ClickAsync();
        await Expect(page.GetByRole(AriaRole.Button, new() { Name = "Take back" })).ToHaveCountAsync(2);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Fifty_earlier_states_are_kept_and_no_more()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, Sample);
        var kept = await page.EvaluateAsync<int>("""
            async () => {
              const { store } = await import("./js/store.js");
              for (let i = 0; i < 60; i++) await store.put([{ id: "x", name: "x", text: String(i), ticks: [], saved: 1e12 + i * 61_000 }]);
              await store.put([{ id: "x", name: "x", text: "soon", ticks: [], saved: 1e12 + 59 * 61_000 + 1000 }]);
              await store.put([{ id: "x", name: "x", text: "sooner", ticks: [], saved: 1e12 + 59 * 61_000 + 2000 }]);
              const all = await store.versions("x");
              return all.some(version => version.text === "soon") ? -1 : all.length;
            }
            """);
        Assert.Equal(50, kept);
    }

    [Fact]
    public async Task All_jobs_go_into_one_file()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, Sample);
        await Device.OpenSampleAsync(page, Sample);
        await Device.GoAsync(page, "Jobs");
        var file = await Device.DownloadAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save all jobs" }));
        using var zip = new ZipArchive(new MemoryStream(file));
        Assert.Equal(2, zip.Entries.Select(entry => entry.FullName).Distinct(StringComparer.Ordinal).Count());
        var sample = await File.ReadAllTextAsync(Path.Combine(Gaugerod.Testing.Repo.Root, "samples/plain-wall.json"));
        foreach (var entry in zip.Entries)
        {
            using var reader = new StreamReader(entry.Open());
            Assert.Equal(sample, await reader.ReadToEndAsync());
        }
    }

    [Theory]
    [InlineData("Object.defineProperty(globalThis, 'indexedDB', { value: undefined })", "as in a private window")]
    [InlineData("IDBObjectStore.prototype.put = () => { throw new DOMException('full', 'QuotaExceededError'); }", "the storage of this device is full")]
    public async Task Refused_storage_is_said_at_once_with_a_way_to_save_a_file(string refusal, string words)
    {
        await using var device = await rig.DeviceAsync();
        await device.Context.AddInitScriptAsync(refusal);
        var page = await device.OpenAsync();
        await Expect(page.GetByRole(AriaRole.Alert).Filter(new() { HasText = words })).ToBeVisibleAsync();
        await Device.OpenSampleAsync(page, Sample);
        var file = await Device.DownloadAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Save the job to a file" }));
        Assert.Equal(await File.ReadAllBytesAsync(Path.Combine(Gaugerod.Testing.Repo.Root, "samples/plain-wall.json")), file);
    }

    private static ILocator Ticks(IPage page) => page.Locator(".pieces input[type=checkbox]");

    private static async Task TickAsync(IPage page, int piece)
    {
        await Device.GoAsync(page, "Cuts");
        await Ticks(page).Nth(piece).CheckAsync();
    }
}
