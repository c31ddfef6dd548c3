using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Trims;

/// <summary>Finds where the joints of a field come out at a line beside it, whatever its bond.</summary>
internal static class JointsBeside
{
    // A gap wider than a field's joint by more than this is no joint: something else stands there.
    private static readonly Length s_wider = Length.FromMillimetres(10);

    // A tile's side that runs at more than one in so much to the line does not end at it: it only comes near.
    private const int Along = 20;

    // A line that runs at less than one in so much to the level or to plumb is taken as level or plumb.
    private const int Raking = 50;

    // A corner that was reckoned on the line is at most so many steps off it.
    private const int OnLine = 2;

    /// <summary>The joints in rising order, from where the line begins, in steps.</summary>
    /// <param name="face">The field.</param>
    /// <param name="from">Where the line begins.</param>
    /// <param name="to">Where it ends.</param>
    public static IEnumerable<FieldJoint> Of(TrimmedFace face, Point from, Point to)
    {
        var touching = Touching(face, from, to);
        for (var i = 1; i < touching.Count; i++)
        {
            var (end, begin) = (touching[i - 1].To, touching[i].From);
            if (begin >= end && (begin - end <= (face.Joint + s_wider).Steps || Slants(face, from, to, begin - end) || Apart(touching[i - 1].Piece, touching[i].Piece) <= (face.Joint + s_wider).Steps)) yield return new(end, begin);
        }
    }

    /// <summary>The pieces that end at the line, in rising order, and from where to where they do.</summary>
    public static List<(long From, long To, Piece Piece)> Touching(TrimmedFace face, Point from, Point to)
    {
        var length = Math.Sqrt((double)Segments.Dot(from, to, from, to));
        // Tiles that end at a joint along the edge stand back from it by up to that joint; a corner is at most a step off.
        var (reach, on) = ((face.Joint.Steps + OnLine) * length, OnLine * length);
        var touching = new List<(long From, long To, Piece Piece)>();
        foreach (var piece in face.Pieces)
        {
            var (least, most) = (long.MaxValue, long.MinValue);
            var points = piece.Outline.Points;
            for (var i = 0; i < points.Count; i++)
            {
                var (point, next) = (points[i], points[(i + 1) % points.Count]);
                var isNear = Off(point) <= reach && Off(next) <= reach && IsAlong(point, next);
                if (isNear || Off(point) <= on) Reach(point);
                if (isNear) Reach(next);
            }

            void Reach(Point point)
            {
                var along = Grid.Nearest((double)Segments.Dot(from, to, from, point) / length).Steps;
                (least, most) = (Math.Min(least, along), Math.Max(most, along));
            }

            // What touches the line only beyond its ends is a course that happens to end at its height.
            (least, most) = (Math.Max(least, 0), Math.Min(most, (long)length));
            if (least < most) touching.Add((least, most, piece));
        }

        return [.. touching.OrderBy(part => part.From).ThenBy(part => part.To)];

        double Off(Point point) => Math.Abs((double)Segments.Cross(from, to, from, point));

        bool IsAlong(Point one, Point other) => Math.Abs((double)Segments.Cross(from, to, one, other)) * Along <= Math.Abs((double)Segments.Dot(from, to, one, other));
    }

    /// <summary>Whether a level or a plumb joint runs out over a line that rakes: so much wider than across is it along the line. What is nearly level or plumb itself rakes not enough to tell.</summary>
    private static bool Slants(TrimmedFace face, Point from, Point to, long gap)
    {
        var (across, up) = ((double)(to.X - from.X).Abs().Steps, (double)(to.Y - from.Y).Abs().Steps);
        var (less, more) = (Math.Min(across, up), Math.Max(across, up));
        return less * Raking > more && gap * less <= (face.Joint.Steps + (2 * OnLine)) * Math.Sqrt((across * across) + (up * up));
    }

    /// <summary>How far two pieces stand from each other.</summary>
    private static double Apart(Piece one, Piece other) =>
        Math.Min(one.Outline.Points.Min(point => Nearby.Off(other.Outline, point).Distance), other.Outline.Points.Min(point => Nearby.Off(one.Outline, point).Distance));
}
