using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>What of a plan hangs on what is set.</summary>
internal static class SetSteps
{
    /// <summary>What is said while it is reckoned.</summary>
    public static PlanStep Working { get; } = new("what is set, and how to go on", null);

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
}

/// <summary>What of a plan hangs on what is set.</summary>
/// <param name="Faces">What becomes of the rest of each face.</param>
/// <param name="Orders">What is needed for it, and what is left.</param>
/// <param name="Findings">What was entered and cannot be.</param>
internal sealed record SetParts(Sequence<AgainFace> Faces, Sequence<AgainOrder> Orders, Sequence<Finding> Findings);
