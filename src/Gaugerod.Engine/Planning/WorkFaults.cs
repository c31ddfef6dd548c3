using System.Globalization;
using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>Refuses an order of work that cannot be: no day is worked, tasks wait for each other, mortar stiffens before one tile is set.</summary>
internal static class WorkFaults
{
    public static IEnumerable<Fault> Find(Job job, JobBases bases)
    {
        var asked = job.Work!;
        if (!asked.Hours.WorkedDays().Any())
        {
            yield return new(asked.Hours.Off.Count > 0 ? "work.off" : "work.start", Text($"no day to work on, from {asked.Hours.Start:yyyy-MM-dd} on, in ten years"), "days off that leave a day of the week to work on", "take back the days off that are a slip");
        }

        for (var i = 0; i < asked.Tasks.Count; i++)
        {
            if (asked.Tasks[i].Hands <= asked.Hands) continue;
            var (path, most) = (Text($"work.tasks[{i}].hands"), Text($"{asked.Hands}"));
            yield return new(path, Text($"{asked.Tasks[i].Hands} hands, of {most}"), Text($"at most the {most} of \"hands\""), most) { Mends = [new(path, most)] };
        }

        foreach (var loop in WorkOrder.Of(job, bases, BoardPlan.None, RunWork.Of(job)).Loops) yield return new(loop.Path, Words(loop), "an order without a loop", "leave it out, or another wait of that loop");
        foreach (var fault in Mortars(job, asked)) yield return fault;
    }

    /// <summary>A loop in words.</summary>
    public static string Words(WorkLoop loop) => "a loop: " + string.Join(" before ", loop.Round.Select(name => $"\"{name}\""));

    private static IEnumerable<Fault> Mortars(Job job, WorkRequest asked)
    {
        if (asked.PaceOf(WorkKind.Setting) is not { } pace) yield break;
        for (var i = 0; i < job.Supplies.Count; i++)
        {
            var runs = job.Runs.Where(run => string.Equals(run.Setting?.Mortar, job.Supplies[i].Name, StringComparison.Ordinal)).SelectMany(run => JobRuns.ProductsOf(job, run)).ToList();
            if (runs.Count == 0) continue;
            var minutes = (int)Math.Ceiling(runs.Max(product => Mixed.PieceMinutes(asked, pace, Metres(product.Width) * Metres(product.Height), isCut: true)) - 1e-9);
            foreach (var (name, life) in new[] { ("potLife", job.Supplies[i].PotLife), ("openTime", job.Supplies[i].OpenTime) })
            {
                if (life is not { } has || has >= minutes) continue;
                var (path, nearest) = (Text($"supplies[{i}].{name}"), SpanText.Say(minutes));
                yield return new(path, $"{SpanText.Say(has)}, and one tile that is cut takes {nearest} at the pace of setting", $"at least the time of one tile, {nearest}", nearest) { Mends = [Mend.Of(path, nearest)] };
            }
        }
    }

    private static double Metres(Length length) => (double)length.Millimetres / 1000;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
