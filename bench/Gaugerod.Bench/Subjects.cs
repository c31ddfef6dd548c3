using System.Text.Json.Nodes;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;

namespace Gaugerod.Bench;

/// <summary>The jobs that are measured: the samples, and the plain wall made wider in memory.</summary>
internal static class Subjects
{
    public static byte[] Bytes(string sample) => File.ReadAllBytes(Path.Combine(Root(), "samples", sample + ".json"));

    public static Job Sample(string sample) => Read(Bytes(sample));

    /// <summary>The plain wall, so many times as wide.</summary>
    public static Job PlainWall(int times)
    {
        var job = JsonNode.Parse(Bytes("plain-wall"))!;
        var width = job["faces"]![0]!["readings"]!["width"]!;
        width["foot"] = width["foot"]!.GetValue<int>() * times;
        return Read(System.Text.Encoding.UTF8.GetBytes(job.ToJsonString()));
    }

    /// <summary>The first run of a job as the search is asked for it.</summary>
    public static RunProblem Problem(Job job) => JobRuns.Problem(job, job.Runs[0], JobRuns.Finish(job, 0).Faces);

    private static Job Read(byte[] file) => JobReader.Read(file, "sample") is JobReading.Understood read
        ? read.Job
        : throw new InvalidOperationException("A sample that cannot be read.");

    private static string Root()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Gaugerod.slnx")))
        {
            folder = Path.GetDirectoryName(folder) ?? throw new InvalidOperationException("Not inside a checkout.");
        }

        return folder;
    }
}
