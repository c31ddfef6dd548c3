using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Sheets.Sheets;

/// <summary>Where a line to snap has wall under it: a string cannot be snapped across a bath, a bench or a window.</summary>
internal static class LineReach
{
    /// <summary>The stretches with wall under them, from the left or from below.</summary>
    public static IReadOnlyList<(Length From, Length To)> On(FinishedFace face, Axis axis, Length at)
    {
        var crossings = new List<Length>();
        foreach (var ring in face.Openings.Select(o => o.Ring).Prepend(face.Outline))
        {
            for (var i = 0; i < ring.Points.Count; i++)
            {
                var (a, b) = (Turned(ring.Points[i], axis), Turned(ring.Points[(i + 1) % ring.Points.Count], axis));
                if (a.Y <= at != b.Y <= at) crossings.Add(Grid.Between(a.Y, a.X, b.Y, b.X, at));
            }
        }

        crossings.Sort();
        return [.. Enumerable.Range(0, crossings.Count / 2).Select(i => (crossings[2 * i], crossings[(2 * i) + 1])).Where(s => s.Item1 < s.Item2)];
    }

    /// <summary>What to do where something stands in a line's way; empty when it runs free.</summary>
    public static string Words(SnapLine line, FinishedFace face)
    {
        var spans = On(face, line.Axis, line.At);
        if (spans.Count == 0) return "";
        var words = new List<string>();
        for (var i = 0; i + 1 < spans.Count; i++)
        {
            if (InTheWay(face, line, spans[i].To, spans[i + 1].From) is { } thing)
            {
                words.Add(line.Axis == Axis.Level ? $"Not across the {thing}: mark it on the wall on both sides." : $"Not across the {thing}: mark it above and below.");
            }
        }

        if (line.Axis == Axis.Level)
        {
            var box = face.Outline.Bounds;
            var ends = new[] { InTheWay(face, line, box.Left, spans[0].From), InTheWay(face, line, spans[^1].To, box.Right) }.OfType<string>().Distinct(StringComparer.Ordinal).ToArray();
            if (ends.Length > 0) words.Add($"It stops at the {string.Join(" and at the ", ends)}.");
        }

        return string.Join(" ", words);
    }

    /// <summary>The name of what fills a gap in a line; null when the wall itself ends there.</summary>
    private static string? InTheWay(FinishedFace face, SnapLine line, Length from, Length to)
    {
        if (to <= from) return null;
        var middle = from + Grid.HalfDown(to - from);
        var opening = face.Openings.FirstOrDefault(o =>
        {
            var box = o.Ring.Bounds;
            return line.Axis == Axis.Level ? box.Left <= middle && middle <= box.Right && box.Bottom <= line.At && line.At <= box.Top
                : box.Bottom <= middle && middle <= box.Top && box.Left <= line.At && line.At <= box.Right;
        });
        if (opening is not null) return opening.Name;
        if (line.Axis == Axis.Plumb) return null;
        foreach (var edge in face.Edges.Where(e => e.Kind == EdgeKind.Fixture))
        {
            var (left, right) = (Length.Min(edge.From.X, edge.To.X), Length.Max(edge.From.X, edge.To.X));
            var atFoot = edge.From.X < edge.To.X;
            var beyond = atFoot ? Length.Max(edge.From.Y, edge.To.Y) > line.At : Length.Min(edge.From.Y, edge.To.Y) < line.At;
            if (left < right && left <= middle && middle <= right && beyond) return edge.Name;
        }

        return null;
    }

    private static Point Turned(Point point, Axis axis) => axis == Axis.Level ? point : new(point.Y, point.X);
}
