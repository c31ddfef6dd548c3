using Microsoft.Playwright;
using static Gaugerod.App.Tests.EditorsTests;
using static Gaugerod.App.Tests.MeasureTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>A setter with mortar on the hands: the next piece large, and read aloud where that was asked for. The device's voice is one that writes down what it is to say.</summary>
[Collection(RigCollection.Name)]
public sealed class AloudTests(Rig rig)
{
    private const string Scribe = """
        globalThis.said = [];
        class Utterance { constructor(words) { this.words = words; } }
        Object.defineProperty(globalThis, "SpeechSynthesisUtterance", { value: Utterance, configurable: true });
        Object.defineProperty(globalThis, "speechSynthesis", { value: { speak: one => said.push(one.words), cancel: () => said.push("(hush)"), getVoices: () => [{ lang: "en-GB", localService: true }] }, configurable: true });
        """;

    [Theory]
    [ClassData(typeof(Screens))]
    public async Task The_next_piece_stands_large_at_the_wall_and_its_last_sets_the_course(bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await OpenAsync(device, Wall);
        await page.AddInitScriptAsync(Scribe);
        await page.ReloadAsync();
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Set");
        await Button(page, "Piece by piece").First.ClickAsync();
        var first = await page.Locator("h2.id").TextContentAsync();
        await Expect(page.Locator(".saw.wall .said")).ToContainTextAsync("1 of");

        // Off at first: nothing was said. Turned on, it says this piece and every one that follows.
        Assert.Empty(await SaidAsync(page));
        await Button(page, "Read aloud: off").ClickAsync();
        await Button(page, "Next").ClickAsync();
        await Expect(page.Locator("h2.id")).Not.ToHaveTextAsync(first!);
        await LookAsync(page, "piece at the wall", phone);
        var said = await SaidAsync(page);
        Assert.Equal(2, said.Length);
        Assert.Contains("first of", said[0], StringComparison.Ordinal);
        Assert.Contains("second of", said[1], StringComparison.Ordinal);
        await Button(page, "Back").ClickAsync();
        await Expect(page.Locator("h2.id")).ToHaveTextAsync(first!);

        // On to the end of the course: it is set, and the job says so.
        while (await Button(page, "is set ✓").CountAsync() == 0) await StepAsync(page);
        await StepAsync(page, "is set ✓");

        // A page loaded anew opens at the same piece, and still reads aloud.
        var at = await page.Locator("h2.id").TextContentAsync();
        await page.ReloadAsync();
        await Expect(page.Locator("h2.id")).ToHaveTextAsync(at!);
        await Expect(Button(page, "Read aloud: on")).ToBeVisibleAsync();
        var hushed = await page.EvaluateAsync<int>("() => said.filter(words => words === '(hush)').length");
        await Button(page, "List").ClickAsync();
        await Expect(page.Locator("h2.id")).ToHaveCountAsync(0);
        Assert.True(await page.EvaluateAsync<int>("() => said.filter(words => words === '(hush)').length") > hushed);
        await Expect(page.Locator("details.face > summary").First).ToContainTextAsync("1 of ");
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Pieces_are_read_aloud_at_the_saw()
    {
        await using var device = await rig.DeviceAsync();
        var page = await OpenAsync(device, Wall);
        await page.AddInitScriptAsync(Scribe);
        await page.ReloadAsync();
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Cuts");
        await Button(page, "large").First.ClickAsync();
        await Button(page, "Read aloud: off").ClickAsync();
        await Expect(Button(page, "Say again")).ToBeVisibleAsync();
        Assert.Matches(@"^A \d+\. \d+ by \d+\. .*Tile \d+", Assert.Single(await SaidAsync(page)));
        Assert.Empty(device.Troubles);
    }

    private static async Task StepAsync(IPage page, string key = "Next")
    {
        var at = await page.Locator("h2.id").TextContentAsync();
        await Button(page, key).ClickAsync();
        await Expect(page.Locator("h2.id")).Not.ToHaveTextAsync(at!);
    }

    // A voice of the network would send the words away: with no other there is no key.
    [Fact]
    public async Task A_voice_that_is_not_the_device_s_own_is_not_used()
    {
        await using var device = await rig.DeviceAsync();
        var page = await OpenAsync(device, Wall);
        await page.AddInitScriptAsync(Scribe.Replace("localService: true", "localService: false", StringComparison.Ordinal));
        await page.ReloadAsync();
        await Device.PlannedAsync(page);
        await Device.GoAsync(page, "Cuts");
        await Button(page, "large").First.ClickAsync();
        await page.WaitForTimeoutAsync(2500);
        await Expect(page.GetByText("Read aloud")).ToHaveCountAsync(0);
        Assert.Empty(device.Troubles);
    }

    private static Task<string[]> SaidAsync(IPage page) => page.EvaluateAsync<string[]>("() => said.filter(words => words !== '(hush)')");
}
