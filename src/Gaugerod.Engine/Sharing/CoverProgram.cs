namespace Gaugerod.Engine.Sharing;

/// <summary>
/// Fewest tiles when a tile might be taken in parts: the least sum of fills that gives every kind at least as often as
/// wanted. Solved by the revised simplex method with its columns made as they are needed (P. C. Gilmore and R. E. Gomory,
/// Operations Research 9, 1961; from memory). It yields weights for the kinds; what they prove is worked out elsewhere, in
/// whole numbers, so that a rounding here can cost a better bound but never make a wrong one.
/// </summary>
internal sealed class CoverProgram
{
    private const double Tiny = 1e-9;
    private const double Nudge = 1e-3;

    private readonly int _rows;
    private readonly double[] _want;
    private readonly double[] _inverse;
    private readonly double[] _level;
    private readonly double[] _step;
    private readonly int[][] _basis;
    private readonly double[] _cost;
    private readonly double[] _price;
    private int _pivots;

    /// <param name="want">How often each kind is wanted; above zero.</param>
    /// <param name="alone">For each row, how many copies of its kind alone one tile gives; one or more.</param>
    /// <param name="kinds">The kind of each row; all that are wanted, in rising order.</param>
    public CoverProgram(ReadOnlySpan<int> want, ReadOnlySpan<int> alone, int[] kinds)
    {
        _rows = kinds.Length;
        Kinds = kinds;
        (_want, _level, _step, _cost, _price) = (new double[_rows], new double[_rows], new double[_rows], new double[_rows], new double[_rows]);
        _inverse = new double[_rows * _rows];
        _basis = new int[_rows][];
        var chance = new Bonds.Chance("cover");
        for (var row = 0; row < _rows; row++)
        {
            // A little more of each, no two alike, so that no two ways tie for ever.
            _want[row] = want[kinds[row]];
            _level[row] = (want[kinds[row]] + (Nudge * chance.Below(1000) / 1000)) / alone[row];
            _basis[row] = [.. Enumerable.Repeat(row, alone[row])];
            _inverse[(row * _rows) + row] = 1.0 / alone[row];
            _cost[row] = 1;
        }

        Reprice();
    }

    /// <summary>The kind of each row.</summary>
    public int[] Kinds { get; }

    /// <summary>The weight of each row: what one more of its kind would cost.</summary>
    public ReadOnlySpan<double> Prices => _price;

    /// <summary>The sum of fills at present, by its prices.</summary>
    public double Tiles => _price.Zip(_want, (price, want) => price * want).Sum();

    /// <summary>The fills in use, as kinds, and how much of each.</summary>
    public IEnumerable<(int[] Fill, double Level)> Used =>
        Enumerable.Range(0, _rows).Where(i => _cost[i] > 0 && _level[i] > 2 * Nudge)
            .Select(i => (Array.ConvertAll(_basis[i], row => Kinds[row]), _level[i]));

    /// <summary>Takes fills away that give more than is wanted, as long as that lowers the sum.</summary>
    public void UseUp()
    {
        for (var turns = 0; turns < 4 * _rows; turns++)
        {
            var worst = -1;
            for (var row = 0; row < _rows; row++)
            {
                if (_price[row] < -1e-7 && (worst < 0 || _price[row] < _price[worst])) worst = row;
            }

            if (worst < 0) return;
            for (var i = 0; i < _rows; i++) _step[i] = -_inverse[(i * _rows) + worst];
            Enter([~worst], 0);
        }
    }

    /// <summary>What a fill is worth at present prices; above one, taking it lowers the sum.</summary>
    public double Worth(int[] fill)
    {
        var worth = 0.0;
        foreach (var row in fill) worth += _price[row];
        return worth;
    }

    /// <summary>Lets some of one kind serve for a smaller one.</summary>
    /// <param name="large">The row of the larger kind.</param>
    /// <param name="small">The row of the smaller.</param>
    public void Exchange(int large, int small)
    {
        for (var i = 0; i < _rows; i++) _step[i] = _inverse[(i * _rows) + small] - _inverse[(i * _rows) + large];
        Enter([~large, small], 0);
    }

    /// <summary>Brings a fill in.</summary>
    /// <param name="fill">Its kinds as rows, each as often as the tile gives it.</param>
    public void Take(int[] fill)
    {
        for (var i = 0; i < _rows; i++)
        {
            var sum = 0.0;
            foreach (var row in fill) sum += _inverse[(i * _rows) + row];
            _step[i] = sum;
        }

        Enter(fill, 1);
    }

    private void Enter(int[] column, double cost)
    {
        var (leaves, least) = (-1, double.MaxValue);
        for (var i = 0; i < _rows; i++)
        {
            if (_step[i] <= Tiny) continue;
            var ratio = _level[i] / _step[i];
            if (ratio < least - 1e-12 || (ratio < least + 1e-12 && _step[i] > _step[leaves])) (leaves, least) = (i, ratio);
        }

        if (leaves < 0) return;
        var gain = cost;
        for (var i = 0; i < _rows; i++) gain -= _cost[i] * _step[i];
        Pivot(leaves, Math.Max(least, 0));
        (_basis[leaves], _cost[leaves]) = (column, cost);
        var row = _inverse.AsSpan(leaves * _rows, _rows);
        for (var j = 0; j < _rows; j++) _price[j] += gain * row[j];
        if (++_pivots % 100 == 0) Reprice();
    }

    private void Pivot(int leaves, double amount)
    {
        for (var i = 0; i < _rows; i++) _level[i] = Math.Max(0, _level[i] - (amount * _step[i]));
        _level[leaves] = amount;
        var pivotRow = _inverse.AsSpan(leaves * _rows, _rows);
        var scale = 1 / _step[leaves];
        for (var j = 0; j < _rows; j++) pivotRow[j] *= scale;
        for (var i = 0; i < _rows; i++)
        {
            var factor = _step[i];
            if (i == leaves || Math.Abs(factor) < 1e-14) continue;
            var row = _inverse.AsSpan(i * _rows, _rows);
            for (var j = 0; j < row.Length; j++) row[j] -= factor * pivotRow[j];
        }
    }

    private void Reprice()
    {
        Array.Clear(_price);
        for (var i = 0; i < _rows; i++)
        {
            if (_cost[i] == 0) continue;
            var row = _inverse.AsSpan(i * _rows, _rows);
            for (var j = 0; j < row.Length; j++) _price[j] += row[j];
        }
    }
}
