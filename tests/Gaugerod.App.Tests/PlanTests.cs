using System.Text.Json;
using Gaugerod.Testing;
using Microsoft.Playwright;
using UglyToad.PdfPig;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>The app and the command line plan alike, to the byte.</summary>
[Collection(RigCollection.Name)]
public sealed class PlanTests(Rig rig)
{
    [Theory]
    [InlineData("guest-shower", "Guest shower, feet and inches")]
    [InlineData("cloakroom", "Cloakroom wall, millimetres")]
    [InlineData("plain-wall", "Plain wall, by hand")]
    public async Task A_sample_is_planned_as_the_command_line_plans_it(string sample, string title)
    {
        var byCommandLine = await Published.PlanByCommandLineAsync(Path.Combine(Repo.Root, "samples", sample + ".json"));
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, title);

        using var plan = JsonDocument.Parse(byCommandLine);
        foreach (var line in plan.RootElement.GetProperty("takeoff").EnumerateArray())
        {
            var table = page.GetByRole(AriaRole.Table, new() { Name = line.GetProperty("item").GetString()!, Exact = true });
            var cells = await table.Locator("td").AllInnerTextsAsync();
            Assert.Equal($"{line.GetProperty("planned")}", cells[0]);
            Assert.Contains($"{line.GetProperty("need")}", cells);
            await Assertions.Expect(page.Locator(".packs").GetByText(Packs(line.GetProperty("packs").GetInt32(), line.GetProperty("pack").GetInt32(), line.GetProperty("unit").GetString()!), new() { Exact = true })).ToBeVisibleAsync();
        }

        await Device.GoAsync(page, "Sheets");
        var byApp = await Device.DownloadAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "plan.json" }));
        Assert.Equal(System.Text.Encoding.UTF8.GetString(byCommandLine), System.Text.Encoding.UTF8.GetString(byApp));
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_setter_who_has_not_said_what_a_box_holds_nor_what_may_break_is_told_so()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, "Cloakroom wall, millimetres");
        await Expect(page.GetByText("None is counted yet")).ToHaveCountAsync(0);

        await Device.GoAsync(page, "Measure");
        await page.GetByRole(AriaRole.Button, new() { Name = "Tiles" }).First.ClickAsync();
        await page.GetByText("Cutting, turning, spares").ClickAsync();
        foreach (var field in new[] { "Tiles in a box", "Tiles for breakage", "Tiles left with the client" }) await page.GetByLabel(field).FillAsync("");
        await Device.PlannedAsync(page);
        await Expect(page.Locator(".packs").First).ToHaveTextAsync(new System.Text.RegularExpressions.Regex("^[0-9]+ tiles$"));
        await Expect(page.GetByText("How many tiles come in a box is not given. Give it at Measure, Tiles")).ToBeVisibleAsync();
        await Expect(page.Locator("table.order").GetByText("None is counted yet")).ToHaveCountAsync(2);
        await Expect(page.GetByText("Left over in the boxes")).ToHaveCountAsync(0);
        Assert.Empty(device.Troubles);
    }

    private static string Packs(int packs, int pack, string unit) => pack == 1 ? $"{packs} {unit}s" : packs == 1 ? $"1 box of {pack}" : $"{packs} boxes of {pack}";

    [Fact]
    public async Task The_sheets_made_in_the_browser_can_be_read_back()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, "Cloakroom wall, millimetres");
        await Device.GoAsync(page, "Sheets");
        using var sheets = PdfDocument.Open(await Device.DownloadAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "Job sheets" })));
        Assert.NotEqual(0, sheets.NumberOfPages);
        Assert.NotEmpty(sheets.GetPage(1).Letters);
        await Expect(page.GetByText("handed to your downloads")).ToBeVisibleAsync();
        Assert.Empty(device.Troubles);
    }
}
