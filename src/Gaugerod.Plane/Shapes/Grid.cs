namespace Gaugerod.Plane.Shapes;

/// <summary>The one place where something that falls between two steps is brought back to a whole one.</summary>
public static class Grid
{
    /// <summary>The whole step nearest to a fraction; from the middle of two, the one above.</summary>
    /// <param name="numerator">The fraction's numerator.</param>
    /// <param name="denominator">Its denominator; not zero.</param>
    public static long Nearest(Int128 numerator, Int128 denominator)
    {
        if (denominator < 0) (numerator, denominator) = (-numerator, -denominator);
        return (long)FloorDiv((numerator * 2) + denominator, denominator * 2);
    }

    /// <summary>The quotient rounded towards less, and so the same on both sides of zero.</summary>
    public static long FloorDiv(long value, long by) => (value / by) - (value % by != 0 && (value < 0) != (by < 0) ? 1 : 0);

    /// <summary>What is left of a value when whole repeats are taken off: zero or more, less than the repeat.</summary>
    /// <param name="value">Any value.</param>
    /// <param name="repeat">The repeat; more than zero.</param>
    public static long Mod(long value, long repeat)
    {
        var rest = value % repeat;
        return rest < 0 ? rest + repeat : rest;
    }

    private static Int128 FloorDiv(Int128 value, Int128 by) => (value / by) - (value % by < 0 ? 1 : 0);
}
