using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bonds;

/// <summary>
/// A straight bond seen course by course, in steps of 1/3200 mm, for the loops that must be quick. Course k begins
/// <see cref="Rise"/> times k across, and its tiles begin at <see cref="Offset"/> of k along, and every <see cref="Period"/>.
/// </summary>
/// <param name="Length">A tile's size along the course.</param>
/// <param name="Depth">A tile's size across it.</param>
/// <param name="Period">A tile and its joint, along.</param>
/// <param name="Rise">A tile and its joint, across.</param>
/// <param name="Offsets">Where the tiles of the courses of one repeat begin; the first is zero.</param>
/// <param name="Skew">What is added for each whole repeat of courses.</param>
internal sealed record Courses(long Length, long Depth, long Period, long Rise, long[] Offsets, long Skew)
{
    /// <summary>After how many courses nothing new comes, when the tiling may also be moved along: 1 for a steady step.</summary>
    public int Repeat => Offsets.Length;

    /// <summary>Where a tile of a course begins along it.</summary>
    public long Offset(long course)
    {
        var repeats = Grid.FloorDiv(course, Offsets.Length);
        return Offsets[course - (repeats * Offsets.Length)] + (repeats * Skew);
    }

    /// <summary>The courses of a bond, or null when it is not a straight one.</summary>
    public static Courses? Of(Bond bond)
    {
        var (first, second, motif) = (bond.Lattice.First, bond.Lattice.Second, bond.Motif);
        if (first.Across.Steps != 0 || second.Across.Steps % motif.Count != 0) return null;
        var rise = second.Across.Steps / motif.Count;
        var offsets = new long[motif.Count];
        var tile = motif[0].Cell;
        for (var i = 0; i < motif.Count; i++)
        {
            var cell = motif[i].Cell;
            if (!motif[i].IsBox || cell.Bottom.Steps != i * rise || cell.Width != tile.Width || cell.Height != tile.Height) return null;
            offsets[i] = cell.Left.Steps;
        }

        return new(tile.Width.Steps, tile.Height.Steps, first.Along.Steps, rise, offsets, second.Along.Steps);
    }
}
