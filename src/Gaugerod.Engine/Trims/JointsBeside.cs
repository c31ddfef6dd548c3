using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Trims;

/// <summary>Finds where the joints of a field come out at a line beside it, whatever its bond.</summary>
internal static class JointsBeside
{
    // A gap wider than a field's joint by more than this is no joint: something else stands there.
    private static readonly Length s_wider = Length.FromMillimetres(10);

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
            if (begin >= end && begin - end <= (face.Joint + s_wider).Steps) yield return new(end, begin);
        }
    }

    /// <summary>The pieces that end at the line, in rising order, and from where to where they do.</summary>
    public static List<(long From, long To, Piece Piece)> Touching(TrimmedFace face, Point from, Point to)
    {
        var length = Math.Sqrt((double)Segments.Dot(from, to, from, to));
        // Tiles that end at a joint along the edge stand back from it by up to that joint; a corner is at most a step off.
        var reach = (double)(face.Joint.Steps + 2) * length;
        var touching = new List<(long From, long To, Piece Piece)>();
        foreach (var piece in face.Pieces)
        {
            var (least, most) = (long.MaxValue, long.MinValue);
            foreach (var point in piece.Outline.Points)
            {
                if (Math.Abs((double)Segments.Cross(from, to, from, point)) > reach) continue;
                var along = Grid.Nearest((double)Segments.Dot(from, to, from, point) / length).Steps;
                (least, most) = (Math.Min(least, along), Math.Max(most, along));
            }

            // What touches the line only beyond its ends is a course that happens to end at its height.
            (least, most) = (Math.Max(least, 0), Math.Min(most, (long)length));
            if (least < most) touching.Add((least, most, piece));
        }

        return [.. touching.OrderBy(part => part.From).ThenBy(part => part.To)];
    }
}
