using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Trims;

/// <summary>Settles how strips end at the corners of a field: who covers whom, who is mitred, where a corner piece stands.</summary>
internal static class StripCorner
{
    /// <summary>How one strip ends at the corner between two sides, and how the next begins there; each null where its side has none.</summary>
    public static (StripEnd? End, StripEnd? Begin) Of(FieldEdge one, TrimProduct? first, FieldEdge next, TrimProduct? second)
    {
        var corner = new Bend(one, next);
        if (corner.IsStraight) return (Straight(first, next), Straight(second, one));
        if (first is null || second is null)
        {
            return (first is null ? null : Alone(corner, one, first, next, one.Trimmed!.Left), second is null ? null : Alone(corner, next, second, one, next.Trimmed!.Right));
        }

        var (mitre, mitreNext) = Mitres(corner, one, first, next, second);
        var (said, saidNext) = (one.Trimmed!.Left.Corner, next.Trimmed!.Right.Corner);
        if (Piece(corner, first, second) is { } reach && (said is null or TrimCorner.Piece) && (saidNext is null or TrimCorner.Piece))
        {
            var kind = corner.IsOutside ? CornerPieceKind.Outside : CornerPieceKind.Inside;
            return (mitre.Short(kind, reach, first), mitreNext.Short(kind, reach, second));
        }

        var (near, far, nearNext, farNext) = (one.Joint.Steps, (one.Joint + first.Width).Steps, next.Joint.Steps, (next.Joint + second.Width).Steps);
        var over = said == TrimCorner.Covers || saidNext == TrimCorner.Butts;
        var under = saidNext == TrimCorner.Covers || said == TrimCorner.Butts;
        // What the saw cannot make is not planned: the wider one covers.
        if (!over && !under && !MitreAngle.CanBeSawn(mitre, first, mitreNext, second)) (over, under) = (first.Width >= second.Width, first.Width < second.Width);
        if (over) return (Over(corner, near, far, nearNext, farNext, next), Against(corner, nearNext, farNext, near, far, second, one));
        if (under) return (Against(corner, near, far, nearNext, farNext, first, next), Over(corner, nearNext, farNext, near, far, one));
        return (mitre, mitreNext);
    }

    /// <summary>Both on the mitre, which runs from where their sides that face the field cross to where their other sides do: at half the angle only where both are as wide.</summary>
    public static (StripEnd End, StripEnd Begin) Mitres(Bend corner, FieldEdge one, TrimProduct first, FieldEdge next, TrimProduct second)
    {
        var (near, far, nearNext, farNext) = (one.Joint.Steps, (one.Joint + first.Width).Steps, next.Joint.Steps, (next.Joint + second.Width).Steps);
        return (Mitre(corner.Reach(near, nearNext), corner.Reach(far, farNext), next), Mitre(corner.Reach(nearNext, near), corner.Reach(farNext, far), one));
    }

    /// <summary>The reach of the corner piece that stands at a corner of two trims; null where none can: it is made for a right angle and reaches past the mitre.</summary>
    public static Length? Piece(Bend corner, TrimProduct first, TrimProduct second) =>
        string.Equals(first.Name, second.Name, StringComparison.Ordinal) && corner.IsSquare ? corner.IsOutside ? first.Outside : first.Inside : null;

    private static StripEnd Mitre(long inner, long outer, FieldEdge meets) => new(TrimEnd.Mitre, inner, outer, meets) { Takes = Math.Abs(outer - inner) };

    private static StripEnd? Straight(TrimProduct? product, FieldEdge other) => product is null ? null : new(TrimEnd.Hidden, 0, 0, other);

    private static StripEnd Alone(Bend corner, FieldEdge edge, TrimProduct product, FieldEdge other, TrimEnding asked)
    {
        // Where the field goes on beyond, a joint is kept to it.
        var off = corner.IsOutside ? 0 : product.Joint.Steps;
        return new StripEnd(
            other.Kind is EdgeKind.Free or EdgeKind.OutsideCorner && !other.IsJog ? TrimEnd.Stop : TrimEnd.Hidden,
            corner.Reach(edge.Joint.Steps, off), corner.Reach((edge.Joint + product.Width).Steps, off), other).Finished(product, asked);
    }

    private static StripEnd Over(Bend corner, long near, long far, long nearOther, long farOther, FieldEdge other)
    {
        var until = corner.IsOutside ? farOther : nearOther;
        return new StripEnd(TrimEnd.Covers, corner.Reach(near, until), corner.Reach(far, until), other).Squared();
    }

    private static StripEnd Against(Bend corner, long near, long far, long nearOther, long farOther, TrimProduct product, FieldEdge other)
    {
        var until = corner.IsOutside ? nearOther - product.Joint.Steps : farOther + product.Joint.Steps;
        return new(TrimEnd.Butts, corner.Reach(near, until), corner.Reach(far, until), other);
    }
}
