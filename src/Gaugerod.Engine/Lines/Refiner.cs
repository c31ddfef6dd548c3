namespace Gaugerod.Engine.Lines;

/// <summary>
/// Settles what is left open when the smallest cut is known: among all placings that do as well, the one whose mirrored
/// cuts are most alike, with the fewest cuts, and then with the fewest tiles.
/// </summary>
internal sealed class Refiner
{
    /// <summary>How many equal placings have their tiles counted; with more the last criterion is not proved.</summary>
    private const int MostCounted = 48;

    private readonly JointSearch _search;
    private readonly RunModel _model;
    private readonly TileCounter _tiles;
    private readonly List<RunPlacing> _equal = [];
    private RunPlacing _best;

    public Refiner(JointSearch search, RunPlacing best)
    {
        (_search, _model, _best) = (search, search.Model, best);
        _tiles = new(_model);
        _equal.Add(best);
    }

    /// <summary>Whether every placing that ties had its tiles counted.</summary>
    public bool Complete { get; private set; } = true;

    /// <summary>The best placing, its tiles counted.</summary>
    public RunPlacing Refine()
    {
        if (_model.Problem.Restart) RefineByFace();
        else RefineTogether();
        return FewestTiles();
    }

    private void RefineTogether()
    {
        var starts = Starts();
        for (RunPlacing? before = null; before is null || !ReferenceEquals(before, _best);)
        {
            before = _best;
            foreach (var v in starts)
            {
                foreach (var u in _search.MovesThatTie(v, _best, Moves(v))) Consider(_search.At(u, v));
            }
        }
    }

    private void RefineByFace()
    {
        // Of placings that tie, only one is kept for each height: fewer tiles are not ruled out.
        Complete = false;
        foreach (var v in Starts())
        {
            if (_search.BestAt(v, _best) is { } better) Consider(better);
        }
    }

    private IEnumerable<long> Starts()
    {
        var teeth = _search.TeethAcross();
        var extra = teeth.Moves([_best.Score.SmallestCut.Steps]);
        // Where courses stand upright, it is the move across that makes the cuts at left and right alike.
        extra.UnionWith(teeth.EqualMoves());
        extra.UnionWith(teeth.PairMoves(_model.Problem.Product.Kerf.Steps));
        var rise = _model.Courses.Rise;
        JointSearch.KeepToLines(extra, _search.WantedAcross(), rise);
        return [.. Enumerable.Range(0, _model.Courses.Repeat).SelectMany(i => extra.Select(v => v + (i * rise))), .. _search.AllStarts];
    }

    private SortedSet<long> Moves(long v)
    {
        var teeth = _search.TeethAt(v);
        var moves = teeth.Moves([_best.Score.SmallestCut.Steps]);
        moves.UnionWith(teeth.EqualMoves());
        moves.UnionWith(teeth.PairMoves(_model.Problem.Product.Kerf.Steps));
        return moves;
    }

    private void Consider(RunPlacing placing)
    {
        var by = _search.Order.Compare(placing.Score, _best.Score);
        if (by < 0)
        {
            _best = placing;
            _equal.Clear();
        }

        if (by <= 0) _equal.Add(placing);
    }

    private RunPlacing FewestTiles()
    {
        var distinct = _equal
            .DistinctBy(placing => (string.Join(' ', placing.U), string.Join(' ', placing.V)))
            .ToList();
        if (distinct.Count > MostCounted)
        {
            Complete = false;
            // Evenly from the whole list, its first among them.
            distinct = [.. Enumerable.Range(0, MostCounted).Select(i => distinct[i * distinct.Count / MostCounted])];
        }

        return distinct
            .Select(placing => placing with { Score = placing.Score with { Tiles = _tiles.Tiles(placing) } })
            .MinBy(placing => placing.Score.Tiles)!;
    }
}
