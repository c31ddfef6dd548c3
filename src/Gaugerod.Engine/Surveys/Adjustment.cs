namespace Gaugerod.Engine.Surveys;

/// <summary>
/// Moves corners until the squares of what readings miss, each in its accuracy, add up to the least: Gauss-Newton steps, damped
/// where a full step would make it worse (K. Levenberg 1944, D. Marquardt 1963; from memory).
/// </summary>
internal static class Adjustment
{
    private const int Most = 60;

    /// <summary>Beside what other readings say, less than this of a reading's say is nothing new.</summary>
    public const double Least = 1e-7;

    /// <summary>How far a corner may still go, in mm, when all is settled: far under the grid's step.</summary>
    private const double Settled = 1e-6;

    /// <summary>Where the corners come to stand.</summary>
    /// <param name="network">The readings; they settle every corner.</param>
    /// <param name="start">Where the corners may stand, roughly.</param>
    public static Adjusted Of(Network network, double[] start)
    {
        var places = (double[])start.Clone();
        var slopes = network.Slopes(places, out var misses);
        var (sum, damp) = (LeastSquares.Dot(misses, misses), 0.0);
        for (var round = 0; round < Most; round++)
        {
            var step = Step(slopes, misses, damp);
            var tried = Moved(places, network.Free, step);
            var after = network.Slopes(tried, out var missed);
            var square = LeastSquares.Dot(missed, missed);
            var far = step.Length == 0 ? 0 : step.Max(Math.Abs);
            if (square <= sum * (1 + 1e-12))
            {
                (places, slopes, misses, sum) = (tried, after, missed, square);
                if (far < Settled && damp == 0) return new(network, places, slopes, misses);
                damp = damp < 1e-6 ? 0 : damp / 10;
            }
            else
            {
                // Next to the least the sum no longer tells: what is left is rounding.
                if (far < Settled) return new(network, places, slopes, misses);
                damp = Math.Max(damp * 10, 1e-3);
            }
        }

        return new(network, places, slopes, misses) { IsSettled = false };
    }

    // Damped, every corner is also asked to stay where it is, with a weight by how much the readings say of it.
    private static double[] Step(double[][] slopes, double[] misses, double damp)
    {
        if (damp == 0) return new LeastSquares(slopes, Least).Solve(misses);
        var (rows, columns) = (misses.Length, slopes.Length);
        var longer = new double[columns][];
        for (var k = 0; k < columns; k++)
        {
            longer[k] = new double[rows + columns];
            slopes[k].CopyTo(longer[k], 0);
            longer[k][rows + k] = Math.Sqrt(damp * Math.Max(LeastSquares.Dot(slopes[k], slopes[k]), 1e-12));
        }

        var wanted = new double[rows + columns];
        misses.CopyTo(wanted, 0);
        return new LeastSquares(longer, Least).Solve(wanted);
    }

    private static double[] Moved(double[] places, int[] free, double[] step)
    {
        var moved = (double[])places.Clone();
        for (var k = 0; k < free.Length; k++) moved[free[k]] += step[k];
        return moved;
    }
}
