using Gaugerod.Cli.Commands;
using Gaugerod.Cli.Writing;

namespace Gaugerod.Cli.Tests;

public sealed class StoppingTests
{
    [Fact]
    public async Task Ctrl_C_is_answered_at_once_however_deep_the_search_is()
    {
        using var stop = new CancellationTokenSource();
        using var never = new ManualResetEventSlim();
        using var bench = new Bench { Works = Bench.Stub() with { Plan = _ => { stop.Cancel(); never.Wait(); throw new InvalidOperationException(); } } };
        var ask = new PlanRequest(bench.Put("job.json", "{}"), bench.At("out"), Json: true, Large: false, Quiet: true);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => PlanCommand.Run(ask, bench.Works, bench.Desk, new FolderWriter(), stop.Token));
        never.Set();
        Assert.False(Directory.Exists(bench.At("out")));
        Assert.Equal("", bench.Out);
    }

    [Fact]
    public async Task A_stopped_command_is_answered_with_130()
    {
        using var bench = new Bench { Works = Bench.Stub() with { Plan = _ => throw new OperationCanceledException() } };
        Assert.Equal(Exit.Stopped, await bench.Run("plan", bench.Put("job.json", "{}"), "--out", bench.At("out")));
        Assert.Equal("Stopped; nothing was written.\n", bench.Words.ReplaceLineEndings("\n"));
        Assert.False(Directory.Exists(bench.At("out")));
    }
}
