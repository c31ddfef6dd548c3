using Gaugerod.Plane;
using Gaugerod.Sheets.Drawings;

namespace Gaugerod.Sheets.Formats;

/// <summary>Hatch lines cut to an area, for a format that has no patterns. Lines of neighbouring areas line up, as with a pattern.</summary>
internal static class Hatching
{
    public static List<(Spot From, Spot To)> Lines(Sequence<Sequence<Spot>> rings, Hatch hatch)
    {
        var lines = new List<(Spot, Spot)>();
        Sweep(rings, hatch.Angle, hatch, lines);
        if (hatch.Crossed) Sweep(rings, hatch.Angle + 90, hatch, lines);
        return lines;
    }

    private static void Sweep(Sequence<Sequence<Spot>> rings, double angle, Hatch hatch, List<(Spot From, Spot To)> lines)
    {
        var (sin, cos) = Math.SinCos(-angle * Math.PI / 180);
        var turned = rings.Select(r => r.Select(s => new Spot((s.X * cos) + (s.Y * sin), (s.Y * cos) - (s.X * sin))).ToArray()).ToArray();
        var bounds = Frame.Around(turned.SelectMany(r => r));
        for (var row = (long)Math.Ceiling((bounds.Y / hatch.Spacing) - 0.5); (row + 0.5) * hatch.Spacing < bounds.Bottom; row++)
        {
            var y = (row + 0.5) * hatch.Spacing;
            var crossings = Crossings(turned, y);
            for (var i = 0; i + 1 < crossings.Count; i += 2)
            {
                foreach (var (from, to) in Dashes(crossings[i], crossings[i + 1], hatch.Dash))
                {
                    lines.Add((Back(from, y, sin, cos), Back(to, y, sin, cos)));
                }
            }
        }
    }

    private static List<double> Crossings(Spot[][] rings, double y)
    {
        var crossings = new List<double>();
        foreach (var ring in rings)
        {
            for (var i = 0; i < ring.Length; i++)
            {
                var (a, b) = (ring[i], ring[(i + 1) % ring.Length]);
                if (a.Y <= y != b.Y <= y) crossings.Add(a.X + ((b.X - a.X) * (y - a.Y) / (b.Y - a.Y)));
            }
        }

        crossings.Sort();
        return crossings;
    }

    private static IEnumerable<(double From, double To)> Dashes(double from, double to, double? dash)
    {
        if (dash is not { } length)
        {
            yield return (from, to);
            yield break;
        }

        for (var at = Math.Floor(from / (2 * length)) * 2 * length; at < to; at += 2 * length)
        {
            var (a, b) = (Math.Max(from, at), Math.Min(to, at + length));
            if (b > a) yield return (a, b);
        }
    }

    private static Spot Back(double x, double y, double sin, double cos) => new((x * cos) - (y * sin), (y * cos) + (x * sin));
}
