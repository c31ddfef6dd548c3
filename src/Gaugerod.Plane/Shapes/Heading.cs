using Gaugerod.Plane.Measure;

namespace Gaugerod.Plane.Shapes;

/// <summary>
/// A direction, and how places are turned to it about the origin. Quarter turns are exact. Any other turn leaves the grid and
/// comes back to it here, to the nearest step, so that a turned place is at most 0.71 of a step (0.0003 mm) from its true
/// one.
/// </summary>
/// <remarks>
/// Sine and cosine are summed here from products and sums alone, since the functions of the machine may differ in the last
/// bit from one to another, and the same job must give the same plan everywhere. Against tables they are right to 2e-16.
/// </remarks>
public readonly record struct Heading
{
    private readonly int _quarters;

    private Heading(Angle angle, int quarters, double cos, double sin) => (Angle, _quarters, Cos, Sin) = (angle, quarters, cos, sin);

    /// <summary>The turn, from zero up to but not including a full one.</summary>
    public Angle Angle { get; }

    /// <summary>The turn's cosine.</summary>
    public double Cos { get; }

    /// <summary>The turn's sine.</summary>
    public double Sin { get; }

    /// <summary>Whether the turn is a whole number of quarters.</summary>
    public bool IsSquare => _quarters >= 0;

    /// <summary>The heading so far round from straight right.</summary>
    public static Heading Of(Angle angle)
    {
        const int Full = 4 * Angle.QuarterTurn;
        var turn = ((angle.Thousandths % Full) + Full) % Full;
        var (quarters, rest) = (turn / Angle.QuarterTurn, turn % Angle.QuarterTurn);
        var (cos, sin) = rest == 0 ? (1.0, 0.0) : FirstQuarter(rest);
        var (c, s) = quarters switch { 0 => (cos, sin), 1 => (-sin, cos), 2 => (-cos, -sin), _ => (sin, -cos) };
        return new(Angle.FromThousandths(turn), rest == 0 ? quarters : -1, c, s);
    }

    /// <summary>A place turned counter-clockwise about the origin.</summary>
    public Point Turn(Point point) => Turned(point.X.Steps, point.Y.Steps, 1);

    /// <summary>A turned place turned back.</summary>
    public Point Back(Point point) => Turned(point.X.Steps, point.Y.Steps, -1);

    private Point Turned(long x, long y, int way) => IsSquare
        ? (((_quarters * way) + 4) % 4) switch
        {
            0 => Point.FromSteps(x, y),
            1 => Point.FromSteps(-y, x),
            2 => Point.FromSteps(-x, -y),
            _ => Point.FromSteps(y, -x),
        }
        : new(Grid.Nearest((x * Cos) - (y * Sin * way)), Grid.Nearest((x * Sin * way) + (y * Cos)));

    /// <summary>Cosine and sine of an angle between zero and a right one; above 45 degrees by the other's complement.</summary>
    private static (double Cos, double Sin) FirstQuarter(int thousandths)
    {
        if (thousandths == Angle.QuarterTurn / 2) return (Math.Sqrt(0.5), Math.Sqrt(0.5));
        if (thousandths > Angle.QuarterTurn / 2)
        {
            var (c, s) = FirstQuarter(Angle.QuarterTurn - thousandths);
            return (s, c);
        }

        var x = thousandths * (Math.PI / 180_000);
        return (Series(x, 0), Series(x, 1));
    }

    /// <summary>The cosine (from 0) or the sine (from 1) of an angle in radians, below one: the sum of x^n/n! over every second n, signs in turn, the smallest terms first. Eleven are plenty.</summary>
    internal static double Series(double x, int first)
    {
        const int Terms = 11;
        Span<double> terms = stackalloc double[Terms];
        var term = first == 0 ? 1.0 : x;
        for (var i = 0; i < Terms; i++)
        {
            terms[i] = term;
            var n = first + (2 * i);
            term *= -(x * x) / ((n + 1) * (n + 2));
        }

        var sum = 0.0;
        for (var i = Terms - 1; i >= 0; i--) sum += terms[i];
        return sum;
    }
}
