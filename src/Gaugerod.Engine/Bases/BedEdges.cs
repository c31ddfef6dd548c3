using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bases;

/// <summary>Says how high a bed stands along the straight edges of its floor: what walls over it stand on.</summary>
internal static class BedEdges
{
    // Straight from one place to the next, the line is nowhere off by more than this, in millimetres; arcs are drawn so too.
    private const double Off = 0.1;

    private const double Shortest = 20;

    public static IEnumerable<BedEdge> Of(DrawnRing outline, BedSurface surface)
    {
        var (points, n) = (outline.Ring.Points, outline.Sides.Count);
        for (var i = 0; i < n; i++)
        {
            // An arc is no wall that one could stand a level on.
            if (EdgeSpans.IsChord(outline, i)) continue;
            var (from, to) = (Place.Of(points[i]), Place.Of(points[(i + 1) % n]));
            var line = new List<(double Along, double Over)> { (0, surface.At(from)) };
            var length = from.To(to);
            // A wall is looked at in parts, so that a valley in its middle is not missed.
            const int Parts = 8;
            for (var part = 0; part < Parts; part++) Add(line, length * part / Parts, length * (part + 1) / Parts, along => surface.At(from + ((to - from) * (along / length))));
            yield return new(outline.Sides[i].Name, points[i], points[(i + 1) % n], Straightened(line).Select(at => new Point(BedMaker.Of(at.Along), BedMaker.Of(at.Over))).ToSequence());
        }
    }

    private static void Add(List<(double Along, double Over)> line, double from, double to, Func<double, double> over)
    {
        var (first, last, middle) = (line[^1].Over, over(to), (from + to) / 2);
        if (to - from > Shortest && new[] { 0.25, 0.5, 0.75 }.Any(part => Math.Abs(over(from + ((to - from) * part)) - (first + ((last - first) * part))) > Off / 2))
        {
            Add(line, from, middle, over);
            Add(line, middle, to, over);
            return;
        }

        line.Add((to, last));
    }

    /// <summary>Without the places that the line runs straight through.</summary>
    private static List<(double Along, double Over)> Straightened(List<(double Along, double Over)> line)
    {
        var kept = new List<(double Along, double Over)> { line[0] };
        for (var (i, from) = (1, 0); i < line.Count; i++)
        {
            if (i + 1 < line.Count && Enumerable.Range(from + 1, i - from).All(between => IsOn(line[from], line[i + 1], line[between]))) continue;
            kept.Add(line[i]);
            from = i;
        }

        return kept;
    }

    private static bool IsOn((double Along, double Over) from, (double Along, double Over) to, (double Along, double Over) at) =>
        Math.Abs(at.Over - from.Over - ((to.Over - from.Over) * (at.Along - from.Along) / (to.Along - from.Along))) <= Off / 2;
}
