using Gaugerod.Plane.Measure;

namespace Gaugerod.Plane.Shapes;

/// <summary>The one place where what falls between two steps comes back to the grid of 1/3200 mm.</summary>
public static class Grid
{
    /// <summary>
    /// The step nearest to a fraction of steps; from the middle of two, the upper. So a shape that is moved by whole
    /// steps is rounded the same way as before.
    /// </summary>
    /// <exception cref="DivideByZeroException">The denominator is zero.</exception>
    public static long NearestStep(Int128 numerator, Int128 denominator)
    {
        if (denominator < 0) (numerator, denominator) = (-numerator, -denominator);
        // Division of so wide numbers is slow. Where they are narrow enough there are quicker ways to the same quotient.
        const long Narrow = 1L << 61, Near = 1L << 50;
        if (denominator > 0 && denominator < Narrow)
        {
            var twice = 2 * (long)denominator;
            var doubled = numerator + numerator + denominator;
            if (numerator > -Narrow && numerator < Narrow) return FloorDiv((long)doubled, twice);
            var guess = Math.Floor((double)doubled / twice);
            if (Math.Abs(guess) < Near)
            {
                // The guess is off by one at the most; what is left says so.
                var near = (long)guess;
                var over = doubled - Math.BigMul(near, twice);
                return over < 0 ? near - 1 : over >= twice ? near + 1 : near;
            }
        }

        var (quotient, rest) = Int128.DivRem((numerator * 2) + denominator, denominator * 2);
        return (long)(rest < 0 ? quotient - 1 : quotient);
    }

    /// <summary>The length nearest to a fraction of steps, as <see cref="NearestStep"/> rounds it.</summary>
    /// <exception cref="DivideByZeroException">The denominator is zero.</exception>
    public static Length Nearest(Int128 numerator, Int128 denominator) => Length.FromSteps(NearestStep(numerator, denominator));

    /// <summary>The length nearest to a number of steps that came out of a root or a turn; from the middle of two, the upper.</summary>
    public static Length Nearest(double steps) => Length.FromSteps((long)Math.Floor(steps + 0.5));

    /// <summary>The step at or below half a length.</summary>
    public static Length HalfDown(Length length) => Length.FromSteps(length.Steps >> 1);

    /// <summary>The value at a place between (or beyond) two places with known values, on the straight line through both.</summary>
    /// <exception cref="DivideByZeroException">The two places are one.</exception>
    public static Length Between(Length from, Length fromValue, Length to, Length toValue, Length at)
    {
        var rise = (Int128)(toValue - fromValue).Steps * (at - from).Steps;
        return fromValue + Nearest(rise, (to - from).Steps);
    }

    /// <summary>The quotient rounded towards less, and so the same on both sides of zero.</summary>
    public static long FloorDiv(long value, long by)
    {
        // One division; the rest by multiplication is cheaper than a second.
        var quotient = value / by;
        var rest = value - (quotient * by);
        return rest != 0 && (rest < 0) != (by < 0) ? quotient - 1 : quotient;
    }

    /// <summary>What is left of a value when whole repeats are taken off: zero or more, less than the repeat.</summary>
    /// <param name="value">Any value.</param>
    /// <param name="repeat">The repeat; more than zero.</param>
    public static long Mod(long value, long repeat)
    {
        var rest = value % repeat;
        return rest < 0 ? rest + repeat : rest;
    }
}
