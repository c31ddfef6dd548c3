using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>What of a plan hangs on what is set, and a plan anew where nothing else of its job has changed: the search need not be done again.</summary>
internal static class SetSteps
{
    /// <summary>What is said while it is reckoned.</summary>
    public static PlanStep Working { get; } = new("what is set, and how to go on", null);

    /// <summary>Whether two jobs differ in what is set at the most. What may move was moved for the one: then the other is planned from the beginning.</summary>
    public static bool IsAllThatDiffers(Job job, Job before) => !job.Faces.Any(Movables.Any) && Bare(job).Equals(Bare(before));

    /// <summary>The plan of the job, step by step.</summary>
    /// <param name="job">The job.</param>
    /// <param name="before">The plan of a job that differs in what is set.</param>
    public static IEnumerable<PlanStep> Of(Job job, Plan before)
    {
        var runs = before.Runs.Zip(job.Runs, (plan, run) => plan with { Request = plan.Request with { Set = run.Set } }).ToSequence();
        SetParts? parts = null;
        foreach (var sofar in Steps(job, runs, before.Cutting, before.Order))
        {
            parts = sofar;
            if (sofar is null) yield return Working;
        }

        var findings = before.Findings.Where(finding => !string.Equals(finding.Rule, Again.Rule, StringComparison.Ordinal)).Concat(parts!.Findings);
        yield return new("done", before with { Job = job, Runs = runs, Findings = InOrder(findings), Again = parts.Faces, AgainOrders = parts.Orders });
    }

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

    private static Job Bare(Job job) => job with { Runs = job.Runs.Select(run => run with { Set = [] }).ToSequence() };
}

/// <summary>What of a plan hangs on what is set.</summary>
/// <param name="Faces">What becomes of the rest of each face.</param>
/// <param name="Orders">What is needed for it, and what is left.</param>
/// <param name="Findings">What was entered and cannot be.</param>
internal sealed record SetParts(Sequence<AgainFace> Faces, Sequence<AgainOrder> Orders, Sequence<Finding> Findings);
