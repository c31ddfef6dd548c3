namespace Gaugerod.Engine.Sharing;

/// <summary>The fills that a cover may use, and the bringing in of those that lower its sum.</summary>
/// <param name="program">The cover.</param>
/// <param name="kinds">How many kinds there are, wanted or not.</param>
/// <param name="serving">Rows that serve for smaller ones. With them a larger kind never weighs less than what it serves for,
/// which keeps weights from swinging (J. M. Valerio de Carvalho, INFORMS Journal on Computing 17, 2005; from memory).</param>
internal sealed class Columns(CoverProgram program, int kinds, List<(int Large, int Small)> serving)
{
    private const double Gain = 1e-7;

    private readonly List<int[]> _columns = [];
    private readonly int[] _row = Rows(program, kinds);
    private List<int[]> _reserve = [];

    /// <summary>All fills, as kinds.</summary>
    public IEnumerable<int[]> Fills => _columns.Select(column => Array.ConvertAll(column, row => program.Kinds[row]));

    /// <summary>The cover.</summary>
    public CoverProgram Program => program;

    /// <summary>Adds fills, given as kinds; true when one of them lowers the sum.</summary>
    public bool Add(IEnumerable<int[]> fills)
    {
        var before = _columns.Count;
        _columns.AddRange(fills.Select(ToRows));
        return _columns.Skip(before).Any(column => program.Worth(column) > 1 + Gain);
    }

    /// <summary>Keeps many fills beside the columns, to be drawn from.</summary>
    public void Reserve(IEnumerable<int[]> fills) => _reserve = fills.Select(ToRows).ToList();

    /// <summary>Puts the best few of the reserve to the columns; false when none of them lowers the sum.</summary>
    public bool Draw()
    {
        var worth = _reserve.ConvertAll(program.Worth);
        var best = Enumerable.Range(0, worth.Count).Where(i => worth[i] > 1 + Gain).OrderByDescending(i => worth[i]).Take(20).ToList();
        _columns.AddRange(best.Select(i => _reserve[i]));
        return best.Count > 0;
    }

    /// <summary>Brings in what lowers the sum until nothing known does, a little at a time.</summary>
    public IEnumerable<bool> Settle()
    {
        // The limit is for the case that rounding leads in a circle.
        for (var most = 50 * program.Kinds.Length; most > 0; most--)
        {
            if (most % 16 == 0) yield return true;
            program.UseUp();
            if (Exchange()) continue;
            var (best, worth) = (-1, 1 + Gain);
            for (var i = 0; i < _columns.Count; i++)
            {
                var value = program.Worth(_columns[i]);
                if (value > worth) (best, worth) = (i, value);
            }

            if (best < 0) yield break;
            program.Take(_columns[best]);
        }
    }

    private bool Exchange()
    {
        var (best, gain) = (-1, Gain);
        for (var i = 0; i < serving.Count; i++)
        {
            var value = program.Prices[serving[i].Small] - program.Prices[serving[i].Large];
            if (value > gain) (best, gain) = (i, value);
        }

        if (best >= 0) program.Exchange(serving[best].Large, serving[best].Small);
        return best >= 0;
    }

    private int[] ToRows(int[] fill) => Array.ConvertAll(fill, kind => _row[kind]);

    private static int[] Rows(CoverProgram program, int kinds)
    {
        var rows = new int[kinds];
        for (var row = 0; row < program.Kinds.Length; row++) rows[program.Kinds[row]] = row;
        return rows;
    }
}
