using Microsoft.Playwright;
using static Gaugerod.App.Tests.MeasureTests;
using static Gaugerod.App.Tests.SurveyTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>
/// A person's way from nothing to a floor that falls, before any tile is chosen: an invented room of 2000 by 1500 mm, its diagonals
/// 2500 by Pythagoras, on a phone 360 px wide and on a laptop.
/// </summary>
[Collection(RigCollection.Name)]
public sealed class FloorBegunTests(Rig rig)
{
    private static readonly (string Reading, string Is)[] s_room = [("A to B", "2000"), ("B to C", "1500"), ("C to D", "2000"), ("D to A", "1500"), ("A to C", "2500"), ("B to D", "2500")];

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task A_floor_is_begun_at_New_job_and_its_bed_stands_there_before_the_tile(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await BeginAsync(device, phone, "A floor measured corner to corner");
        await Expect(Reading(page, "A to B")).ToBeFocusedAsync();
        await Expect(page.GetByLabel("Floor's name")).ToHaveValueAsync("floor");
        foreach (var (reading, figure) in s_room) await Reading(page, reading).FillAsync(figure);
        await Expect(page.GetByText(phone ? "✓ All 6 readings agree." : "All readings agree within what they may be off.")).ToBeVisibleAsync();
        await page.Locator("summary", new() { HasText = "Falls and folds" }).ClickAsync();
        await Button(page, "+ Drain in the middle").ClickAsync();
        await page.GetByLabel("Diameter").FillAsync("100");
        await page.Locator("summary", new() { HasText = "Bed under it" }).ClickAsync();
        await Button(page, "+ Bed that falls").ClickAsync();
        await Expect(page.GetByText("as soon as this floor and its drain are read")).ToBeVisibleAsync();
        await page.GetByLabel("Thick at the drain").FillAsync("30");
        await page.GetByLabel("How steeply it falls, from its farthest place").FillAsync("2 %");
        await page.GetByLabel("How steeply it falls, from its farthest place").BlurAsync();

        // Its picture and its section, and no tile is known.
        await Expect(page.Locator(".base-drawn svg")).ToHaveCountAsync(2);
        await Expect(page.Locator("details.unread")).ToContainTextAsync("2 figures are still needed");
        // The corners are 1250 from the drain, 25 up at 2 in 100; between a level edge and a place in the middle two thirds of that, on 3 m², and 30 mm all over: 50 and 90 l.
        await Expect(page.GetByText("The bed takes 140.0 l")).ToBeVisibleAsync();
        await Expect(page.Locator(".face-sketch .drain")).ToHaveCountAsync(1);
        await SeenAsync(page, "bed before the tile", phone);
        Assert.Empty(device.Troubles);
    }

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Whether_readings_agree_is_in_sight_while_one_types_and_the_floors_tab_says_it(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await BeginAsync(device, phone, "A floor measured corner to corner");
        foreach (var (reading, figure) in s_room[..5]) await Reading(page, reading).FillAsync(figure);
        if (phone) await Reading(page, "B to D").TapAsync();
        await Reading(page, "B to D").FillAsync("2540");
        var said = page.GetByText(phone ? "▲ 6 readings disagree." : "nothing tells which is in error");
        await page.WaitForTimeoutAsync(500);
        await page.ScreenshotAsync(new() { Path = Picture($"readings disagree while typing, {(phone ? "phone" : "laptop")}") });
        await Expect(said).ToBeInViewportAsync();
        var next = Button(page, "Read next: ");
        await Expect(next).ToBeInViewportAsync();
        await Expect(Reading(page, "B to D")).ToBeInViewportAsync();
        // Neither the strip nor the keypad lies over the field.
        Assert.True(await Reading(page, "B to D").EvaluateAsync<bool>("field => { const box = field.getBoundingClientRect(); return document.elementFromPoint(box.left + 20, box.top + 10) === field && document.elementFromPoint(box.left + 20, box.bottom - 10) === field; }"));
        await Expect(page.Locator(".pick").GetByRole(AriaRole.Button, new() { Name = "floor its readings disagree" })).ToHaveCountAsync(1);
        await SeenAsync(page, "readings disagree", phone);
        await Reading(page, "B to D").FillAsync("2500");
        await Expect(page.Locator(".pick .key.name[data-bad]")).ToHaveCountAsync(0);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task The_figures_of_two_diagonals_stand_clear_of_each_other_and_of_the_other_line()
    {
        await using var device = await rig.DeviceAsync();
        var page = await BeginAsync(device, phone: true, "A floor measured corner to corner");
        foreach (var (reading, figure) in s_room) await Reading(page, reading).FillAsync(figure);
        await Expect(page.Locator("text.said.read")).ToHaveCountAsync(6);
        var boxes = await page.EvaluateAsync<double[][]>("() => [...document.querySelectorAll('text.said')].map(text => { const box = text.getBBox(); return [box.x, box.y, box.x + box.width, box.y + box.height]; })");
        for (var i = 0; i < boxes.Length; i++)
        {
            for (var j = 0; j < i; j++)
            {
                Assert.False(boxes[i][0] < boxes[j][2] && boxes[j][0] < boxes[i][2] && boxes[i][1] < boxes[j][3] && boxes[j][1] < boxes[i][3], $"{i} over {j}");
            }
        }

        // Neither diagonal's figure stands where both lines cross.
        var cross = await page.EvaluateAsync<double[]>("() => { const box = document.querySelector('.face-sketch path.edge').getBBox(); return [box.x + box.width / 2, box.y + box.height / 2]; }");
        Assert.DoesNotContain(boxes, box => box[0] < cross[0] && cross[0] < box[2] && box[1] < cross[1] && cross[1] < box[3]);
        Assert.Empty(device.Troubles);
    }

    private static async Task<IPage> BeginAsync(Device device, bool phone, string with)
    {
        var page = await device.OpenAsync();
        if (phone) await page.SetViewportSizeAsync(360, 740);
        await Button(page, "New job").ClickAsync();
        await page.GetByRole(AriaRole.Group, new() { Name = "Measured in" }).GetByRole(AriaRole.Button, new() { Name = "millimetres" }).ClickAsync();
        await page.ScreenshotAsync(new() { Path = Picture($"new job, {(phone ? "phone" : "laptop")}"), FullPage = true });
        await Button(page, with).ClickAsync();
        await Expect(page.Locator("text.said.corner")).Not.ToHaveCountAsync(0);
        return page;
    }

    private static string Picture(string what) => Path.Combine(Directory.CreateDirectory(Path.Combine(Gaugerod.Testing.Repo.Root, "artifacts", "looked")).FullName, what + ".png");

    /// <summary>Held to the rules in light and dark and to the screen's width, and pictured whole.</summary>
    private static async Task SeenAsync(IPage page, string what, bool phone)
    {
        await page.WaitForTimeoutAsync(600);
        await page.EvaluateAsync("() => { document.activeElement.blur(); scrollTo(0, 0); }");
        foreach (var light in new[] { "dark", "light" })
        {
            await page.EvaluateAsync("light => document.documentElement.setAttribute('data-light', light)", light);
            await page.WaitForTimeoutAsync(400);
            await page.ScreenshotAsync(new() { Path = Picture($"{what}, {light}, {(phone ? "phone" : "laptop")}"), FullPage = true });
            Assert.Empty((await Access.FaultsAsync(page)).Select(fault => $"{what}, {light}: {fault}"));
        }

        Assert.False(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > document.documentElement.clientWidth"), what);
    }
}
