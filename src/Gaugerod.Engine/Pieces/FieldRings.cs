using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Pieces;

/// <summary>A face's field as tagged rings, ready to be clipped: a side's tag is its place in the face's edges; a drilled hole's comes after them.</summary>
internal sealed class FieldRings
{
    private FieldRings(FinishedFace face, TaggedCorner[][] sides, TaggedCorner[][] holes)
    {
        Face = face;
        All = [.. sides, .. holes];
        Covered = face.Field with { Inner = [.. face.Field.Inner, .. holes.Select(Ring)] };
    }

    public FinishedFace Face { get; }

    /// <summary>The field's rings and the drilled holes that lie wholly in it.</summary>
    public TaggedCorner[][] All { get; }

    /// <summary>What tile covers when the holes are drilled.</summary>
    public Polygon Covered { get; }

    public bool IsDrilled(int tag) => tag >= Face.Edges.Count;

    public static FieldRings Of(FinishedFace face)
    {
        var drilled = new List<TaggedCorner[]>();
        for (var i = 0; i < face.Holes.Count; i++)
        {
            if (HoleChecks.Of(face.Holes[i], face.Field) != OnTile.Wholly) continue;
            var tag = face.Edges.Count + i;
            drilled.Add([.. HoleChecks.Round(face.Holes[i]).Points.Select(p => new TaggedCorner(p.X.Steps, p.Y.Steps, tag))]);
        }

        return new(face, [.. face.TaggedRings()], [.. drilled]);
    }

    /// <summary>Whether a place lies in the field: to the right of it an odd number of sides is crossed.</summary>
    public static bool Contains(ReadOnlySpan<TaggedCorner[]> rings, long x, long y)
    {
        var inside = false;
        foreach (var ring in rings)
        {
            var from = ring[^1];
            foreach (ref readonly var to in ring.AsSpan())
            {
                if (from.Y > y != to.Y > y)
                {
                    var (low, high) = from.Y < to.Y ? (from, to) : (to, from);
                    if (Math.BigMul(x - low.X, high.Y - low.Y) < Math.BigMul(high.X - low.X, y - low.Y)) inside = !inside;
                }

                from = to;
            }
        }

        return inside;
    }

    private static Ring Ring(TaggedCorner[] clockwise) => new(clockwise.Reverse().Select(node => node.Point).ToSequence());
}
