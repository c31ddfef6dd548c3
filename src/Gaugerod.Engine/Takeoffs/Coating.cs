using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>How much of a face is coated: the face as measured, less what opens in it.</summary>
internal static class Coating
{
    private const double Step = 3200;

    /// <summary>The area to a height, in mm².</summary>
    /// <param name="face">The face.</param>
    /// <param name="to">How high; null for all of it.</param>
    public static double Whole(DrawnFace face, Length? to)
    {
        var bounds = face.Outline.Ring.Bounds;
        if (to <= bounds.Bottom) return 0;
        var rings = face.Openings.Select(opening => Ring(opening.Ring.Points.Reverse())).Prepend(Ring(face.Outline.Ring.Points));
        var box = to is { } height ? new Box(bounds.Left, bounds.Bottom, bounds.Right, Length.Min(height, bounds.Top)) : bounds;
        return BoxClip.Clip(rings, box).Sum(Area);
    }

    /// <summary>What lines the niches that are known to be so deep: their backs and their four sides, in mm²; those that begin below a height.</summary>
    /// <param name="face">The face.</param>
    /// <param name="to">How high the face is coated; null for all of it.</param>
    public static double Linings(DrawnFace face, Length? to) => face.Openings.Zip(face.Face.Openings)
        .Where(pair => pair.Second.Depth is not null && (to is null || pair.First.Ring.Bounds.Bottom < to))
        .Sum(pair => Math.Abs(Area(Ring(pair.First.Ring.Points))) + (Sides(pair.First, null).Sum(side => side.Length) * (pair.Second.Depth!.Value.Steps / Step)));

    /// <summary>The area of bands along corners, the foot, openings, holes and, to both sides, seams of board, in mm², no more than all there is. Where two bands cross it counts twice, as much as is put on there.</summary>
    /// <param name="face">The face.</param>
    /// <param name="to">How high; null for all of it.</param>
    /// <param name="band">How far a band goes out.</param>
    /// <param name="seams">How long the seams of board are, in mm.</param>
    public static double Bands(DrawnFace face, Length? to, Length band, double seams)
    {
        var wide = band.Steps / Step;
        var along = Along(face, to).Sum(edge => edge.Length) + face.Openings.SelectMany(opening => Sides(opening, to)).Sum(side => side.Length);
        var round = face.Face.Holes.Where(hole => to is null || hole.Centre.Y < to).Sum(hole => Math.PI * wide * (wide + (hole.Diameter.Steps / Step)));
        return Math.Min(Whole(face, to), ((along + (2 * seams)) * wide) + round);
    }

    /// <summary>The corners and the foot, by their edge, with their length up to a height in mm.</summary>
    public static IEnumerable<(string Edge, double Length)> Along(DrawnFace face, Length? to) =>
        Sides(face.Outline, to).Where(side => side.Kind is EdgeKind.InsideCorner or EdgeKind.Floor or EdgeKind.Fixture or EdgeKind.Threshold).Select(side => (side.Edge, side.Length));

    private static IEnumerable<(string Edge, EdgeKind Kind, double Length)> Sides(DrawnRing ring, Length? to)
    {
        for (var i = 0; i < ring.Sides.Count; i++)
        {
            var (from, end) = (ring.Ring.Points[i], ring.Ring.Points[(i + 1) % ring.Ring.Points.Count]);
            var (x, y) = ((double)(end.X - from.X).Steps, (double)(end.Y - from.Y).Steps);
            var (low, high) = ((double)Length.Min(from.Y, end.Y).Steps, (double)Length.Max(from.Y, end.Y).Steps);
            var part = to is not { } height || height.Steps >= high ? 1 : height.Steps <= low ? 0 : (height.Steps - low) / (high - low);
            if (part > 0) yield return (ring.Sides[i].Name, ring.Sides[i].Edge.Kind, Math.Sqrt((x * x) + (y * y)) / Step * part);
        }
    }

    private static TaggedCorner[] Ring(IEnumerable<Point> points) => [.. points.Select(at => new TaggedCorner(at.X.Steps, at.Y.Steps, 0))];

    private static double Area(TaggedCorner[] ring)
    {
        var doubled = 0.0;
        for (var i = 0; i < ring.Length; i++) doubled += Cross(ring[i].Point, ring[(i + 1) % ring.Length].Point);
        return doubled / 2;
    }

    private static double Cross(Point a, Point b) => ((a.X.Steps / Step) * (b.Y.Steps / Step)) - ((b.X.Steps / Step) * (a.Y.Steps / Step));
}
