using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>Patterns in the app: chosen by eye, slid and turned under the hand, told apart by little pictures.</summary>
[Collection(RigCollection.Name)]
public sealed class BondsTests(Rig rig)
{
    private const string Splash = "Galley splash, herringbone, millimetres";

    /// <summary>How many outlines stand in the drawing of a class of paths.</summary>
    private const string Outlines = "of => [...document.querySelectorAll(of)].reduce((sum, path) => sum + (path.getAttribute('d')?.match(/z/g) ?? []).length, 0)";

    [Theory]
    [ClassData(typeof(Screens))]
    public async Task A_herringbone_slides_under_the_hand_and_rests_where_it_was_let_go(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await LinesTests.LinesAsync(device, Splash);
        // With the rod at rest as many tiles are hatched as pieces are cut: drilled ones are cut at no side.
        var (moving, resting) = (await page.EvaluateAsync<int>(Outlines, "path.moving-cut"), await page.EvaluateAsync<int>("() => document.querySelectorAll('.figures dd')[2].textContent.trim() | 0"));
        Assert.Equal(resting, moving);
        var rod = (await page.Locator(".rod.level").BoundingBoxAsync())!;
        await page.Mouse.MoveAsync(rod.X + (rod.Width / 2), rod.Y + (rod.Height / 2));
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(rod.X + (rod.Width / 2) + 31, rod.Y + (rod.Height / 2), new() { Steps = 8 });
        await Expect(page.Locator(".wall")).ToHaveAttributeAsync("data-sliding", "yes");
        await page.Mouse.UpAsync();
        await Expect(page.Locator(".proposals .proof")).ToContainTextAsync("Chosen by hand");
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_bond_turned_by_the_slider_is_planned_turned()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await LinesTests.LinesAsync(device, Splash);
        var slider = page.GetByRole(AriaRole.Slider, new() { NameRegex = new("Bond turned") });
        await Expect(slider).ToHaveValueAsync("45");
        await slider.FocusAsync();
        for (var i = 0; i < 5; i++) await page.Keyboard.PressAsync("ArrowLeft");
        await Expect(slider).ToHaveValueAsync("40");
        await Device.SavedAsync(page);
        await page.GetByRole(AriaRole.Button, new() { Name = "Straight", Exact = true }).ClickAsync();
        await Expect(slider).ToHaveValueAsync("0");
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Places_at_other_turns_get_pictures_of_their_own()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await device.OpenAsync();
        await MeasureTests.OpenFileAsync(page, System.Text.Encoding.UTF8.GetBytes("""
            { "format": "gaugerod-job/1", "name": "Invented", "units": "mm", "products": [{ "name": "slip", "width": 150, "height": 75 }],
              "faces": [{ "name": "wall", "readings": { "width": { "foot": 700 }, "height": { "left": 400 } } }],
              "runs": [{ "name": "wall", "product": "slip", "faces": ["wall"], "bond": { "kind": "herringbone", "turned": { "from": 0, "to": 45, "step": 45 } }, "joint": 2 }] }
            """));
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Lines");
        await Expect(page.Locator(".place-picture").Nth(1)).ToBeVisibleAsync();
        await page.WaitForFunctionAsync("() => { const all = [...document.querySelectorAll('.place-picture')]; return all.length > 1 && all.every(one => one.querySelector('.tiles')?.getAttribute('d')); }");
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_bond_is_seen_at_true_proportion_as_soon_as_it_is_chosen()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, Splash);
        await Device.GoAsync(page, "Measure");
        await page.GetByRole(AriaRole.Button, new() { Name = "Runs" }).First.ClickAsync();
        var bond = page.GetByLabel("Bond", new() { Exact = true });
        foreach (var (kind, picture) in new[] { ("basketweave", false), ("chevron", true), ("hexagon", false), ("planks", true), ("grid", true), ("octagon", false), ("herringbone", true) })
        {
            await bond.SelectOptionAsync(kind);
            await Expect(page.Locator(".bond-picture")).ToHaveCountAsync(picture ? 1 : 0);
        }

        Assert.Empty(device.Troubles);
    }
}
