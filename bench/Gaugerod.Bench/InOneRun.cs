using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Exporters;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Toolchains.InProcess.Emit;

namespace Gaugerod.Bench;

/// <summary>
/// All that is compared runs in one process, one after the other, so that the ratios hold on a machine that is busy with
/// other things too. Few iterations: the sweep takes seconds.
/// </summary>
internal sealed class InOneRun : ManualConfig
{
    public InOneRun()
    {
        AddJob(Job.Default.WithToolchain(InProcessEmitToolchain.Instance).WithWarmupCount(6).WithIterationCount(12));
        AddColumnProvider(DefaultColumnProviders.Instance);
        AddColumn(StatisticColumn.Min, StatisticColumn.Median);
        AddDiagnoser(MemoryDiagnoser.Default);
        AddExporter(MarkdownExporter.GitHub);
        AddLogger(ConsoleLogger.Default);
        WithOptions(ConfigOptions.DisableOptimizationsValidator);
    }
}
