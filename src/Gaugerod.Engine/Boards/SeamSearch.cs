namespace Gaugerod.Engine.Boards;

/// <summary>Where the seams of all rows stand.</summary>
/// <param name="Cost">What is said against it.</param>
/// <param name="Rows">For each row, from the foot up, the places of its seams from the left.</param>
/// <param name="IsBest">Whether no other choice of seams in these rows is better, in the order it was searched by.</param>
/// <param name="ByShares">Whether what pieces take of sheets went before their number; else it was not asked.</param>
internal sealed record SeamChoice(SeamCost Cost, int[][] Rows, bool IsBest, bool ByShares);

/// <summary>
/// The best seams of all rows at once, among places where seams may stand. Studs are gone through from left to right; of all choices that
/// have the same last seam in every row only the best can be part of the best, for what follows asks nothing else.
/// </summary>
internal sealed class SeamSearch
{
    /// <summary>So many choices are kept at a place. Most walls need a few hundred.</summary>
    private const int Kept = 1000, MostAtOnce = 64 * Kept;

    private readonly SheetRow[] _rows;
    private readonly int _last;
    private readonly RowSeams[] _seams;
    private readonly long[] _at;
    private readonly long _stagger;
    private readonly bool _byShares;

    /// <param name="rows">The rows from the foot up; at most <see cref="LastSeams.Most"/>.</param>
    /// <param name="seams">For each row what its seams cost by themselves.</param>
    /// <param name="at">Where seams may stand, with the two ends.</param>
    /// <param name="stagger">Seams of neighbouring rows nearer to each other than this are in line.</param>
    /// <param name="byShares">Whether what pieces take of sheets goes before their number; else it is not asked.</param>
    public SeamSearch(SheetRow[] rows, RowSeams[] seams, long[] at, long stagger, bool byShares) => (_rows, _seams, _at, _stagger, _byShares, _last) = (rows, seams, at, stagger, byShares, at.Length - 1);

    /// <summary>The best, a little at a time: nothing until the last, and then too where no choice gives pieces that all come out of a sheet.</summary>
    public IEnumerable<SeamChoice?> Steps()
    {
        var (nodes, isBest) = (new List<(int Before, int Row, int Place)>(), true);
        var states = new List<State> { new(default, default, -1) };
        for (var place = 1; place < _last; place++)
        {
            for (var row = 0; row < _rows.Length; row++)
            {
                states = Step(states, place, row, nodes);
                if (states.Count <= MostAtOnce) continue;

                // With each row their number may double: many rows would fill the memory before the place is done.
                states = [.. states.OrderBy(state => state.Cost, SeamCost.Order).Take(MostAtOnce)];
                isBest = false;
                yield return null;
            }

            yield return null;
            states = [.. states.Where(state => Goes(state.Last, place + 1))];
            if (states.Count <= Kept) continue;
            states = [.. states.OrderBy(state => state.Cost, SeamCost.Order).Take(Kept)];
            isBest = false;
        }

        State? best = null;
        foreach (var state in states)
        {
            if (!Goes(state.Last, _last)) continue;
            var cost = state.Cost;
            for (var row = 0; row < _rows.Length; row++) cost += Between(row, state.Last[row], _last);
            if (best is { } sofar && !cost.IsBetterThan(sofar.Cost)) continue;
            best = state with { Cost = cost };
        }

        yield return best is { } found ? new(found.Cost, Rows(found.Node, nodes), isBest, _byShares) : null;
    }

    /// <summary>With and without a seam of one row at one place.</summary>
    private List<State> Step(List<State> states, int place, int row, List<(int Before, int Row, int Place)> nodes)
    {
        if (!_seams[row].May[place]) return states;
        var (next, found) = (new List<State>(states.Count * 2), new Dictionary<LastSeams, int>(states.Count * 2));
        foreach (var state in states)
        {
            Offer(state);
            var cost = state.Cost + _seams[row].Costs[place] + Between(row, state.Last[row], place) + new SeamCost(0, InLine(state.Last, place, row), 0, 0, 0, 0, 0);
            Offer(new(state.Last.With(row, place), cost, state.Node), state.Node);
        }

        return next;

        void Offer(State state, int? before = null)
        {
            if (found.TryGetValue(state.Last, out var at))
            {
                if (!state.Cost.IsBetterThan(next[at].Cost)) return;
            }
            else
            {
                found.Add(state.Last, at = next.Count);
                next.Add(state);
            }

            if (before is { } node)
            {
                nodes.Add((node, row, place));
                state = state with { Node = nodes.Count - 1 };
            }

            next[at] = state;
        }
    }

    /// <summary>How many seams of the rows below and above a new one is in line with, the last of each.</summary>
    private int InLine(LastSeams last, int place, int row)
    {
        // The row below has been gone through at this place, the one above not yet.
        var count = 0;
        if (row > 0 && Near(last[row - 1], row - 1)) count++;
        if (row + 1 < _rows.Length && last[row + 1] < place && Near(last[row + 1], row)) count++;
        return count;

        bool Near(int other, int boundary) => other > 0 && _at[place] - _at[other] < _stagger && _seams[boundary].MeetsAbove[place] && _seams[boundary].MeetsAbove[other];
    }

    private SeamCost Between(int row, int from, int to)
    {
        var cost = _rows[row].Between(from, to).Cost;
        return _byShares ? cost : cost with { Shares = 0 };
    }

    private bool Goes(LastSeams last, int to)
    {
        for (var row = 0; row < _rows.Length; row++)
        {
            if (!_rows[row].Between(last[row], to).Fits) return false;
        }

        return true;
    }

    private int[][] Rows(int node, List<(int Before, int Row, int Place)> nodes)
    {
        var rows = Array.ConvertAll(_rows, _ => new List<int>());
        for (; node >= 0; node = nodes[node].Before) rows[nodes[node].Row].Insert(0, nodes[node].Place);
        return [.. rows.Select(row => row.ToArray())];
    }

    private readonly record struct State(LastSeams Last, SeamCost Cost, int Node);
}
