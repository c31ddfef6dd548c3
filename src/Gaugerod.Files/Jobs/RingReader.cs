using System.Globalization;
using Gaugerod.Files.Json;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads an outline: a list of corners, counter-clockwise as seen from the room.</summary>
internal static class RingReader
{
    private const int MostCorners = 1000;

    /// <summary>The ring, and how many corners the file gives even when they cannot be used.</summary>
    public static (Ring? Ring, int? Corners) Read(Entry? entry, Values values)
    {
        if (entry is null) return (null, null);
        if (entry is not Entry.List list)
        {
            values.Log.Add(entry, "a list of corners [[x, y], ...]");
            return (null, null);
        }

        if (list.Items.Count is < 3 or > MostCorners)
        {
            values.Log.AddSaid(list, string.Create(CultureInfo.InvariantCulture, $"{list.Items.Count} corners"), "an outline of 3 to 1000 corners");
            return (null, null);
        }

        var points = new List<Point>();
        foreach (var item in list.Items)
        {
            if (item is not Entry.List { Items: [var x, var y] })
            {
                values.Log.Add(item, "a corner [x, y]: so far from the left, so far up");
                continue;
            }

            var (right, up) = (values.Length(x, LengthRange.Position), values.Length(y, LengthRange.Position));
            if (right is { } r && up is { } u) points.Add(new(r, u));
        }

        if (points.Count != list.Items.Count) return (null, list.Items.Count);
        if (points[0] == points[^1])
        {
            values.Log.AddSaid(list.Items[^1], "the first corner a second time", "every corner once; the last side runs back to the first by itself", "leave this corner out");
            return (null, null);
        }

        var ring = new Ring(points.ToSequence());
        if (ring.DoubledArea < 0)
        {
            values.Log.AddSaid(list, "corners that run clockwise", "corners counter-clockwise as seen from the room", "the same corners and edges in the opposite order");
            return (null, points.Count);
        }

        return (ring, points.Count);
    }
}
