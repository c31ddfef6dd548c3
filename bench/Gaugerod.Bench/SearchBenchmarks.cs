using BenchmarkDotNet.Attributes;
using Gaugerod.Engine.Lines;

namespace Gaugerod.Bench;

/// <summary>The search against the sweep, for the guest shower (three walls, each starting anew) and for the plain wall.</summary>
[Config(typeof(InOneRun))]
public class SearchBenchmarks
{
    private const int SampledRows = 28;

    private RunProblem _problem = null!;
    private RunModel _model = null!;
    private RunProblem _wall = null!;
    private RunModel _wallModel = null!;
    private long _every;

    [GlobalSetup]
    public void Load()
    {
        _problem = Subjects.Problem(Subjects.Sample("guest-shower"));
        _model = new(_problem, LineSearch.Find(_problem).Model.Joint);
        _every = Sweep.Across(_model) / SampledRows;
        _wall = Subjects.Problem(Subjects.Sample("plain-wall"));
        _wallModel = new(_wall, _wall.Joint.Wanted);
    }

    [Benchmark(Baseline = true, Description = "shower: search, one joint width")]
    public object ShowerSearch() => new JointSearch(new(_problem, _model.Joint)).Improve().Last()!;

    [Benchmark(Description = "shower: search, all joint widths, alternatives and proof")]
    public object ShowerWholeSearch() => LineSearch.Find(_problem);

    [Benchmark(Description = "shower: full 1/64 in sweep, face by face")]
    public object ShowerSweep() => Sweep.Best(_model);

    [Benchmark(Description = "shower: sample of whole placings (see the count beside the table)")]
    public long ShowerSample() => Sweep.Sample(_model, _every);

    [Benchmark(Description = "wall: search, one joint width")]
    public object WallSearch() => new JointSearch(new(_wall, _wallModel.Joint)).Improve().Last()!;

    [Benchmark(Description = "wall: full 1/64 in sweep")]
    public object WallSweep() => Sweep.Best(_wallModel);
}
