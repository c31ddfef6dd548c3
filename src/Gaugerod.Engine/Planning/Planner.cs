using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Rules;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>How far the planning has come.</summary>
/// <param name="Text">What is being looked at, in words.</param>
/// <param name="Plan">The plan; null until it is done.</param>
public sealed record PlanStep(string Text, Plan? Plan);

/// <summary>The engine's one front door.</summary>
public static class Planner
{
    /// <summary>Plans a job. The same job gives the same plan, byte for byte, anywhere.</summary>
    /// <param name="job">A job that <see cref="JobCheck"/> finds no fault with.</param>
    /// <exception cref="ArgumentException">The job has a fault.</exception>
    public static Plan Plan(Job job) => Steps(job).Last().Plan!;

    /// <summary>Plans a job step by step, so that the caller may show how far it is, or stop. The last step carries the plan.</summary>
    /// <param name="job">A job that <see cref="JobCheck"/> finds no fault with.</param>
    /// <exception cref="ArgumentException">The job has a fault.</exception>
    public static IEnumerable<PlanStep> Steps(Job job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return Steps(JobCheck.Steps(job, large: true).Last()!);
    }

    /// <summary>As the other, with a job that is checked already.</summary>
    /// <param name="ready">The job, without a fault.</param>
    /// <exception cref="ArgumentException">The job has a fault.</exception>
    public static IEnumerable<PlanStep> Steps(CheckedJob ready)
    {
        ArgumentNullException.ThrowIfNull(ready);
        if (ready.Faults.Count > 0) throw new ArgumentException("The job has faults; check it first.", nameof(ready));
        return RunByRun(ready);
    }

    /// <summary>
    /// As the other, by a plan of a job as it was before. Where only what no search hangs on has changed since, what is set or what is paid, that
    /// plan's lines and cuts stay; the plan is the same.
    /// </summary>
    /// <param name="ready">The job, without a fault.</param>
    /// <param name="before">The plan before; null for none.</param>
    /// <exception cref="ArgumentException">The job has faults.</exception>
    public static IEnumerable<PlanStep> Steps(CheckedJob ready, Plan? before)
    {
        ArgumentNullException.ThrowIfNull(ready);
        return before is not null && ready.Faults.Count == 0 && AfterSearch.IsAllThatDiffers(ready.Job, before) ? AfterSearch.Steps(ready.Job, before) : Steps(ready);
    }

    private static IEnumerable<PlanStep> RunByRun(CheckedJob ready)
    {
        var (findings, asked) = (new List<Finding>(), ready.Job);
        if (ready.Job.Faces.Any(Movables.Any))
        {
            foreach (var settled in Movables.Settle(ready))
            {
                if (settled is { } done)
                {
                    ready = done.Job;
                    findings.AddRange(done.Findings);
                }

                yield return new("moving what may be moved to the joints", null);
            }
        }

        var job = ready.Job;
        var runs = new List<RunPlan>();
        var letters = new FaceLetters();
        for (var i = 0; i < job.Runs.Count; i++)
        {
            findings.AddRange(ready.Runs[i].Findings);
            PlanStep? step = null;
            foreach (var sofar in RunSteps.Of(job, InLine.Resolved(job.Runs[i], ready.Runs[i], runs), ready.Runs[i], letters))
            {
                if (step is null || !string.Equals(step.Text, sofar.Text, StringComparison.Ordinal)) step = new(sofar.Text, null);
                if (sofar.Plan is { } bare)
                {
                    var plan = RunRanges.With(job, bare, ready.Runs[i].Surveys);
                    runs.Add(plan);
                    yield return step;
                    foreach (var found in RuleByRule(job, plan, sofar.HasUnderHalf))
                    {
                        findings.AddRange(found);
                        yield return step;
                    }
                }

                yield return step;
            }

            findings.AddRange(GrainRules.Findings(Grain(runs[i])));
            yield return step!;
        }

        var tiled = job.Runs.SelectMany(run => run.Faces).ToHashSet(StringComparer.Ordinal);
        findings.AddRange(job.Faces.SelectMany(face => face.Zones.Where(zone => zone is not Zone.Strip { Trimmed: not null }).Select(zone => zone.Name).Prepend(face.Name)).Where(name => !tiled.Contains(name)).Select(BareFaces.InNoRun));

        var cutting = new List<ProductCutting>();
        foreach (var product in job.Products)
        {
            if (PiecesOf(product.Name, runs) is not { Count: > 0 } pieces) continue;
            findings.AddRange(SnapRules.Findings(product, pieces, job.Tape));
            var step = new PlanStep($"{product.Name}: what is cut from which tile", null);
            yield return step;
            foreach (var sofar in CuttingPlanner.Steps(product, pieces, job.Tape, job.Cutting))
            {
                if (sofar is not null) cutting.Add(sofar);
                yield return step;
            }
        }

        var trims = new TrimPlan([], [], []);
        foreach (var sofar in TrimWalls.Steps(job, runs))
        {
            if (sofar is null) yield return new("trims and where their joints fall", null);
            else trims = sofar;
        }

        findings.AddRange(trims.Findings);
        var boards = BoardPlan.None;
        foreach (var sofar in JobBoards.Steps(job, runs))
        {
            if (sofar is null) yield return new("sheets of board on the studs", null);
            else boards = sofar;
        }

        findings.AddRange(BoardRules.Findings(boards, job.Tape, job.Region, job.Faces.Where(FloorFaces.Is).Select(face => face.Name).ToHashSet(StringComparer.Ordinal)));

        var (order, boxes) = (new List<OrderLine>(), new List<BoxPlan>());
        for (var i = 0; i < cutting.Count; i++)
        {
            var product = job.Products.First(p => string.Equals(p.Name, cutting[i].Product, StringComparison.Ordinal));
            var bought = TileOrder.Order(product, cutting[i].Bought);
            order.Add(bought with { Freedom = BoxFreedom.Words(bought, cutting[i].Simple?.Tiles ?? 0, cutting[i].Tiles.Sum(tile => tile.Pieces.Count)) });
            if (JobBoxes.Of(product, cutting[i], order[i], runs) is not { } dealt) continue;
            boxes.Add(dealt);
            cutting[i] = JobBoxes.Said(cutting[i], dealt);
            yield return new($"{product.Name}: which tile out of which box", null);
        }

        order.AddRange(trims.Stocks.SelectMany(TrimWalls.Orders(job)));
        order.AddRange(BoardSupplies.Sheets(job, boards));
        findings.AddRange(boxes.Select(BoxRules.Finding));
        findings.AddRange(ready.Bases.Findings(job));
        var searched = new Plan(job, runs.ToSequence(), cutting.ToSequence(), order.ToSequence(), [])
        {
            Asked = asked,
            Found = findings.ToSequence(),
            Boxes = boxes.ToSequence(),
            Trims = trims,
            Boards = boards,
            Surveys = ready.Runs.SelectMany(run => run.Surveys).DistinctBy(survey => survey.Face, StringComparer.Ordinal).ToSequence(),
            Beds = ready.Bases.Beds,
            Flat = ready.Bases.Flat,
            ToBuild = Planning.ToBuild.All(asked, job).ToSequence(),
        };
        foreach (var step in AfterSearch.Steps(searched)) yield return step;
    }

