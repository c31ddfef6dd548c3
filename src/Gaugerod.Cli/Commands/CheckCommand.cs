namespace Gaugerod.Cli.Commands;

/// <summary>Plans a job and says only what the checks found.</summary>
internal static class CheckCommand
{
    /// <summary>Does it and gives the exit code.</summary>
    public static async Task<int> Run(string path, bool large, Works works, Desk desk, CancellationToken token)
    {
        if (await JobPlanning.Run(path, large, quiet: false, works, desk, token) is not { } plan) return Exit.Unusable;

        var lines = plan.Findings.Select(JobPlanning.Say).ToArray();
        var said = await desk.Result(lines.Length == 0 ? "Nothing found.\n" : string.Join('\n', lines) + "\n");
        return said ? JobPlanning.ExitFor(plan) : Exit.Unusable;
    }
}
