using System.Globalization;
using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Takeoffs;
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
        for (var i = 0; i < job.Supplies.Count; i++)
        {
            var (supply, name) = (job.Supplies[i], job.Supplies[i].Name);
            var (set, grouted) = (Longest(setting => setting.Mortar, WorkKind.Setting, Set), Longest(setting => setting.Grout, WorkKind.Grouting, Grouted));
            foreach (var (field, life, takes, what) in new[] { ("potLife", supply.PotLife, set, "one tile that is cut"), ("openTime", supply.OpenTime, set, "one tile that is cut"), ("potLife", supply.PotLife, grouted, "the joints of one tile") })
            {
                if (life is not { } has || has >= takes) continue;
                var (path, nearest) = (Text($"supplies[{i}].{field}"), SpanText.Say(takes));
                yield return new(path, $"{SpanText.Say(has)}, and {what} takes {nearest} at the pace of {(what[0] == 'o' ? "setting" : "grouting")}", $"at least the time of one tile, {nearest}", nearest) { Mends = [Mend.Of(path, nearest)] };
            }

            int Longest(Func<SettingRequest, string?> of, WorkKind kind, Func<Pace, Product, double> minutes) => asked.PaceOf(kind) is { } pace
                ? job.Runs.Where(run => run.Setting is { } setting && string.Equals(of(setting), name, StringComparison.Ordinal)).SelectMany(run => JobRuns.ProductsOf(job, run)).Select(product => (int)Math.Ceiling(minutes(pace, product) - 1e-9)).Append(0).Max() : 0;
        }

        double Set(Pace pace, Product product) => Mixed.PieceMinutes(asked, pace, Metres(product.Width) * Metres(product.Height), isCut: true);

        // To each tile belongs the joint along one side and one end of it.
        static double Grouted(Pace pace, Product product) => pace.Unit switch
        {
            PaceUnit.SquareMetres => Metres(product.Width) * Metres(product.Height) / pace.Amount * 60,
            PaceUnit.Metres => (Metres(product.Width) + Metres(product.Height)) / pace.Amount * 60,
            _ => 0,
        };
    }

    private static double Metres(Length length) => (double)length.Millimetres / 1000;

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
