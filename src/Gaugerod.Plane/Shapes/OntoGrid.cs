using Gaugerod.Plane.Measure;

namespace Gaugerod.Plane.Shapes;

/// <summary>The one place where what falls between two steps comes back to the grid of 1/3200 mm.</summary>
public static class OntoGrid
{
    /// <summary>
    /// The step nearest to a fraction of steps; from the middle of two, the upper. So a shape that is moved by whole
    /// steps is rounded the same way as before.
    /// </summary>
    /// <exception cref="DivideByZeroException">The denominator is zero.</exception>
    public static Length Nearest(Int128 numerator, Int128 denominator)
    {
        if (denominator < 0) (numerator, denominator) = (-numerator, -denominator);
        return Length.FromSteps((long)FloorDiv((numerator * 2) + denominator, denominator * 2));
    }

    /// <summary>The step at or below half a length.</summary>
    public static Length HalfDown(Length length) => Length.FromSteps(length.Steps >> 1);

    /// <summary>The value at a place between (or beyond) two places with known values, on the straight line through both.</summary>
    /// <exception cref="DivideByZeroException">The two places are one.</exception>
    public static Length Between(Length from, Length fromValue, Length to, Length toValue, Length at)
    {
        var rise = (Int128)(toValue - fromValue).Steps * (at - from).Steps;
        return fromValue + Nearest(rise, (to - from).Steps);
    }

    private static Int128 FloorDiv(Int128 value, Int128 by)
    {
        var (quotient, rest) = Int128.DivRem(value, by);
        return rest < 0 ? quotient - 1 : quotient;
    }
}
