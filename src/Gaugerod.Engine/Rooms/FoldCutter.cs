using System.Globalization;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>
/// Cuts a finished face along its folds into planes, a joint between them. The planes stay where they are on the run, so that
/// one pattern runs over them all.
/// </summary>
internal static class FoldCutter
{
    /// <summary>The planes, named after the face and the side that each falls from, or numbered; none, with remarks, where it cannot be folded so.</summary>
    /// <param name="whole">The face, or a zone of it.</param>
    /// <param name="falls">Where it bends.</param>
    /// <param name="joint">The joint along folds.</param>
    /// <param name="path">Where the face stands in the job.</param>
    /// <param name="remarks">Takes what is wrong.</param>
    public static IReadOnlyList<FinishedFace> Cut(FinishedFace whole, Falls falls, Length joint, string path, Remarks remarks)
    {
        var bounds = whole.Outline.Bounds;
        if (Length.Max(bounds.Width, bounds.Height).Steps > ConvexClip.MostSteps)
        {
            remarks.Refuse(path + ".falls", $"folds on {remarks.Say(bounds.Width)} by {remarks.Say(bounds.Height)}", "folds on a face of at most 5 m either way", "the face in parts");
            return [];
        }

        if (Planes(whole, falls, path, remarks) is not { } planes) return [];
        var rings = whole.TaggedRings();
        List<FieldEdge> edges = [.. whole.Edges, new(default, default, "fold", EdgeKind.Zone)];
        var of = new PlaneOf(whole.Name, whole.Field.Outer.Bounds);
        var parts = new List<FinishedFace>();
        foreach (var (name, sides) in planes)
        {
            // As measured the plane goes to the fold itself, its field to half a joint before it.
            if (Region(bounds, sides, 0) is not { } outline || Region(bounds, sides, joint.Steps / 2.0) is not { } region) continue;
            var cut = ConvexClip.Clip(rings, region).Select(ring => Array.ConvertAll(ring, node => node.Tag < 0 ? node with { Tag = edges.Count - 1 } : node)).ToList();
            if (cut.Count == 0) continue;
            var bare = ConvexClip.Clip([Tagged(whole.Outline)], outline);
            if (ZoneField.Of(whole, $"{whole.Name} {name}", cut, edges) is { } part && bare.Count == 1)
            {
                parts.Add(part with { Outline = new(bare[0].Select(node => node.Point).ToSequence()), Plane = of });
                continue;
            }

            remarks.Refuse(path + ".falls", $"folds that leave a plane of \"{whole.Name}\" in several parts", "planes in one part each", "folds that follow the face's corners");
        }

        return parts;
    }

    /// <summary>The planes by name, each as the lines it lies to the left of.</summary>
    private static List<(string Name, List<FoldLine> Sides)>? Planes(FinishedFace whole, Falls falls, string path, Remarks remarks)
    {
        var planes = new List<(string Name, List<FoldLine> Sides)>();
        if (falls.Drain is { } name)
        {
            var drain = whole.Holes.First(hole => string.Equals(hole.Name, name, StringComparison.Ordinal)).Centre;
            var points = whole.Outline.Points;
            for (var i = 0; i < points.Count; i++)
            {
                var (from, to) = (points[i], points[(i + 1) % points.Count]);
                if (Segments.Turn(drain, from, to) <= 0)
                {
                    remarks.Refuse(path + ".falls", $"a fall to \"{name}\" from a side that does not see it", "a drain from which every corner is seen", "\"lines\": folds from edge to edge");
                    return null;
                }

                planes.Add((NameOf(whole, from, to, i), [new(drain, from), new(to, drain)]));
            }
        }
        else
        {
            planes.Add(("", []));
        }

        foreach (var line in falls.Lines)
        {
            planes = [.. planes.SelectMany(plane => new[] { (plane.Name, Sides: (List<FoldLine>)[.. plane.Sides, line]), (plane.Name, [.. plane.Sides, new(line.To, line.From)]) })];
        }

        return falls.Lines.Count == 0
            ? planes
            : [.. planes.Where(plane => Region(whole.Outline.Bounds, plane.Sides, 0) is not null)
                .Select((plane, i) => ($"{plane.Name} {(i + 1).ToString(CultureInfo.InvariantCulture)}".TrimStart(), plane.Sides))];
    }

    /// <summary>The name of the field's edge along a side of the outline; a number where it has none of its own.</summary>
    private static string NameOf(FinishedFace whole, Point from, Point to, int index)
    {
        var best = whole.Edges.Take(whole.OuterEdges).OrderBy(edge => Math.Abs(Off(edge.From)) + Math.Abs(Off(edge.To))).First();
        return best.Name.Length > 0 ? best.Name : (index + 1).ToString(CultureInfo.InvariantCulture);

        double Off(Point point)
        {
            var length = Math.Sqrt((double)Segments.Dot(from, to, from, to));
            var along = (double)Segments.Dot(from, to, from, point) / length;
            // Off the line, and off its ends.
            return ((double)Segments.Cross(from, to, from, point) / length) + Math.Max(0, Math.Max(-along, along - length));
        }
    }

    /// <summary>What of a box lies to the left of some lines, moved inwards, counter-clockwise; null when nothing does.</summary>
    private static (long X, long Y)[]? Region(Box box, List<FoldLine> sides, double inwards)
    {
        var grown = Length.FromSteps(1);
        var region = new Box(box.Left - grown, box.Bottom - grown, box.Right + grown, box.Top + grown).Corners().Select(p => (X: (double)p.X.Steps, Y: (double)p.Y.Steps)).ToList();
        foreach (var side in sides)
        {
            var (run, rise) = ((double)(side.To.X - side.From.X).Steps, (double)(side.To.Y - side.From.Y).Steps);
            var length = Math.Sqrt((run * run) + (rise * rise));
            double Left((double X, double Y) p) => (((run * (p.Y - side.From.Y.Steps)) - (rise * (p.X - side.From.X.Steps))) / length) - inwards;
            var kept = new List<(double X, double Y)>();
            for (var i = 0; i < region.Count; i++)
            {
                var (a, b) = (region[i], region[(i + 1) % region.Count]);
                var (before, after) = (Left(a), Left(b));
                if (before >= 0) kept.Add(a);
                if (before < 0 != after < 0) kept.Add((a.X + ((b.X - a.X) * before / (before - after)), a.Y + ((b.Y - a.Y) * before / (before - after))));
            }

            region = kept;
        }

        var corners = region.Select(p => (X: Grid.Nearest(p.X).Steps, Y: Grid.Nearest(p.Y).Steps)).Distinct().ToArray();
        return corners.Length < 3 || new Ring(corners.Select(p => Point.FromSteps(p.X, p.Y)).ToSequence()).DoubledArea <= 0 ? null : corners;
    }

    private static TaggedCorner[] Tagged(Ring ring) => [.. ring.Points.Select((point, i) => new TaggedCorner(point.X.Steps, point.Y.Steps, i))];
}
