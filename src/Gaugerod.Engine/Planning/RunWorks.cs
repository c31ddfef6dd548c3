using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Planning;

/// <summary>What there is to do of runs that are planned.</summary>
internal static class RunWorks
{
    private const double MmInMetre = 1000;

    /// <summary>The runs of a plan, in its order.</summary>
    public static Sequence<RunWork> Of(Job job, IReadOnlyList<RunPlan> runs, TrimPlan trims, IReadOnlyList<SupplyLine> supplies, IReadOnlyList<MovementJoint> movement)
    {
        var soft = SoftSupplies.Metres(job, runs, movement);
        var lines = RunTrims.Of(runs, trims);
        return runs.Select(run => Of(job, run, [.. lines[run.Request.Name]], supplies) with { Soft = soft(run.Request.Name) }).ToSequence();
    }

    /// <summary>What a piece covers, in square metres.</summary>
    public static double Area(Piece piece) => (double)(piece.Outline.DoubledArea - piece.Inner.Aggregate(Int128.Zero, (sum, hole) => sum + hole.DoubledArea)) / 2 / Square;

    private static double Square => Length.StepsPerMillimetre * MmInMetre * Length.StepsPerMillimetre * MmInMetre;

    private static RunWork Of(Job job, RunPlan run, List<PlannedTrim> trims, IReadOnlyList<SupplyLine> supplies)
    {
        var bare = RunWork.Of(job, run.Request);
        var (tiles, asked) = (run.Faces.Sum(face => face.Pieces.Sum(Area)), FaceOrder.Of(run));
        return bare with
        {
            Faces = bare.Faces.OrderBy(face => asked.TakeWhile(plan => !IsCalled(run, plan.Face, face.Face)).Count()).Select(face => Of(run, face)).ToSequence(),
            
            Litres = Litres(bare.Mortar),
            GroutLitres = Litres(bare.Grout),
            Area = run.Faces.Sum(face => (double)face.Face.Field.DoubledArea / 2 / Square),
            Lines = run.Lines.Count + run.Rods.Count + run.Turned.Count,
            Joints = run.Faces.Sum(face => JointSpace.Of(face.Face.Field, face.Pieces).Length) / MmInMetre,
            Trims = RunTrims.Metres(trims),
            TrimPieces = RunTrims.Pieces(trims),
        };

        // What stays in the bucket was mixed too. What goes under boards' tape is not the run's.
        double Litres(Supply? of)
        {
            var used = of is null ? 0 : supplies.Where(line => line.Supply == of).SelectMany(line => line.Uses).Where(use => !use.IsUnder && string.Equals(use.Where, run.Request.Name, StringComparison.Ordinal)).Sum(use => use.Amount);
            return tiles > 0 ? used / tiles * (100 + (of?.LossPercent ?? 0)) / 100 : 0;
        }
    }

    private static FaceWork Of(RunPlan run, FaceWork face)
    {
        var own = run.Faces.Where(plan => IsCalled(run, plan.Face, face.Face)).ToList();
        var hanging = face.IsFloor || run.IsBorder ? [] : own.SelectMany(plan => plan.Pieces.Where(piece => run.Lines.Any(line => line.Axis == Axis.Level && string.Equals(line.Face, plan.Face.Name, StringComparison.Ordinal) && HangingCourse.Holds(run, line, piece)))).ToHashSet();
        var pieces = own.SelectMany(plan => plan.Pieces).OrderBy(piece => piece.Course).ThenBy(piece => piece.Cell.Left).ThenBy(piece => piece.Cell.Bottom).ThenBy(piece => piece.Id, StringComparer.Ordinal).ToList();
        return face with
        {
            Up = pieces.Where(piece => !hanging.Contains(piece)).ToSequence(),
            Below = pieces.Where(hanging.Contains).ToSequence(),
            Bottom = own.Count == 0 ? Length.Zero : own.Min(plan => plan.Face.Field.Outer.Bounds.Bottom + plan.Face.Raised),
            Returns = own.Sum(plan => plan.Face.Edges.Skip(plan.Face.OuterEdges).Where(edge => edge.Kind == EdgeKind.OutsideCorner).Sum(Metres)),
        };
    }

    private static double Metres(FieldEdge edge) => Math.Sqrt((double)Segments.Dot(edge.From, edge.To, edge.From, edge.To)) / Length.StepsPerMillimetre / MmInMetre;

    // The planes of a folded floor and the strips of a border are worked on as one.
    private static bool IsCalled(RunPlan run, FinishedFace face, string name) => face.IsCalled(name) || (run.IsBorder && face.Name.StartsWith(name + " ", StringComparison.Ordinal));
}
