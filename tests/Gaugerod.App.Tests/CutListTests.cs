using System.Text.RegularExpressions;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>What a setter reads at the saw from the list alone: which tile a piece comes from, what a shared setting makes of it, what each cut gives.</summary>
[Collection(RigCollection.Name)]
public sealed class CutListTests(Rig rig)
{
    [Fact]
    public async Task A_setting_shared_by_several_sizes_says_what_comes_out()
    {
        await using var device = await rig.DeviceAsync(phone: true);
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, "Cloakroom wall, millimetres");
        await Device.GoAsync(page, "Cuts");
        await Expect(page.GetByText("stay whole")).ToBeVisibleAsync();
        await Device.UnfoldAsync(page);
        await Expect(Row(page, "A19")).ToContainTextAsync("198 × 177 mm tile ");
        await Expect(page.GetByText("comes out")).ToHaveCountAsync(0);
        await page.GetByText("Fence and offcuts").ClickAsync();
        await page.GetByLabel("Sizes that may share a setting differ by").FillAsync("3");
        await page.GetByLabel("Sizes that may share a setting differ by").BlurAsync();
        await Expect(Row(page, "A19")).ToContainTextAsync("198 × 177 mm, comes out 174 mm");
        await Device.UnfoldAsync(page);
        await Expect(Row(page, "A24")).Not.ToContainTextAsync("comes out");
        // On the card the large figure is what the fence leaves; the piece's own size stands beside it.
        await Row(page, "A19").GetByRole(AriaRole.Button).ClickAsync();
        await Expect(page.Locator(".size")).ToHaveTextAsync("198 × 174 mm");
        await Expect(page.Locator(".asked")).ToContainTextAsync("Own size 198 × 177 mm");
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_setting_that_only_parts_tiles_says_which_and_a_card_says_what_each_cut_gives()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, "Galley splash, herringbone, millimetres");
        await Device.GoAsync(page, "Cuts");
        await Device.UnfoldAsync(page);
        await Expect(page.GetByText(new Regex("^Parts tiles? [0-9]")).First).ToBeVisibleAsync();
        await Expect(page.GetByText("0 of 0")).ToHaveCountAsync(0);
        // A piece that shares its tile by straight cuts.
        await Device.OpenSampleAsync(page, "Guest shower, feet and inches");
        await Device.GoAsync(page, "Cuts");
        await Device.UnfoldAsync(page);
        var shared = page.Locator("ul.pieces li", new() { HasText = ", with " }).First;
        var name = await shared.Locator("b").InnerTextAsync();
        await shared.GetByRole(AriaRole.Button).ClickAsync();
        await Expect(page.Locator("ol.order")).ToContainTextAsync($"this gives {name}");
        // Beside it the tile as the sheets draw it: as many ringed numbers as there are cuts in order.
        var drawn = await page.Locator(".shared svg text").AllTextContentsAsync();
        Assert.Contains(name, drawn);
        Assert.Equal(await page.Locator("ol.order li").CountAsync(), drawn.Count(words => int.TryParse(words, out _)));
        Assert.Empty(device.Troubles);
    }

    [Theory]
    [ClassData(typeof(Screens))]
    public async Task A_long_list_lies_folded_but_for_its_first_settings_and_one_is_gone_to_by_its_number(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, "Guest shower, feet and inches");
        await Device.GoAsync(page, "Cuts");
        await Expect(page.Locator("details.setting[open]")).ToHaveCountAsync(3);
        var tenth = page.Locator("details.setting").Nth(9);
        await Expect(tenth.Locator("ul.pieces")).ToHaveCountAsync(0);
        await page.GetByLabel("Go to setting").SelectOptionAsync("10");
        await Expect(tenth.Locator("ul.pieces li").First).ToBeInViewportAsync();
        await Expect(tenth.Locator("summary")).ToBeFocusedAsync();
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Lines_and_cuts_say_what_each_counts()
    {
        await using var device = await rig.DeviceAsync(phone: true);
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, "Guest shower, feet and inches");
        await Device.GoAsync(page, "Cuts");
        await Expect(page.GetByText("(113 cut at an edge, 1 only drilled)")).ToBeVisibleAsync();
        await Device.GoAsync(page, "Lines");
        await Expect(page.Locator(".figures dl div").Nth(2)).ToHaveTextAsync(new Regex("Cut tiles\\s*113\\s*at an edge; 1 more only drilled"));
        Assert.Empty(device.Troubles);
    }

    private static ILocator Row(IPage page, string piece) => page.Locator("ul.pieces li").Filter(new() { Has = page.GetByText(piece, new() { Exact = true }) }).First;
}
