using Gaugerod.Engine.Bonds;

namespace Gaugerod.Engine.Patterns;

/// <summary>The places of a bond that differ: those within one step of its lattice each way. Every other place lays the same tiles.</summary>
internal sealed class OffsetDomain
{
    private readonly double _whole;

    public OffsetDomain(Lattice lattice)
    {
        A = (lattice.First.Along.Steps, lattice.First.Across.Steps);
        B = (lattice.Second.Along.Steps, lattice.Second.Across.Steps);
        _whole = ((double)A.X * B.Y) - ((double)A.Y * B.X);
    }

    /// <summary>The first step of the lattice.</summary>
    public (long X, long Y) A { get; }

    /// <summary>The second.</summary>
    public (long X, long Y) B { get; }

    /// <summary>All of them.</summary>
    public Shifts All => new((A.X + B.X) / 2.0, (A.Y + B.Y) / 2.0, A.X / 2.0, A.Y / 2.0, B.X / 2.0, B.Y / 2.0);

    /// <summary>A place as parts of the two steps.</summary>
    public (double First, double Second) Parts(double x, double y) => (((x * B.Y) - (y * B.X)) / _whole, ((A.X * y) - (A.Y * x)) / _whole);

    /// <summary>The place within one step each way that lays the same tiles.</summary>
    public (long X, long Y) Within(long x, long y)
    {
        var (first, second) = Parts(x, y);
        var (i, j) = ((long)Math.Floor(first), (long)Math.Floor(second));
        return (x - (i * A.X) - (j * B.X), y - (i * A.Y) - (j * B.Y));
    }

    /// <summary>The place that lays the same tiles and lies nearest to another.</summary>
    public (long X, long Y) Near(long x, long y, double nearX, double nearY)
    {
        var (first, second) = Parts(nearX - x, nearY - y);
        var (i, j) = ((long)Math.Floor(first + 0.5), (long)Math.Floor(second + 0.5));
        return (x + (i * A.X) + (j * B.X), y + (i * A.Y) + (j * B.Y));
    }

    /// <summary>How far two places differ, as the larger part of a step.</summary>
    public double Distance(double x, double y)
    {
        var (first, second) = Parts(x, y);
        return Math.Max(Math.Abs(first - Math.Floor(first + 0.5)), Math.Abs(second - Math.Floor(second + 0.5)));
    }

    /// <summary>
    /// The stretch of places on a line square to a direction, so far that way; null where there are none. The line crosses
    /// all places within one step each way.
    /// </summary>
    public Shifts? On(double squareX, double squareY, double off)
    {
        var (stepA, stepB) = ((A.X * squareX) + (A.Y * squareY), (B.X * squareX) + (B.Y * squareY));
        var alongFirst = Math.Abs(stepB) >= Math.Abs(stepA);
        var (step, other) = alongFirst ? (stepB, stepA) : (stepA, stepB);
        // other part p and step part q with p * other + q * step = off, both between zero and one.
        var (from, to) = (0.0, 1.0);
        if (Math.Abs(other) > PointsOnLine.Tolerance)
        {
            var (one, two) = (off / other, (off - step) / other);
            (from, to) = (Math.Max(from, Math.Min(one, two)), Math.Min(to, Math.Max(one, two)));
        }

        if (from > to) return null;
        var ((startX, startY), (endX, endY)) = (Place(from), Place(to));
        return new((startX + endX) / 2, (startY + endY) / 2, (endX - startX) / 2, (endY - startY) / 2, 0, 0);

        (double X, double Y) Place(double p)
        {
            var q = (off - (p * other)) / step;
            return alongFirst ? ((p * A.X) + (q * B.X), (p * A.Y) + (q * B.Y)) : ((q * A.X) + (p * B.X), (q * A.Y) + (p * B.Y));
        }
    }
}
