using BenchmarkDotNet.Attributes;
using Gaugerod.Engine.Planning;
using Gaugerod.Files.Jobs;
using Gaugerod.Files.Plans;
using Gaugerod.Sheets;

namespace Gaugerod.Bench;

/// <summary>The whole plan of each sample, warm, and what is done before and after it.</summary>
[Config(typeof(InOneRun))]
public class PlanBenchmarks
{
    private byte[] _file = null!;
    private Job _shower = null!;
    private Job _cloakroom = null!;
    private Job _wall = null!;
    private Plan _plan = null!;

    [GlobalSetup]
    public void Load()
    {
        _file = Subjects.Bytes("guest-shower");
        (_shower, _cloakroom, _wall) = (Subjects.Sample("guest-shower"), Subjects.Sample("cloakroom"), Subjects.Sample("plain-wall"));
        _plan = Planner.Plan(_shower);
    }

    [Benchmark(Baseline = true, Description = "plan the guest shower")]
    public Plan Shower() => Planner.Plan(_shower);

    [Benchmark(Description = "plan the cloakroom")]
    public Plan Cloakroom() => Planner.Plan(_cloakroom);

    [Benchmark(Description = "plan the plain wall")]
    public Plan Wall() => Planner.Plan(_wall);

    [Benchmark(Description = "read the shower's job file")]
    public JobReading Read() => JobReader.Read(_file, "guest-shower.json");

    [Benchmark(Description = "write the shower's plan.json")]
    public byte[] PlanFile() => PlanWriter.Write(_plan);

    [Benchmark(Description = "write the shower's sheets.pdf")]
    public byte[] Pdf() => SheetWriter.Pdf(_plan);
}
