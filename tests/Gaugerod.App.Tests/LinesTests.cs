using System.Globalization;
using System.Text.Json;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>The drawing at Lines under the hand: looked at nearer, moved about, tapped, and slid.</summary>
[Collection(RigCollection.Name)]
public sealed class LinesTests(Rig rig)
{
    private const string Shower = "Guest shower, feet and inches";
    private const string Plain = "Plain wall, by hand";

    /// <summary>What the drawing shows: its left, its top, its width and its height.</summary>
    private const string View = "() => document.querySelector('.wall').getAttribute('viewBox').split(' ').map(Number)";

    /// <summary>The place of the drawing that lies under a place on the screen.</summary>
    private const string Under = "([x, y]) => { const p = new DOMPoint(x, y).matrixTransform(document.querySelector('.wall').getScreenCTM().inverse()); return [p.x, p.y]; }";

    [Fact]
    public async Task The_wheel_looks_nearer_and_what_lies_under_the_pointer_stays_there()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await LinesAsync(device, Shower);
        var box = await BoxAsync(page);
        // A pointer stands on whole pixels.
        var (x, y) = (MathF.Round(box.X + (box.Width * 0.3f)), MathF.Round(box.Y + (box.Height * 0.6f)));
        var whole = await page.EvaluateAsync<double[]>(View);
        await page.EvaluateAsync("""
            () => {
              window.drawnAnew = 0;
              new MutationObserver(all => { drawnAnew += all.filter(one => one.type === "childList" || !one.target.closest("defs")).length; })
                .observe(document.querySelector(".wall"), { subtree: true, childList: true, attributes: true, attributeFilter: ["d"] });
            }
            """);
        await page.Mouse.MoveAsync(x, y);
        var before = await page.EvaluateAsync<double[]>(Under, new double[] { x, y });
        for (var i = 0; i < 5; i++) await page.Mouse.WheelAsync(0, -200);
        await Expect(page.Locator(".window")).ToHaveAttributeAsync("data-zoomed", "yes");
        await SettledAsync(page);

        var near = await page.EvaluateAsync<double[]>(View);
        Assert.InRange(whole[2] / near[2], 3, 6);
        var after = await page.EvaluateAsync<double[]>(Under, new double[] { x, y });
        Assert.InRange(Math.Abs(after[0] - before[0]), 0, whole[2] / 1000);
        Assert.InRange(Math.Abs(after[1] - before[1]), 0, whole[3] / 1000);
        // The rods show what the drawing shows.
        Assert.Equal(near[0], (await ShownAsync(page, 0))[0], 0.2);
        Assert.Equal(near[2], (await ShownAsync(page, 0))[2], 0.2);
        Assert.Equal(near[3], (await ShownAsync(page, 1))[3], 0.2);

        for (var i = 0; i < 30; i++) await page.Mouse.WheelAsync(0, -400);
        await SettledAsync(page);
        Assert.InRange(whole[2] / (await page.EvaluateAsync<double[]>(View))[2], 29, 31);
        for (var i = 0; i < 40; i++) await page.Mouse.WheelAsync(0, 400);
        await Expect(page.Locator(".window")).ToHaveAttributeAsync("data-zoomed", "no");
        Assert.Equal(0, await page.EvaluateAsync<int>("() => drawnAnew"));
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_drag_moves_the_drawing_only_when_it_is_near_and_is_no_tap()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await LinesAsync(device, Plain);
        var window = page.Locator(".window");
        var whole = await page.EvaluateAsync<double[]>(View);
        await Expect(window).ToHaveCSSAsync("touch-action", "pan-y");
        await DragAsync(page, 80, 40);
        await SettledAsync(page);
        Assert.Equal(whole, await page.EvaluateAsync<double[]>(View));

