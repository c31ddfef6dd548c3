using Gaugerod.Testing;
using Microsoft.Playwright;

namespace Gaugerod.App.Tests;

/// <summary>
/// Takes the pictures that the README shows, so that they are of the app as it is. They lie in artifacts/pictures; run with
/// GOLDEN_ACCEPT=1 they take the place of those in docs/pictures.
/// </summary>
[Collection(RigCollection.Name)]
[Trait("Category", "Long")]
public sealed class PictureTests(Rig rig)
{
    private static readonly string s_accepted = Path.Combine(Repo.Root, "docs", "pictures");

    [Theory]
    [InlineData("lines", false)]
    [InlineData("lines", true)]
    [InlineData("measure", true)]
    [InlineData("cuts", true)]
    public async Task A_station_is_pictured(string station, bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, "Guest shower, feet and inches");
        await Device.GoAsync(page, char.ToUpperInvariant(station[0]) + station[1..]);
        if (station == "cuts") await page.Locator(".pieces button").Nth(12).ClickAsync();
        if (station == "lines") await page.WaitForFunctionAsync("() => [...document.querySelectorAll('.curve .under')].every(curve => curve.getAttribute('d'))");
        await Device.SavedAsync(page);

        var name = $"{station}-{(phone ? "phone" : "laptop")}.png";
        var taken = Path.Combine(Repo.Root, "artifacts", "pictures", name);
        Directory.CreateDirectory(Path.GetDirectoryName(taken)!);
        await page.ScreenshotAsync(new() { Path = taken, Caret = ScreenshotCaret.Hide });
        if (Environment.GetEnvironmentVariable("GOLDEN_ACCEPT") == "1")
        {
            Directory.CreateDirectory(s_accepted);
            File.Copy(taken, Path.Combine(s_accepted, name), overwrite: true);
        }

        Assert.True(File.Exists(Path.Combine(s_accepted, name)), $"docs/pictures has no {name}; run again with GOLDEN_ACCEPT=1.");
        Assert.Empty(device.Troubles);
    }

    [Fact]
    public void The_readme_shows_every_picture_taken()
    {
        var readme = File.ReadAllText(Path.Combine(Repo.Root, "README.md"));
        Assert.All(Directory.EnumerateFiles(s_accepted), picture => Assert.Contains("docs/pictures/" + Path.GetFileName(picture), readme, StringComparison.Ordinal));
    }
}
