using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Sequencing;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>Setting with what is mixed for it: each piece takes its time, and its cuts theirs.</summary>
internal static class Mixed
{
    /// <summary>Adds a task that sets pieces.</summary>
    public static int Add(WorkMaking making, WorkTask task, Sequence<Piece> pieces, RunWork run)
    {
        var area = new WorkAmount(PaceUnit.SquareMetres, pieces.Sum(RunWorks.Area));
        var (count, cuts) = (new WorkAmount(PaceUnit.Pieces, pieces.Count), new WorkAmount(PaceUnit.Cuts, pieces.Count(piece => piece.Kind != PieceKind.Full)));
        if (making.Asked.PaceOf(WorkKind.Setting) is not { } pace) return making.Add(task, area, count, cuts);
        var works = pieces.Select(piece => new PieceWork(piece.Course, Minutes(piece), RunWorks.Area(piece) * run.Litres)).ToList();
        var minutes = (int)Math.Min(Math.Ceiling(works.Sum(work => work.Minutes) - 1e-9), int.MaxValue / 4);
        var at = making.Add(task with { Minutes = minutes }, area, count, cuts);
        if (run.Mortar is { } mortar && minutes > 0) making.Graph.Mix(at, new(works, mortar.PotLife, mortar.OpenTime, mortar.Makes));
        return at;

        double Minutes(Piece piece) => PieceMinutes(making.Asked, pace, RunWorks.Area(piece), piece.Kind != PieceKind.Full);
    }

    /// <summary>Adds a task that grouts a run: each piece has its share of time and grout, by its area.</summary>
    public static int AddGrout(WorkMaking making, WorkTask task, RunWork run)
    {
        var at = making.Add(task, new(PaceUnit.SquareMetres, run.Area), new WorkAmount(PaceUnit.Metres, run.Joints));
        var pieces = run.Faces.SelectMany(face => face.Below.Concat(face.Up).Select(piece => (face.Face, Piece: piece))).ToList();
        var all = pieces.Sum(one => RunWorks.Area(one.Piece));
        if (run.Grout is not { PotLife: { } life } grout || all == 0 || run.GroutLitres == 0 || making.Graph.Tasks[at].Minutes is not ({ } minutes and > 0)) return at;
        var works = pieces.ConvertAll(one => new PieceWork(one.Piece.Course, minutes * RunWorks.Area(one.Piece) / all, RunWorks.Area(one.Piece) * run.GroutLitres) { Face = run.Faces.Count > 1 ? one.Face : null });
        making.Graph.Mix(at, new(works, life, null, grout.Makes));
        return at;
    }

    /// <summary>How long one piece takes.</summary>
    /// <param name="asked">Says how long a cut takes.</param>
    /// <param name="pace">The pace of setting.</param>
    /// <param name="squareMetres">What the piece covers.</param>
    /// <param name="isCut">Whether it is cut.</param>
    public static double PieceMinutes(WorkRequest asked, Pace pace, double squareMetres, bool isCut) =>
        ((pace.Unit == PaceUnit.SquareMetres ? squareMetres : 1) / pace.Amount * 60) + (isCut && asked.Cutting is { } cutting ? 60 / cutting.Amount : 0);
}
