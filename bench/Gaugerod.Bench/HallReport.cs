using System.Diagnostics;
using System.Globalization;
using Gaugerod.Engine.Layouts;
using Gaugerod.Engine.Patterns;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Shapes;
using NetTopologySuite;
using NetTopologySuite.Geometries;
using NetTopologySuite.Geometries.Implementation;

namespace Gaugerod.Bench;

/// <summary>
/// Halls of every bond: clipped only; placed, cut and numbered; the same for twice the floor; and the same tiles cut to the same
/// field by a general geometry library. All in one process, in turn, warm, by processor time (the clock of a busy machine says more of the machine);
/// the least of several rounds. The growth is the median of the rounds' ratios.
/// </summary>
internal static class HallReport
{
    private const int Rounds = 9;
    private const int Goes = 5;
    private const int Tiles = 10_000;

    private static readonly GeometryFactory s_factory = new NtsGeometryServices(
        CoordinateArraySequenceFactory.Instance, PrecisionModel.Floating.Value, 0, GeometryOverlay.NG, new CoordinateEqualityComparer()).CreateGeometryFactory();

    /// <param name="only">Only the bonds whose names begin so.</param>
    public static void Print(string only)
    {
        Console.WriteLine("| Bond | Pieces, cut | Clip, ms | Library, every tile, ms | Ratio | Library, cut tiles only, ms | Ratio | All, ms | Library to all | once, by the clock, ms | MB allocated | Pieces, twice the floor | ms | Ratio of the least, median ratio |\n|---|---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|");
        foreach (var (hall, twice) in Hall.All(Tiles).Zip(Hall.All(2 * Tiles)).Where(pair => pair.First.Name.StartsWith(only, StringComparison.Ordinal)))
        {
            var (pieces, more) = (hall.Pieces(), twice.Pieces().Count);
            var (cut, count) = (pieces.Count(piece => piece.Kind != PieceKind.Full), pieces.Count);
            var (shapes, field) = (Shapes(hall), FieldOf(hall));
            var sided = SidedOnly(hall);
            var before = GC.GetAllocatedBytesForCurrentThread();
            _ = hall.Pieces();
            var allocated = (GC.GetAllocatedBytesForCurrentThread() - before) / 1e6;
            var clock = Timed(() => hall.Pieces());
            var (one, two, clip, library, few) = (double.MaxValue, double.MaxValue, double.MaxValue, double.MaxValue, double.MaxValue);
            var growth = new List<double>();
            for (var round = 0; round < Rounds; round++)
            {
                var (small, large) = Turns(() => hall.Pieces(), () => twice.Pieces());
                (one, two) = (Math.Min(one, small), Math.Min(two, large));
                growth.Add(large / small);
                clip = Math.Min(clip, Spent(hall.Clipped, Goes));
                if (round > 2) continue;
                library = Math.Min(library, Spent(() => Cut(shapes, field), 1));
                few = Math.Min(few, Spent(() => Cut(sided, field), Goes));
            }

            growth.Sort();
            Say($"| {hall.Name} | {count}, {cut} | {clip:0.0} | {library:0} | {library / clip:0} | {few:0.0} | {few / clip:0.0} | {one:0.0} | {library / one:0} | {clock:0} | {allocated:0.0} | {more} | {two:0.0} | {two / one:0.00}, {growth[Rounds / 2]:0.00} |");
        }
    }

    /// <summary>The search of a sample's first run, to its proof.</summary>
    public static void Search(string sample)
    {
        var job = Subjects.Sample(sample);
        var (least, found) = (double.MaxValue, (PatternFound?)null);
        for (var round = 0; round < Rounds; round++)
        {
            var problem = PatternPlans.Problem(job, job.Runs[0], JobRuns.Finish(job, 0).Faces);
            least = Math.Min(least, Timed(() => found = PatternFinder.Find(problem).Last()));
        }

        var plan = Timed(() => Planner.Plan(job));
        var pieces = Planner.Plan(job).Runs[0].Faces.Sum(face => face.Pieces.Count);
        Say($"{sample}: {pieces} pieces; search, other places and proof {least:0} ms, {found!.Model.Work} tiles near sides looked at, {found.Proof.Examined} places; whole plan {plan:0} ms. {found.Proof.Words}");
    }

    private static object Cut(List<NetTopologySuite.Geometries.Polygon> shapes, Geometry field)
    {
        var area = 0.0;
        foreach (var shape in shapes) area += shape.Intersection(field).Area;
        return area;
    }

    /// <summary>The tiles that the engine places, as the library's.</summary>
    private static List<NetTopologySuite.Geometries.Polygon> Shapes(Hall hall)
    {
        var bounds = new TurnedField(FieldRings.Of(hall.Face), hall.Heading).Bounds;
        return [.. PatternLayout.Tiles(hall.Bond, 12_345, 54_321, bounds).Select(tile => Shape(hall.Bond.Motif[tile.Tile].Shape, tile.X, tile.Y))];
    }

    /// <summary>Only those that the engine cuts: what is whole or away costs the library nothing.</summary>
    private static List<NetTopologySuite.Geometries.Polygon> SidedOnly(Hall hall) =>
        [.. hall.Pieces().Where(piece => piece.Kind != PieceKind.Full).Select(piece => piece.Tile).Distinct().Select(tile => Shape(tile, 0, 0))];

    private static NetTopologySuite.Geometries.Polygon FieldOf(Hall hall)
    {
        var rings = new TurnedField(FieldRings.Of(hall.Face), hall.Heading).Rings.Select(ring => s_factory.CreateLinearRing([.. ring.Append(ring[0]).Select(node => new Coordinate(node.X, node.Y))])).ToList();
        return s_factory.CreatePolygon(rings[0], [.. rings.Skip(1)]);
    }

    private static NetTopologySuite.Geometries.Polygon Shape(Ring ring, long right, long up) =>
        s_factory.CreatePolygon([.. ring.Points.Append(ring.Points[0]).Select(p => new Coordinate(p.X.Steps + right, p.Y.Steps + up))]);

    /// <summary>
    /// Two works in turn, the heap as they leave it: the processor time of a go of each, all goes counted. Neither from a tidied
    /// heap, where few small goes would never pay for tidying, nor only the goes that met none of it.
    /// </summary>
    private static (double One, double Other) Turns(Func<object?> one, Func<object?> other)
    {
        var (first, second) = (0.0, 0.0);
        for (var i = 0; i < 2 * Goes; i++) (first, second) = (first + Spent(one, 1), second + Spent(other, 1));
        return (first / (2 * Goes), second / (2 * Goes));
    }

    /// <summary>Processor time of one of several goes.</summary>
    private static double Spent(Func<object?> work, int goes)
    {
        var before = Environment.CpuUsage.TotalTime;
        for (var i = 0; i < goes; i++) GC.KeepAlive(work());
        return (Environment.CpuUsage.TotalTime - before).TotalMilliseconds / goes;
    }

    private static double Timed(Func<object?> work)
    {
        var watch = Stopwatch.StartNew();
        GC.KeepAlive(work());
        return watch.Elapsed.TotalMilliseconds;
    }

    private static void Say(FormattableString line) => Console.WriteLine(line.ToString(CultureInfo.InvariantCulture));
}
