using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Jobs;

/// <summary>An outline as it was read.</summary>
/// <param name="Ring">Its ring, arcs cut into chords; null when it cannot be used.</param>
/// <param name="Corners">How many corners the file gives, even when they cannot be used; as many as sides.</param>
internal sealed record RingReading(Ring? Ring, int? Corners)
{
    /// <summary>For each side of the ring, which of the file's sides it is of: an arc has many.</summary>
    public Sequence<int> Sides { get; init; } = [];

    /// <summary>The edge of each side of the ring: the file gives one for a whole arc.</summary>
    public Sequence<Edge> Each(Sequence<Edge> edges) => Sides.Select(side => edges[side]).ToSequence();
}

/// <summary>Reads an outline: a list of corners, counter-clockwise as seen from the room; an arc may lead to a corner.</summary>
internal static class RingReader
{
    private const int MostCorners = 1000;
    private const int MostSides = 2000;

    public static RingReading Read(Entry? entry, Values values)
    {
        if (entry is null) return new(null, null);
        if (entry is not Entry.List list)
        {
            values.Log.Add(entry, "a list of corners [[x, y], ...]");
            return new(null, null);
        }

        // Two arcs make a round column; two straight sides make nothing.
        var least = list.Items.Exists(item => item is Entry.Group) ? 2 : 3;
        if (list.Items.Count < least || list.Items.Count > MostCorners)
        {
            values.Log.AddSaid(list, string.Create(CultureInfo.InvariantCulture, $"{list.Items.Count} corner{(list.Items.Count == 1 ? "" : "s")}"), least == 2 ? "an outline of 2 to 1000 corners" : "an outline of 3 to 1000 corners");
            return new(null, null);
        }

        var corners = list.Items.ConvertAll(item => CornerReader.Read(item, values));
        if (corners.Exists(corner => corner?.To is null)) return new(null, list.Items.Count);
        var points = corners.ConvertAll(corner => corner!.To!.Value);
        if (points[0] == points[^1] && corners[0]!.Arrives is null)
        {
            values.Log.AddSaid(list.Items[^1], "the first corner a second time", "every corner once; the last side runs back to the first by itself", "leave this corner out");
            return new(null, null);
        }

        return Drawn(list, corners, points, values);
    }

    private static RingReading Drawn(Entry.List list, List<FileCorner?> corners, List<Point> points, Values values)
    {
        var (ring, sides, count) = (new List<Point>(), new List<int>(), points.Count);
        for (var i = 0; i < count; i++)
        {
            Add(points[i], i);
            var next = (i + 1) % count;
            if (corners[next]!.Arrives is not { } through) continue;
            if (CornerReader.ArcOf(points[i], through, points[next], list.Items[next].Path, count, values) is not { } arc) return new(null, count);
            if (ring.Count + arc.Chords > MostSides)
            {
                values.Log.AddSaid(list, "arcs that come to more than 2000 chords", "an outline of at most 2000 sides, chords counted", "straight sides where the arcs are flattest");
                return new(null, count);
            }

            foreach (var corner in arc.Corners()) Add(corner, i);
        }

        var drawn = new Ring(ring.ToSequence());
        // Which way round one runs that crosses itself nobody can tell: that it does is said once the edges have their names.
        if (drawn.DoubledArea >= 0 || !RingChecks.IsSimple(drawn)) return new(drawn, count) { Sides = sides.ToSequence() };
        values.Log.AddSaid(list, "corners that run clockwise", "corners counter-clockwise as seen from the room", "the same corners and edges in the opposite order");
        return new(null, count);

        void Add(Point point, int side)
        {
            ring.Add(point);
            sides.Add(side);
        }
    }
}