    private static IEnumerable<IEnumerable<Finding>> RuleByRule(Job job, RunPlan plan, bool hasUnderHalf)
    {
        var facts = Facts(job, plan, hasUnderHalf);
        yield return RunRules.Findings(facts);
        yield return WantRules.AtRisk(facts);
        yield return RunRanges.NotAtWorst(plan);
        yield return FenceRules.Findings(job.Cutting.Fence, facts);
        yield return ShaveRules.Findings(plan.Request.Name, plan.Faces.SelectMany(face => face.Pieces).ToSequence(), job.Tape);
        yield return FoldRules.Findings(plan.Faces.Select(face => (face.Face, face.Pieces)), facts);
        yield return ZoneRules.Findings(ZonesOf(job, plan.Request), facts.Product, plan.Request.Bond, facts.Joint, job.EdgeJoint, job.Tape);
        yield return plan.Faces.SelectMany(face => OpenEdgeRules.Findings(face.Face, face.Pieces, facts.Joint, job.Tape));
        yield return plan.Faces.SelectMany(face => ConeRules.Findings(face.Face, facts));
        yield return plan.Faces.SelectMany(face => HoleRules.Findings(face.Face.Name, face.Face.Holes, face.Pieces, job.Tape));
        yield return plan.Faces.Where(face => face.Pieces.Count == 0).Select(face => BareFaces.NoTile(face.Face.Name));
    }

    private static RunFacts Facts(Job job, RunPlan plan, bool hasUnderHalf) => new(
        plan.Request.Name, JobRuns.ProductOf(job, plan.Request), plan.Request.Bond, plan.Best.Placing.Joint, plan.Request.Limits, job.Tape,
        plan.Best.Score.Cuts, plan.Best.Score.SmallestCut, plan.Best.Score.Slivers, hasUnderHalf, plan.Best.Wants)
    {
        Region = job.Region,
        IsFloor = FloorFaces.Holds(job, plan.Request),
        Folded = plan.Faces.Any(face => face.Face.Plane is not null),
        Narrow = Slivers.Of(plan.Faces.SelectMany(face => face.Pieces), plan.Request.Bond, plan.Request.Limits.Sliver, plan.Best.Score.Slivers),
    };

    private static IEnumerable<Zone> ZonesOf(Job job, RunRequest run) =>
        job.Faces.SelectMany(face => face.Zones).Where(zone => run.Faces.Any(name => string.Equals(name, zone.Name, StringComparison.Ordinal)));

    private static GrainFacts Grain(RunPlan run) => new(
        run.Request.Name, run.Request.Bond, run.IsBorder,
        run.Faces.SelectMany(face => face.Pieces).Select(piece => piece.GrainOnFace).OfType<Angle>().Distinct().ToSequence());

    private static Sequence<Piece> PiecesOf(string product, List<RunPlan> runs) => runs
        .SelectMany(run => run.Faces).SelectMany(face => face.Pieces)
        .Where(piece => string.Equals(piece.Product, product, StringComparison.Ordinal)).ToSequence();
}
