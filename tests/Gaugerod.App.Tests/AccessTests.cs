using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>
/// Every station in every light on a phone and on a laptop. Sources: WCAG 2.2, levels A and AA, by the rules of axe-core;
/// the touch target of 48 px is ours, for gloves and wet hands (WCAG 2.2, 2.5.8 asks for 24).
/// </summary>
[Collection(RigCollection.Name)]
public sealed class AccessTests(Rig rig)
{
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public async Task Every_station_is_fit_for_all_in_every_light(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, "Cloakroom wall, millimetres");
        var stations = await page.Locator(".station-key").AllInnerTextsAsync();
        Assert.Equal(8, stations.Count);
        var found = new List<string>();
        foreach (var station in stations)
        {
            await Device.GoAsync(page, station);
            foreach (var light in new[] { "light", "dark", "strong" })
            {
                await page.EvaluateAsync("light => document.documentElement.setAttribute('data-light', light)", light);
                found.AddRange((await Access.FaultsAsync(page)).Select(fault => $"{station}, {light}: {fault}"));
            }

            found.AddRange((await page.EvaluateAsync<string[]>(Targets)).Select(small => $"{station}: {small}"));
            if (await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > document.documentElement.clientWidth")) found.Add($"{station}: wider than the screen");
        }

        Assert.Empty(found.Distinct(StringComparer.Ordinal));
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task At_360_px_nothing_runs_off_the_screen()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await page.SetViewportSizeAsync(360, 740);
        await Device.OpenSampleAsync(page, "Guest shower, feet and inches");
        foreach (var station in await page.Locator(".station-key").AllInnerTextsAsync())
        {
            await Device.GoAsync(page, station);
            Assert.False(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > document.documentElement.clientWidth"), station);
            // Every station's key is seen whole, Help the last.
            Assert.Empty(await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('.station-key')].filter(key => key.getBoundingClientRect().right > innerWidth || key.scrollWidth > key.clientWidth).map(key => key.textContent)"));
        }

        await page.EvaluateAsync("() => document.querySelectorAll('.help > details').forEach(fold => fold.open = true)");
        Assert.False(await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > document.documentElement.clientWidth"), "Help, all unfolded");
        Assert.Empty(await page.EvaluateAsync<string[]>("() => [...document.querySelectorAll('.help *')].filter(one => one.checkVisibility() && one.getBoundingClientRect().right > (one.closest('svg') ?? document.documentElement).getBoundingClientRect().right + 1).map(one => one.textContent.slice(0, 40))"));
    }

    [Theory]
    [InlineData(ColorScheme.Light, "dark")]
    [InlineData(ColorScheme.Dark, "light")]
    public async Task Every_press_of_the_light_key_changes_what_is_seen_and_says_what_it_is_now(ColorScheme scheme, string opposite)
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await page.EmulateMediaAsync(new() { ColorScheme = scheme });
        var (key, state) = (page.GetByRole(AriaRole.Button, new() { Name = "Light:" }), page.Locator("header .state"));
        var seen = await PaperAsync(page);
        var same = scheme == ColorScheme.Light ? "light" : "dark";
        foreach (var light in new[] { opposite, same, "strong", "as the device", opposite })
        {
            await key.ClickAsync();
            await Expect(state).ToHaveTextAsync("Light: " + light);
            await Expect(key).ToHaveAccessibleNameAsync($"Light: {light}. Change");
            var before = seen;
            seen = await PaperAsync(page);
            Assert.NotEqual(before, seen);
        }

        await Expect(state).Not.ToContainTextAsync("Light", new() { Timeout = 5_000 });
        await page.ReloadAsync();
        await Device.ReadyAsync(page);
        await Expect(key).ToHaveAccessibleNameAsync($"Light: {opposite}. Change");
        Assert.Equal(seen, await PaperAsync(page));
        Assert.Empty(device.Troubles);
    }

    private static Task<string> PaperAsync(IPage page) => page.EvaluateAsync<string>("() => getComputedStyle(document.documentElement).backgroundColor");

    [Fact]
    public async Task The_keyboard_alone_opens_a_sample_and_reaches_its_cuts()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await device.OpenAsync();
        await PressUntilAsync(page, "Plain wall, by hand");
        await Device.PlannedAsync(page);
        await PressUntilAsync(page, "Cuts");
        await page.Locator(".pieces").First.WaitForAsync();
        await PressUntilAsync(page, " large");
        await page.GetByRole(AriaRole.Group, new() { Name = "One piece" }).WaitForAsync();
    }

    internal const string Targets = """
        () => {
          const what = "a[href], button, input, select, textarea, summary, [role=button], [role=slider], [role=tab], [tabindex='0']";
          return [...document.querySelectorAll(what)].flatMap(element => {
            if (element.matches(".hidden-file, .skip, .skip *")) return [];
            const style = getComputedStyle(element);
            if (style.visibility === "hidden" || style.display === "none" || element.disabled) return [];
            // A box within its label is pressed by pressing the label.
            const label = element.matches("input[type=checkbox], input[type=radio]") ? element.closest("label") : null;
            const box = (label ?? element).getBoundingClientRect();
            if (box.width === 0 && box.height === 0) return [];
            return box.width < 47.5 || box.height < 47.5
              ? [`${element.tagName} ${element.className?.baseVal ?? element.className} “${(element.getAttribute("aria-label") ?? element.textContent).trim().slice(0, 30)}” is ${Math.round(box.width)} by ${Math.round(box.height)} px`]
              : [];
          });
        }
        """;

    private static async Task PressUntilAsync(IPage page, string name)
    {
        for (var i = 0; i < 60; i++)
        {
            await page.Keyboard.PressAsync("Tab");
            if (!await page.EvaluateAsync<bool>("name => { const e = document.activeElement; return (e.getAttribute('aria-label') ?? e.textContent).trim().endsWith(name.trim()); }", name)) continue;
            await page.Keyboard.PressAsync("Enter");
            return;
        }

        Assert.Fail($"The Tab key never came to {name}.");
    }
}
