using System.Text;
using System.Text.Json.Nodes;
using Microsoft.Playwright;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>A person's way to a price: typed, looked up in a list, brought to an offer. All prices are invented.</summary>
[Collection(RigCollection.Name)]
public sealed class PricesTests(Rig rig)
{
    [Theory]
    [ClassData(typeof(Screens))]
    public async Task A_price_is_typed_a_list_opened_and_an_offer_made(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, Wall);
        await Device.GoAsync(page, "Order");
        await TypeAsync("Currency", "EUR");
        await Expect(page.GetByText("Without what has no price:")).ToBeVisibleAsync();
        await LookedAsync("prices begun");

        // Twelve and a half of something nobody sells by the hour stays as typed, and says what would do.
        await TypeAsync("tile, price by", "2,50");
        await Expect(page.Locator("p.trouble", new() { HasText = "Found \"2,50\"; expected a number to 10,000,000 such as" })).ToBeVisibleAsync();
        await TypeAsync("tile, price by", "2.50 to 3");
        await Expect(page.GetByText("Without what has no price:")).ToHaveCountAsync(0);
        Same(JsonNode.Parse("""{ "currency": "EUR", "items": [{ "item": "tile", "unit": "box", "price": "2.50 to 3" }] }"""), (await JobAsync(page))["prices"]);

        await Button(page, "+ Task").ClickAsync();
        await TypeAsync("Rate", "45");
        await TypeAsync("Done in an hour", "0.8 to 1.2 m2");
        await Expect(page.Locator("summary", new() { HasText = "task 1" })).ToContainTextAsync(" h, ");
        await Device.PlannedAsync(page);
        await LookedAsync("prices with a task");

        await TypeAsync("tile, price by", "");
        await page.Locator("input[type=file]").SetInputFilesAsync(new FilePayload { Name = "mine.csv", MimeType = "text/csv", Buffer = Encoding.UTF8.GetBytes("item;unit;price;source\nTile;each;2,75;spring\nodd;ell;3,00;\nspare;each;1,00;\n") });
        await Expect(page.GetByText("1 used, 1 not used, 1 not read")).ToBeVisibleAsync(new() { Timeout = 30_000 });
        await Expect(page.GetByText("Line 3, odd: not read; found \"ell\" as the unit")).ToBeVisibleAsync();
        await Expect(page.GetByLabel("tile, price by")).ToHaveValueAsync("2.75");
        var report = Encoding.UTF8.GetString(await Device.DownloadAsync(page, Button(page, "Save what became of every line")));
        Assert.Contains("mine.csv,4,4,spare,not used,the plan buys nothing of this name", report, StringComparison.Ordinal);
        await Device.PlannedAsync(page);
        await LookedAsync("price list opened");

        foreach (var fold in (string[])["Travel and waste", "Margin, tax, rounding", "What the offer says", "Every line"]) await page.Locator("summary", new() { HasText = fold }).ClickAsync();
        await TypeAsync("Margin", "20 % on cost");
        await TypeAsync("Tax", "21 %");
        await TypeAsync("Included", "setting\ngrouting");
        await Device.PlannedAsync(page);
        await LookedAsync("prices unfolded");
        Same(JsonNode.Parse("""["setting", "grouting"]"""), (await JobAsync(page))["prices"]!["quote"]!["included"]);

        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Sheets");
        var offer = await Device.DownloadAsync(page, Button(page, "Offer for the client"));
        Assert.StartsWith("%PDF", Encoding.Latin1.GetString(offer), StringComparison.Ordinal);
        Assert.Contains("total", Encoding.UTF8.GetString(await Device.DownloadAsync(page, Button(page, "Prices as a table"))), StringComparison.Ordinal);
        Assert.Empty(device.Troubles);

        async Task LookedAsync(string what)
        {
            // The station's upper part is looked at elsewhere.
            await page.GetByRole(AriaRole.Heading, new() { Name = what is "prices begun" ? "What it costs" : "Materials" }).EvaluateAsync("heading => heading.scrollIntoView()");
            await LookAsync(page, what, phone);
        }

        async Task TypeAsync(string label, string text)
        {
            var field = page.GetByLabel(label, new() { Exact = !label.EndsWith(" by", StringComparison.Ordinal) }).First;
            await field.FillAsync(text);
            await field.BlurAsync();
        }
    }
}
