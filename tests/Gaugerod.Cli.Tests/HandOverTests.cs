namespace Gaugerod.Cli.Tests;

/// <summary>The client's sheet from the command line, with the real rooms below.</summary>
public sealed class HandOverTests
{
    private static readonly string s_wall = File.ReadAllText(Path.Combine(Testing.Repo.Root, "samples/plain-wall.json"));

    [Fact]
    public async Task A_job_that_asks_for_a_hand_over_gets_its_sheet_and_the_next_plan_without_one_names_it()
    {
        using var bench = new Bench { Works = Works.Real };
        var (asked, not, folder) = (bench.Put("asked.json", s_wall.Replace("\"units\": \"mm\",", "\"units\": \"mm\", \"handover\": {},", StringComparison.Ordinal)), bench.Put("not.json", s_wall), bench.At("out"));
        Assert.Equal(Exit.Done, await bench.Run("plan", asked, "--out", folder));
        Assert.StartsWith("%PDF", File.ReadAllText(Path.Combine(folder, "hand-over.pdf"))[..8], StringComparison.Ordinal);
        Assert.DoesNotContain("is not of this plan", bench.Words, StringComparison.Ordinal);
        Assert.Equal(Exit.Done, await bench.Run("plan", not, "--out", folder));
        Assert.Contains("hand-over.pdf is not of this plan.", bench.Words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lot_of_something_that_the_job_has_not_is_refused_with_the_nearest()
    {
        using var bench = new Bench { Works = Works.Real };
        var job = bench.Put("wall.json", s_wall.Replace("\"units\": \"mm\",", "\"units\": \"mm\", \"handover\": { \"lots\": [{ \"of\": \"tyle\" }] },", StringComparison.Ordinal));
        Assert.Equal(Exit.Unusable, await bench.Run("plan", job, "--out", bench.At("out")));
        Assert.Contains("handover.lots[0].of: found \"tyle\", expected a tile, a trim, a board or a supply of this job", bench.Words, StringComparison.Ordinal);
        Assert.False(Directory.Exists(bench.At("out")));
    }
}
