using System.Diagnostics;
using System.Globalization;
using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Engine.Sharing;
using Gaugerod.Engine.Tests.Sharing;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Bench;

/// <summary>How long cutting takes: a thousand straight pieces, and random mixed jobs of 120 (invented, the tests' own).</summary>
internal static class CuttingReport
{
    /// <summary>What a plan may spend, as the planner allows.</summary>
    private const long Work = 10_000_000;

    public static void Print(int jobs)
    {
        Straight();
        Mixed(jobs);
    }

    /// <summary>One of the mixed jobs, step by step.</summary>
    public static void One(int seed)
    {
        var (stock, blanks) = BlankSets.Mixed(seed, 120);
        var watch = Stopwatch.StartNew();
        var search = new SharingSearch(new(stock, blanks), Work);
        var (last, longest, step) = (0.0, 0.0, 0);
        foreach (var sofar in search.Steps())
        {
            var now = watch.Elapsed.TotalMilliseconds;
            longest = Math.Max(longest, now - last);
            if (now - last > 50) Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"step {step}: {now - last:0} ms, {sofar.Fills.Count} tiles, at least {sofar.Least}, work {search.Work}"));
            (last, step) = (now, step + 1);
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{step} steps, {watch.Elapsed.TotalMilliseconds:0} ms, longest {longest:0} ms, {search.Best.Fills.Count} tiles, at least {search.Best.Least}"));
    }

    private static void Straight()
    {
        var product = new Product("tile", Length.FromMillimetres(600), Length.FromMillimetres(300), Length.Zero) { Kerf = Length.FromMillimetres(2) };
        var random = new Random(1);
        var cell = new Box(Length.Zero, Length.Zero, product.Width, product.Height);
        var pieces = Enumerable.Range(0, 1000).Select(i =>
        {
            var kept = Length.FromSteps(random.Next(20 * 3200, 580 * 3200));
            return new Piece(
                string.Create(CultureInfo.InvariantCulture, $"A{i}"), PieceKind.Straight, "wall", 1 + (i / 2), i % 2, product.Name, cell,
                Ring.Of(cell with { Right = kept }), [], kept, [new(TileSide.Right, kept, kept, Length.Zero, product.Height, "corner")]);
        }).ToSequence();
        Piece[] list = [.. pieces];
        var tiles = (Count: CuttingPlanner.Count(product, list), Bound: PairedStrips.Of(product, list, atTheMiddle: true).Tiles);
        var count = Least(() => CuttingPlanner.Count(product, list));
        var plan = Least(() => CuttingPlanner.Plan(product, pieces, Tape.Millimetres));
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"1,000 straight pieces: {tiles.Count} tiles, at least {tiles.Bound}; paired with the proof in {count:0.00} ms, the whole cut plan with layouts and exchanges {plan:0.0} ms (least of 20)"));
    }

    private static void Mixed(int jobs)
    {
        Console.WriteLine("| Seed | Pieces | Tiles | Bound | ms to within one | ms to the end | work |");
        Console.WriteLine("|---|---:|---:|---:|---:|---:|---:|");
        var (proved, near, times) = (0, 0, new List<double>());
        for (var seed = 5000; seed < 5000 + jobs; seed++)
        {
            var (stock, blanks) = BlankSets.Mixed(seed, 120);
            var watch = Stopwatch.StartNew();
            var search = new SharingSearch(new(stock, blanks), Work);
            double? within = null;
            foreach (var sofar in search.Steps())
            {
                if (sofar.Fills.Count - sofar.Least <= 1) within ??= watch.Elapsed.TotalMilliseconds;
            }

            var best = search.Best;
            var all = watch.Elapsed.TotalMilliseconds;
            if (best.Fills.Count - best.Least <= 1) within ??= all;
            if (best.Proved) proved++;
            if (within is <= 2000) near++;
            times.Add(all);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {seed} | {blanks.Count} | {best.Fills.Count} | {best.Least} | {within:0} | {all:0} | {search.Work} |"));
        }

        times.Sort();
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{proved} of {jobs} proved; {near} within one tile of the bound in 2 s; median {times[times.Count / 2]:0} ms, longest {times[^1]:0} ms"));
    }

    private static double Least(Func<object> work)
    {
        var least = double.MaxValue;
        for (var i = 0; i < 20; i++)
        {
            var watch = Stopwatch.StartNew();
            GC.KeepAlive(work());
            least = Math.Min(least, watch.Elapsed.TotalMilliseconds);
        }

        return least;
    }
}
