using Gaugerod.Plane.Measure;

namespace Gaugerod.Plane.Shapes;

/// <summary>A part of a circle's line: from one place through another to a third. The three stand on no straight line.</summary>
/// <remarks>
/// Everything is summed here from products, quotients and square roots alone, as in <see cref="Heading"/>: the same arc gives
/// the same chords on every machine.
/// </remarks>
public sealed record Arc
{
    // One step less than may be lost: a corner itself comes back to the grid.
    private const int Lost = 320 - 1;

    private const double LargestStep = Math.PI / 4;

    // Of the middle, told from where the arc begins, and of a corner, told from the middle.
    private readonly double _middleX, _middleY;

    private Arc(Point from, Point to, double middleX, double middleY, double radius, double sweep) =>
        (From, To, _middleX, _middleY, Radius, Sweep) = (from, to, middleX, middleY, radius, sweep);

    /// <summary>What a chord may lose or gain against the arc: 0.1 mm.</summary>
    public static Length Error { get; } = Length.FromSteps(Lost + 1);

    /// <summary>Where it begins.</summary>
    public Point From { get; }

    /// <summary>Where it ends.</summary>
    public Point To { get; }

    /// <summary>Its radius, in steps.</summary>
    public double Radius { get; }

    /// <summary>The angle it turns through, in radians: more than zero counter-clockwise, less than zero clockwise.</summary>
    public double Sweep { get; }

    /// <summary>The arc through three places; null where they are on one straight line, or two of them are one.</summary>
    public static Arc? Of(Point from, Point through, Point to)
    {
        var turn = Segments.Cross(from, through, through, to);
        if (turn == 0 || from == to) return null;
        var (ax, ay) = ((Int128)(through.X - from.X).Steps, (Int128)(through.Y - from.Y).Steps);
        var (bx, by) = ((Int128)(to.X - from.X).Steps, (Int128)(to.Y - from.Y).Steps);
        var (a, b) = ((ax * ax) + (ay * ay), (bx * bx) + (by * by));

        // The middle is as far from all three: two straight lines, solved by Cramer's rule, exact up to the last quotient.
        var twice = 2 * ((ax * by) - (ay * bx));
        var (x, y) = ((double)((a * by) - (b * ay)) / (double)twice, (double)((b * ax) - (a * bx)) / (double)twice);

        // On the way round one turns at the place between by half of what the arc turns through.
        var half = Turn(Math.Abs((double)turn), (double)Segments.Dot(from, through, through, to));
        return new(from, to, x, y, Math.Sqrt((x * x) + (y * y)), turn > 0 ? 2 * half : -2 * half);
    }

    /// <summary>How many chords keep to the arc within <see cref="Error"/>.</summary>
    public int Chords
    {
        get
        {
            // A chord over an angle stands off its arc by radius times one less the cosine of half of it; twice its root is a quarter's sine.
            var sine = Math.Sqrt(Math.Min(1, Lost / (2 * Radius)));
            var step = Math.Min(LargestStep, 4 * Turn(sine, Math.Sqrt(1 - (sine * sine))));
            return (int)Math.Ceiling(Math.Abs(Sweep) / step - 1e-9);
        }
    }

    /// <summary>The corners between the chords, in order, without the arc's own ends: all on the arc, to the nearest step, and equally far apart.</summary>
    public IEnumerable<Point> Corners()
    {
        var chords = Chords;
        var step = Sweep / chords;
        var (cos, sin) = (Heading.Series(step, 0), Heading.Series(step, 1));
        var (x, y) = (-_middleX, -_middleY);
        for (var i = 1; i < chords; i++)
        {
            (x, y) = ((x * cos) - (y * sin), (x * sin) + (y * cos));
            yield return From.Moved(Grid.Nearest(_middleX + x), Grid.Nearest(_middleY + y));
        }
    }

    /// <summary>The angle from zero to a half turn whose sine and cosine are as these two.</summary>
    private static double Turn(double sine, double cosine)
    {
        if (cosine < 0) return Math.PI - Turn(sine, -cosine);
        if (sine > cosine) return (Math.PI / 2) - Turn(cosine, sine);
        const int Halvings = 3, Terms = 12;
        var tangent = sine / cosine;
        for (var i = 0; i < Halvings; i++) tangent /= 1 + Math.Sqrt(1 + (tangent * tangent));

        // The angle's series in its tangent, which is now under a tenth.
        var (square, sum) = (tangent * tangent, 0.0);
        for (var n = Terms - 1; n >= 0; n--) sum = (1.0 / ((2 * n) + 1)) - (square * sum);
        return sum * tangent * (1 << Halvings);
    }
}
