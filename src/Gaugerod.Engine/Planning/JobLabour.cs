using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Prices;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Engine.Trims;

namespace Gaugerod.Engine.Planning;

/// <summary>Counts and measures what a plan has to be done, run by run.</summary>
internal static class JobLabour
{
    private const double Step = 3200;

    /// <summary>Of the kinds asked for, how much there is in each run.</summary>
    public static IReadOnlyList<LabourAmount> Of(Plan plan, IReadOnlySet<LabourOf> kinds)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var (all, lines) = (new List<LabourAmount>(), RunTrims.Of(plan.Runs, plan.Trims));
        var soft = kinds.Contains(LabourOf.SoftJoints) ? SoftSupplies.Metres(plan.Job, plan.Runs, plan.Movement) : _ => 0;
        foreach (var run in plan.Runs)
        {
            // A wall in several runs has its board once: with the first of them.
            var walls = run.Faces.Select(face => face.Face.Wall).Where(seen.Add).ToHashSet(StringComparer.Ordinal);
            var (name, trims) = (run.Request.Name, lines[run.Request.Name].ToList());
            all.AddRange(kinds.Order().Select(kind => new LabourAmount(kind, name, kind switch
            {
                LabourOf.SoftJoints => (decimal)soft(name),
                LabourOf.BoardArea => Boarded(plan, walls.Contains),
                _ => Amount(kind, run, trims),
            })));
        }

        // What is boarded and in no run is boarded all the same.
        if (kinds.Contains(LabourOf.BoardArea)) all.Add(new(LabourOf.BoardArea, "", Boarded(plan, face => !seen.Contains(face))));
        return all;
    }

    private static decimal Boarded(Plan plan, Func<string, bool> isOf) => (decimal)(plan.Boards.Faces.Where(face => isOf(face.Face)).Sum(face => face.Area) / 1e6);

    private static decimal Amount(LabourOf kind, RunPlan run, List<PlannedTrim> trims)
    {
        var pieces = run.Faces.SelectMany(face => face.Pieces);
        return kind switch
        {
            LabourOf.TiledArea => (decimal)(run.Faces.Sum(face => (double)face.Face.Field.DoubledArea) / 2 / (Step * Step) / 1e6),
            LabourOf.Pieces => pieces.Count(),
            LabourOf.CutPieces => pieces.Count(piece => piece.Kind != PieceKind.Full),
            LabourOf.CutLength => Metres(pieces.SelectMany(piece => piece.Cuts).Sum(Along)),
            LabourOf.Joints => (decimal)(run.Faces.Sum(face => JointSpace.Of(face.Face.Field, face.Pieces).Length) / 1000),
            LabourOf.Trim => (decimal)RunTrims.Metres(trims),
            LabourOf.TrimPieces => RunTrims.Pieces(trims),
            LabourOf.Mitres => trims.SelectMany(line => line.Pieces).Sum(piece => piece.Hand switch { null => 0, MitreHand.Both => 2, _ => 1 }) + trims.Sum(line => line.Returns.Count),
            _ => pieces.Count(piece => piece.Kind == Of(kind)),
        };
    }

    private static PieceKind Of(LabourOf kind) => kind switch
    {
        LabourOf.Straight => PieceKind.Straight,
        LabourOf.Corners => PieceKind.Corner,
        LabourOf.Notches => PieceKind.Notch,
        LabourOf.Slots => PieceKind.Slot,
        LabourOf.Holes => PieceKind.Hole,
        LabourOf.Tapers => PieceKind.Taper,
        _ => PieceKind.Shaped,
    };

    private static double Along(CutMark cut)
    {
        var (along, across) = ((double)(cut.To - cut.From).Steps, (double)(cut.Last - cut.First).Steps);
        return Math.Sqrt((along * along) + (across * across));
    }

    private static decimal Metres(double steps) => (decimal)(steps / Step / 1000);
}
