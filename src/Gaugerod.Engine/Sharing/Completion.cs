namespace Gaugerod.Engine.Sharing;

/// <summary>
/// A plan of exactly as many tiles as the bound asks, looked for among the few fills that such a plan can hold. Against the
/// weights of a proof each tile falls short by something, and all of them together by no more than what the tiles hold above
/// what is wanted; that leaves few fills, and from the kind with the fewest of them one goes on by trying.
/// </summary>
internal sealed class Completion
{
    private readonly int[] _want;
    private readonly IReadOnlyList<(long Short, int[] Fill)> _fills;
    private readonly List<int>[] _with;
    private readonly List<int[]> _taken = [];
    private long _left;

    /// <param name="want">How many of each kind are wanted.</param>
    /// <param name="fills">The fills that may be used and by how much each falls short.</param>
    /// <param name="budget">By how much all together may fall short.</param>
    /// <param name="patience">How many fills may be tried.</param>
    public Completion(int[] want, IReadOnlyList<(long Short, int[] Fill)> fills, long budget, long patience)
    {
        (_want, _fills, _left, Patience) = ((int[])want.Clone(), fills, budget, patience);
        _with = Array.ConvertAll(want, _ => new List<int>());
        for (var i = 0; i < fills.Count; i++)
        {
            foreach (var kind in fills[i].Fill.Distinct()) _with[kind].Add(i);
        }
    }

    /// <summary>How many fills may still be tried.</summary>
    public long Patience { get; private set; }

    /// <summary>The plan, or null where none was found.</summary>
    public List<int[]>? Plan { get; private set; }

    /// <summary>Looks for the plan, a little at a time.</summary>
    public IEnumerable<bool> Find()
    {
        var (scarcest, fewest) = (-1, int.MaxValue);
        for (var kind = 0; kind < _want.Length; kind++)
        {
            if (_want[kind] <= 0) continue;
            var count = 0;
            foreach (var i in _with[kind])
            {
                if (Usable(i) && ++count >= fewest) break;
            }

            if (count < fewest) (scarcest, fewest) = (kind, count);
            if (fewest == 0) yield break;
        }

        if (scarcest < 0)
        {
            Plan = [.. _taken];
            yield break;
        }

        foreach (var i in _with[scarcest])
        {
            if (Patience <= 0) yield break;
            if (!Usable(i)) continue;
            if (--Patience % 200 == 0) yield return true;
            var (shortBy, fill) = _fills[i];
            foreach (var kind in fill) _want[kind]--;
            _left -= shortBy;
            _taken.Add(fill);
            foreach (var _ in Find()) yield return true;
            if (Plan is not null) yield break;
            _taken.RemoveAt(_taken.Count - 1);
            _left += shortBy;
            foreach (var kind in fill) _want[kind]++;
        }
    }

    private bool Usable(int i)
    {
        var (shortBy, fill) = _fills[i];
        if (shortBy > _left) return false;
        var copies = 1;
        for (var k = 0; k < fill.Length; k++)
        {
            copies = k > 0 && fill[k] == fill[k - 1] ? copies + 1 : 1;
            if (_want[fill[k]] < copies) return false;
        }

        return true;
    }
}
