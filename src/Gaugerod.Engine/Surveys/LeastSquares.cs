namespace Gaugerod.Engine.Surveys;

/// <summary>
/// A matrix taken apart into columns at right angles and a triangle, the longest column left being the next, each made
/// orthogonal twice: once is not enough where columns nearly agree, twice is (W. Kahan's remark in B. Parlett, The Symmetric
/// Eigenvalue Problem, 1980; from memory). So a sum of squares is made least without ever squaring the matrix.
/// </summary>
internal sealed class LeastSquares
{
    private readonly double[][] _q;
    private readonly double[][] _r;
    private readonly double[] _scale;
    private readonly int[] _order;
    private readonly int _columns;

    /// <param name="columns">The matrix, a list for each column; it is not changed.</param>
    /// <param name="least">A column of which less than this share is left, beside those before it, says nothing new.</param>
    public LeastSquares(double[][] columns, double least)
    {
        _columns = columns.Length;
        _scale = Array.ConvertAll(columns, c => Math.Sqrt(Dot(c, c)));
        _order = [.. Enumerable.Range(0, _columns)];
        var left = new double[_columns][];
        for (var k = 0; k < _columns; k++) left[k] = _scale[k] > 0 ? Array.ConvertAll(columns[k], v => v / _scale[k]) : (double[])columns[k].Clone();
        (_q, _r) = (new double[_columns][], new double[_columns][]);
        for (; Rank < _columns; Rank++)
        {
            var longest = Longest(left, out var length);
            if (length <= least) break;
            (left[Rank], left[longest], _order[Rank], _order[longest]) = (left[longest], left[Rank], _order[longest], _order[Rank]);
            (_r[Rank], _r[longest]) = (_r[longest] ?? new double[_columns], _r[Rank] ?? new double[_columns]);
            Settle(Rank, left[Rank]);
            for (var k = Rank + 1; k < _columns; k++) Take(k, Rank, left[k]);
        }
    }

    /// <summary>How many columns say something of their own.</summary>
    public int Rank { get; }

    /// <summary>What makes the sum of squares least; columns that say nothing new get nothing.</summary>
    /// <param name="wanted">What the rows should come to.</param>
    public double[] Solve(double[] wanted)
    {
        var rest = (double[])wanted.Clone();
        var along = new double[Rank];
        for (var pass = 0; pass < 2; pass++)
        {
            for (var k = 0; k < Rank; k++) along[k] += TakeOut(_q[k], rest);
        }

        var solved = new double[_columns];
        for (var k = Rank - 1; k >= 0; k--)
        {
            var value = along[k];
            for (var later = k + 1; later < Rank; later++) value -= _r[later][k] * solved[_order[later]];
            solved[_order[k]] = value / _r[k][k];
        }

        for (var k = 0; k < _columns; k++) solved[k] = _scale[k] > 0 ? solved[k] / _scale[k] : 0;
        return solved;
    }

    /// <summary>What one more row would be, told along the orthogonal columns; its square is how uncertain what it asks is.</summary>
    /// <param name="row">The row, a value for each column.</param>
    public double[] Along(ReadOnlySpan<double> row)
    {
        var along = new double[Rank];
        for (var k = 0; k < Rank; k++)
        {
            var at = _order[k];
            var value = row[at] / _scale[at];
            for (var before = 0; before < k; before++) value -= _r[k][before] * along[before];
            along[k] = value / _r[k][k];
        }

        return along;
    }

    /// <summary>A row of the matrix told along the orthogonal columns.</summary>
    public double[] Row(int row)
    {
        var along = new double[Rank];
        for (var k = 0; k < Rank; k++) along[k] = _q[k][row];
        return along;
    }

    public static double Dot(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        var sum = 0.0;
        for (var i = 0; i < one.Length; i++) sum += one[i] * other[i];
        return sum;
    }

    private int Longest(double[][] left, out double length)
    {
        var (longest, most) = (Rank, -1.0);
        for (var k = Rank; k < _columns; k++)
        {
            if (Dot(left[k], left[k]) is var square && square > most) (longest, most) = (k, square);
        }

        length = Math.Sqrt(most);
        return longest;
    }

    // Once more against all before it; then it is made a unit long.
    private void Settle(int k, double[] column)
    {
        for (var before = 0; before < k; before++) _r[k][before] += TakeOut(_q[before], column);
        var length = Math.Sqrt(Dot(column, column));
        _r[k][k] = length;
        for (var i = 0; i < column.Length; i++) column[i] /= length;
        _q[k] = column;
    }

    private void Take(int k, int settled, double[] column)
    {
        _r[k] ??= new double[_columns];
        _r[k][settled] += TakeOut(_q[settled], column);
    }

    /// <summary>Takes out of a column what lies along a unit, and says how much that was.</summary>
    private static double TakeOut(double[] unit, double[] column)
    {
        var along = Dot(unit, column);
        for (var i = 0; i < column.Length; i++) column[i] -= along * unit[i];
        return along;
    }
}
