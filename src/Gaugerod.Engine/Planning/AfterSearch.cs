using Gaugerod.Engine.Rules;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>
/// What of a plan no search hangs on: what is measured again, what is bought by the pack, soft joints across fields, the order of work, the price, what is noted for the hand-over. It is
/// reckoned from what the search found; where nothing else of a job has changed, from what it found for the job before.
/// </summary>
internal static class AfterSearch
{
    /// <summary>Finishes a plan, step by step; the last step carries it.</summary>
    /// <param name="searched">What was searched for: the job, its runs, cutting, order, boxes, trims, boards, bases and what was found on the way.</param>
    public static IEnumerable<PlanStep> Steps(Plan searched)
    {
        var (job, runs) = (searched.Job, searched.Runs);
        SetParts? set = null;
        foreach (var sofar in SetSteps.Steps(job, runs, searched.Cutting, searched.Order))
        {
            set = sofar;
            if (sofar is null) yield return SetSteps.Working;
        }

        var bases = new JobBases(searched.Beds, searched.Flat, []);
        var (movement, large) = JobMovement.Of(job, runs);
        yield return SetSteps.Working;
        var supplies = JobSupplies.Of(job, runs, bases, movement, searched.Boards);
        yield return SetSteps.Working;
        var (work, remarks) = job.Work is null ? (null, []) : WorkOrder.Plan(job, bases, searched.Boards, RunWorks.Of(job, runs, searched.Trims, supplies, movement));
        yield return SetSteps.Working;
        var findings = job.Remarks.Concat(searched.Found).Concat(JobBases.Membranes(job)).Concat(runs.SelectMany(run => Mortar(job, run).Concat(BattenSupplies.Findings(job, run)))).Concat(SoftSupplies.Findings(job, runs, movement)).Concat(large)
            .Concat(JobCautions.Of(job)).Concat(set!.Findings).Concat(remarks);
        yield return new("done", JobPricing.Priced(searched with
        {
            Findings = SetSteps.InOrder(findings), Again = set.Faces, AgainOrders = set.Orders, Movement = movement.ToSequence(), Supplies = supplies, Work = work,
        }));
    }

    /// <summary>
    /// Whether a job differs from that of a plan only in what no search hangs on, and in which lines of the file something is said. Where something may
    /// move it was moved for what was set then: then what is set must be the same.
    /// </summary>
    public static bool IsAllThatDiffers(Job job, Plan before)
    {
        var asked = before.Asked ?? before.Job;
        return Bare(job).Equals(Bare(asked)) && (!job.Faces.Any(Movables.Any) || job.Runs.Zip(asked.Runs).All(pair => pair.First.Set.Equals(pair.Second.Set)));
    }

    /// <summary>The plan of a job that differs from a plan's only so.</summary>
    /// <param name="job">The job.</param>
    /// <param name="before">The plan.</param>
    public static IEnumerable<PlanStep> Steps(Job job, Plan before)
    {
        // What was moved stays where it was moved to; runs of which nothing is asked otherwise are the same.
        var alike = job.Runs.Equals((before.Asked ?? before.Job).Runs);
        var moved = before.Job with
        {
            Supplies = job.Supplies, Fills = job.Fills, Work = job.Work, Prices = job.Prices, HandOver = job.HandOver, Remarks = job.Remarks,
            Faces = before.Job.Faces.Zip(job.Faces, (face, asked) => face with { Under = asked.Under }).ToSequence(),
            Runs = alike ? before.Job.Runs : before.Job.Runs.Zip(job.Runs, With).ToSequence(),
        };
        return Steps(before with { Job = moved, Asked = job, Runs = alike ? before.Runs : before.Runs.Zip(job.Runs, (plan, run) => plan with { Request = With(plan.Request, run) }).ToSequence() });
    }

    private static RunRequest With(RunRequest run, RunRequest asked) => run with { Set = asked.Set, Setting = asked.Setting, Movement = asked.Movement };

    private static Job Bare(Job job) => job with
    {
        Supplies = [], Fills = [], Work = null, Prices = null, HandOver = null, Remarks = [],
        Faces = job.Faces.Select(face => face with { Under = null }).ToSequence(),
        Runs = job.Runs.Select(run => run with { Set = [], Setting = null, Movement = null }).ToSequence(),
    };

    private static IEnumerable<Finding> Mortar(Job job, RunPlan run) => run.Request.Setting is { Mortar: not null } setting
        ? MortarRules.Findings(run.Request.Name, SettingSupplies.Bed(JobRuns.ProductOf(job, run.Request), setting) + SettingSupplies.Mm(setting.BackButter), job.Tape, job.Region) : [];
}
