using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules.Published;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Rules;

/// <summary>What can hurt the person who does the job. Said once a job, or by task; local rules and the products' instructions go before.</summary>
internal static class Cautions
{
    // What every plan has said from the first on; a job that names no region says no more.
    private static readonly string[] s_always = ["caution-dust", "caution-electricity", "caution-saw", "caution-cement", "caution-old-work", "caution-lifting"];

    /// <summary>The cautions of a plan.</summary>
    internal static Sequence<Finding> Findings(CautionFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        var rules = facts.Region is null ? s_always : CautionTask.All.SelectMany(CautionTask.Rules).Distinct(StringComparer.Ordinal);
        return [.. rules.SelectMany(rule => Of(rule, facts))];
    }

    /// <summary>The cautions of a task, the gravest first; none for a task that is not known here.</summary>
    /// <param name="task">A task of <see cref="CautionTask"/>.</param>
    /// <param name="facts">What they go by.</param>
    internal static Sequence<Finding> OfTask(string task, CautionFacts facts)
    {
        ArgumentNullException.ThrowIfNull(facts);
        return [.. CautionTask.Rules(task).SelectMany(rule => Of(rule, facts))];
    }

    private static IEnumerable<Finding> Of(string rule, CautionFacts facts) => rule switch
    {
        "caution-lifting" => facts.Products.Select(product => Lifting.Of(product, facts.Region, facts.Tape))
            .Concat(facts.Region is null ? [] : facts.Supplies.Select(supply => Lifting.Of(supply, facts.Region, facts.Tape)).OfType<Finding>()),
        "caution-lead" => facts.Region == Region.America ? [LeadPaint(facts.Area, facts.Tape)] : [],
        // The masks are the American table's alone: nothing of it holds elsewhere.
        "caution-mask" when facts.Region is not (null or Region.America) => [],
        _ => [CautionTable.Said(CautionTable.Of(rule)!, facts.Region)],
    };

    /// <summary>Whether what is torn out may be a minor repair where paint is from before 1978.</summary>
    internal static Finding LeadPaint(double? area, Tape tape)
    {
        var (inside, outside) = (LimitTable.For(Region.America, LimitKeys.LeadInside), LimitTable.For(Region.America, LimitKeys.LeadOutside));
        var isMinor = area is { } of && of <= inside.Most.Area * (1 + 1e-9);
        var text = area is null ? "In a house from before 1978, painted faces count as lead paint until they are tested."
            : isMinor ? "In a house from before 1978, painted faces count as lead paint until they are tested. The faces of this job come to no more than a minor repair in one room; what is taken out whole counts in all its size, and so does what was done there in the last 30 days."
            : "In a house from before 1978, painted faces count as lead paint until they are tested. The faces of this job come to more than a minor repair in one room: if paint on so much is disturbed, a certified firm does it.";
        return new(
            FindingLevel.Note, "caution-lead", "the job", text, $"minor repair: to {Amounts.Area(inside.Most.Area, tape)} a room inside, {Amounts.Area(outside.Most.Area, tape)} outside",
            area is { } faces ? $"faces of {Amounts.Area(faces, tape)}" : "", inside.Source);
    }
}
