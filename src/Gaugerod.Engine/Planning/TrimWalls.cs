using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Takeoffs;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Planning;

/// <summary>Brings the walls of a job, with what every run lays on them, to their trims.</summary>
internal static class TrimWalls
{
    /// <summary>The trims beside all that was planned, a line at a time: nothing until the last.</summary>
    public static IEnumerable<TrimPlan?> Steps(Job job, IReadOnlyList<RunPlan> runs) => job.Trims.Count == 0 ? [new([], [], [])] : TrimPlanner.Steps(Walls(job, runs), job.Trims, job.Tape);

    private static List<List<TrimmedFace>> Walls(Job job, IReadOnlyList<RunPlan> runs)
    {
        var laid = runs.SelectMany(run => run.Faces.Select(face => (Run: run, Face: face))).ToLookup(part => part.Face.Face.Wall, StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var walls = new List<List<TrimmedFace>>();
        foreach (var run in runs)
        {
            // A wall with zones is in several runs: its trims stand beside all of them.
            var wholes = JobRuns.Wholes(job, run.Request).Faces.Where(face => seen.Add(face.Name)).Select(face => Wall(job, face, laid[face.Name])).ToList();
            if (wholes.Count > 0) walls.Add(wholes);
        }

        return walls;
    }

    /// <summary>What to buy of a trim: its stock, and corner pieces with stops where there are any.</summary>
    public static Func<TrimStock, IEnumerable<OrderLine>> Orders(Job job) => stock =>
    {
        var trim = job.Trims.First(trim => string.Equals(trim.Name, stock.Product, StringComparison.Ordinal));
        var sure = stock.LowerBound == stock.Bought ? "no fewer would do" : string.Create(CultureInfo.InvariantCulture, $"{stock.LowerBound} might do");
        var bought = new Extra(trim.Breakage, trim.Spares, trim.FlatPercent).Line(stock.Product, trim.ByBar ? "bar" : "piece", 1, stock.Bought, "trim plan", sure);
        return stock.CornerPieces.Select(piece => Line($"{stock.Product}, {Named(piece)}", piece.Count, Basis(piece))).Prepend(bought);
    };

    private static string Named(CornerPieceCount piece) => (piece.Kind, piece.RoundWalls) switch
    {
        (CornerPieceKind.Outside, false) => "outside corner",
        (CornerPieceKind.Outside, true) => "outside corner of walls",
        (CornerPieceKind.Inside, false) => "inside corner",
        (CornerPieceKind.Inside, true) => "inside corner of walls",
        _ => "stop",
    };

    private static string Basis(CornerPieceCount piece) => piece.Kind != CornerPieceKind.Stop
        ? "one at every such corner of the trim plan"
        : string.Create(CultureInfo.InvariantCulture, $"one at every open end of the trim plan: {piece.Left} at left ends, {piece.Count - piece.Left} at right ends");

    private static OrderLine Line(string item, int count, string basis) => new(item, count, "piece", 1, count, count, 0, 0, 0, basis);

    private static TrimmedFace Wall(Job job, FinishedFace whole, IEnumerable<(RunPlan Run, FacePlan Face)> laid)
    {
        var parts = laid.ToList();
        var zones = job.Faces.First(face => string.Equals(face.Name, whole.Name, StringComparison.Ordinal)).Zones;
        var bands = new List<TrimmedBand>();
        if (zones.Any(zone => zone is Zone.Strip { Trimmed: not null }))
        {
            var cut = ZoneCutter.Cut(whole, zones, "", job.EdgeJoint, new(job.Tape));
            foreach (var band in zones.OfType<Zone.Strip>().Where(band => band.Trimmed is not null))
            {
                bands.Add(new(cut.First(part => string.Equals(part.Zone, band.Name, StringComparison.Ordinal)).Face, band.Joint ?? job.EdgeJoint, band.Trimmed!, band.From - band.ReadFrom));
            }
        }

        return new(whole, parts.SelectMany(part => part.Face.Pieces).ToSequence(), parts.Select(part => part.Run.Best.Placing.Joint).DefaultIfEmpty().Max()) { Bands = bands.ToSequence() };
    }
}
