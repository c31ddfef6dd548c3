using Gaugerod.Engine.Bases;
using Gaugerod.Engine.Boards;
using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Patterns;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Prices;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Engine.Surveys;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Engine.Tolerances;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>A face with its pieces.</summary>
/// <param name="Face">The face and its field.</param>
/// <param name="Placing">Where the bond sits on it, in the face's own coordinates.</param>
/// <param name="Pieces">The pieces, as one reads the wall: from the top course down, each from the left.</param>
public sealed record FacePlan(FinishedFace Face, Placing Placing, Sequence<Piece> Pieces);

/// <summary>A run, planned.</summary>
/// <param name="Request">What was asked.</param>
/// <param name="Best">The placing chosen.</param>
/// <param name="Proof">What is proved of it.</param>
/// <param name="Alternatives">Other placings, the better first.</param>
/// <param name="Lines">The lines to snap.</param>
/// <param name="Rods">The rods' marks.</param>
/// <param name="Faces">The faces, in the run's order.</param>
public sealed record RunPlan(
    RunRequest Request, Proposal Best, Proof Proof, Sequence<Proposal> Alternatives,
    Sequence<SnapLine> Lines, Sequence<Rod> Rods, Sequence<FacePlan> Faces)
{
    /// <summary>Whether it was laid out as a pattern, by the place of a first tile, and not course by course.</summary>
    public bool IsPattern { get; init; }

    /// <summary>The strips of a border, each planned by itself; none for what is laid as one.</summary>
    public Sequence<RunPlan> Strips { get; init; } = [];

    /// <summary>How sure the cuts are, edge by edge. Default none.</summary>
    public Sequence<CutRange> Ranges { get; init; } = [];

    /// <summary>Whether its faces are the strips of a border.</summary>
    public bool IsBorder => Strips.Count > 0;

    /// <summary>The lines to snap that are neither level nor plumb; none for a bond that is not turned.</summary>
    public Sequence<TurnedLine> Turned { get; init; } = [];

    /// <summary>Whether it is laid in level courses, so that it is set, and measured again, course by course.</summary>
    public bool IsInCourses => !IsPattern && !IsBorder && Request.Bond.Lay == Bonds.Lay.Level && JobRuns.IsStraight(Request, Finished);

    /// <summary>The faces before drilled holes were taken out of their fields.</summary>
    internal Sequence<FinishedFace> Finished { get; init; } = [];
}

/// <summary>All that was reckoned for a job.</summary>
/// <param name="Job">The job.</param>
/// <param name="Runs">Its runs, in its order.</param>
/// <param name="Cutting">The cut plan of every product used.</param>
/// <param name="Order">What to buy.</param>
/// <param name="Findings">The results of the checks, the gravest first.</param>
public sealed record Plan(
    Job Job, Sequence<RunPlan> Runs, Sequence<ProductCutting> Cutting, Sequence<OrderLine> Order, Sequence<Finding> Findings)
{
    /// <summary>
    /// How many tiles a run takes by the cut plan; null where it shares a product with another run. A placing's own count is reckoned
    /// quickly, with only pieces of one cut sharing, and may be higher.
    /// </summary>
    public int? TilesOf(RunPlan run)
    {
        ArgumentNullException.ThrowIfNull(run);
        var own = Products(run);
        return Runs.Any(other => !ReferenceEquals(other, run) && Products(other).Overlaps(own))
            ? null
            : Cutting.Where(cutting => own.Contains(cutting.Product)).Sum(cutting => cutting.Bought);

        static HashSet<string> Products(RunPlan of) => of.Faces.SelectMany(face => face.Pieces).Select(piece => piece.Product).ToHashSet(StringComparer.Ordinal);
    }

    /// <summary>The boxes of the products whose boxes are to be blended; default none.</summary>
    public Sequence<BoxPlan> Boxes { get; init; } = [];

    /// <summary>The lines of trim beside the fields; default none.</summary>
    public TrimPlan Trims { get; init; } = new([], [], []);

    /// <summary>The soft joints across fields that are too large to go without. Default none.</summary>
    public Sequence<MovementJoint> Movement { get; init; } = [];

    /// <summary>What to buy by the pack. Default none.</summary>
    public Sequence<SupplyLine> Supplies { get; init; } = [];

    /// <summary>The order of work; null, the default, where none was asked for.</summary>
    public WorkPlan? Work { get; init; }

    /// <summary>What it costs; null, the default, where the job states no prices.</summary>
    public Estimate? Price { get; init; }

    /// <summary>The job as it was asked, before what may move was moved.</summary>
    internal Job? Asked { get; init; }

    /// <summary>What the search had to say, before what hangs on no search was reckoned.</summary>
    internal Sequence<Finding> Found { get; init; } = [];

    /// <summary>What becomes of the rest of faces of which something is set. Default none.</summary>
    public Sequence<AgainFace> Again { get; init; } = [];

    /// <summary>What is left of each product for that, and what is needed. Default none.</summary>
    public Sequence<AgainOrder> AgainOrders { get; init; } = [];

    /// <summary>What became of the readings of the faces that were surveyed. Default none.</summary>
    public Sequence<WeighedSurvey> Surveys { get; init; } = [];

    /// <summary>The beds of floors that fall. Default none.</summary>
    public Sequence<Bed> Beds { get; init; } = [];

    /// <summary>How flat those faces are that were read. Default none.</summary>
    public Sequence<FlatFace> Flat { get; init; } = [];

    /// <summary>The boards under the tile; default none.</summary>
    public BoardPlan Boards { get; init; } = BoardPlan.None;

    /// <summary>What the job left open by a range, and where each is to be built. Default none.</summary>
    public Sequence<ToBuild> ToBuild { get; init; } = [];
}
