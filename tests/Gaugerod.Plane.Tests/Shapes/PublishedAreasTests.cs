using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;

namespace Gaugerod.Plane.Tests.Shapes;

/// <summary>Published areas against what tiles leave of them. How many are used is held here, so that none falls out unseen.</summary>
public sealed class PublishedAreasTests
{
    /// <summary>
    /// A clip of any shape is first cut into triangles by the referee, and each triangle is cut from the subject as a tile would
    /// be. The set's own crossings come to whole units, ours to thousandths of one.
    /// </summary>
    [Fact]
    public void Clipping_cases_come_to_their_published_areas()
    {
        // Two cases say -1 for an area that was not published.
        var cases = PublishedAreas.Clips().Where(given => given.Area >= 0).ToList();
        // Forty of the large ones are much alike: every day a part of them will do.
        Parallel.ForEach(cases.Where((given, i) => Cases.IsLong || i % 6 == 0 || given.Subjects.Concat(given.Clips).Sum(r => r.Length) < 80), given =>
        {
            var (area, outline) = Reckoned(given);
            Assert.True(Math.Abs(area - given.Area) <= (outline / 2) + 1, $"{given.Name} {given.Asked}: {area} for {given.Area}, {outline} around");
        });

        Assert.Equal((80, 19, 94), (cases.Count(IsA("INTERSECTION")), cases.Count(IsA("DIFFERENCE")), cases.Count(IsA("UNION"))));
        static Func<PublishedClip, bool> IsA(string asked) => given => given.Asked == asked;
    }

    [Fact]
    public void Squares_and_hexagons_without_joints_share_a_polygon_out_among_them()
    {
        var pieces = 0;
        var polygons = PublishedAreas.Polygons().ToList();
        Parallel.ForEach(polygons.Where(polygon => polygon.Area is not null), polygon =>
        {
            var given = polygon.Area!;
            foreach (var (tile, a, b) in s_tilings)
            {
                // So large that the polygon is about 17 tiles across: 6,000,000 steps or 1.9 m.
                var scale = 6_000_000 / Math.Max(given.Width, given.Height);
                var (sum, whole, outline, count) = Shared(Tagged(given, scale), tile, a, b);
                Assert.True(Math.Abs(sum - whole) <= Math.Min(outline, whole * 1e-5), $"{polygon.Name}: {sum} for {whole}");
                Interlocked.Add(ref pieces, count);
            }
        });

        // Simple ones, those whose rings cross or touch, and those that bound nothing.
        Assert.Equal((12, 40, 4), (polygons.Count(p => !p.Mended), polygons.Count(p => p.Mended && p.Area is not null), polygons.Count(p => p.Area is null)));
        Assert.InRange(pieces, 20_000, 30_000);
    }

    /// <summary>A square of 110 mm and a hexagon about as large, with the steps by which they fill the plane.</summary>
    private static readonly ((long X, long Y)[] Tile, (long X, long Y) A, (long X, long Y) B)[] s_tilings =
    [
        ([(0, 0), (352_001, 0), (352_001, 352_001), (0, 352_001)], (352_001, 0), (0, 352_001)),
        ([(180_000, 0), (360_000, 103_923), (360_000, 311_769), (180_000, 415_692), (0, 311_769), (0, 103_923)], (360_000, 0), (180_000, 311_769)),
    ];

    /// <summary>The area asked for, and how far its outlines reach.</summary>
    private static (double Area, double Outline) Reckoned(PublishedClip given)
    {
        var (subject, clip) = (PublishedAreas.Filled(given.Subjects, given.Filling), PublishedAreas.Filled(given.Clips, given.Filling));
        var around = Math.Max(Reach(subject), Reach(clip));
        var scale = Math.Min(3200, ConvexClip.MostSteps / 2 / around);
        var rings = Tagged(PublishedAreas.Of(subject), scale);
        var both = 0.0;
        foreach (var triangle in PublishedAreas.Triangles(clip))
        {
            var tile = Array.ConvertAll(triangle, p => ((long)Math.Round(p.X * scale), (long)Math.Round(p.Y * scale)));
            both += ConvexClip.Clip(rings, tile).Sum(ring => (double)Overlay.RingOf(ring).DoubledArea / 2) / (scale * scale);
        }

        var (area, result) = given.Asked switch
        {
            "INTERSECTION" => (both, subject.Intersection(clip)),
            "DIFFERENCE" => (Whole(subject) - both, subject.Difference(clip)),
            "UNION" => (Whole(subject) + clip.Area - both, subject.Union(clip)),
            _ => throw new NotSupportedException(given.Asked),
        };
        return (area, result.Length);
    }

    /// <summary>The area as squares share it out among them.</summary>
    private static double Whole(NetTopologySuite.Geometries.Geometry area)
    {
        var (scale, (square, a, b)) = (6_000_000 / Reach(area), s_tilings[0]);
        return area.IsEmpty ? 0 : Shared(Tagged(PublishedAreas.Of(area), scale), square, a, b).Sum / (scale * scale);
    }

    private static double Reach(NetTopologySuite.Geometries.Geometry area) => Math.Max(1, Math.Max(area.EnvelopeInternal.Width, area.EnvelopeInternal.Height));

    private static (double Sum, double Whole, double Outline, int Count) Shared(TaggedCorner[][] rings, (long X, long Y)[] tile, (long X, long Y) a, (long X, long Y) b)
    {
        var (sum, outline, count) = (0.0, 0.0, 0);
        var (left, bottom) = (rings.Min(r => r.Min(c => c.X)), rings.Min(r => r.Min(c => c.Y)));
        for (var j = -2; j < 25; j++)
        {
            for (var i = -15; i < 25; i++)
            {
                var (x, y) = (left + (i * a.X) + (j * b.X), bottom + (i * a.Y) + (j * b.Y));
                foreach (var ring in ConvexClip.Clip(rings, Array.ConvertAll(tile, p => (p.X + x, p.Y + y))))
                {
                    sum += (double)Overlay.RingOf(ring).DoubledArea / 2;
                    outline += Overlay.Slanted(Overlay.Of(Overlay.RingOf(ring)));
                    count++;
                }
            }
        }

        return (sum, rings.Sum(ring => (double)Overlay.RingOf(ring).DoubledArea / 2), outline, count);
    }

    private static TaggedCorner[][] Tagged(PublishedArea area, double scale) =>
        [.. area.Rings.Select(ring => ring.Select(p => new TaggedCorner((long)Math.Round(p.X * scale), (long)Math.Round(p.Y * scale), 0)).ToArray())];
}
