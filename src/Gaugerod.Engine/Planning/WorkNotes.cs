using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>What a task asks for beside its time: covers, warmth, what to look at, and what can hurt.</summary>
public static class WorkNotes
{
    /// <summary>What can hurt in a kind of work, a sentence or more each.</summary>
    public static Sequence<string> Cautions(Job job, WorkKind kind)
    {
        ArgumentNullException.ThrowIfNull(job);
        return Tasks(kind).SelectMany(task => JobCautions.Of(job, task)).Select(caution => caution.Text).Distinct(StringComparer.Ordinal).ToSequence();
    }

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

    /// <summary>What to mind, a sentence each.</summary>
    public static Sequence<string> Of(WorkTask task)
    {
        ArgumentNullException.ThrowIfNull(task);
        return task.Kind switch
        {
            WorkKind.Protection => ["Cover floors, tub and fixtures, close drains, shut doors against dust. Find out where water and current are turned off."],
            WorkKind.Membrane => ["Brush each coat across the one before; the next goes on when it has dried, and looks it. Air the room, follow the product's sheet. A scratch is mended before it is tiled over."],
            WorkKind.FloodTest => ["Water an inch deep weighs about 5 lb on a square foot, 25 kg on a square metre at 25 mm: ask whether the floor bears it, and look at the ceiling below. Mark the level, come back, write down what you found: ____"],
            WorkKind.Lines => ["Mark the start, the plumb line and every rod before mortar is mixed. Lay a course out dry.",
                "Where the course below a level line is cut, a batten on the line carries the first whole course. Before you screw it on, find out what is behind the wall: pipes, cables. No screw through a waterproofed face: prop it from below."],
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
