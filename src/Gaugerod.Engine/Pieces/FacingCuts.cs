namespace Gaugerod.Engine.Pieces;

/// <summary>Two cuts that face each other across a strip of tile: the strip between them is what the tile has there, not what lies beyond.</summary>
internal static class FacingCuts
{
    /// <summary>The least width of the strip between two chords where both are; null where they do not face.</summary>
    public static double? Gap(in EdgeLine one, in Chord chord, in EdgeLine other, in Chord facing) =>
        Ends(one, chord, other, facing) is var (low, high) ? Math.Min(low, high) : null;

    /// <summary>The leg that a strip makes between two chords: how wide it is at the least, or where it runs out to nothing at the most; null where they do not face.</summary>
    public static double? Leg(in EdgeLine one, in Chord chord, in EdgeLine other, in Chord facing) =>
        Ends(one, chord, other, facing) is var (low, high) ? Legs.Of(Math.Min(low, high), Math.Max(low, high)) : null;

    /// <summary>The greatest width of the strip between two whole sides where both are; null where they do not face.</summary>
    public static double? Widest(in EdgeLine one, in EdgeLine other) =>
        Ends(one, new(0, one.Length), other, new(0, other.Length)) is var (low, high) ? Math.Max(low, high) : null;

    private static (double Low, double High)? Ends(in EdgeLine one, in Chord chord, in EdgeLine other, in Chord facing)
    {
        if (!one.Faces(other)) return null;
        var (fromX, fromY) = (other.X + (other.AlongX * facing.From), other.Y + (other.AlongY * facing.From));
        var (toX, toY) = (other.X + (other.AlongX * facing.To), other.Y + (other.AlongY * facing.To));
        // The other side runs the other way, so its end comes first along this one.
        var (first, last) = (one.Along(toX, toY), one.Along(fromX, fromY));
        var (start, end) = (Math.Max(chord.From, first), Math.Min(chord.To, last));
        if (start >= end) return null;
        var (near, far) = (one.Inwards(toX, toY), one.Inwards(fromX, fromY));
        var (low, high) = (At(start), At(end));
        return low >= 0 && high >= 0 ? (low, high) : null;

        double At(double along) => near + ((far - near) * (along - first) / (last - first));
    }
}
