using System.Text;
using Gaugerod.Cli.Commands;

namespace Gaugerod.Cli.Tests;

public sealed class NewCommandTests
{
    [Fact]
    public async Task New_never_overwrites()
    {
        using var bench = new Bench();
        bench.Put("kitchen.json", "mine");
        // The sample itself is not needed to find that the place is taken.
        Assert.Equal(Exit.Unusable, await bench.Run("new", bench.At("kitchen")));
        Assert.Equal("mine", await File.ReadAllTextAsync(bench.At("kitchen.json")));
        Assert.Contains("this is there already and was kept", bench.Words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_job_is_called_by_its_new_name_and_all_else_stays()
    {
        const string Sample = """{ "format": "x", "products": [ { "name": "tile" } ], "name" : "Guest shower", "note": "invented" }""";
        var named = Encoding.UTF8.GetString(Samples.WithName(Encoding.UTF8.GetBytes(Sample), "kitchen \"2\""));
        Assert.Equal(Sample.Replace("\"Guest shower\"", "\"kitchen \\u00222\\u0022\"", StringComparison.Ordinal), named);
    }
}
