using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Trims;

/// <summary>Settles how strips of two walls meet at the corner between them.</summary>
internal static class WallCorner
{
    /// <summary>Pairs the strips that end at the right corner of one face with those that end at the left corner of the next.</summary>
    public static void Settle(List<Strip> left, List<Strip> right, TrimRemarks remarks)
    {
        for (var i = 0; i < left.Count; i++)
        {
            if (EndAt(left[i], atRight: true) is not { } one) continue;
            var height = Height(left[i], atRight: true);
            var others = Enumerable.Range(0, right.Count).Where(k => EndAt(right[k], atRight: false) is { } end && end.Meets.Kind == one.Meets.Kind)
                .OrderBy(k => (Height(right[k], atRight: false) - height).Abs()).ToList();
            if (others.Count == 0 || (Height(right[others[0]], atRight: false) - height).Abs() >= left[i].Product.Width) continue;
            var (k, other) = (others[0], EndAt(right[others[0]], atRight: false)!.Value);
            var (end, next) = Meet(left[i], one, right[k], other);
            (end, next) = (Told(end, right[k]), Told(next, left[i]));
            if (end.End is TrimEnd.Mitre or TrimEnd.CornerPiece or TrimEnd.Covers) remarks.Heights(left[i], right[k], height, Height(right[k], atRight: false));
            CornerRemarks.OfWalls(remarks, left[i], right[k], Asked(left[i], atRight: true), Asked(right[k], atRight: false), end.End);
            (left[i], right[k]) = (With(left[i], end, atRight: true), With(right[k], next, atRight: false));
        }
    }

    private static (StripEnd One, StripEnd Other) Meet(Strip left, StripEnd one, Strip right, StripEnd other)
    {
        var (said, saidNext) = (Asked(left, atRight: true), Asked(right, atRight: false));
        var outside = one.Meets.Kind == EdgeKind.OutsideCorner;
        var piece = string.Equals(left.Product.Name, right.Product.Name, StringComparison.Ordinal) ? outside ? left.Product.Outside : left.Product.Inside : null;
        if (piece is { } reach && said is null or TrimCorner.Piece && saidNext is null or TrimCorner.Piece)
        {
            var kind = outside ? CornerPieceKind.Outside : CornerPieceKind.Inside;
            return (Plain(one).Short(kind, reach, left.Product), Plain(other).Short(kind, reach, right.Product));
        }

        if (said == TrimCorner.Mitred || saidNext == TrimCorner.Mitred || (outside && said is null or TrimCorner.Piece && saidNext is null or TrimCorner.Piece))
        {
            return (Mitred(one, left.Product), Mitred(other, right.Product));
        }

        // In an inner corner neither end shows, whoever runs through.
        if (!outside) return (one, other);
        return said == TrimCorner.Covers || saidNext == TrimCorner.Butts
            ? (Plain(one) with { End = TrimEnd.Covers }, Plain(other) with { End = TrimEnd.Butts })
            : (Plain(one) with { End = TrimEnd.Butts }, Plain(other) with { End = TrimEnd.Covers });
    }

    /// <summary>Mitred round the corner, which takes the trim's thickness of its back; an end that leans is shorter by its lean too.</summary>
    private static StripEnd Mitred(StripEnd end, TrimProduct product)
    {
        var plain = Plain(end);
        return plain with { End = TrimEnd.Mitre, Takes = product.Thickness.Steps + plain.Shortens };
    }

    /// <summary>The end at the wall's own corner, without the stop that an open end would have had.</summary>
    private static StripEnd Plain(StripEnd end) => end.Kind is null ? end : new(TrimEnd.Stop, 0, 0, end.Meets);

    private static TrimCorner? Asked(Strip strip, bool atRight) => (EndAt(strip, atRight) == strip.Begin ? strip.Edge.Trimmed!.Right : strip.Edge.Trimmed!.Left).Corner;

    /// <summary>A corner piece belongs to the strip beyond the corner, too.</summary>
    private static StripEnd Told(StripEnd end, Strip beyond) => end.End == TrimEnd.CornerPiece ? end with { RoundWall = (beyond.Face.Face.Name, beyond.Edge) } : end;

    /// <summary>The end at the corner towards a neighbour; null for none. The sides of an opening are no corners of the wall, whatever their kind.</summary>
    private static StripEnd? EndAt(Strip strip, bool atRight)
    {
        foreach (var end in new[] { strip.Begin, strip.End })
        {
            // What goes on round the corner by itself, or meets a bar on it, meets nothing beyond.
            if (end.End is not (TrimEnd.Stop or TrimEnd.StopPiece or TrimEnd.Hidden)) continue;
            if (end.Meets.Kind is EdgeKind.InsideCorner or EdgeKind.OutsideCorner && end.Meets.Hand == (atRight ? Hand.Right : Hand.Left)) return end;
        }

        return null;
    }

    private static Strip With(Strip strip, StripEnd end, bool atRight) =>
        EndAt(strip, atRight) == strip.Begin ? strip with { Begin = end } : strip with { End = end };

    /// <summary>How high a strip stands at the corner; one that rakes stands elsewhere at its middle.</summary>
    private static Length Height(Strip strip, bool atRight) => (EndAt(strip, atRight) == strip.Begin ? strip.Edge.From.Y : strip.Edge.To.Y) + strip.Face.Face.Raised;
}
