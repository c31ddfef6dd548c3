using Gaugerod.Cli.Reading;
using Gaugerod.Engine;
using Gaugerod.Engine.Planning;

namespace Gaugerod.Cli.Commands;

/// <summary>What every command that needs a plan does first: read the job, say all that is wrong with it, plan it.</summary>
internal static class JobPlanning
{
    /// <summary>The plan; null when the job could not be used, which has then been said.</summary>
    public static async Task<Plan?> Run(string path, bool large, bool quiet, Works works, Desk desk, CancellationToken token)
    {
        var input = await JobInput.Open(path, desk, token);
        if (input.Fault is { } unread)
        {
            await desk.Words.WriteLineAsync("error: " + unread);
            return null;
        }

        var reading = works.Read(input.Bytes, input.Name, large);
        foreach (var fault in reading.Faults) await desk.Words.WriteLineAsync("error: " + fault);
        if (reading.Job is not { } job || reading.Faults.Count > 0) return null;

        var progress = new Progress(quiet || !desk.WordsAreSeen ? null : desk.Words);
        // Waiting heeds the token, so Ctrl-C is answered at once however deep the search is.
        return await Task.Run(() => LastOf(works.Plan(job), progress, token), token).WaitAsync(token);
    }

    private static Plan LastOf(IEnumerable<PlanStep> steps, Progress progress, CancellationToken token)
    {
        Plan? plan = null;
        foreach (var step in steps)
        {
            token.ThrowIfCancellationRequested();
            progress.Say(step.Text);
            plan = step.Plan;
        }

        progress.Clear();
        return plan ?? throw new InvalidOperationException("The planner ended without a plan.");
    }

    /// <summary>Whether somebody has to decide: a must is broken, or something is not to be built as it stands.</summary>
    public static int ExitFor(Plan plan) =>
        plan.Runs.Any(run => run.Best.Score.MustsMissed > 0) || plan.Findings.Any(f => f.Level == FindingLevel.Stop)
            ? Exit.Decide
            : Exit.Done;

    /// <summary>A finding in a line.</summary>
    public static string Say(Finding finding)
    {
        var level = finding.Level switch
        {
            FindingLevel.Stop => "stop",
            FindingLevel.Warn => "warn",
            _ => "note",
        };
        string[] facts =
        [
            .. finding.Limit.Length > 0 ? [$"limit {finding.Limit}"] : (string[])[],
            .. finding.Value.Length > 0 ? [$"here {finding.Value}"] : (string[])[],
            .. finding.Source.Length > 0 ? [$"source: {finding.Source}"] : (string[])[],
        ];
        return $"{level}: {finding.Where}: {finding.Text}" + (facts.Length > 0 ? $" ({string.Join("; ", facts)})" : "");
    }
}
