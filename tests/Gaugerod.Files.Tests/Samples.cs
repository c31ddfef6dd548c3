using System.Text;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Plane;
using Gaugerod.Testing;

namespace Gaugerod.Files.Tests;

/// <summary>The invented jobs in samples/, as they are and with one thing changed.</summary>
internal static class Samples
{
    public static readonly string[] Names = ["guest-shower", "cloakroom", "plain-wall"];

    public static string Text(string name) => File.ReadAllText(Path.Combine(Repo.Root, "samples", name + ".json"));

    public static string Schema(string name) => File.ReadAllText(Path.Combine(Repo.Root, "schemas", name + ".schema.json"));

    /// <summary>The sample with one place changed; the text to change must stand there exactly once.</summary>
    public static string With(string name, string old, string changed)
    {
        var text = Text(name);
        Assert.Equal(2, text.Split(old).Length);
        return text.Replace(old, changed, StringComparison.Ordinal);
    }

    public static JobReading Read(string text) => JobReader.Read(Encoding.UTF8.GetBytes(text), "job.json");

    public static Job Job(string name) => Assert.IsType<JobReading.Understood>(Read(Text(name))).Job;

    public static Sequence<FileFault> Faults(string text) => Assert.IsType<JobReading.Refused>(Read(text)).Faults;

    public static string[] Messages(string text) => [.. Faults(text).Select(f => f.Say())];
}
