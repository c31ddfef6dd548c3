namespace Gaugerod.Engine.Trims;

/// <summary>Places along a line, in steps: a union of ranges, both ends belonging to them, in rising order and apart.</summary>
internal sealed class Ranges
{
    private readonly List<(long From, long To)> _parts;

    private Ranges(List<(long From, long To)> parts) => _parts = parts;

    public static Ranges None { get; } = new([]);

    public bool IsEmpty => _parts.Count == 0;

    public IReadOnlyList<(long From, long To)> Parts => _parts;

    /// <summary>All from one place to another; none where the other lies before it.</summary>
    public static Ranges Of(long from, long to) => from > to ? None : new([(from, to)]);

    /// <summary>All that lies in any of some ranges, given in any order.</summary>
    public static Ranges Of(IEnumerable<(long From, long To)> parts) => Rising(parts.Where(p => p.From <= p.To).OrderBy(p => p.From).ToList());

    /// <summary>The same of ranges in rising order of where they begin.</summary>
    public static Ranges Rising(IReadOnlyList<(long From, long To)> parts)
    {
        var joined = new List<(long From, long To)>(parts.Count);
        for (var i = 0; i < parts.Count; i++) Join(joined, parts[i]);
        return new(joined);
    }

    public Ranges Or(Ranges other)
    {
        if (IsEmpty || other.IsEmpty) return IsEmpty ? other : this;
        var joined = new List<(long From, long To)>(_parts.Count + other._parts.Count);
        for (var (i, j) = (0, 0); i < _parts.Count || j < other._parts.Count;)
        {
            Join(joined, j == other._parts.Count || (i < _parts.Count && _parts[i].From <= other._parts[j].From) ? _parts[i++] : other._parts[j++]);
        }

        return new(joined);
    }

    public Ranges And(Ranges other)
    {
        var both = new List<(long, long)>();
        for (var (i, j) = (0, 0); i < _parts.Count && j < other._parts.Count;)
        {
            var (from, to) = (Math.Max(_parts[i].From, other._parts[j].From), Math.Min(_parts[i].To, other._parts[j].To));
            if (from <= to) both.Add((from, to));
            if (_parts[i].To < other._parts[j].To) i++;
            else j++;
        }

        return new(both);
    }

    public Ranges Without(Ranges other)
    {
        var left = new List<(long, long)>();
        var j = 0;
        foreach (var (from, to) in _parts)
        {
            var begin = from;
            while (j < other._parts.Count && other._parts[j].To < begin) j++;
            for (var k = j; k < other._parts.Count && other._parts[k].From <= to; k++)
            {
                if (other._parts[k].From > begin) left.Add((begin, other._parts[k].From - 1));
                begin = Math.Max(begin, other._parts[k].To + 1);
            }

            if (begin <= to) left.Add((begin, to));
        }

        return new(left);
    }

    /// <summary>Every place carried on by anything from the least to the most.</summary>
    public Ranges Carried(long least, long most)
    {
        if (least > most) return None;
        var carried = new List<(long From, long To)>(_parts.Count);
        foreach (var (from, to) in _parts) Join(carried, (from + least, to + most));
        return new(carried);
    }

    /// <summary>The lowest place that lies within limits; null where none does.</summary>
    public long? Lowest(long from, long to)
    {
        var (first, end) = (0, _parts.Count);
        while (first < end)
        {
            var middle = (first + end) / 2;
            if (_parts[middle].To < from) first = middle + 1;
            else end = middle;
        }

        if (first == _parts.Count) return null;
        var lowest = Math.Max(_parts[first].From, from);
        return lowest <= Math.Min(_parts[first].To, to) ? lowest : null;
    }

    private static void Join(List<(long From, long To)> parts, (long From, long To) next)
    {
        if (parts.Count > 0 && next.From <= parts[^1].To + 1) parts[^1] = (parts[^1].From, Math.Max(parts[^1].To, next.To));
        else parts.Add(next);
    }
}
