using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>
/// The offsets at which something can change in a room whose sides are all plumb or level, from the field's sides alone:
/// a tile's side on a side of the field, a step to either side of it, half-way between two sides that face opposite ways
/// (where two cuts are equal), and where a cut has one of some sizes.
/// </summary>
internal static class Critical
{
    private readonly record struct Place(long At, bool TileAfter);

    public static (SortedSet<long> Along, SortedSet<long> Across) Of(RandomRun run, bool gaps, params long[] sizes)
    {
        // What stands between two sides less than a tile apart is a leg too, and another cut may equal it.
        long[] all = gaps ? [.. sizes, .. run.Faces.SelectMany(Between)] : sizes;
        return Of(run, (places, size, period) => Offsets(places, size, period, all));
    }

    /// <summary>
    /// Where two cuts that run the same way and the kerf between them just fill a tile, or one cut and its like: only there
    /// do two straight pieces begin to share a tile, or cease to.
    /// </summary>
    public static (SortedSet<long> Along, SortedSet<long> Across) Shared(RandomRun run) =>
        Of(run, (places, size, period) => Sharing(places, size, period, run.Product.Kerf.Steps));

    private static (SortedSet<long> Along, SortedSet<long> Across) Of(RandomRun run, Func<HashSet<Place>, long, long, SortedSet<long>> offsets)
    {
        var (w, h, j) = (run.Product.Width.Steps, run.Product.Height.Steps, run.Joint.Steps);
        var upright = run.Bond.Lay == Lay.Upright;
        var (along, across) = (new HashSet<Place>(), new HashSet<Place>());
        foreach (var face in run.Faces)
        {
            var (right, up) = upright ? (face.Raised.Steps, face.Unrolled.Steps) : (face.Unrolled.Steps, face.Raised.Steps);
            foreach (var edge in face.Edges)
            {
                var plumb = edge.From.X == edge.To.X;
                if (plumb == upright)
                {
                    // It lies along the courses: tile is above a side that runs right, and right of one that runs down.
                    across.Add(new(Rest((upright ? edge.From.X : edge.From.Y).Steps + (run.Restart && upright ? 0 : up), h + j), upright ? edge.To.Y < edge.From.Y : edge.To.X > edge.From.X));
                    continue;
                }

                var at = (upright ? edge.From.Y : edge.From.X).Steps + (run.Restart && !upright ? 0 : right);
                var after = upright ? edge.To.X > edge.From.X : edge.To.Y < edge.From.Y;
                foreach (var course in Courses(edge, up, upright, h + j)) along.Add(new(Rest(at - Cells.Offset(run.Bond, w + j, course), w + j), after));
            }
        }

        var rises = offsets(across, h, h + j);
        return (offsets(along, w, w + j), [.. rises.SelectMany(v => Enumerable.Range(0, run.Repeat).Select(i => v + (i * (h + j))))]);
    }

    /// <summary>The courses that may cross a side, wherever course 0 begins in its two repeats. A third of a tile is rounded to a step, so hardly two begin alike.</summary>
    private static IEnumerable<long> Courses(FieldEdge edge, long up, bool upright, long rise)
    {
        var (one, other) = upright ? (edge.From.X.Steps, edge.To.X.Steps) : (edge.From.Y.Steps, edge.To.Y.Steps);
        var (first, last) = ((long)Math.Floor((Math.Min(one, other) + up) / (double)rise) - 2, (long)Math.Floor((Math.Max(one, other) + up) / (double)rise));
        for (var k = first; k <= last; k++) yield return k;
    }

    private static IEnumerable<long> Between(FinishedFace face) =>
        from one in face.Edges
        from other in face.Edges
        let level = one.From.Y == one.To.Y
        where level == (other.From.Y == other.To.Y)
        where level ? one.To.X > one.From.X && other.To.X < other.From.X : one.To.Y < one.From.Y && other.To.Y > other.From.Y
        select level ? (other.From.Y - one.From.Y).Steps : (other.From.X - one.From.X).Steps;

    private static SortedSet<long> Offsets(HashSet<Place> places, long size, long period, long[] sizes)
    {
        var found = new SortedSet<long>();
        foreach (var (at, after) in places)
        {
            for (var off = -1; off <= 1; off++)
            {
                found.Add(Rest(at + off, period));
                found.Add(Rest(at - size + off, period));
            }

            foreach (var wanted in sizes.Where(wanted => wanted > 0 && wanted < size).Distinct()) found.Add(Rest(after ? at - size + wanted : at - wanted, period));
        }

        foreach (var one in places.Where(place => place.TileAfter))
        {
            foreach (var other in places.Where(place => !place.TileAfter))
            {
                // The one cut is u + size - x, the other y - u.
                foreach (var twice in new[] { one.At + other.At - size, one.At + other.At - size + period })
                {
                    found.Add(Rest((long)Math.Floor(twice / 2.0), period));
                    found.Add(Rest((long)Math.Ceiling(twice / 2.0), period));
                }
            }
        }

        return found;
    }

    private static SortedSet<long> Sharing(HashSet<Place> places, long size, long period, long kerf)
    {
        var found = new SortedSet<long>();
        foreach (var one in places)
        {
            foreach (var other in places.Where(other => other.TileAfter == one.TileAfter))
            {
                // Two cuts before a side are x - u and y - u, two after one u + size - x and u + size - y.
                var twice = one.At + other.At - size + (one.TileAfter ? -kerf : kerf);
                foreach (var around in new[] { twice - 2, twice, twice + 2, twice - 2 + period, twice + period, twice + 2 + period })
                {
                    found.Add(Rest((long)Math.Floor(around / 2.0), period));
                    found.Add(Rest((long)Math.Ceiling(around / 2.0), period));
                }
            }
        }

        return found;
    }

    private static long Rest(long value, long period) => ((value % period) + period) % period;
}
