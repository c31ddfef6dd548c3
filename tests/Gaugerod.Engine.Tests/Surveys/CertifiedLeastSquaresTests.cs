using System.Globalization;
using Gaugerod.Engine.Surveys;
using Gaugerod.Testing;

namespace Gaugerod.Engine.Tests.Surveys;

/// <summary>Source: NIST Statistical Reference Datasets, linear least squares with certified values, in tests/Data/nist.</summary>
public sealed class CertifiedLeastSquaresTests
{
    /// <param name="set">The set.</param>
    /// <param name="degree">The highest power; of Longley 0, its columns are its own.</param>
    /// <param name="digits">How many digits are asked for: what 16 in a number leave where columns nearly agree.</param>
    [Theory]
    [InlineData("Norris", 1, 11)]
    [InlineData("Pontius", 2, 11)]
    [InlineData("NoInt1", -1, 11)]
    [InlineData("NoInt2", -1, 11)]
    [InlineData("Longley", 0, 10)]
    [InlineData("Wampler1", 5, 9)]
    [InlineData("Wampler2", 5, 11)]
    [InlineData("Wampler3", 5, 9)]
    [InlineData("Wampler4", 5, 8)]
    [InlineData("Wampler5", 5, 6)]
    [InlineData("Filip", 10, 6)]
    public void Certified_estimates_and_their_deviations_are_met(string set, int degree, int digits)
    {
        var lines = File.ReadAllLines(Path.Combine(Repo.Root, "tests/Data/nist", set + ".dat"));
        var certified = lines.Select(Words).Where(w => w.Length == 3 && w[0].StartsWith('B') && char.IsDigit(w[0][1])).Select(w => (Estimate: Number(w[1]), Deviation: Number(w[2]))).ToArray();
        var data = lines.Skip(60).Select(Words).Where(w => w.Length > 1).Select(w => Array.ConvertAll(w, Number)).ToArray();
        var columns = degree switch
        {
            -1 => [[.. data.Select(d => d[1])]],
            0 => Enumerable.Range(0, 7).Select(k => data.Select(d => k == 0 ? 1 : d[k]).ToArray()).ToArray(),
            _ => Enumerable.Range(0, degree + 1).Select(k => data.Select(d => Power(d[1], k)).ToArray()).ToArray(),
        };
        var wanted = data.Select(d => d[0]).ToArray();
        var apart = new LeastSquares(columns, 1e-13);
        var solved = apart.Solve(wanted);
        Assert.Equal(columns.Length, apart.Rank);
        Assert.Equal(certified.Length, solved.Length);

        var squares = wanted.Select((w, i) => w - columns.Select((c, k) => c[i] * solved[k]).Sum()).Sum(rest => rest * rest);
        var residual = Math.Sqrt(squares / (wanted.Length - solved.Length));
        for (var k = 0; k < solved.Length; k++)
        {
            Assert.True(Digits(certified[k].Estimate, solved[k]) >= digits, $"B{k}: {solved[k]:R} for {certified[k].Estimate:R}");
            var unit = new double[solved.Length];
            unit[k] = 1;
            var along = apart.Along(unit);
            var deviation = residual * Math.Sqrt(LeastSquares.Dot(along, along));

            // Of the sets that a polynomial meets exactly the certified deviation is 0.
            if (certified[k].Deviation > 0) Assert.True(Digits(certified[k].Deviation, deviation) >= digits - 1, $"deviation of B{k}: {deviation:R} for {certified[k].Deviation:R}");
            else Assert.True(deviation < 1e-6 * Math.Max(1, Math.Abs(solved[k])), $"deviation of B{k}: {deviation:R} for none");
        }
    }

    [Fact]
    public void A_column_that_says_nothing_new_is_left_out_and_the_rest_is_solved()
    {
        var apart = new LeastSquares([[1, 1, 1, 0], [2, 2, 2, 0], [0, 1, 0, 1]], 1e-10);
        Assert.Equal(2, apart.Rank);
        var solved = apart.Solve([3, 5, 3, 2]);
        Assert.Equal(3, solved[0] + (2 * solved[1]), 12);
        Assert.Equal(2, solved[2], 12);
    }

    private static double Digits(double certified, double found) => certified == found ? 16 : -Math.Log10(Math.Abs(found - certified) / Math.Abs(certified));

    private static double Power(double value, int exponent)
    {
        var power = 1.0;
        for (var k = 0; k < exponent; k++) power *= value;
        return power;
    }

    private static string[] Words(string line) => line.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);

    private static double Number(string word) => double.Parse(word, CultureInfo.InvariantCulture);
}
