using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Pieces;

/// <summary>Which pieces of a face share a joint.</summary>
internal static class Neighbours
{
    // Where bonds leave a joint a little wider than the run's, it is one joint all the same; tiles that share less than this share a corner.
    private static readonly Length s_slack = Length.FromMillimetres(1);

    /// <summary>Every pair of pieces with sides that face each other across a joint, the earlier of the two first.</summary>
    /// <param name="pieces">The pieces of one face.</param>
    /// <param name="joint">The joint between tiles.</param>
    public static List<(int One, int Other)> Of(IReadOnlyList<Piece> pieces, Length joint)
    {
        var pairs = new List<(int One, int Other)>();
        if (pieces.Count == 0) return pairs;
        var reach = (joint + s_slack).Steps;
        var boxes = pieces.Select(piece => piece.Outline.Bounds).ToList();
        var sides = pieces.Select(Sides).ToList();
        var bin = boxes.Max(box => Math.Max(box.Width.Steps, box.Height.Steps)) + reach;
        var bins = new Dictionary<(long, long), List<int>>();
        for (var i = 0; i < pieces.Count; i++)
        {
            var (x, y) = (boxes[i].Left.Steps / bin, boxes[i].Bottom.Steps / bin);
            for (var dx = -1; dx <= 1; dx++)
            {
                for (var dy = -1; dy <= 1; dy++)
                {
                    foreach (var other in bins.GetValueOrDefault((x + dx, y + dy), []))
                    {
                        if (sides[i].Exists(one => sides[other].Exists(two => Share(one, two, reach)))) pairs.Add((other, i));
                    }
                }
            }

            if (!bins.TryGetValue((x, y), out var list)) bins[(x, y)] = list = [];
            list.Add(i);
        }

        return pairs;
    }

    private static List<EdgeLine> Sides(Piece piece)
    {
        var points = piece.Outline.Points;
        var sides = new List<EdgeLine>(points.Count);
        for (var i = 0; i < points.Count; i++)
        {
            var (a, b) = (points[i], points[(i + 1) % points.Count]);
            sides.Add(EdgeLine.Of(a.X.Steps, a.Y.Steps, b.X.Steps, b.Y.Steps));
        }

        return sides;
    }

    /// <summary>Whether two sides look at each other over no more than a joint, along more than a corner.</summary>
    private static bool Share(in EdgeLine one, in EdgeLine other, long reach)
    {
        if (!one.Faces(other)) return false;
        var (endX, endY) = (other.X + (other.AlongX * other.Length), other.Y + (other.AlongY * other.Length));
        var apart = -(one.Inwards(other.X, other.Y) + one.Inwards(endX, endY)) / 2;
        if (apart < -PatternCutter.Hair || apart > reach) return false;
        var (from, to) = (one.Along(endX, endY), one.Along(other.X, other.Y));
        return Math.Min(one.Length, Math.Max(from, to)) - Math.Max(0, Math.Min(from, to)) > s_slack.Steps;
    }
}
