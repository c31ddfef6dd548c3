using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>What a task asks for beside its time: covers, warmth, what to look at, and what can hurt.</summary>
public static class WorkNotes
{
    private const string Lift = "caution-lifting", Weight = "caution-flood";

    /// <summary>What can hurt in a kind of work, a sentence or more each.</summary>
    public static Sequence<string> Cautions(Job job, WorkKind kind)
    {
        ArgumentNullException.ThrowIfNull(job);
        var cautions = Tasks(kind).SelectMany(task => JobCautions.Of(job, task)).Where(caution => caution.Rule is not Weight).ToList();
        var words = cautions.Where(caution => caution.Rule is not Lift).Select(caution => caution.Text);
        return words.Concat(Lifted(job, kind, cautions.Where(caution => caution.Rule is Lift))).Distinct(StringComparer.Ordinal).ToSequence();
    }

    // Each thing is told of where it is carried, the boxes where tile is set; what is carried at other work has no name here.
    private static IEnumerable<string> Lifted(Job job, WorkKind kind, IEnumerable<Finding> cautions)
    {
        var all = cautions.ToList();
        var carried = all.Where(caution => Carries(kind, job.Supplies.FirstOrDefault(supply => string.Equals(supply.Name, caution.Where, StringComparison.Ordinal)))).ToList();
        if (carried.Count > 0) return carried.GroupBy(caution => caution.Text, StringComparer.Ordinal).Select(alike => $"{NameList.Of([.. alike.Select(caution => caution.Where)])}: {alike.Key}");
        return all.Count > 0 ? ["What is heavy is lifted close to the body with the legs, in twos or with a barrow."] : [];
    }

    private static bool Carries(WorkKind kind, Supply? supply) => (kind, supply?.Kind) switch
    {
        (WorkKind.Setting, null or SupplyKind.Mortar) => true,
        (WorkKind.Seams, SupplyKind.Mortar) => true,
        (WorkKind.Levelling, SupplyKind.Filler) => true,
        (WorkKind.Bed, SupplyKind.Mix or SupplyKind.Masonry) => true,
        _ => false,
    };

    private static IEnumerable<string> Tasks(WorkKind kind) => kind switch
    {
        WorkKind.TearOut => [CautionTask.TearOut],
        WorkKind.Boards => [CautionTask.Boards],
        WorkKind.Levelling or WorkKind.Seams => [CautionTask.Levelling],
        WorkKind.Bed => [CautionTask.Bed],
        WorkKind.Primer or WorkKind.Sealer => [CautionTask.Sealer],
        WorkKind.Membrane => [CautionTask.Membrane],
        WorkKind.FloodTest => [CautionTask.FloodTest],
        WorkKind.Setting => [CautionTask.Setting, CautionTask.Cutting],
        WorkKind.Returns or WorkKind.Trims => [CautionTask.Trims],
        WorkKind.Grouting => [CautionTask.Grout],
        WorkKind.SoftJoints => [CautionTask.SoftJoints],
        _ => [],
    };

    /// <summary>What to mind of one task, a sentence or more each.</summary>
    /// <param name="plan">The plan it belongs to.</param>
    /// <param name="task">The task.</param>
    public static Sequence<string> Of(Plan plan, WorkTask task)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(task);
        return task.Kind switch
        {
            WorkKind.Protection => ["Cover floors, tub and fixtures, close drains, shut doors against dust. Find out where water and current are turned off."],
            WorkKind.Membrane => ["Brush each coat across the one before; the next goes on when it has dried, and looks it. Air the room, follow the product's sheet. A scratch is mended before it is tiled over."],
            WorkKind.FloodTest => ["▲ " + CautionTable.Of(Weight)!.Text, "Mark the level, come back, write down what you found: ____"],
            WorkKind.Lines => ["Mark the start, the plumb line and every rod before mortar is mixed. Lay a course out dry.",
                .. plan.Runs.Where(run => string.Equals(run.Request.Name, task.Run, StringComparison.Ordinal)).SelectMany(run => BattenWords.AtLines(plan.Job, run))],
            WorkKind.Setting when task.Stage == SetStage.Below => ["Take the batten off when the mortar holds, close what it left as the products say, cut the course to what is measured."],
            WorkKind.Setting => ["Keep the room at 50 to 70 °F (10 to 21 °C) from 24 h before to 48 h after (mortar makers' guides). Let a mix stand 5 to 10 min and stir again, add no water later. Nobody on the tile until it holds."],
            WorkKind.FloorCover => ["Sweep, lay soft covers, boards on top where a ladder stands. Nothing damp under a closed cover while mortar cures."],
            WorkKind.Grouting => ["Lift spacers and battens, rake joints clean, leave the soft joints open. One batch of one lot for faces seen together."],
            WorkKind.SoftJoints => ["Dry and clean, backer in, no third side stuck."],
            WorkKind.HandOver => ["Leave spares and lot numbers, where the soft joints are, how it is cleaned, and from when water may run."],
            WorkKind.FirstUse => ["Not sooner than this, and as the products say."],
            _ => [],
        };
    }

    /// <summary>What to mind by kind of work, in the trade's order: what its tasks ask for, then what can hurt. The cut course below a line is told of by itself.</summary>
    /// <param name="plan">A plan with an order of work.</param>
    public static IEnumerable<(string Name, Sequence<string> Words)> ByKind(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return (plan.Work?.Tasks ?? []).OrderBy(task => task.Kind).GroupBy(task => (task.Kind, IsBelow: task.Stage == SetStage.Below)).Select(tasks => (
            tasks.Key.IsBelow ? "setting, below the line" : TaskNames.Word(tasks.Key.Kind),
            tasks.SelectMany(task => Of(plan, task)).Distinct(StringComparer.Ordinal).Concat(tasks.Key.IsBelow ? [] : Cautions(plan.Job, tasks.Key.Kind).Select(caution => "▲ " + caution)).ToSequence()))
            .Where(kind => kind.Item2.Count > 0);
    }

    /// <summary>What is minded with every mix of grout. Common practice, no source.</summary>
    public const string GroutMixes = "The same measure of water for every mix, or the joints dry in two shades; as much at a time as its pot life lets you fill and wash.";

    /// <summary>What is looked at with every mix that sets tile.</summary>
    public static string Check(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var (dry, wet) = (LimitTable.For(job.Region, LimitKeys.ContactDry), LimitTable.For(job.Region, LimitKeys.ContactWet));
        return $"Lift a tile at the start and with every mix: mortar on at least {dry.Least} of its back where it is dry, {wet.Least} in showers and outdoors, corners held ({dry.Source}). Less: a deeper notch, or butter the backs. Write what you found.";
    }
}
