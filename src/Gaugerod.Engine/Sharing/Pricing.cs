namespace Gaugerod.Engine.Sharing;

/// <summary>
/// Looks for fills that lower the sum of a cover, and bounds it on the way: if the heaviest tile weighs so many times a whole
/// one, the sum can fall to that part of what is wanted and no further (A. A. Farley, Operations Research 38, 1990; from
/// memory). Weights are drawn towards those of the best bound so far (P. Wentges, 1997; from memory).
/// </summary>
internal sealed class Pricing
{
    // A little is enough, since what serves for what holds the weights steady already; measured on 28 jobs of 120 pieces.
    private const double Pull = 0.3;

    private const long ShortLook = 10_000;
    private const long LongLook = 1_500_000;
    private const int MostReserved = 20_000;

    private readonly TileFill _fill;
    private readonly int[] _want;
    private readonly Columns _columns;
    private readonly bool _toTheEnd;
    private long[]? _best;
    private double _bound;
    private bool _pulls = true;
    private bool _reserves = true;

    /// <param name="fill">Finds the heaviest tiles.</param>
    /// <param name="want">How many of each kind are wanted.</param>
    /// <param name="columns">Where fills are put.</param>
    /// <param name="toTheEnd">Whether to go on when the bound has reached the next whole tile.</param>
    public Pricing(TileFill fill, int[] want, Columns columns, bool toTheEnd)
    {
        (_fill, _want, _columns, _toTheEnd) = (fill, want, columns, toTheEnd);
    }

    /// <summary>The weights of the best bound; before there is one, those of the cover.</summary>
    public long[] Weights => _best ?? Now();

    /// <summary>Whether the last <see cref="Next"/> put new fills to the columns, or may do so when called again.</summary>
    public bool GoesOn { get; private set; }

    /// <summary>Puts new fills to the columns, a little at a time.</summary>
    public IEnumerable<bool> Next()
    {
        GoesOn = true;
        if (_columns.Draw()) yield break;
        var now = Now();
        var pulled = _pulls && _best is not null;
        var weights = pulled ? Between(_best!, now) : now;

        // A short look first. Where it finds nothing, all fills that weigh nearly enough are made at once and kept in reserve:
        // as the weights change a little, they are what is looked for next. Where that takes too long only the heaviest are looked for.
        foreach (var _ in _fill.Heaviest(weights, Relaxed.Unit, _want, ShortLook)) yield return true;
        var few = _fill.IsWhole || _fill.Found.Count > 0;
        if (!few && _reserves)
        {
            foreach (var _ in _fill.All(weights, Relaxed.Unit - (Relaxed.Unit / 40), _want, MostReserved, LongLook)) yield return true;
            _reserves = _fill.IsWhole || _fill.Found.Count > MostReserved;
        }

        if (!few && !_reserves)
        {
            foreach (var _ in _fill.Heaviest(weights, Relaxed.Unit, _want)) yield return true;
            few = true;
        }

        var (fills, all) = (_fill.Found, _fill.IsWhole);
        if (all && Bounded(weights, fills) && !_toTheEnd)
        {
            GoesOn = false;
            yield break;
        }

        var kept = fills.Skip(few ? fills.Count - 10 : 0).Select(f => f.Fill);
        bool lowers;
        if (few)
        {
            lowers = _columns.Add(kept);
        }
        else
        {
            _columns.Reserve(kept);
            lowers = _columns.Draw();
        }

        _pulls = lowers;
        GoesOn = lowers || pulled || !all;
    }

    /// <summary>Keeps the bound if it is better; true when it has reached the next whole tile.</summary>
    private bool Bounded(long[] weights, IReadOnlyList<(long Weight, int[] Fill)> fills)
    {
        var heaviest = fills.Count > 0 ? Math.Max(Relaxed.Unit, fills.Max(f => f.Weight)) : Relaxed.Unit;
        var bound = 0.0;
        for (var kind = 0; kind < weights.Length; kind++) bound += (double)weights[kind] * _want[kind] / heaviest;
        if (bound > _bound) (_bound, _best) = (bound, weights);
        return Math.Ceiling(_bound - 1e-6) >= Math.Ceiling(_columns.Program.Tiles - 1e-6);
    }

    private long[] Now()
    {
        var weights = new long[_want.Length];
        var program = _columns.Program;
        for (var row = 0; row < program.Kinds.Length; row++) weights[program.Kinds[row]] = Math.Max(0, (long)(program.Prices[row] * Relaxed.Unit));
        return weights;
    }

    private static long[] Between(long[] best, long[] now)
    {
        var between = new long[now.Length];
        for (var i = 0; i < now.Length; i++) between[i] = (long)((best[i] * Pull) + (now[i] * (1 - Pull)));
        return between;
    }
}