        await page.GetByRole(AriaRole.Button, new() { Name = "Look nearer" }).ClickAsync(new() { ClickCount = 3 });
        await Expect(window).ToHaveCSSAsync("touch-action", "none");
        var near = await page.EvaluateAsync<double[]>(View);
        Assert.Equal(whole[2] / 3.375, near[2], 1.0);
        await DragAsync(page, 80, 40);
        await SettledAsync(page);
        var moved = await page.EvaluateAsync<double[]>(View);
        Assert.True(moved[0] < near[0] && moved[1] < near[1], "What was under the pointer did not come along.");
        await Expect(page.Locator(".piece-card .number")).ToHaveCountAsync(0);
        await Expect(page.Locator(".want")).ToHaveCountAsync(0);

        // A hand that trembles still taps.
        await DragAsync(page, 4, 3);
        await Expect(page.Locator(".piece-card .number")).ToHaveCountAsync(1);
        Assert.Equal(moved, await page.EvaluateAsync<double[]>(View));

        await page.GetByRole(AriaRole.Button, new() { Name = "Fit: show the whole run" }).ClickAsync();
        await SettledAsync(page);
        Assert.Equal(whole, await page.EvaluateAsync<double[]>(View));
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Two_fingers_look_nearer_and_one_finger_then_moves_the_drawing()
    {
        await using var device = await rig.DeviceAsync();
        var page = await LinesAsync(device, Shower);
        await page.Locator(".window").ScrollIntoViewIfNeededAsync();
        var (box, whole) = (await BoxAsync(page), await page.EvaluateAsync<double[]>(View));
        var session = await device.Context.NewCDPSessionAsync(page);
        var (x, y) = (box.X + (box.Width / 2), box.Y + (box.Height / 2));
        Task TouchAsync(string type, params (double X, double Y)[] fingers) => session.SendAsync("Input.dispatchTouchEvent", new Dictionary<string, object>
        {
            ["type"] = type,
            ["touchPoints"] = fingers.Select((finger, i) => new Dictionary<string, object> { ["x"] = finger.X, ["y"] = finger.Y, ["id"] = i }).ToArray(),
        });
        await TouchAsync("touchStart", (x - 20, y), (x + 20, y));
        for (var i = 1; i <= 8; i++) await TouchAsync("touchMove", (x - 20 - (i * 5), y), (x + 20 + (i * 5), y));
        await TouchAsync("touchEnd");
        await SettledAsync(page);
        var near = await page.EvaluateAsync<double[]>(View);
        Assert.InRange(whole[2] / near[2], 2, 4);

        await TouchAsync("touchStart", (x, y));
        for (var i = 1; i <= 8; i++) await TouchAsync("touchMove", (x - (i * 5), y - (i * 4)));
        await TouchAsync("touchEnd");
        await SettledAsync(page);
        var moved = await page.EvaluateAsync<double[]>(View);
        Assert.True(moved[0] > near[0] && moved[1] > near[1], "The drawing did not follow the finger.");
        await Expect(page.Locator(".piece-card .number")).ToHaveCountAsync(0);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Keys_look_nearer_move_about_pick_a_piece_and_let_it_go()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await LinesAsync(device, Plain);
        var whole = await page.EvaluateAsync<double[]>(View);
        await page.Locator(".window").FocusAsync();
        await page.Keyboard.PressAsync("+");
        await page.Keyboard.PressAsync("+");
        await SettledAsync(page);
        var near = await page.EvaluateAsync<double[]>(View);
        Assert.Equal(whole[2] / 2.25, near[2], 1.0);
        await page.Keyboard.PressAsync("ArrowRight");
        await SettledAsync(page);
        Assert.True((await page.EvaluateAsync<double[]>(View))[0] > near[0]);
        await page.Keyboard.PressAsync("0");
        await SettledAsync(page);
        Assert.Equal(whole, await page.EvaluateAsync<double[]>(View));

        await page.Keyboard.PressAsync("Enter");
        var number = page.Locator(".piece-card .number b");
        var first = await number.InnerTextAsync();
        await Expect(page.Locator(".piece-card [role=status]")).ToContainTextAsync(first);
        await page.Keyboard.PressAsync("Shift+ArrowRight");
        await Expect(number).Not.ToHaveTextAsync(first);
        await page.Keyboard.PressAsync("Shift+ArrowLeft");
        await Expect(number).ToHaveTextAsync(first);
        await page.GetByRole(AriaRole.Button, new() { Name = "Piece after" }).ClickAsync();
        await Expect(number).Not.ToHaveTextAsync(first);
        await page.Keyboard.PressAsync("Escape");
        await Expect(number).ToHaveCountAsync(0);
        await Expect(page.Locator(".window")).ToBeFocusedAsync();
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_tapped_piece_is_said_as_the_plan_and_the_cut_list_have_it()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await LinesAsync(device, Shower);
        var box = await BoxAsync(page);
        await page.Mouse.ClickAsync(box.X + (box.Width * 0.339f), box.Y + (box.Height * 0.402f));
        var card = page.Locator(".piece-card");
        var (number, size) = (await card.Locator(".number b").InnerTextAsync(), await card.Locator(".number span").InnerTextAsync());
        var (cuts, words) = (await card.Locator(".cut").AllInnerTextsAsync(), await card.InnerTextAsync());
        await Expect(page.Locator("path.picked")).Not.ToHaveAttributeAsync("d", "");

        await Device.GoAsync(page, "Sheets");
        using var plan = JsonDocument.Parse(await Device.DownloadAsync(page, page.GetByRole(AriaRole.Button, new() { Name = "plan.json" })));
        var piece = plan.RootElement.GetProperty("runs")[0].GetProperty("faces").EnumerateArray().SelectMany(face => face.GetProperty("pieces").EnumerateArray())
            .Single(of => of.GetProperty("id").GetString() == number);
        Assert.Contains($"course {piece.GetProperty("course")}", words, StringComparison.Ordinal);
        Assert.Contains(piece.GetProperty("kind").GetString()!, words, StringComparison.OrdinalIgnoreCase);
        var tile = plan.RootElement.GetProperty("cutting").GetProperty("products")[0].GetProperty("tiles").EnumerateArray()
            .Single(of => of.GetProperty("pieces").EnumerateArray().Any(other => other.GetProperty("id").GetString() == number));
        Assert.Contains($"Tile {tile.GetProperty("number")}:", words, StringComparison.Ordinal);
        foreach (var other in tile.GetProperty("pieces").EnumerateArray().Select(of => of.GetProperty("id").GetString()!)) Assert.Contains(other, words, StringComparison.Ordinal);

        Assert.NotEmpty(cuts);
        await Device.GoAsync(page, "Cuts");
        await page.GetByRole(AriaRole.Button, new() { Name = $"{number} large", Exact = true }).ClickAsync();
        Assert.Equal(await page.Locator(".saw .cut").AllInnerTextsAsync(), cuts);
        await Expect(page.Locator(".saw .size span")).ToHaveAttributeAsync("aria-label", size);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task An_edge_lies_over_the_pieces_and_can_still_be_asked_at()
    {
        await using var device = await rig.DeviceAsync();
        var page = await LinesAsync(device, Plain);
        var wall = (await page.Locator(".bare").BoundingBoxAsync())!;
        await page.Mouse.ClickAsync(wall.X + (wall.Width / 2), wall.Y + 6);
        await Expect(page.Locator(".want h3")).ToHaveTextAsync("Ask for something at the head of wall");
        await Expect(page.Locator(".piece-card .number")).ToHaveCountAsync(0);
        Assert.Empty(device.Troubles);
    }

    /// <summary>A rod in the hand that has not moved shows the tiling that rests: as many tiles of each kind.</summary>
    [Theory]
    [InlineData(Shower)]
    [InlineData("Cloakroom wall, millimetres")]
    public async Task While_a_rod_slides_every_cut_tile_is_hatched_as_its_kind(string sample)
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await LinesAsync(device, sample);
        var counted = await page.EvaluateAsync<Dictionary<string, int[]>>("""
            () => {
              const boxes = path => (path.getAttribute("d")?.match(/z/g) ?? []).length, kinds = {};
              for (const kind of ["straight", "corner", "notch", "slot", "hole", "taper", "shaped"]) {
                const moving = [...document.querySelectorAll("[data-cut]")].filter(path => path.getAttribute("fill") === `url(#cut-${kind})`);
                kinds[kind] = [moving.reduce((sum, path) => sum + boxes(path), 0), [...document.querySelectorAll(`.piece.${kind}`)].reduce((sum, path) => sum + boxes(path), 0)];
              }
              return kinds;
            }
            """);
        foreach (var (kind, count) in counted)
        {
            // Of a drilled piece the outline at rest has its hole as well.
            if (kind is "hole" or "shaped") Assert.InRange(count[0], count[1] == 0 ? 0 : 1, count[1]);
            else Assert.True(count[0] == count[1], $"{kind}: {count[0]} sliding, {count[1]} at rest");
        }

        Assert.True(counted["straight"][0] > 0 && counted["corner"][0] + counted["taper"][0] > 0);
        var rod = await page.Locator(".rod.level").BoundingBoxAsync();
        await page.Mouse.MoveAsync(rod!.X + 100, rod.Y + 20);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(rod.X + 130, rod.Y + 20, new() { Steps = 4 });
        await Expect(page.Locator(".wall")).ToHaveAttributeAsync("data-sliding", "yes");
        await Expect(page.Locator(".resting").First).ToBeHiddenAsync();
        await page.Mouse.UpAsync();
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_bench_that_takes_the_whole_foot_of_a_face_stands_solid_down_to_the_floor()
    {
        await using var device = await rig.DeviceAsync(phone: false);
        var page = await LinesAsync(device, Shower);
        // The bench on east is 18 1/2 in high.
        var high = await page.EvaluateAsync<double>("() => [...document.querySelectorAll('.fixture')].at(-1).getBBox().height");
        Assert.InRange(high, 18 * 254, 19 * 254);
        await Expect(page.Locator(".names text", new() { HasTextString = "bench" })).ToHaveCountAsync(2);
        await Expect(page.Locator(".names text[visibility=visible]", new() { HasTextString = "bench" }).Last).ToBeVisibleAsync();
        Assert.Empty(device.Troubles);
    }

    /// <summary>Opens a job and comes to Lines.</summary>
    internal static async Task<IPage> LinesAsync(Device device, string sample)
    {
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, sample);
        await Device.GoAsync(page, "Lines");
        await Expect(page.Locator(".wall .piece").First).ToBeAttachedAsync();
        await Expect(page.Locator(".window")).ToHaveAttributeAsync("data-zoomed", "no");
        return page;
    }

    internal static async Task<LocatorBoundingBoxResult> BoxAsync(IPage page) => (await page.Locator(".window").BoundingBoxAsync())!;

    /// <summary>Waits until what was asked for is on the screen.</summary>
    internal static Task SettledAsync(IPage page) => page.EvaluateAsync("() => new Promise(done => requestAnimationFrame(() => requestAnimationFrame(() => requestAnimationFrame(done))))");

    private static async Task DragAsync(IPage page, float right, float down)
    {
        var box = await BoxAsync(page);
        var (x, y) = (box.X + (box.Width * 0.62f), box.Y + (box.Height * 0.55f));
        await page.Mouse.MoveAsync(x, y);
        await page.Mouse.DownAsync();
        await page.Mouse.MoveAsync(x + right, y + down, new() { Steps = 6 });
        await page.Mouse.UpAsync();
    }

    private static async Task<double[]> ShownAsync(IPage page, int rod) =>
        [.. (await page.Locator($"[data-rod='{rod}'] svg").GetAttributeAsync("viewBox"))!.Split(' ').Select(number => double.Parse(number, CultureInfo.InvariantCulture))];
}
