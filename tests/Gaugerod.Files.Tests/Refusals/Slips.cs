using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using Gaugerod.Engine;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Files.Tests.Refusals;

/// <summary>A value put into a good job so that it is one no more.</summary>
/// <param name="Job">The good job.</param>
/// <param name="Path">Where the value goes.</param>
/// <param name="Value">The value, as the file says it with ' for ".</param>
public sealed record Slip(string Job, string Path, string Value)
{
    public override string ToString() => $"{Path} = {Value} in {Job.Replace('\n', ' ')}";
}

/// <summary>Puts values into jobs, and reads what is said of them.</summary>
internal static class Slips
{
    public static string Made(Slip slip) => With(slip.Job.Replace('\'', '"'), new Mend(slip.Path, slip.Value.Replace('\'', '"')));

    /// <summary>The job with values put where they belong; one past the end of a list is added to it.</summary>
    public static string With(string job, params IEnumerable<Mend> mends)
    {
        var root = JsonNode.Parse(job)!;
        foreach (var mend in mends)
        {
            var steps = mend.Path.Replace("[", ".[", StringComparison.Ordinal).Split('.', StringSplitOptions.RemoveEmptyEntries);
            var owner = steps[..^1].Aggregate(root, (node, step) => (step[0] == '[' ? node[Index(step)] : node[step]) ?? throw new InvalidOperationException($"no {step} of {mend.Path}"));
            var value = JsonNode.Parse(mend.Value);
            if (owner is not JsonArray list) owner[steps[^1]] = value;
            else if (Index(steps[^1]) == list.Count) list.Add(value);
            else list[Index(steps[^1])] = value;
        }

        return root.ToJsonString();
    }

    /// <summary>All that is said of a job before it is planned, and whether it could be read, so that the engine says it.</summary>
    public static (IReadOnlyList<FileFault> Faults, bool Read) Faults(string job) => JobReader.Read(Encoding.UTF8.GetBytes(job), "job.json") switch
    {
        JobReading.Understood read => ([.. JobCheck.Check(read.Job).Select(read.Locate)], true),
        JobReading.Refused refused => (refused.Faults, false),
        _ => throw new InvalidOperationException("A job is read or refused."),
    };

    private static int Index(string step) => int.Parse(step.Trim('[', ']'), CultureInfo.InvariantCulture);
}
