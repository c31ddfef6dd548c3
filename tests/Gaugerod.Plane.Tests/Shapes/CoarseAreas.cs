using CsCheck;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Plane.Tests.Shapes;

/// <summary>
/// Random areas with holes whose corners stand on a coarse grid, so that corners on a cut, corners that touch and sides along
/// one another come up again and again. A grid square is many steps wide: a crossing that comes to the nearest step moves
/// a slanted side by a step at the most.
/// </summary>
internal static class CoarseAreas
{
    public const long Square = 27_720;

    public static readonly Gen<Polygon> Any =
        from outer in Gen.OneOf(Rings(0, 12, 7), Rings(0, 12, 7, square: true), Gen.Const(Ring.Of(Of(0, 0, 12, 12))))
        from holes in Gen.OneOf(Rings(2, 5, 5), Rings(7, 10, 5), Rings(2, 5, 6, square: true)).Array[0, 2]
        select new Polygon(outer, Apart(holes, outer).ToSequence());

    public static Point P(long x, long y) => Point.FromSteps(x * Square, y * Square);

    public static Box Of(long left, long bottom, long right, long top) => new(P(left, bottom).X, P(left, bottom).Y, P(right, top).X, P(right, top).Y);

    /// <summary>The area's rings, every side with a tag of its own, counted from zero.</summary>
    public static TaggedCorner[][] Tagged(Polygon area)
    {
        var tag = 0;
        return [.. area.Inner.Select(hole => hole.Reversed()).Prepend(area.Outer)
            .Select(ring => ring.Points.Select(p => new TaggedCorner(p.X.Steps, p.Y.Steps, tag++)).ToArray())];
    }

    /// <summary>The area's sides by their tags.</summary>
    public static Dictionary<int, (Point A, Point B)> Sides(Polygon area) => Tagged(area)
        .SelectMany(r => r.Select((c, i) => (c.Tag, A: c.Point, B: r[(i + 1) % r.Length].Point))).ToDictionary(s => s.Tag, s => (s.A, s.B));

    private static Gen<Ring> Rings(int least, int most, int corners, bool square = false) =>
        (from xs in Gen.Long[least, most].Array[3, corners]
         from ys in Gen.Long[least, most].Array[corners]
         select Make(xs, ys, square)).Where(ring => ring.Points.Count >= 3 && ring.DoubledArea != 0 && RingChecks.IsSimple(ring)).Select(ring => ring.CounterClockwise());

    private static Ring Make(long[] xs, long[] ys, bool square)
    {
        // Stairs: each corner keeps one of the last one's two places, so every side is plumb or level.
        var points = square
            ? xs.SelectMany((x, i) => new[] { P(x, ys[i]), P(xs[(i + 1) % xs.Length], ys[i]) })
            : xs.Select((x, i) => P(x, ys[i]));
        var ring = points.ToList();
        ring = [.. ring.Where((p, i) => p != ring[(i + 1) % ring.Count])];
        return new(ring.ToSequence());
    }

    private static List<Ring> Apart(Ring[] holes, Ring outer)
    {
        var kept = new List<Ring>();
        foreach (var hole in holes)
        {
            if (RingChecks.LiesInside(hole, outer) && kept.All(k => RingChecks.FirstMeeting(k, hole) is null && RingChecks.Locate(k, hole.Points[0]) == Whereabouts.Outside && RingChecks.Locate(hole, k.Points[0]) == Whereabouts.Outside)) kept.Add(hole);
        }

        return kept;
    }
}
