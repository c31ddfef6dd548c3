using CsCheck;
using Gaugerod.Plane.Shapes;
using Gaugerod.Testing;
using static Gaugerod.Plane.Tests.Shapes.CoarseAreas;

namespace Gaugerod.Plane.Tests.Shapes;

/// <summary>What a tile of three to eight corners leaves of an area, judged by NetTopologySuite.</summary>
public sealed class ConvexClipTests
{
    /// <summary>A corner of what is left comes to the nearest step at each cut that made it: this is how far it may then be off its sides.</summary>
    private const double Off = 2;

    private static readonly Gen<(long X, long Y)[]> Tiles = Tile(Gen.Long[-1, 13].Select(at => at * Square));

    private static Gen<(long X, long Y)[]> Tile(Gen<long> place) =>
        (from places in Gen.Select(place, place).Array[3, 12]
         from left in Gen.Int[0, 7].Array[4]
         select Fewer(Overlay.Hull(places), left)).Where(tile => tile.Length >= 3 && IsTile(tile));

    [Fact]
    public void A_tile_of_any_convex_shape_leaves_of_an_area_what_the_referee_says() => Gen.Select(Any, Tiles).Each((area, tile) => Check(area, tile), iter: 20_000);

    [Fact]
    public void So_does_a_tile_whose_corners_stand_anywhere() =>
        Gen.Select(Any, Tile(Gen.Long[-Square, 13 * Square])).Each((area, tile) => Check(area, tile), iter: 5_000);

    /// <summary>Tiles as large as they come, on areas many times larger: products of such numbers must not run over.</summary>
    [Fact]
    public void So_does_the_largest_tile_in_the_largest_hall() =>
        (from area in Any
         from tile in Tiles
         from times in Gen.Int[0, 2].Select(i => new[] { 30L, 80L, 190L }[i])
         from right in Gen.Long[-40, 0]
         select (Grown(area, times, right * times * Square / 10), tile.Select(p => (p.X * 43, p.Y * 43)).ToArray())).Each((area, tile) => Check(area, tile), iter: 2_000);

    [Fact]
    public void A_tile_that_lies_in_the_area_is_left_whole()
    {
        (long X, long Y)[] tile = [(2 * Square, 2 * Square), (5 * Square, 3 * Square), (4 * Square, 6 * Square)];
        var ring = Assert.Single(ConvexClip.Clip(Tagged(new(Ring.Of(Of(0, 0, 12, 12)), [])), tile));

        Assert.Equal(tile.ToHashSet(), ring.Select(c => (c.X, c.Y)).ToHashSet());
        Assert.Equal([-3, -2, -1], ring.Select(c => c.Tag).Order());
    }

    [Fact]
    public void An_opening_that_touches_the_tile_with_one_corner_stays_an_opening()
    {
        var opening = new Ring([P(4, 4), P(6, 4), P(6, 6), P(4, 6)]);
        (long X, long Y)[] tile = [(0, 2 * Square), (10 * Square, 2 * Square), (10 * Square, 10 * Square), (8 * Square, 10 * Square)];
        var rings = ConvexClip.Clip(Tagged(new(Ring.Of(Of(0, 0, 12, 12)), [opening])), tile);

        // The tile's slanted side runs through (4, 6).
        Assert.Equal([-1, 1], rings.Select(ring => Int128.Sign(Overlay.RingOf(ring).DoubledArea)).Order());
    }

    [Fact]
    public void A_tile_over_five_metres_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() =>
        ConvexClip.Clip(Tagged(new(Ring.Of(Of(0, 0, 12, 12)), [])), [(0, 0), (ConvexClip.MostSteps + 1, 0), (0, 5)]));

    private static void Check(Polygon area, (long X, long Y)[] tile)
    {
        var outline = new Ring(tile.Select(p => Point.FromSteps(p.X, p.Y)).ToSequence());
        var rings = ConvexClip.Clip(Tagged(area), tile);
        var (parts, mine) = (Overlay.Shared(Overlay.Of(area), Overlay.Of(outline)), Overlay.Parts(rings));
        var slanted = parts.Sum(Overlay.Slanted) + mine.Sum(Overlay.Slanted);

        Assert.All(mine, part => Assert.True(part.IsValid, part.ToString()));
        Assert.InRange(Overlay.Apart(parts, mine), 0, slanted);

        // A part no wider than two steps may vanish when its corners come to whole steps.
        Assert.True(parts.Count(IsSure) <= mine.Count && mine.Count(IsSure) <= parts.Count, $"{Overlay.Many(parts)}\n{Overlay.Many(mine)}");
        var sides = Sides(area);
        foreach (var ring in rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
                // Where a tile is almost straight at a corner, a crossing near it may come to the other of its two sides.
                var (from, to) = a.Tag >= 0 ? sides[a.Tag] : Prolonged(outline.Points[-1 - a.Tag], outline.Points[-a.Tag % tile.Length], 64);
                Assert.True(Overlay.Off(from, to, a) <= Off && Overlay.Off(from, to, b) <= Off, $"{a} to {b}");
            }
        }
    }

    /// <summary>No tile has a corner within two degrees of straight: there a step of rounding moves a crossing along the side without end.</summary>
    private static bool IsTile((long X, long Y)[] tile) => Enumerable.Range(0, tile.Length).All(i =>
    {
        var (a, b, c) = (tile[i], tile[(i + 1) % tile.Length], tile[(i + 2) % tile.Length]);
        var (ax, ay, bx, by) = ((double)(b.X - a.X), (double)(b.Y - a.Y), (double)(c.X - b.X), (double)(c.Y - b.Y));
        return Math.Atan2((ax * by) - (ay * bx), (ax * bx) + (ay * by)) > 2 * Math.PI / 180;
    });

    private static (Point From, Point To) Prolonged(Point a, Point b, double by)
    {
        var (run, rise) = ((double)(b.X - a.X).Steps, (double)(b.Y - a.Y).Steps);
        var (x, y) = (Grid.Nearest(run * by / Math.Sqrt((run * run) + (rise * rise))), Grid.Nearest(rise * by / Math.Sqrt((run * run) + (rise * rise))));
        return (a.Moved(-x, -y), b.Moved(x, y));
    }

    private static bool IsSure(NetTopologySuite.Geometries.Polygon part) => part.Area > 2 * part.Length;

    private static Polygon Grown(Polygon area, long times, long right)
    {
        Ring Grown(Ring ring) => new(ring.Points.Select(p => Point.FromSteps((p.X.Steps * times) + right, p.Y.Steps * times)).ToSequence());
        return new(Grown(area.Outer), area.Inner.Select(Grown).ToSequence());
    }

    /// <summary>At most eight corners, and now and then fewer: what is left of a convex outline's corners is convex too.</summary>
    private static (long X, long Y)[] Fewer((long X, long Y)[] corners, int[] left)
    {
        var kept = corners.ToList();
        foreach (var i in left)
        {
            if (i < kept.Count && kept.Count > 3) kept.RemoveAt(i);
        }

        return [.. kept.Take(8)];
    }
}
