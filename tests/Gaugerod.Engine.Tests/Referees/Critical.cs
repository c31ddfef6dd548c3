using Gaugerod.Engine.Bonds;

namespace Gaugerod.Engine.Tests.Referees;

/// <summary>
/// The offsets at which something can change, from the field's corners alone: a tile's side at a corner, a step to either
/// side of it, half-way between any two such places (where two cuts are equal), and where a cut has one of some sizes.
/// </summary>
internal static class Critical
{
    public static (SortedSet<long> Along, SortedSet<long> Across) Of(RandomRun run, params long[] sizes)
    {
        var (w, h, j) = (run.Product.Width.Steps, run.Product.Height.Steps, run.Joint.Steps);
        var upright = run.Bond.Lay == Lay.Upright;
        var (along, across) = (new HashSet<long>(), new HashSet<long>());
        foreach (var face in run.Faces)
        {
            foreach (var edge in face.Edges)
            {
                var (x, y) = (edge.From.X.Steps, edge.From.Y.Steps);
                if (!run.Restart || upright) x += face.Unrolled.Steps;
                if (!run.Restart || !upright) y += face.Raised.Steps;
                along.Add(upright ? y : x);
                across.Add(upright ? x : y);
            }
        }

        // A third of a tile is rounded to a step, so no course begins just where another does: all that are on the walls count.
        var (first, last) = ((int)Math.Floor(across.Min() / (double)(h + j)) - 2, (int)Math.Ceiling(across.Max() / (double)(h + j)) + 1);
        var courses = run.Bond is BondRequest.Running ? Enumerable.Range(first, last - first + 1) : [0];
        var starts = along.SelectMany(at => courses.Select(k => at - Cells.Offset(run.Bond, w + j, k)))
            .Select(at => Rest(at, w + j)).ToHashSet();
        var repeat = run.Bond is BondRequest.Running { Stepping: Stepping.BackAndForth } ? 2 : 1;
        var rises = Offsets(across.Select(at => Rest(at, h + j)).ToHashSet(), h, h + j, sizes);
        return (Offsets(starts, w, w + j, sizes), [.. rises.SelectMany(v => Enumerable.Range(0, repeat).Select(i => v + (i * (h + j))))]);
    }

    private static SortedSet<long> Offsets(HashSet<long> places, long size, long period, long[] sizes)
    {
        var ends = places.Concat(places.Select(at => Rest(at - size, period))).ToHashSet();
        var found = new SortedSet<long>();
        foreach (var end in ends)
        {
            for (var off = -1; off <= 1; off++) found.Add(Rest(end + off, period));
            foreach (var wanted in sizes)
            {
                found.Add(Rest(end + wanted, period));
                found.Add(Rest(end - wanted, period));
            }
        }

        foreach (var one in places)
        {
            foreach (var other in places)
            {
                // A cut of x - u on one side and u + size - y on the other are equal half-way.
                foreach (var twice in new[] { one + other - size, one + other - size + period })
                {
                    found.Add(Rest((long)Math.Floor(twice / 2.0), period));
                    found.Add(Rest((long)Math.Ceiling(twice / 2.0), period));
                }
            }
        }

        return found;
    }

    private static long Rest(long value, long period) => ((value % period) + period) % period;
}
