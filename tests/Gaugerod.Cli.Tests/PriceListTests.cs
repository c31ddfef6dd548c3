namespace Gaugerod.Cli.Tests;

/// <summary>A price list on the command line, with the real rooms below.</summary>
public sealed class PriceListTests
{
    private const string Head = "item;unit;price;currency\n";

    [Fact]
    public async Task A_list_prices_a_sample_and_what_of_it_cannot_be_used_is_named()
    {
        using var bench = new Bench { Works = Works.Real };
        var (job, list, folder) = (bench.Put("wall.json", File.ReadAllText(Path.Combine(Testing.Repo.Root, "samples/plain-wall.json"))), bench.Put("mine.csv", Head + "TILE;box;31,20;EUR\nodd;ell;3,00;EUR\n"), bench.At("out"));
        Assert.Equal(Exit.Done, await bench.Run("plan", job, "--out", folder, "--prices", list));
        Assert.Contains("Lines of the price list: 1 used, 1 not read.", bench.Words, StringComparison.Ordinal);
        Assert.Contains("warn: mine.csv:3: odd: found \"ell\" as the unit, expected box", bench.Words, StringComparison.Ordinal);
        Assert.Contains("Price: ", bench.Words, StringComparison.Ordinal);
        Assert.Equal(["offer.pdf", "price-list.csv", "price.csv", "price.pdf"], Directory.EnumerateFiles(folder).Select(file => Path.GetFileName(file)).Where(name => name.StartsWith("offer", StringComparison.Ordinal) || name.StartsWith("price", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        Assert.DoesNotContain(bench.Folder, File.ReadAllText(Path.Combine(folder, "price-list.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_job_without_prices_gets_no_offer()
    {
        using var bench = new Bench { Works = Works.Real };
        Assert.Equal(Exit.Done, await bench.Run("plan", bench.Put("wall.json", File.ReadAllText(Path.Combine(Testing.Repo.Root, "samples/plain-wall.json"))), "--out", bench.At("out")));
        Assert.False(File.Exists(Path.Combine(bench.At("out"), "offer.pdf")));
    }

    [Theory]
    [InlineData("tile;box;31,20\n", "mine.csv:1: found \"tile;box;31,20\", expected a head that names the columns")]
    [InlineData("item;unit;price\ntile;box;31,20\n", "found no currency, expected a column \"currency\" in the list, or \"prices\": { \"currency\": \"EUR\" } in the job.")]
    public async Task A_list_that_cannot_be_used_writes_nothing(string text, string said)
    {
        using var bench = new Bench { Works = Works.Real };
        var job = bench.Put("wall.json", File.ReadAllText(Path.Combine(Testing.Repo.Root, "samples/plain-wall.json")));
        Assert.Equal(Exit.Unusable, await bench.Run("plan", job, "--out", bench.At("out"), "--prices", bench.Put("mine.csv", text)));
        Assert.Contains(said, bench.Words, StringComparison.Ordinal);
        Assert.False(Directory.Exists(bench.At("out")));
    }

    [Fact]
    public async Task A_list_that_is_not_there_is_said_with_the_nearest()
    {
        using var bench = new Bench();
        bench.Put("mine.csv", Head);
        Assert.Equal(Exit.Unusable, await bench.Run("plan", bench.Put("wall.json", "{}"), "--json", "--prices", bench.At("mien.csv")));
        Assert.Contains("there is no such file; expected a price list. Nearest: mine.csv.", bench.Words, StringComparison.Ordinal);
    }
}
