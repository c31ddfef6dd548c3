using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>Bends the level edges of a face to how high they really run: a floor read at stations, a bed that falls.</summary>
internal static class HeightsFollowed
{
    // Nearer than this to a corner a bend is the corner.
    private static readonly Length Near = Length.FromMillimetres(1);

    /// <summary>The outline with its edges where they really run; null, with a remark, where it would cross itself.</summary>
    /// <param name="drawn">The outline, counter-clockwise.</param>
    /// <param name="heights">How high edges run, of every edge at the most once for each stretch.</param>
    /// <param name="path">Where that was said.</param>
    /// <param name="remarks">Takes what is wrong.</param>
    public static DrawnRing? Follow(DrawnRing drawn, IReadOnlyList<EdgeHeights> heights, string path, Remarks remarks)
    {
        var (points, n) = (drawn.Ring.Points, drawn.Sides.Count);
        var follows = Enumerable.Range(0, n).Select(i => Of(drawn.Sides[i], points[i], points[(i + 1) % n], heights)).ToArray();
        if (Array.TrueForAll(follows, of => of is null)) return drawn;
        var moved = Enumerable.Range(0, n).Select(i => Corner(points, i, follows[(i + n - 1) % n], follows[i])).ToArray();
        var (corners, sides) = (new List<Point>(), new List<Side>());
        for (var i = 0; i < n; i++)
        {
            var (from, to) = (moved[i], moved[(i + 1) % n]);
            var bends = follows[i] is { } of ? of.Line.Where(at => at.X - from.X > Near && to.X - at.X > Near).ToList() : [];
            corners.Add(from);
            corners.AddRange(bends);
            sides.AddRange(Enumerable.Repeat(bends.Count > 0 ? drawn.Sides[i] with { Bends = true } : drawn.Sides[i], bends.Count + 1));
        }

        var ring = new Ring(corners.ToSequence());
        if (RingChecks.FirstCrossing(ring) is null && ring.DoubledArea > 0) return new(drawn.Name, drawn.Path, ring, sides.ToSequence());
        remarks.Refuse(path, "an edge so high that it meets what is above or beside it", "heights that leave the face whole", "look for a height in the wrong unit");
        return null;
    }

    private static EdgeHeights? Of(Side side, Point from, Point to, IReadOnlyList<EdgeHeights> heights) =>
        to.X - from.X <= (to.Y - from.Y).Abs() ? null : heights.FirstOrDefault(of => string.Equals(of.Side, side.Name, StringComparison.Ordinal) && of.Covers(from.X, to.X));

    /// <summary>Where a corner comes to stand: straight up or down, or along the side beside it, which leans.</summary>
    private static Point Corner(Sequence<Point> points, int i, EdgeHeights? before, EdgeHeights? after)
    {
        var (corner, n) = (points[i], points.Count);
        if ((before ?? after) is not { } line) return corner;
        var other = before is null ? points[(i + n - 1) % n] : points[(i + 1) % n];
        var (dx, dy) = ((double)(other.X - corner.X).Steps, (double)(other.Y - corner.Y).Steps);
        var leans = (before is null || after is null) && Math.Abs(dy) > Math.Abs(dx);
        var (x, y) = ((double)corner.X.Steps, line.At(corner.X.Steps));
        // A lean of 1 in 10 over a fall of 1 in 10: each turn is a hundred times nearer.
        for (var turn = 0; leans && turn < 6; turn++)
        {
            x = corner.X.Steps + (dx * ((y - corner.Y.Steps) / dy));
            y = line.At(x);
        }

        return new(Grid.Nearest(x), Grid.Nearest(y));
    }
}
