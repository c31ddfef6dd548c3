using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>What of a plan hangs on what is set, and a plan anew where nothing else of its job has changed: the search need not be done again.</summary>
internal static class SetSteps
{
    /// <summary>What is said while it is reckoned.</summary>
    public static PlanStep Working { get; } = new("what is set, and how to go on", null);

    /// <summary>
    /// Whether a job differs from that of a plan only in what no search hangs on: what is set, what is paid, what is noted for the hand-over, and in which lines of the file
    /// something is said. Where something may move it was moved for what was set then: then what is set must be the same.
    /// </summary>
    public static bool IsAllThatDiffers(Job job, Plan before)
    {
        var asked = before.Asked ?? before.Job;
        return Bare(job).Equals(Bare(asked)) && (!job.Faces.Any(Movables.Any) || job.Runs.Equals(asked.Runs));
    }

    /// <summary>The plan of the job, step by step.</summary>
    /// <param name="job">The job.</param>
    /// <param name="before">The plan of a job that differs in what is set.</param>
    public static IEnumerable<PlanStep> Of(Job job, Plan before)
    {
        if (job.Runs.Equals((before.Asked ?? before.Job).Runs))
        {
            // What was moved stays where it was moved to.
            yield return new("done", Said(before, before.Job with { Prices = job.Prices, HandOver = job.HandOver, Remarks = job.Remarks }, job, before.Findings));
            yield break;
        }

        var runs = before.Runs.Zip(job.Runs, (plan, run) => plan with { Request = plan.Request with { Set = run.Set } }).ToSequence();
        SetParts? parts = null;
        foreach (var sofar in Steps(job, runs, before.Cutting, before.Order))
        {
            parts = sofar;
            if (sofar is null) yield return Working;
        }

        var findings = before.Findings.Where(finding => !string.Equals(finding.Rule, Again.Rule, StringComparison.Ordinal)).Concat(parts!.Findings);
        yield return new("done", Said(before with { Runs = runs, Again = parts.Faces, AgainOrders = parts.Orders }, job, job, findings));
    }

    private static Plan Said(Plan plan, Job job, Job asked, IEnumerable<Finding> findings) => JobPricing.Priced(plan with
    {
        Job = job, Asked = asked, Findings = InOrder(job.Remarks.Concat(findings.Except(plan.Job.Remarks))),
    });

    /// <summary>What is measured again, a way at a time: nothing until the last.</summary>
    public static IEnumerable<SetParts?> Steps(Job job, IReadOnlyList<RunPlan> runs, IReadOnlyList<ProductCutting> cutting, IReadOnlyList<OrderLine> order)
    {
        var all = new List<AgainFound>();
        foreach (var run in job.Runs.Any(run => run.Set.Count > 0) ? runs : [])
        {
            foreach (var sofar in Again.Steps(job, run))
            {
                if (sofar is not null) all.Add(sofar);
                else yield return null;
            }
        }

        Sequence<AgainOrder> orders = all.Any(found => found.Faces.Count > 0) ? AgainTiles.Of(job, runs, cutting, order, all).ToSequence() : [];
        yield return new(all.SelectMany(found => found.Faces).ToSequence(), orders, all.SelectMany(found => found.Findings).ToSequence());
    }

    /// <summary>A plan's findings as they are said: each once, the gravest first.</summary>
    public static Sequence<Finding> InOrder(IEnumerable<Finding> findings) => findings.Distinct().OrderByDescending(finding => finding.Level).ToSequence();

    private static Job Bare(Job job) => job with { Prices = null, HandOver = null, Remarks = [], Runs = job.Runs.Select(run => run with { Set = [] }).ToSequence() };
}

/// <summary>What of a plan hangs on what is set.</summary>
/// <param name="Faces">What becomes of the rest of each face.</param>
/// <param name="Orders">What is needed for it, and what is left.</param>
/// <param name="Findings">What was entered and cannot be.</param>
internal sealed record SetParts(Sequence<AgainFace> Faces, Sequence<AgainOrder> Orders, Sequence<Finding> Findings);
