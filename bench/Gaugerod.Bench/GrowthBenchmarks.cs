using BenchmarkDotNet.Attributes;
using Gaugerod.Engine.Planning;

namespace Gaugerod.Bench;

/// <summary>The same wall, twice and four times as wide: twice the wall should cost at most about twice the time.</summary>
[Config(typeof(InOneRun))]
public class GrowthBenchmarks
{
    private Job _once = null!;
    private Job _twice = null!;
    private Job _fourTimes = null!;

    [GlobalSetup]
    public void Load() => (_once, _twice, _fourTimes) = (Subjects.PlainWall(1), Subjects.PlainWall(2), Subjects.PlainWall(4));

    [Benchmark(Baseline = true, Description = "the plain wall")]
    public Plan Once() => Planner.Plan(_once);

    [Benchmark(Description = "twice as wide")]
    public Plan Twice() => Planner.Plan(_twice);

    [Benchmark(Description = "four times as wide")]
    public Plan FourTimes() => Planner.Plan(_fourTimes);
}
