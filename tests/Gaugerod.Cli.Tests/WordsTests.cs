namespace Gaugerod.Cli.Tests;

public sealed class WordsTests
{
    [Theory]
    [InlineData("'plna' is not a command; expected plan, check, new, rules. Nearest: plan.", "plna", "job.json", "--out", "o")]
    [InlineData("'--jsno' is not an option of plan. Nearest: --json.", "plan", "job.json", "--jsno")]
    [InlineData("'b.json' is one word too many for plan.", "plan", "a.json", "b.json", "--json")]
    [InlineData("Required argument 'JOB.json' missing for command: 'plan'.", "plan")]
    [InlineData("Must be one of: 'guest-shower' 'attic-shower' 'cloakroom' 'galley-splash' 'porch-floor' 'plain-wall'", "new", "kitchen", "--sample", "castle")]
    [InlineData("where should the sheets go?", "plan", "job.json")]
    [InlineData("Required argument missing for option: '--out'.", "plan", "job.json", "--out")]
    public async Task A_mistaken_word_is_said_on_standard_error_with_what_would_do(string said, params string[] args)
    {
        using var bench = new Bench();
        Assert.Equal(Exit.Unusable, await bench.Run(args));
        Assert.Contains(said, bench.Words, StringComparison.Ordinal);
        Assert.StartsWith("error: ", bench.Words, StringComparison.Ordinal);
        Assert.Equal("", bench.Out);
    }

    [Theory]
    [InlineData("--help")]
    [InlineData("plan", "--help")]
    [InlineData("new", "-h")]
    [InlineData]
    public async Task Help_opens_with_examples_and_goes_to_standard_output(params string[] args)
    {
        using var bench = new Bench();
        Assert.Equal(Exit.Done, await bench.Run(args));
        Assert.StartsWith("Examples:\n", bench.Out, StringComparison.Ordinal);
        Assert.Contains("130  stopped with Ctrl-C", bench.Out, StringComparison.Ordinal);
        Assert.Equal("", bench.Words);
    }

    [Fact]
    public async Task A_word_that_begins_with_an_at_sign_is_a_file_name_like_any_other()
    {
        using var bench = new Bench();
        var here = Directory.GetCurrentDirectory();
        await bench.Run("plan", "@words", "--json");
        Assert.Contains("@words: there is no such file", bench.Words, StringComparison.Ordinal);
        Assert.Equal(here, Directory.GetCurrentDirectory());
    }
}
