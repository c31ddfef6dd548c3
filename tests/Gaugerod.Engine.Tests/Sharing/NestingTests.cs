using Gaugerod.Engine.Sharing;
using NetTopologySuite.Geometries;

namespace Gaugerod.Engine.Tests.Sharing;

/// <summary>
/// Pieces that share a tile by their outlines. Referee: NetTopologySuite measures how far apart they lie; every side of
/// either is drawn out and the other held against it.
/// </summary>
public sealed class NestingTests
{
    private static readonly GeometryFactory Geometry = new();

    [Fact]
    public void Two_halves_of_a_tile_cut_from_corner_to_corner_come_from_one_tile()
    {
        var stock = new Stock(300, 300, 0, Turns.Half);
        var half = Cutout.Of(new([new(0, 0), new(300, 0), new(0, 300)]), stock);
        Assert.Equal(Sides.Left | Sides.Bottom, half.Blank.Kept);
        var wanted = new Wanted(stock, [half, half, half]);
        var search = new SharingSearch(wanted, 100_000);
        search.Run();
        Assert.Equal(2, search.Best.Fills.Count);
        Assert.True(search.Best.Proved);

        // The blade takes some of both: then each takes a tile.
        search = new(new(stock with { Kerf = 2 }, [half, half]), 100_000);
        search.Run();
        Assert.Equal(2, search.Best.Fills.Count);
        Assert.True(search.Best.Proved);
    }

    [Fact]
    public void Along_a_wall_out_of_plumb_the_wide_end_of_one_lies_beside_the_narrow_end_of_the_next()
    {
        var stock = new Stock(300, 200, 2, Turns.Half);
        Cutout Taper(long foot, long top) => Cutout.Of(new([new(0, 0), new(foot, 0), new(top, 200), new(0, 200)]), stock);

        // 151 + 2 + 146 is 299; the wide ends together are 304. At 152 it is 300 on the level, and the blade runs on a slant: a hair too much.
        Assert.True(new Wanted(stock, [Taper(151, 146), Taper(151, 146)]).Nest(0, 0));
        Assert.False(new Wanted(stock, [Taper(152, 146), Taper(152, 146)]).Nest(0, 0));
        Assert.False(new Wanted(stock with { Turns = Turns.None }, [Taper(151, 146), Taper(151, 146)]).Nest(0, 0));
    }

    [Fact]
    public void What_falls_off_at_a_notch_gives_a_small_piece_with_the_same_corner()
    {
        var stock = new Stock(300, 200, 2, Turns.None);
        var notched = Cutout.Of(new([new(0, 0), new(300, 0), new(300, 120), new(180, 120), new(180, 200), new(0, 200)]), stock);
        Cutout Corner(long width, long height) => new(new(width, height, Sides.Right | Sides.Top), null);
        Assert.True(new Wanted(stock, [notched, Corner(118, 78)]).Nest(0, 1));
        Assert.False(new Wanted(stock, [notched, Corner(119, 78)]).Nest(0, 1));
        Assert.False(new Wanted(stock, [notched, Corner(118, 79)]).Nest(0, 1));
        Assert.False(new Wanted(stock, [notched, new(new(100, 70, Sides.Left | Sides.Top), null)]).Nest(0, 1));
    }

