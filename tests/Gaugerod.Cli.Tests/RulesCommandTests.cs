namespace Gaugerod.Cli.Tests;

public sealed class RulesCommandTests
{
    [Theory]
    [InlineData(null, "US  joint by how far the tiles supplied differ in size: at least 3 times. Take a wider joint, or tiles that differ less. [ANSI A108.02-2017, 4.3.8]\n")]
    [InlineData("UK", "UK  joint on floors: at least 3 mm. Take a wider joint, or tiles that differ less. [BS 5385-3 (from memory); hold it against the document]\n")]
    [InlineData("EU", "EU  gap under a straightedge, finished floors: at most 6 mm over 2 m. ")]
    [InlineData("AU", "AU  fall of a floor to its waste: at least 1:80. ")]
    public async Task Every_limit_of_a_region_is_printed_with_its_source(string? region, string line)
    {
        using var bench = new Bench();
        Assert.Equal(Exit.Done, region is null ? await bench.Run("rules") : await bench.Run("rules", "--region", region));
        Assert.Contains(line, bench.Out, StringComparison.Ordinal);
        var others = new[] { "US  ", "UK  ", "EU  ", "AU  " }.Where(other => region is not null && !other.StartsWith(region, StringComparison.Ordinal));
        Assert.All(others, other => Assert.DoesNotContain("\n" + other, "\n" + bench.Out, StringComparison.Ordinal));
        Assert.Equal(region is not (null or "US"), bench.Out.EndsWith("For all else the North American figure is shown, and that it is one.\n", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_region_that_is_not_known_is_refused_with_those_that_are()
    {
        using var bench = new Bench();
        Assert.Equal(Exit.Unusable, await bench.Run("rules", "--region", "NZ"));
        Assert.Contains("'US' 'UK' 'EU' 'AU'", bench.Words, StringComparison.Ordinal);
    }
}
