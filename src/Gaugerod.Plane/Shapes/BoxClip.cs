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
        return Tidied(Cut(rings, box.Left.Steps, box.Bottom.Steps, box.Right.Steps, box.Top.Steps));
    }

    /// <summary>The four cuts alone: rings that may still say corners twice or touch themselves.</summary>
    internal static List<TaggedCorner[]> Cut(IEnumerable<TaggedCorner[]> rings, long left, long bottom, long right, long top)
    {
        // A quarter turn clockwise brings the lower side to the left, then the right side, then the upper.
        var kept = HalfPlane.KeepRight(rings, left, Left);
        kept = HalfPlane.KeepRight(Turned(kept), bottom, Bottom);
        kept = HalfPlane.KeepRight(Turned(kept), -right, Right);
        kept = HalfPlane.KeepRight(Turned(kept), -top, Top);
        return [.. Turned(kept)];
    }

    /// <summary>The rings that bound something, each corner said once, no ring touching itself.</summary>
    internal static IReadOnlyList<TaggedCorner[]> Tidied(IEnumerable<TaggedCorner[]> rings) =>
        [.. rings.Select(Tidy).SelectMany(Apart).Where(ring => ring.Length >= 3)];

    private static IEnumerable<TaggedCorner[]> Turned(List<TaggedCorner[]> rings) =>
        rings.Select(ring => Array.ConvertAll(ring, node => node.QuarterTurned()));

    /// <summary>A hole whose corner just touches the box is joined to the outline there; it is taken off again.</summary>
    private static IEnumerable<TaggedCorner[]> Apart(TaggedCorner[] ring)
    {
        for (var i = 0; i < ring.Length; i++)
        {
            for (var j = i + 1; j < ring.Length; j++)
            {
                if (ring[i].X != ring[j].X || ring[i].Y != ring[j].Y) continue;
                // The touching corner comes last, so that no ring begins on another's side.
                TaggedCorner[] loop = [.. ring[(i + 1)..j], ring[i]], rest = [.. ring[(j + 1)..], .. ring[..i], ring[j]];
                return Apart(Tidy(loop)).Concat(Apart(Tidy(rest)));
            }
        }

        return [ring];
    }

    /// <summary>Drops corners said twice, spikes of no width, and corners in the middle of one straight side.</summary>
    private static TaggedCorner[] Tidy(TaggedCorner[] ring)
    {
        var kept = new List<TaggedCorner>(ring);
        for (var again = true; again && kept.Count >= 3;)
        {
            again = false;
            for (var i = 0; i < kept.Count && kept.Count >= 3; i++)
            {
                var (before, here, after) = (kept[(i + kept.Count - 1) % kept.Count], kept[i], kept[(i + 1) % kept.Count]);
                var (ax, ay, bx, by) = (here.X - before.X, here.Y - before.Y, after.X - here.X, after.Y - here.Y);
                var same = ax == 0 && ay == 0;
                var inLine = ((Int128)ax * by) == ((Int128)ay * bx);
                var back = inLine && (((Int128)ax * bx) + ((Int128)ay * by)) < 0;
                if (!same && !back && !(inLine && before.Tag == here.Tag)) continue;
                // A corner said twice hands its side's tag back to the corner before it.
                if (same || back) kept[(i + kept.Count - 1) % kept.Count] = before with { Tag = here.Tag };
                kept.RemoveAt(i);
                again = true;
                i--;
            }
        }

        return kept.Count >= 3 ? [.. kept] : [];
    }
}
