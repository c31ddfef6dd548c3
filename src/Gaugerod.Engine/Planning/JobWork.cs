using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Prices;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Engine.Trims;

namespace Gaugerod.Engine.Planning;

/// <summary>Counts and measures what a plan has to be done, run by run.</summary>
internal static class JobWork
{
    private const double Step = 3200;

    /// <summary>Of the kinds asked for, how much there is in each run.</summary>
    public static IReadOnlyList<WorkAmount> Of(Plan plan, IReadOnlySet<WorkKind> kinds)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var all = new List<WorkAmount>();
        foreach (var run in plan.Runs)
        {
            // A wall in several runs has its trims once: with the first of them.
            var walls = run.Faces.Select(face => face.Face.Wall).Where(seen.Add).ToHashSet(StringComparer.Ordinal);
            var trims = plan.Trims.Lines.Where(line => walls.Contains(line.Face)).ToList();
            all.AddRange(kinds.Order().Select(kind => new WorkAmount(kind, run.Request.Name, Amount(kind, run, trims))));
        }

        return all;
    }

    private static decimal Amount(WorkKind kind, RunPlan run, List<PlannedTrim> trims)
    {
        var pieces = run.Faces.SelectMany(face => face.Pieces);
        return kind switch
        {
            WorkKind.TiledArea => (decimal)(run.Faces.Sum(face => (double)face.Face.Field.DoubledArea) / 2 / (Step * Step) / 1e6),
            WorkKind.Pieces => pieces.Count(),
            WorkKind.CutPieces => pieces.Count(piece => piece.Kind != PieceKind.Full),
            WorkKind.CutLength => Metres(pieces.SelectMany(piece => piece.Cuts).Sum(Along)),
            WorkKind.Joints => (decimal)(run.Faces.Sum(face => JointSpace.Of(face.Face.Field, face.Pieces).Length) / 1000),
            WorkKind.Trim => Metres(trims.Sum(line => (double)line.Length.Steps)),
            WorkKind.TrimPieces => trims.Sum(line => line.Pieces.Count + line.Returns.Count) + trims.SelectMany(line => line.CornerPieces).DistinctBy(piece => piece.Id, StringComparer.Ordinal).Count(),
            WorkKind.Mitres => trims.SelectMany(line => line.Pieces).Sum(piece => piece.Hand switch { null => 0, MitreHand.Both => 2, _ => 1 }) + trims.Sum(line => line.Returns.Count),
            _ => pieces.Count(piece => piece.Kind == Of(kind)),
        };
    }

    private static PieceKind Of(WorkKind kind) => kind switch
    {
        WorkKind.Straight => PieceKind.Straight,
        WorkKind.Corners => PieceKind.Corner,
        WorkKind.Notches => PieceKind.Notch,
        WorkKind.Slots => PieceKind.Slot,
        WorkKind.Holes => PieceKind.Hole,
        WorkKind.Tapers => PieceKind.Taper,
        _ => PieceKind.Shaped,
    };

    private static double Along(CutMark cut)
    {
        var (along, across) = ((double)(cut.To - cut.From).Steps, (double)(cut.Last - cut.First).Steps);
        return Math.Sqrt((along * along) + (across * across));
    }

    private static decimal Metres(double steps) => (decimal)(steps / Step / 1000);
}
