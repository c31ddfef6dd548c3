using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Bases;

/// <summary>A corner of a triangle of a face as read: where, and how far it stands off.</summary>
internal readonly record struct Stand(Place At, double Off);

/// <summary>The face between its readings, as triangles.</summary>
internal static class ReadSurface
{
    /// <summary>The cells of a grid, each in four triangles about its middle, which stands at the mean of its corners.</summary>
    public static IEnumerable<(Stand A, Stand B, Stand C)> Of(FlatGrid grid, Func<FlatReading, double> off)
    {
        for (var row = 0; row + 1 < grid.Rows.Count; row++)
        {
            for (var column = 0; column + 1 < grid.Rows[0].Count; column++)
            {
                Stand[] corners = [At(column, row), At(column + 1, row), At(column + 1, row + 1), At(column, row + 1)];
                var middle = new Stand((corners[0].At + corners[2].At) * 0.5, corners.Average(corner => corner.Off));
                for (var k = 0; k < 4; k++) yield return (corners[k], corners[(k + 1) % 4], middle);
            }
        }

        Stand At(int column, int row) => Profiles.At(grid, column, row) is var reading ? new(Place.Of(reading.At), off(reading)) : default;
    }

    /// <summary>
    /// Triangles between any places, none with another place in the round through its corners (B. Delaunay; each place is put in
    /// by clearing the triangles whose round it lies in, as A. Bowyer and D. Watson did in 1981; from memory).
    /// </summary>
    public static IEnumerable<(Stand A, Stand B, Stand C)> Of(IReadOnlyList<Stand> stands)
    {
        var (middle, size) = (stands[0].At, 1 + stands.Max(stand => stand.At.To(stands[0].At)));
        // Three places so far off that their rounds are straight lines here.
        Stand[] all = [.. stands, new(middle + new Place(-3e5 * size, -1e5 * size), 0), new(middle + new Place(3e5 * size, -2e5 * size), 0), new(middle + new Place(1e4 * size, 4e5 * size), 0)];
        var count = stands.Count;
        List<(int A, int B, int C)> triangles = [(count, count + 1, count + 2)];
        for (var place = 0; place < count; place++)
        {
            var hit = triangles.FindAll(t => InRound(all[t.A].At, all[t.B].At, all[t.C].At, all[place].At));
            var sides = hit.SelectMany(t => new[] { (t.A, t.B), (t.B, t.C), (t.C, t.A) }).ToHashSet();
            triangles.RemoveAll(hit.Contains);
            foreach (var (a, b) in sides.Where(side => !sides.Contains((side.Item2, side.Item1)))) triangles.Add((a, b, place));
        }

        return triangles.Where(t => t.A < count && t.B < count && t.C < count).Select(t => (all[t.A], all[t.B], all[t.C]));
    }

    /// <summary>How much fits between a level and what of the triangles lies under it.</summary>
    public static (double Area, double Volume) Under(IEnumerable<(Stand A, Stand B, Stand C)> triangles, double level)
    {
        var (whole, volume) = (0.0, 0.0);
        foreach (var (a, b, c) in triangles)
        {
            whole += Area(a.At, b.At, c.At);
            var under = Under([a, b, c], level);
            for (var i = 1; i + 1 < under.Count; i++)
            {
                volume += Area(under[0].At, under[i].At, under[i + 1].At) * (level - ((under[0].Off + under[i].Off + under[i + 1].Off) / 3));
            }
        }

        return (whole, volume);
    }

    /// <summary>What of a triangle lies no higher than a level.</summary>
    public static List<Stand> Under(Stand[] triangle, double level)
    {
        var under = new List<Stand>();
        for (var i = 0; i < triangle.Length; i++)
        {
            var (a, b) = (triangle[i], triangle[(i + 1) % triangle.Length]);
            if (a.Off <= level) under.Add(a);
            if ((a.Off <= level) != (b.Off <= level)) under.Add(new(a.At + ((b.At - a.At) * ((level - a.Off) / (b.Off - a.Off))), level));
        }

        return under;
    }

    private static double Area(Place a, Place b, Place c) => Math.Abs((c - a).Across(b - a)) / 2;

    // The sign of the usual determinant, for corners counter-clockwise.
    private static bool InRound(Place a, Place b, Place c, Place place)
    {
        var (p, q, r) = (a - place, b - place, c - place);
        return (p.Along(p) * r.Across(q)) - (q.Along(q) * r.Across(p)) + (r.Along(r) * q.Across(p)) > 0;
    }
}
