namespace Gaugerod.Engine.Cutting;

/// <summary>
/// Exchanges pieces between tiles while that does better by the aims; the number of tiles stays. It ends where no exchange of
/// one piece for another, and no move of one, does better: the best near by, not proved the best of all.
/// </summary>
/// <param name="bench">The pieces.</param>
/// <param name="order">The aims, the most important first.</param>
internal sealed class Rearranging(Bench bench, IReadOnlyList<CuttingAim> order)
{
    /// <summary>So many exchanges are looked at, at the most.</summary>
    private const int MostWork = 20_000;

    /// <summary>After so many time is given away.</summary>
    private const int Slice = 40;

    private readonly List<double[]> _worth = [];
    private List<List<int>> _tiles = [];
    private int _work;

    /// <summary>The tiles so far, whenever a little work is done; the last is the best.</summary>
    /// <param name="tiles">The pieces of each tile.</param>
    public IEnumerable<IReadOnlyList<List<int>>> Steps(IEnumerable<IEnumerable<int>> tiles)
    {
        _tiles = [.. tiles.Select(tile => tile.Order().ToList()).OrderBy(tile => tile[0])];
        _worth.Clear();
        foreach (var tile in _tiles)
        {
            _worth.Add(Worth(tile)!);
            if (_worth.Count % 8 == 0) yield return _tiles;
        }

        var rest = 0;
        for (var better = true; better && _work < MostWork;)
        {
            better = false;

            // Tiles near each other as one reads them first: their pieces are of one course, or of two that are.
            for (var apart = 1; apart < _tiles.Count && _work < MostWork; apart++)
            {
                for (var (a, b) = (0, apart); b < _tiles.Count; a++, b++)
                {
                    if (_tiles[a].Count + _tiles[b].Count > 2) better |= Exchange(a, b);
                    if (_work < rest) continue;
                    rest = _work + Slice;
                    yield return _tiles;
                }
            }
        }

        yield return _tiles;
    }

    private bool Exchange(int a, int b)
    {
        // A place for none at the end: a piece that moves over and nothing that comes back.
        for (var i = 0; i <= _tiles[a].Count; i++)
        {
            for (var j = 0; j <= _tiles[b].Count; j++)
            {
                if (Changed(_tiles[a], i, _tiles[b], j) is not { Count: > 0 } one || Changed(_tiles[b], j, _tiles[a], i) is not { Count: > 0 } other) continue;
                _work++;
                if (!bench.Share(one) || !bench.Share(other)) continue;
                if (Worth(one) is not { } first || Worth(other) is not { } second || !IsBetter(first, second, _worth[a], _worth[b])) continue;
                (_tiles[a], _tiles[b], _worth[a], _worth[b]) = (one, other, first, second);
                return true;
            }
        }

        return false;
    }

    /// <summary>A tile with one piece gone and another come; null where neither is meant.</summary>
    private static List<int>? Changed(List<int> tile, int gone, List<int> from, int come)
    {
        if (gone == tile.Count && come == from.Count) return null;
        var changed = new List<int>(tile);
        if (gone < tile.Count) changed.RemoveAt(gone);
        if (come < from.Count) changed.Add(from[come]);
        changed.Sort();
        return changed;
    }

    private static bool IsBetter(double[] first, double[] second, double[] before, double[] other)
    {
        for (var i = 0; i < first.Length; i++)
        {
            var change = first[i] + second[i] - before[i] - other[i];
            if (Math.Abs(change) > 1e-6) return change < 0;
        }

        return false;
    }

    /// <summary>What a tile is worth by each aim, less being better; null where its pieces share none.</summary>
    private double[]? Worth(List<int> tile)
    {
        if (bench.Cost(tile) is not { } cost) return null;
        var worth = new List<double>();
        foreach (var aim in order)
        {
            switch (aim)
            {
                case CuttingAim.LaidBy:
                    worth.Add(cost.LaidBy);
                    break;
                case CuttingAim.Cuts:
                    worth.Add(cost.Cuts);
                    break;
                case CuttingAim.Courses:
                    worth.Add(tile.Select(i => bench.Pieces[i].Piece.Course).Distinct().Count());
                    break;
                case CuttingAim.Offcuts:
                    // Squares are added, so that one large offcut beats two small ones of the same area.
                    worth.Add(cost.Left);
                    worth.Add(-cost.Largest * (cost.Largest / ((double)bench.Stock.Width * bench.Stock.Height * bench.Stock.Width * bench.Stock.Height)));
                    break;
                default:
                    break;
            }
        }

        return [.. worth];
    }
}
