using Microsoft.Playwright;
using static Gaugerod.App.Tests.MeasureTests;
using static Microsoft.Playwright.Assertions;

namespace Gaugerod.App.Tests;

/// <summary>What cannot be used is said in words, and leads to where it can be set right.</summary>
[Collection(RigCollection.Name)]
public sealed class TroubleTests(Rig rig)
{
    [Theory]
    [InlineData("{ \"format\": \"gaugerod-job/2\" }", "made by a newer Gaugerod")]
    [InlineData("{ \"format\": \"gaugerod-job/1\", \"faces\": \"three\" }", "a list of groups")]
    [InlineData("{ \"format\": \"gaugerod-job/1\", \"faces\": [ null ] }", "take it out")]
    [InlineData("{ \"format\": \"gaugerod-job/1\", \"name\": \"a\", \"name\": \"b\" }", "a second time")]
    [InlineData("{ \"format\": \"gaugerod-job/1\", \"name\": \"\\uD800\" }", "whole characters")]
    [InlineData("{ \"some\": \"thing\" }", "not a job file")]
    [InlineData("[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[[]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]]", "found")]
    public async Task A_shape_that_no_station_could_show_is_refused_in_words(string text, string words)
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await OpenFileAsync(page, System.Text.Encoding.UTF8.GetBytes(text));
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Nothing was opened or changed.");
        await Expect(page.GetByRole(AriaRole.Alert)).ToContainTextAsync(words);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task A_niche_past_the_wall_is_said_beside_its_fields()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await NewAsync(page, "One wall");
        await page.GetByLabel("At the foot", new() { Exact = true }).FillAsync("60");
        await page.GetByLabel("At the left", new() { Exact = true }).FillAsync("96");
        await Button(page, "+ Opening").ClickAsync();
        await Expect(page.GetByLabel("Width", new() { Exact = true })).ToBeFocusedAsync();
        await Expect(page.Locator(".trouble")).ToHaveCountAsync(0);
        await page.GetByLabel("Width", new() { Exact = true }).FillAsync("12");
        await page.GetByLabel("Height", new() { Exact = true }).FillAsync("24");
        await page.GetByLabel("Up to its bottom").FillAsync("40");
        await page.GetByLabel("From the left corner", new() { Exact = true }).FillAsync("55");
        await Button(page, "Next: tiles").ClickAsync();
        await Button(page, "12 × 12").ClickAsync();
        await Button(page, "Walls").ClickAsync();
        await page.Locator("details.thing summary", new() { HasText = "opening 1" }).ClickAsync();
        await Expect(page.Locator("details.thing .group-trouble")).ToContainTextAsync("reaching the edge 'right'");
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task Going_to_what_has_to_be_set_right_unfolds_all_that_lies_over_it()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, "Guest shower, feet and inches");
        await Device.GoAsync(page, "Jobs");
        var job = System.Text.Json.Nodes.JsonNode.Parse(await Device.DownloadAsync(page, Button(page, "Save “Guest shower")))!;
        var faces = job["faces"]!.AsArray();
        var face = faces.IndexOf(faces.First(one => one!["openings"] is System.Text.Json.Nodes.JsonArray { Count: > 0 }));
        job["faces"]![face]!["openings"]![0]!["edges"] = new System.Text.Json.Nodes.JsonObject { ["top"] = new System.Text.Json.Nodes.JsonObject { ["kind"] = "fixture", ["joint"] = "nonsense" } };
        await OpenFileAsync(page, System.Text.Encoding.UTF8.GetBytes(job.ToJsonString()));

        await Device.GoAsync(page, "Measure");
        await page.Locator(".faults summary").ClickAsync();
        await page.Locator(".faults button").First.ClickAsync();
        var field = page.Locator($"#f-faces-{face}--openings-0--edges-top-joint");
        await Expect(field).ToBeFocusedAsync();
        await Expect(field).ToBeInViewportAsync();
        await Expect(field).ToHaveValueAsync("nonsense");
        // And what was unfolded may be folded again.
        await page.Locator("[data-fold$=openings-0-] > summary").ClickAsync();
        await Expect(field).ToHaveCountAsync(0);
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public async Task What_is_missing_at_Lines_leads_to_its_field()
    {
        await using var device = await rig.DeviceAsync();
        var page = await device.OpenAsync();
        await NewAsync(page, "Three walls");
        await Device.GoAsync(page, "Lines");
        await page.Locator(".notice li button").Nth(1).ClickAsync();
        await Expect(page.Locator("main[data-station=Measure] input[data-length]:focus")).ToHaveCountAsync(1);
        Assert.Empty(device.Troubles);
    }
}
