using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Trims;

/// <summary>Settles how strips end at the corners of a field: who covers whom, who is mitred, where a corner piece stands.</summary>
internal static class StripCorner
{
    // Sides that bend less than this go straight on: there is no corner to turn.
    private const double Gentle = 0.125;

    /// <summary>How one strip ends at the corner between two sides, and how the next begins there; each null where its side has none.</summary>
    public static (StripEnd? End, StripEnd? Begin) Of(FieldEdge one, TrimProduct? first, FieldEdge next, TrimProduct? second)
    {
        var corner = new Bend(one, next);
        if (Math.Abs(corner.Sine) < Gentle) return (Straight(first, next), Straight(second, one));
        if (first is null || second is null) return (Alone(corner, one, first, next), Alone(corner, next, second, one));
        var (near, far, nearNext, farNext) = (one.Joint.Steps, (one.Joint + first.Width).Steps, next.Joint.Steps, (next.Joint + second.Width).Steps);
        var mitre = new StripEnd(TrimEnd.Mitre, corner.Reach(near, nearNext), corner.Reach(far, farNext), next) { Takes = first.Width.Steps };
        var mitreNext = new StripEnd(TrimEnd.Mitre, corner.Reach(nearNext, near), corner.Reach(farNext, far), one) { Takes = second.Width.Steps };
        var (said, saidNext) = (one.Trimmed!.Corner, next.Trimmed!.Corner);
        var piece = string.Equals(first.Name, second.Name, StringComparison.Ordinal) ? corner.IsOutside ? first.Outside : first.Inside : null;
        if (piece is { } reach && (said is null or TrimCorner.Piece) && (saidNext is null or TrimCorner.Piece))
        {
            return (Short(mitre, reach, first), Short(mitreNext, reach, second));
        }

        if (said == TrimCorner.Covers || saidNext == TrimCorner.Butts) return (Over(corner, near, far, nearNext, farNext, next), Against(corner, nearNext, farNext, near, far, second, one));
        if (saidNext == TrimCorner.Covers || said == TrimCorner.Butts) return (Against(corner, near, far, nearNext, farNext, first, next), Over(corner, nearNext, farNext, near, far, one));
        return (mitre, mitreNext);
    }

    /// <summary>An end cut short for a corner piece or a stop, and the joint before it.</summary>
    public static StripEnd Short(StripEnd end, Length piece, TrimProduct product)
    {
        var at = end.Long - (piece + product.Joint).Steps;
        return new(TrimEnd.CornerPiece, at, at, end.Meets) { Piece = piece.Steps };
    }

    private static StripEnd? Straight(TrimProduct? product, FieldEdge other) => product is null ? null : new(TrimEnd.Hidden, 0, 0, other);

    private static StripEnd? Alone(Bend corner, FieldEdge edge, TrimProduct? product, FieldEdge other)
    {
        if (product is null) return null;
        // Where the field goes on beyond, a joint is kept to it.
        var off = corner.IsOutside ? 0 : product.Joint.Steps;
        var end = new StripEnd(
            other.Kind is EdgeKind.Free or EdgeKind.OutsideCorner ? TrimEnd.Stop : TrimEnd.Hidden,
            corner.Reach(edge.Joint.Steps, off), corner.Reach((edge.Joint + product.Width).Steps, off), other);
        return end.End == TrimEnd.Stop && product.Stop is { } stop ? Short(end, stop, product) : end;
    }

    private static StripEnd Over(Bend corner, long near, long far, long nearOther, long farOther, FieldEdge other)
    {
        var until = corner.IsOutside ? farOther : nearOther;
        return new(TrimEnd.Covers, corner.Reach(near, until), corner.Reach(far, until), other);
    }

    private static StripEnd Against(Bend corner, long near, long far, long nearOther, long farOther, TrimProduct product, FieldEdge other)
    {
        var until = corner.IsOutside ? nearOther - product.Joint.Steps : farOther + product.Joint.Steps;
        return new(TrimEnd.Butts, corner.Reach(near, until), corner.Reach(far, until), other);
    }

    /// <summary>How far the field's edge turns from one side to the next.</summary>
    private readonly struct Bend
    {
        public Bend(FieldEdge one, FieldEdge next)
        {
            var size = Math.Sqrt((double)Segments.Dot(one.From, one.To, one.From, one.To)) * Math.Sqrt((double)Segments.Dot(next.From, next.To, next.From, next.To));
            Sine = (double)Segments.Cross(one.From, one.To, next.From, next.To) / size;
            Cosine = (double)Segments.Dot(one.From, one.To, next.From, next.To) / size;
        }

        public double Sine { get; }

        public double Cosine { get; }

        /// <summary>Whether the corner points out of the field, so that a strip round it is longer on its far side.</summary>
        public bool IsOutside => Sine > 0;

        /// <summary>How far past the corner a line so far off one side meets a line so far off the other.</summary>
        public long Reach(long off, long other) => Grid.Nearest((other - (off * Cosine)) / Sine).Steps;
    }
}
