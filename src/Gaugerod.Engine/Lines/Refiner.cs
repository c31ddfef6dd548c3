namespace Gaugerod.Engine.Lines;

/// <summary>
/// Settles what is left open when the smallest cut is known: among all placings that do as well, the one whose mirrored
/// cuts are most alike, with the fewest cuts, and then with the fewest tiles.
/// </summary>
internal sealed class Refiner(JointSearch search, RunPlacing found)
{
    /// <summary>How many equal placings have their tiles counted; with more the last criterion is not proved.</summary>
    private const int MostCounted = 32;

    private readonly RunModel _model = search.Model;
    private readonly TileCounter _tiles = new(search.Model);
    private readonly List<RunPlacing> _equal = [found];
    private RunPlacing _best = found;

    /// <summary>Whether every placing that ties had its tiles counted.</summary>
    public bool Complete { get; private set; } = true;

    /// <summary>How many placings tied in all but tiles.</summary>
    public int Ties { get; private set; }

    /// <summary>The best placing so far, after every start that was looked at; the last has its tiles counted.</summary>
    public IEnumerable<RunPlacing> Refine()
    {
        // Where faces begin anew only one of the placings that tie is kept for each height: fewer tiles are not ruled out.
        Complete = !_model.Restart;
        for (RunPlacing? before = null; !ReferenceEquals(before, _best);)
        {
            before = _best;
            foreach (var v in search.FinerStarts(_best.Score.Judged.Steps))
            {
                if (search.IsSpent) Complete = false;
                else Look(v);
                yield return _best;
            }
        }

        foreach (var best in FewestTiles()) yield return best;
    }

    private void Look(long v)
    {
        if (_model.Restart)
        {
            if (search.BestAt(v, _best.Score) is { } better) Consider(better);
            return;
        }

        foreach (var placing in search.AsGood(v, _best.Score, more: false)) Consider(placing);
    }

    private void Consider(RunPlacing placing)
    {
        var by = search.Order.Compare(placing.Score, _best.Score);
        if (by < 0)
        {
            _best = placing;
            _equal.Clear();
        }

        if (by <= 0) _equal.Add(placing);
    }

    private IEnumerable<RunPlacing> FewestTiles()
    {
        if (!_model.Restart && Complete)
        {
            // Where the start is settled the move may still be free: there the finer moves count.
            foreach (var v in _equal.Select(search.StartOf).Distinct().ToList())
            {
                foreach (var placing in search.AsGood(v, _best.Score, more: true)) Consider(placing);
                yield return _best;
            }
        }

        var distinct = _equal.DistinctBy(placing => (string.Join(' ', placing.U), string.Join(' ', placing.V))).ToList();
        Ties = distinct.Count;
        if (distinct.Count > MostCounted)
        {
            Complete = false;
            // Evenly from the whole list, its first among them.
            distinct = [.. Enumerable.Range(0, MostCounted).Select(i => distinct[i * distinct.Count / MostCounted])];
        }

        RunPlacing? fewest = null;
        foreach (var placing in distinct)
        {
            var tiles = 0;
            foreach (var sofar in _tiles.TilesFaceByFace(placing))
            {
                tiles = sofar;
                yield return fewest ?? _best;
            }

            if (fewest is null || tiles < fewest.Score.Tiles) fewest = placing with { Score = placing.Score with { Tiles = tiles } };
        }

        yield return fewest!;
    }
}
