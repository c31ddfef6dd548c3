using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>What there is to say of an order of work: holds that nobody gave, work without a pace, days that never come.</summary>
internal static class WorkRules
{
    private const string Where = "the order of work";

    /// <summary>What there is to say.</summary>
    internal static IEnumerable<Finding> Findings(WorkPlan plan, Region? region, Tape tape) => Never(plan).Concat(Holds(plan)).Concat(Flood(plan, region, tape)).Concat(Paces(plan)).Concat(Packs(plan));

    private static IEnumerable<Finding> Never(WorkPlan plan)
    {
        if (plan.Tasks.FirstOrDefault(task => task.Begins is null) is not { } first) yield break;
        var more = plan.Tasks.Count(task => task.Begins is null) - 1;
        yield return new(
            FindingLevel.Stop, "work-never", Where,
            $"No day comes for \"{first.Name}\"{(more == 0 ? "" : string.Create(System.Globalization.CultureInfo.InvariantCulture, $" and for {more} more"))}. Look at {(plan.Request.Hours.Off.Count > 0 ? "the days off, at " : "")}the first day and at how long holds are.",
            "within ten years of the first day, and in the years to 9999", "", "this program");
    }

    private static IEnumerable<Finding> Holds(WorkPlan plan)
    {
        var open = plan.Tasks.SelectMany(task => task.Waits.Select(wait => (Wait: wait, Task: task.Name))).Where(one => one.Wait is { From: HoldFrom.Published or HoldFrom.Nobody, Hold: not null });
        foreach (var kind in open.GroupBy(one => (Hold: one.Wait.Hold!.Value, one.Wait.From)).OrderBy(group => group.Key))
        {
            var (first, what) = (kind.First().Wait, HoldWords.Of(kind.Key.Hold));
            var tasks = string.Join("; ", kind.Select(one => $"{one.Wait.Task} before {one.Task}").Distinct(StringComparer.Ordinal));
            yield return first is { From: HoldFrom.Published, Published: { } printed }
                ? new(FindingLevel.Warn, "work-hold", Where, $"Nobody gives how long {what}. The longest that is printed is taken: {tasks}. Read the product's own figure and enter it: it comes first.", Said(printed), SpanText.Say(first.Minutes), printed.Source)
                : new(FindingLevel.Warn, "work-hold", Where, $"Nobody gives how long {what}. No time is kept for it: {tasks}. Read the product's own figure and enter it.", "as the product says", "none", "common practice, no source");
        }
    }

    // A mix ends where the next tile would want more than a pack; a tile that wants more by itself has a mix of its own.
    private static IEnumerable<Finding> Packs(WorkPlan plan)
    {
        var tasks = plan.Tasks.Where(task => task.Batches.Any(batch => batch.Packs > 1 + 1e-9)).Select(task => task.Name).ToList();
        if (tasks.Count > 0) yield return new(FindingLevel.Note, "work-pack", Where, $"A piece takes more than a pack: {string.Join(", ", tasks)}. Mix the packs that its line says together, or look at what a pack makes.", "a pack", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{plan.Tasks.SelectMany(task => task.Batches).Max(batch => batch.Packs):0.##} packs"), "docs/order-of-work.md");
    }

    private static string Said(PublishedHold printed) => printed.Least == printed.Most ? SpanText.Say(printed.Most) : $"{SpanText.Say(printed.Least)} to {SpanText.Say(printed.Most)}";

    private static IEnumerable<Finding> Flood(WorkPlan plan, Region? region, Tape tape)
    {
        if (plan.Request.Flood is not { } minutes) yield break;
        var (depth, code, custom) = (LimitTable.For(region, LimitKeys.FloodDepth), LimitTable.For(region, LimitKeys.FloodCode), LimitTable.For(region, LimitKeys.FloodCustom));
        var isShort = minutes < code.Least.Number;
        var text = isShort
            ? "The water of the flood test stands shorter than the code asks. Plug the drain, fill to the threshold, and ask the inspector how long."
            : $"Plug the drain, close weep holes, fill at least {Shown.Fine(depth.LeastOn(tape), tape)} at the threshold, mark the level, and look below. Ask the inspector how long it is to stand.";
        yield return new(
            isShort ? FindingLevel.Warn : FindingLevel.Note, "work-flood", Where, text, $"at least {code.Least} by the code; {custom.Least} is the custom", SpanText.Say(minutes), $"{code.Source}; {custom.Limit.Source}");
    }

    private static IEnumerable<Finding> Paces(WorkPlan plan)
    {
        var bare = plan.Tasks.Where(task => task is { Minutes: null, IsEvent: false }).Select(task => TaskNames.Word(task.Kind)).Distinct(StringComparer.Ordinal).ToList();
        if (bare.Count > 0) yield return new(FindingLevel.Note, "work-pace", Where, $"No pace is given for: {string.Join(", ", bare)}. These tasks stand in their place and take no time in the calendar.", "", "", "docs/order-of-work.md");
    }
}
