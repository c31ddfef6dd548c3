namespace Gaugerod.Engine.Sharing;

/// <summary>Which kinds a place for another would do for: the larger serves for the smaller that keeps no side the larger does not.</summary>
internal sealed class Serving
{
    private readonly int _kinds;
    private readonly bool[] _serves;

    public Serving(Wanted wanted)
    {
        _kinds = wanted.Kinds.Length;
        _serves = new bool[_kinds * _kinds];
        for (var large = 0; large < _kinds; large++)
        {
            // What shares by its outline gives no place that a rectangle could take. The kinds stand from the largest down.
            if (wanted.Nests(large)) continue;
            for (var small = large + 1; small < _kinds; small++)
            {
                var blank = wanted.Kinds[small].Blank;
                foreach (var way in wanted.Ways(large))
                {
                    _serves[(large * _kinds) + small] |= blank.Width <= way.Width && blank.Height <= way.Height && (blank.Kept & ~way.Kept) == Sides.None;
                }
            }
        }
    }

    /// <summary>The kind itself where it is wanted; otherwise the largest wanted one that its place serves for; -1 for none.</summary>
    public int Wanted(int kind, int[] want)
    {
        if (want[kind] > 0) return kind;
        for (var small = kind + 1; small < _kinds; small++)
        {
            if (want[small] > 0 && Serves(kind, small)) return small;
        }

        return -1;
    }

    /// <summary>For each of these kinds the nearest that it serves for, as places in the list; farther ones follow step by step.</summary>
    public List<(int Large, int Small)> Nearest(int[] kinds)
    {
        var pairs = new List<(int, int)>();
        var near = new List<int>();
        for (var large = 0; large < kinds.Length; large++)
        {
            near.Clear();
            for (var small = large + 1; small < kinds.Length; small++)
            {
                if (!Serves(kinds[large], kinds[small]) || near.Exists(between => Serves(kinds[between], kinds[small]))) continue;
                near.Add(small);
                pairs.Add((large, small));
            }
        }

        return pairs;
    }

    private bool Serves(int large, int small) => _serves[(large * _kinds) + small];
}
