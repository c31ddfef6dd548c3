using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane;

namespace Gaugerod.App.Desk;

/// <summary>What came of reading a job's text.</summary>
/// <param name="Faults">What cannot be used, each with its place in the job.</param>
/// <param name="Job">The job, checked; null when something of it cannot be used.</param>
internal sealed record TextRead(Sequence<FileFault> Faults, CheckedJob? Job)
{
    /// <summary>As much of the job as could be read, for a look at it.</summary>
    public Job? AsFar { get; private init; }

    /// <summary>Reads and checks a text, a little at a time: nothing until the last.</summary>
    public static IEnumerable<TextRead?> Steps(string text)
    {
        var reading = JobReader.Read(Encoding.UTF8.GetBytes(text), "this job");
        yield return null;
        if (reading is not JobReading.Understood read)
        {
            yield return reading is JobReading.Refused refused ? new(refused.Faults, null) { AsFar = refused.AsFar } : new([], null);
            yield break;
        }

        CheckedJob? seen = null;
        foreach (var sofar in JobCheck.Steps(read.Job))
        {
            seen = sofar;
            if (sofar is null) yield return null;
        }

        var faults = seen!.Faults.Select(read.Locate).ToSequence();
        yield return new(faults, faults.Count == 0 ? seen : null) { AsFar = read.Job };
    }
}
