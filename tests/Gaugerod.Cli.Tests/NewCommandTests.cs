using System.Text;
using Gaugerod.Cli.Commands;
using Gaugerod.Testing;

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

    [Theory]
    [MemberData(nameof(SampleNames))]
    public async Task Every_sample_can_be_written_and_read_again_under_its_new_name(string sample)
    {
        using var bench = new Bench { Works = Works.Real };
        Assert.Equal(Exit.Done, await bench.Run("new", bench.At("kitchen"), "--sample", sample));
        var read = Works.Real.Read(await File.ReadAllBytesAsync(bench.At("kitchen.json")), "kitchen.json", false);
        Assert.Empty(read.Faults);
        Assert.Equal("kitchen", read.Job!.Name);
        Assert.Contains("nvented", read.Job.Note, StringComparison.Ordinal);
        Assert.Equal(["kitchen.json"], Directory.EnumerateFileSystemEntries(bench.Folder).Select(Path.GetFileName));
    }

    [Fact]
    public void Every_sample_of_the_repository_can_be_asked_for() => Assert.Equal(
        Directory.EnumerateFiles(Path.Combine(Repo.Root, "samples"), "*.json").Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal),
        Samples.Names.Order(StringComparer.Ordinal));

    public static TheoryData<string> SampleNames() => [.. Samples.Names];

    [Fact]
    public void The_job_is_called_by_its_new_name_and_all_else_stays()
    {
        const string Sample = """{ "format": "x", "products": [ { "name": "tile" } ], "name" : "Guest shower", "note": "invented" }""";
        var named = Encoding.UTF8.GetString(Samples.WithName(Encoding.UTF8.GetBytes(Sample), "kitchen \"2\""));
        Assert.Equal(Sample.Replace("\"Guest shower\"", "\"kitchen \\u00222\\u0022\"", StringComparison.Ordinal), named);
    }
}