    [Fact]
    public void Pieces_nest_exactly_when_one_straight_cut_along_a_side_has_them_on_either_side_of_the_blade()
    {
        var (nested, apart) = (0, 0);
        for (var seed = 0; seed < 3000; seed++)
        {
            var (stock, one, other) = Outlines.Two(seed);
            var wanted = new Wanted(stock, [one, other]);
            var (first, second) = (Array.FindIndex(wanted.Members, m => m.Contains(0)), Array.FindIndex(wanted.Members, m => m.Contains(1)));
            var sides = Separations(stock, one, other).DefaultIfEmpty(double.MinValue).Max();
            var boxes = BenchReferee.Share(stock, [one.Blank, other.Blank]);
            var fit = new TileFits(wanted).Pair(first, second);
            Assert.True(fit == (boxes || sides >= stock.Kerf), $"seed {seed}: {fit}, as rectangles {boxes}, gap {sides}, kerf {stock.Kerf}");
            if (boxes || !fit)
            {
                apart++;
                continue;
            }

            nested++;
            var layout = new TileLayout(wanted);
            layout.Lay([Math.Min(first, second), Math.Max(first, second)]);
            var shapes = layout.Blanks.ConvertAll(Shape);
            Assert.True(shapes[0].Distance(shapes[1]) >= stock.Kerf - 1e-6, $"seed {seed}");
            Assert.All(shapes, shape => Assert.True(Geometry.ToGeometry(new Envelope(0, stock.Width, 0, stock.Height)).Covers(shape)));
        }

        Assert.InRange(nested, 150, 2500);
        Assert.InRange(apart, 150, 2850);
    }

    /// <summary>The wanted kerf between them for every allowed turn of the other and every direction of a side of either.</summary>
    private static IEnumerable<double> Separations(Stock stock, Cutout one, Cutout other)
    {
        var still = Corners(one, stock).First();
        foreach (var turn in stock.Turns switch { Turns.None => [0], Turns.Half => (int[])[0, 2], _ => [0, 1, 2, 3] })
        {
            foreach (var place in Corners(other, stock))
            {
                var turned = place.Select(p => Turned(p, turn, stock)).ToArray();
                foreach (var (x, y) in Normals(still).Concat(Normals(turned)))
                {
                    yield return turned.Min(p => (p.X * x) + (p.Y * y)) - still.Max(p => (p.X * x) + (p.Y * y));
                    yield return still.Min(p => (p.X * x) + (p.Y * y)) - turned.Max(p => (p.X * x) + (p.Y * y));
                }
            }
        }
    }

    private static IEnumerable<(double X, double Y)> Normals(Coordinate[] ring)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
            var length = a.Distance(b);
            yield return ((b.Y - a.Y) / length, (a.X - b.X) / length);
        }
    }

    private static Coordinate Turned(Coordinate p, int quarters, Stock stock) => quarters switch
    {
        0 => p,
        1 => new(stock.Height - p.Y, p.X),
        2 => new(stock.Width - p.X, stock.Height - p.Y),
        _ => new(p.Y, stock.Width - p.X),
    };

    // A rectangle goes against the sides it keeps, and into every corner that leaves free.
    private static IEnumerable<Coordinate[]> Corners(Cutout cutout, Stock stock)
    {
        if (cutout.Shape is { } shape) return [[.. shape.Corners.ToArray().Select(c => new Coordinate(c.X, c.Y))]];
        var (w, h, kept) = (cutout.Blank.Width, cutout.Blank.Height, cutout.Blank.Kept);
        return from left in new[] { 0, stock.Width - w }
               from bottom in new[] { 0, stock.Height - h }
               where !kept.HasFlag(Sides.Left) || left == 0
               where !kept.HasFlag(Sides.Right) || left == stock.Width - w
               where !kept.HasFlag(Sides.Bottom) || bottom == 0
               where !kept.HasFlag(Sides.Top) || bottom == stock.Height - h
               select new Coordinate[] { new(left, bottom), new(left + w, bottom), new(left + w, bottom + h), new(left, bottom + h) };
    }

    private static Polygon Shape(LaidBlank laid)
    {
        Coordinate[] ring = laid.Lies.Shape is { } shape
            ? [.. shape.Corners.ToArray().Select(c => new Coordinate(c.X, c.Y))]
            : [new(laid.At.Left, laid.At.Bottom), new(laid.At.Right, laid.At.Bottom), new(laid.At.Right, laid.At.Top), new(laid.At.Left, laid.At.Top)];
        return Geometry.CreatePolygon([.. ring, ring[0]]);
    }
}
