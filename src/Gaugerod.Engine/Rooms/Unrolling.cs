using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Rooms;

/// <summary>Lays the faces of a run side by side, and sets them to one level line.</summary>
internal static class Unrolling
{
    /// <summary>
    /// Where each face's x = 0 lies on the run: its field begins, at the foot, one edge joint right of where the field
    /// before it ends, so that an offcut can go on along the next wall.
    /// </summary>
    public static Length[] Unrolled(IReadOnlyList<Field> fields, Take[][] takes, Length edgeJoint)
    {
        var at = new Length[fields.Count];
        for (var k = 1; k < fields.Count; k++)
        {
            var end = at[k - 1] + FootOf(fields[k - 1], Hand.Right);
            at[k] = end + JointBetween(k) - FootOf(fields[k], Hand.Left);
        }

        return at;

        Length JointBetween(int k)
        {
            var (one, other) = (TakeAt(k - 1, Hand.Right), TakeAt(k, Hand.Left));
            if (one is not { } left || other is not { } right) return edgeJoint;
            if (left.Laps != right.Laps) return left.Laps ? left.Joint : right.Joint;
            return Length.Max(left.Joint, right.Joint);
        }

        Take? TakeAt(int k, Hand hand)
        {
            var sides = fields[k].Face.Outline.Sides;
            for (var i = 0; i < sides.Count; i++)
            {
                if (sides[i].Hand == hand && sides[i].IsCorner) return takes[k][i];
            }

            return null;
        }
    }

    /// <summary>
    /// Where each face's y = 0 lies above the first's: level lines are one line. A face without one is taken to stand
    /// as high as the first.
    /// </summary>
    public static Length[] Raised(IReadOnlyList<DrawnFace> faces, Remarks remarks)
    {
        var reference = faces.Select(f => f.LevelLine).FirstOrDefault(line => line is not null);
        if (reference is not { } line) return new Length[faces.Count];
        foreach (var face in faces.Where(f => f.LevelLine is null))
        {
            remarks.Find(
                FindingLevel.Warn, "level-line", face.Face.Name,
                "Other faces of the run have a level line and this one has none: it is taken to stand level with them. Strike the line across it before courses are carried round.");
        }

        return [.. faces.Select(f => f.LevelLine is { } own ? line - own : Length.Zero)];
    }

    /// <summary>Where the field's left or right side stands at its foot; the field's own end where the face has no such side.</summary>
    private static Length FootOf(Field field, Hand hand)
    {
        Point? foot = null;
        foreach (var side in field.Outer.Where(s => s.Side.Hand == hand))
        {
            var low = side.From.Y <= side.To.Y ? side.From : side.To;
            if (foot is not { } lowest || low.Y < lowest.Y) foot = low;
        }

        var bounds = field.Shape.Outer.Bounds;
        return foot?.X ?? (hand == Hand.Left ? bounds.Left : bounds.Right);
    }
}
