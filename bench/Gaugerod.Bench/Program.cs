using System.Globalization;
using BenchmarkDotNet.Running;
using Gaugerod.Bench;

switch (args)
{
    case ["stages", var sample]:
        Stages.Print(sample);
        return 0;
    case ["stages", var sample, "once"]:
        Stages.Print(sample, rounds: 1);
        return 0;
    case ["slices", var sample]:
        Slices.Print(sample);
        return 0;
    case ["cold", var sample]:
        ColdStages.Print(sample);
        return 0;
    case ["processor-time", .. var only]:
        ProcessorTime.Print(only.FirstOrDefault() ?? "");
        return 0;
    case ["sweep", var sample]:
        return SweepReport.Print(sample) ? 0 : 1;
    case ["halls", .. var only]:
        HallReport.Print(only.FirstOrDefault() ?? "");
        return 0;
    case ["cutting-one", var one]:
        CuttingReport.One(int.Parse(one, CultureInfo.InvariantCulture));
        return 0;
    case ["cutting", .. var count]:
        CuttingReport.Print(count.Length > 0 ? int.Parse(count[0], CultureInfo.InvariantCulture) : 100);
        return 0;
    case ["cutting-against-solver", var pieces, var jobs]:
        CuttingAgainstSolver.Print(int.Parse(pieces, CultureInfo.InvariantCulture), int.Parse(jobs, CultureInfo.InvariantCulture));
        return 0;
    case ["measure", var sample]:
        MeasureReport.Print(sample);
        return 0;
    case ["search", var sample]:
        HallReport.Search(sample);
        return 0;
    default:
        BenchmarkSwitcher.FromAssembly(typeof(Stages).Assembly).Run(args);
        return 0;
}
