using System.Text.Json;

namespace Gaugerod.App.Tests;

/// <summary>What a first visit carries, and what is kept of it.</summary>
public sealed class WeightTests
{
    /// <summary>
    /// Our own limit: a phone on a site should not wait for more. It was 3,000,000 until floors that fall and the checks of
    /// zones, ranges and edges took 77,000 more, 3,100,000 until the search for fewest tiles and the trims took 130,000,
    /// 3,250,000 until surveys, beds, ranges and a wall measured again took 120,000, 3,400,000 until rooms weighed as a whole
    /// and mortar and grout brought it to 3,401,000, and 3,500,000 until boards, supplies, prices, the order of work and the table
    /// of rules took 227,000 more and the calendar, with what its library needs, 375,000; set anew, not to
    /// be crept past.
    /// </summary>
    private const long MostBytes = 4_300_000;

    [Fact]
    public void All_that_is_kept_for_places_without_a_network_is_at_most_4_300_kilobytes_packed()
    {
        var sum = Published.Kept(Published.Folder).Select(url => Path.Combine(Published.Folder, url))
            .Sum(file => new FileInfo(File.Exists(file + ".br") ? file + ".br" : file).Length);
        Assert.InRange(sum, 1, MostBytes);
    }

    [Fact]
    public void Every_published_file_is_kept()
    {
        var there = Published.Site().Paths.Select(path => path[1..])
            .Where(path => path.Length > 0 && !path.StartsWith("service-worker", StringComparison.Ordinal));
        Assert.Empty(there.Except(Published.Kept(Published.Folder)));
    }

    [Fact]
    public void The_manifest_names_icons_that_are_there_one_of_them_to_be_masked()
    {
        using var manifest = JsonDocument.Parse(File.ReadAllBytes(Path.Combine(Published.Folder, "manifest.webmanifest")));
        var icons = manifest.RootElement.GetProperty("icons").EnumerateArray().ToList();
        Assert.All(icons, icon => Assert.True(File.Exists(Path.Combine(Published.Folder, icon.GetProperty("src").GetString()!))));
        Assert.Contains(icons, icon => icon.GetProperty("purpose").GetString() == "maskable");
        Assert.Contains(icons, icon => icon.GetProperty("sizes").GetString() == "192x192");
        Assert.Contains(icons, icon => icon.GetProperty("sizes").GetString() == "512x512");
    }
}
