namespace Gaugerod.Plane.Shapes;

/// <summary>
/// What of an area lies in a box. The area may have any shape and any holes; its outlines run counter-clockwise and its
/// holes clockwise, so that it lies to the left of every side, and so do the results'. Each side keeps its tag; a side
/// that the box cut gets the box side's tag. A side of the area that lies along the box's side counts as the box's.
/// </summary>
/// <remarks>
/// Method: one straight cut after another, four in all. The cut line stands a hair inside the box (corners on the line
/// are outside), so every crossing is a true one; crossings are sorted by exact fractions, then joined in pairs, and
/// only then brought to whole steps, which cannot change their order.
/// </remarks>
public static class BoxClip
{
    /// <summary>The tag of a side made by the box's left side.</summary>
    public const int Left = -1;

    /// <summary>The tag of a side made by the box's lower side.</summary>
    public const int Bottom = -2;

    /// <summary>The tag of a side made by the box's right side.</summary>
    public const int Right = -3;

    /// <summary>The tag of a side made by the box's upper side.</summary>
    public const int Top = -4;

    /// <summary>Clips.</summary>
    /// <param name="rings">The area's rings.</param>
    /// <param name="box">The box; it must not be empty.</param>
    /// <returns>The rings of what is left, outlines and holes mixed, none empty.</returns>
    public static IReadOnlyList<TaggedCorner[]> Clip(IEnumerable<TaggedCorner[]> rings, Box box)
    {
        ArgumentNullException.ThrowIfNull(rings);
        var (area, cut) = (new RingRow(), new HalfPlane());
        foreach (var ring in rings)
        {
            area.Add(ring);
            area.Close();
        }

        Cut(area, cut, box.Left.Steps, box.Bottom.Steps, box.Right.Steps, box.Top.Steps);
        var (left, corners) = (new List<TaggedCorner[]>(), new List<TaggedCorner>());
        for (var r = 0; r < cut.Kept.Count; r++)
        {
            corners.Clear();
            corners.AddRange(cut.Kept[r]);
            Tidied(corners, left);
        }

        return left;
    }

    /// <summary>The four cuts alone: rings that may still say corners twice or touch themselves.</summary>
    internal static void Cut(RingRow area, HalfPlane cut, long left, long bottom, long right, long top)
    {
        // A quarter turn clockwise brings the lower side to the left, then the right side, then the upper.
        cut.Keep(area, new UprightCut(left, 0), Left);
        cut.Keep(new UprightCut(bottom, 1), Bottom);
        cut.Keep(new UprightCut(-right, 2), Right);
        cut.Keep(new UprightCut(-top, 3), Top);
    }

    /// <summary>Adds what a ring bounds, each corner said once, no ring touching itself.</summary>
    internal static void Tidied(List<TaggedCorner> ring, List<TaggedCorner[]> tidied)
    {
        Tidy(ring);
        Apart(ring, tidied);
    }

    /// <summary>A hole whose corner just touches the box is joined to the outline there; it is taken off again.</summary>
    private static void Apart(List<TaggedCorner> ring, List<TaggedCorner[]> apart)
    {
        if (ring.Count < 3) return;
        for (var i = 0; i < ring.Count; i++)
        {
            for (var j = i + 1; j < ring.Count; j++)
            {
                if (ring[i].X != ring[j].X || ring[i].Y != ring[j].Y) continue;
                // The touching corner comes last, so that no ring begins on another's side.
                Tidied([.. ring[(i + 1)..j], ring[i]], apart);
                Tidied([.. ring[(j + 1)..], .. ring[..i], ring[j]], apart);
                return;
            }
        }

        apart.Add([.. ring]);
    }

    /// <summary>Drops corners said twice, spikes of no width, and corners in the middle of one straight side; leaves nothing where no three corners are left.</summary>
    private static void Tidy(List<TaggedCorner> kept)
    {
        for (var again = true; again && kept.Count >= 3;)
        {
            again = false;
            for (var i = 0; i < kept.Count && kept.Count >= 3; i++)
            {
                var last = i == 0 ? kept.Count - 1 : i - 1;
                var (before, here, after) = (kept[last], kept[i], kept[i + 1 == kept.Count ? 0 : i + 1]);
                var (ax, ay, bx, by) = (here.X - before.X, here.Y - before.Y, after.X - here.X, after.Y - here.Y);
                var same = ax == 0 && ay == 0;
                var inLine = Math.BigMul(ax, by) == Math.BigMul(ay, bx);
                var back = inLine && Math.BigMul(ax, bx) + Math.BigMul(ay, by) < 0;
                if (!same && !back && !(inLine && before.Tag == here.Tag)) continue;
                // A corner said twice hands its side's tag back to the corner before it.
                if (same || back) kept[last] = before with { Tag = here.Tag };
                kept.RemoveAt(i);
                again = true;
                i--;
            }
        }

        if (kept.Count < 3) kept.Clear();
    }
}
