using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Takeoffs;

namespace Gaugerod.Engine.Planning;

/// <summary>The tasks after the last tile: trims, grout, soft joints, sealer, hand-over, first use.</summary>
internal static class WorkFinish
{
    /// <summary>Adds them.</summary>
    /// <param name="making">Takes them.</param>
    /// <param name="set">All that is set, by its run.</param>
    public static void Add(WorkMaking making, ILookup<string, int> set)
    {
        var (done, water, grouts) = (new List<int>(), new List<(int Task, Supply? Product, bool IsGrout)>(), new List<(int Task, RunWork Run)>());
        var trims = making.Runs.ToDictionary(run => run, run => Trims(making, run, set[run.Run.Name]));
        foreach (var run in making.Runs)
        {
            var name = run.Run.Name;
            var grout = Mixed.AddGrout(making, new(TaskNames.Grout(name), WorkKind.Grouting) { Run = name, Faces = run.Run.Faces }, run);
            foreach (var task in set[name].Concat(trims[run] is { } trim ? [trim] : [])) making.After(task, grout, HoldKind.Grout, run.Mortar);
            done.Add(grout);
            water.Add((grout, run.Grout, true));
            grouts.Add((grout, run));
        }

        foreach (var (grout, run) in grouts)
        {
            var name = run.Run.Name;
            if (run.Soft > 0) Last(new(TaskNames.Soft(name), WorkKind.SoftJoints) { Run = name, Faces = run.Run.Faces }, new(PaceUnit.Metres, run.Soft), grout, HoldKind.Soft, run, run.Run.Setting?.Sealant);
            if (run.Run.Setting?.Sealer is not null || making.IsAsked(WorkKind.Sealer)) Last(new(TaskNames.Seal(name), WorkKind.Sealer) { Run = name, Faces = run.Run.Faces }, new(PaceUnit.SquareMetres, run.Area), grout, HoldKind.Sealer, run, run.Run.Setting?.Sealer?.Of);
        }

        var handOver = making.Add(new("hand-over", WorkKind.HandOver));
        foreach (var task in done) making.After(task, handOver);
        var use = making.Add(new(TaskNames.FirstUse, WorkKind.FirstUse) { Hands = 0, Minutes = 0 });
        making.After(handOver, use);

        // What is printed of water is printed of grout; sealants and sealers differ too much.
        foreach (var (task, product, isGrout) in water) making.After(task, use, HoldKind.Water, product, isGrout);

        void Last(WorkTask task, WorkAmount amount, int grout, HoldKind hold, RunWork run, string? with)
        {
            var at = making.Add(task, amount);

            // A corner has tile of two faces, often of two runs: it is sealed when the grout of all of them is dry.
            foreach (var dry in hold == HoldKind.Soft ? grouts : [(grout, run)]) making.After(dry.Task, at, hold, dry.Run.Grout);
            done.Add(at);
            water.Add((at, making.Of(with), false));
        }
    }

    private static int? Trims(WorkMaking making, RunWork run, IEnumerable<int> set)
    {
        if (run.TrimPieces == 0) return null;
        var at = making.Add(new(TaskNames.Trims(run.Run.Name), WorkKind.Trims) { Run = run.Run.Name }, new(PaceUnit.Pieces, run.TrimPieces), new WorkAmount(PaceUnit.Metres, run.Trims));
        foreach (var task in set) making.After(task, at);
        return at;
    }
}
