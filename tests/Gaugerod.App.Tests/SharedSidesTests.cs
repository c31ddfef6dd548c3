using System.Text;
using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Gaugerod.App.Tests.SurveyTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>
/// A person's way to a side that was read on two faces. The room is invented: a floor of 4000 by 3000 mm with one diagonal of 5000
/// (Pythagoras), and a wall 2000 high over its side A to B, whose diagonals are 4472.
/// </summary>
[Collection(RigCollection.Name)]
public sealed class SharedSidesTests(Rig rig)
{
    [Theory]
    [ClassData(typeof(Screens))]
    public async Task A_slip_in_the_floors_side_is_found_by_the_foot_of_the_wall_over_it_and_marked_on_both(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await device.OpenAsync();
        await OpenFileAsync(page, Encoding.UTF8.GetBytes(Room));
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Measure");
        // By itself the floor checks nothing.
        await Expect(page.Locator("div.said")).ToContainTextAsync("Nothing checks");
        await Reading(page, "A to B").FillAsync("4025");
        await Expect(page.Locator("path.taken.doubt")).ToHaveCountAsync(0);
        await Expect(page.Locator("div.said")).Not.ToContainTextAsync("Weighed with");

        await PressAsync(page, "south");
        await page.Locator("summary").Filter(new() { HasText = "Read on another face too" }).ClickAsync();
        await Button(page, "+ A side read on another face").ClickAsync();
        await Expect(page.GetByLabel("1: the side from")).ToBeFocusedAsync();
        await Expect(page.GetByLabel("1: also read on")).ToHaveValueAsync("floor");
        await LookAsync(page, "side shared", phone);

        // Both tabs are marked, and both faces say what is in question on the other.
        await Expect(Tab(page, "floor")).ToContainTextAsync("▲");
        await Expect(Tab(page, "south")).ToContainTextAsync("▲");
        await Expect(page.Locator(".notice.bad").First).ToContainTextAsync("floor: A to B");
        // The string that would tell is pulled on the floor, between its corners.
        await Expect(page.Locator(".notice.bad").First).Not.ToContainTextAsync("string");
        await Expect(page.Locator("div.said")).ToContainTextAsync("Weighed with floor.");
        await Expect(page.GetByText("All readings agree")).ToHaveCountAsync(0);
        await page.EvaluateAsync("() => scrollTo(0, 0)");
        await LookAsync(page, "side in question on the wall", phone);
        await PressAsync(page, "floor");
        await Expect(page.Locator(".notice.bad").First).ToContainTextAsync("The readings disagree, and nothing tells which is in error.");
        await Expect(page.Locator(".notice.bad").First).ToContainTextAsync("A–B of south taken for A–B of floor");
        if (phone) await Expect(page.Locator(".verdict")).ToContainTextAsync("▲ In question: A to B, or 1 thing elsewhere.");
        await Reading(page, "A to B").ScrollIntoViewIfNeededAsync();
        await LookAsync(page, "side in question on the floor", phone);

        // Read again, it is agreed.
        await Reading(page, "A to B").FillAsync("4000");
        await Expect(page.Locator(".pick .wanting")).ToHaveCountAsync(0);
        await Expect(page.Locator("path.taken.doubt")).ToHaveCountAsync(0);
        await Device.PlannedAsync(page);
        Same(JsonNode.Parse("""[{ "side": ["A", "B"], "face": "floor", "as": ["A", "B"] }]"""), (await JobAsync(page))["faces"]![1]!["survey"]!["same"]);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task What_is_said_of_the_side_that_does_not_fit_is_told_at_its_field_and_the_other_faces_corners_follow_it()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await OpenFileAsync(page, Encoding.UTF8.GetBytes(Room));
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Measure");
        await PressAsync(page, "south");
        await page.Locator("summary").Filter(new() { HasText = "Read on another face too" }).ClickAsync();
        await Button(page, "+ A side read on another face").ClickAsync();
        await page.GetByLabel("1: there to").SelectOptionAsync("C");
        await Expect(page.Locator(".group-trouble")).ToContainTextAsync("two corners, one after the other");
        await LookAsync(page, "side shared at fault", phone: true);
        await page.GetByLabel("1: there to").SelectOptionAsync("B");
        await Expect(page.Locator(".group-trouble")).ToHaveCountAsync(0);
        await page.GetByLabel("1: alike to within").FillAsync("much");
        await Expect(page.Locator(".field .trouble")).ToHaveCountAsync(1);
        await page.GetByLabel("1: alike to within").FillAsync("2");
        await Expect(page.Locator(".field .trouble")).ToHaveCountAsync(0);
        await page.GetByLabel("1: also read on").SelectOptionAsync("alcove");
        Same(JsonNode.Parse("""[{ "side": ["A", "B"], "face": "alcove", "as": ["K", "L"], "within": "2" }]"""), (await JobAsync(page))["faces"]![1]!["survey"]!["same"]);
        await PressAsync(page, "south");
        await page.Locator("summary").Filter(new() { HasText = "Read on another face too" }).ClickAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Remove side 1" }).ClickAsync();
        Assert.Null((await JobAsync(page))["faces"]![1]!["survey"]!["same"]);
        Assert.Empty(device.Troubles);
    }

    private static ILocator Tab(IPage page, string name) => page.Locator(".pick .key.name").Filter(new() { HasText = name });

    private static Task PressAsync(IPage page, string name) => Tab(page, name).ClickAsync();

    private static readonly string Room = $$"""
        { "format": "gaugerod-job/1", "name": "Invented", "units": "mm", "products": [{ "name": "tile", "width": 300, "height": 200 }],
          "faces": [
            {{Face("floor", "ABCD", ("AB", 4000), ("BC", 3000), ("CD", 4000), ("DA", 3000), ("AC", 5000))}},
            {{Face("south", "ABCD", ("AB", 4000), ("BC", 2000), ("CD", 4000), ("DA", 2000), ("AC", 4472), ("BD", 4472))}},
            {{Face("alcove", "KLMN", ("KL", 900), ("LM", 1200), ("MN", 900), ("NK", 1200), ("KM", 1500), ("LN", 1500))}}],
          "runs": [{ "name": "run", "product": "tile", "faces": ["floor"], "bond": { "kind": "grid" }, "joint": 3 },
            { "name": "walls", "product": "tile", "faces": ["south", "alcove"], "bond": { "kind": "grid" }, "joint": 3 }] }
        """;

    private static string Face(string name, string corners, params (string Pair, int Is)[] read) => $$"""
        { "name": "{{name}}", "survey": { "corners": [{{string.Join(", ", corners.Select(corner => $"\"{corner}\""))}}],
          "readings": [{{string.Join(", ", read.Select(one => $$"""{ "from": "{{one.Pair[0]}}", "to": "{{one.Pair[1]}}", "is": "{{one.Is}}" }"""))}}] },
          "edges": [{{string.Join(", ", corners.Select((_, i) => $$"""{ "kind": "{{(name is "floor" || i % 2 == 1 ? "inside corner" : i == 0 ? "floor" : "ceiling")}}" }"""))}}] }
        """;
}
