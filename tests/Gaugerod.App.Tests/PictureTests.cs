using Gaugerod.Testing;
using Microsoft.Playwright;

namespace Gaugerod.App.Tests;

/// <summary>
/// Takes the pictures that the README and the help in the app show, so that they are of the app as it is. They lie in
/// artifacts/pictures; run with GOLDEN_ACCEPT=1 they take the place of those in docs/pictures, and of those the help has, which
/// are packed smaller since every device keeps them.
/// </summary>
[Collection(RigCollection.Name)]
[Trait("Category", "Long")]
public sealed class PictureTests(Rig rig)
{
    private static readonly string s_accepted = Path.Combine(Repo.Root, "docs", "pictures");
    private static readonly string s_inHelp = Path.Combine(Repo.Root, "src", "Gaugerod.App", "wwwroot", "pictures");

    [Theory]
    [InlineData("lines", false)]
    [InlineData("lines", true)]
    [InlineData("measure", true)]
    [InlineData("cuts", true)]
    [InlineData("set", true)]
    public async Task A_station_is_pictured(string station, bool phone)
    {
        await using var device = await rig.DeviceAsync(phone);
        var page = await device.OpenAsync();
        await Device.OpenSampleAsync(page, "Guest shower, feet and inches");
        await Device.GoAsync(page, char.ToUpperInvariant(station[0]) + station[1..]);
        if (station == "cuts") await Device.UnfoldAsync(page);
        if (station == "cuts") await page.Locator(".pieces button").Nth(12).ClickAsync();
        if (station == "set") await SetThreeAsync(page);
        if (station == "lines") await page.WaitForFunctionAsync("() => { const curves = [...document.querySelectorAll('.curve .under')]; return curves.length > 0 && curves.every(curve => curve.getAttribute('d')); }");
        await Device.SavedAsync(page);

        var taken = await page.ScreenshotAsync(new() { Caret = ScreenshotCaret.Hide });
        Keep(s_accepted, $"{station}-{(phone ? "phone" : "laptop")}.png", taken);
        if (phone && station != "set") Keep(s_inHelp, station + ".webp", await SmallerAsync(page, taken));
        Assert.Empty(device.Troubles);
    }

    /// <summary>Three courses of the first wall are set, the third a little high.</summary>
    private static async Task SetThreeAsync(IPage page)
    {
        if (await page.Locator("details.face[open]").CountAsync() == 0) await page.Locator("details.face > summary").First.ClickAsync();
        for (var course = 0; course < 3; course++) await page.Locator(".at-wall button.strong").First.ClickAsync();
        await page.WaitForTimeoutAsync(2000);
        await page.Locator(".at-wall").First.EvaluateAsync("wall => scrollBy(0, wall.getBoundingClientRect().top - 70)");
    }

    private static void Keep(string folder, string name, byte[] picture)
    {
        var made = Path.Combine(Repo.Root, "artifacts", "pictures", name);
        Directory.CreateDirectory(Path.GetDirectoryName(made)!);
        File.WriteAllBytes(made, picture);
        var accepted = Path.Combine(folder, name);
        if (Environment.GetEnvironmentVariable("GOLDEN_ACCEPT") == "1")
        {
            Directory.CreateDirectory(folder);
            File.Copy(made, accepted, overwrite: true);
        }

        Assert.True(File.Exists(accepted), $"There is no {accepted}; run again with GOLDEN_ACCEPT=1.");
    }

    /// <summary>The upper part of a picture as WebP, by the browser's own writer.</summary>
    private static async Task<byte[]> SmallerAsync(IPage page, byte[] png) => Convert.FromBase64String(await page.EvaluateAsync<string>("""
        async png => {
          const image = new Image();
          image.src = "data:image/png;base64," + png;
          await image.decode();
          const canvas = document.createElement("canvas");
          [canvas.width, canvas.height] = [image.width, Math.min(image.height, 724)];
          canvas.getContext("2d").drawImage(image, 0, 0);
          return canvas.toDataURL("image/webp", 0.5).split(",")[1];
        }
        """, Convert.ToBase64String(png)));

    [Fact]
    public void The_help_shows_every_picture_it_carries()
    {
        var help = string.Concat(Directory.EnumerateFiles(Path.Combine(Repo.Root, "src", "Gaugerod.App", "Stations", "Help"), "*.razor").Select(File.ReadAllText));
        Assert.All(Directory.EnumerateFiles(s_inHelp), picture => Assert.Contains($"pictures/{Path.GetFileName(picture)}", help, StringComparison.Ordinal));
    }

    [Fact]
    public void The_readme_shows_every_picture_taken()
    {
        var readme = File.ReadAllText(Path.Combine(Repo.Root, "README.md"));
        Assert.All(Directory.EnumerateFiles(s_accepted, "*.png"), picture => Assert.Contains("docs/pictures/" + Path.GetFileName(picture), readme, StringComparison.Ordinal));
    }
}
