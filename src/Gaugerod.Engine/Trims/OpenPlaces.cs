namespace Gaugerod.Engine.Trims;

/// <summary>
/// Places that nothing has reached yet. They are kept in cells as wide as a whole piece with its joint, so that what a piece reaches is looked up in a few of
/// them, however long the line is.
/// </summary>
internal sealed class OpenPlaces
{
    private const int None = -1;

    private readonly long _wide;

    // For each cell its first range; each range knows the next in its cell.
    private readonly int[] _first;
    private readonly List<Part> _parts;

    /// <param name="allowed">The places; none lies before the line.</param>
    /// <param name="wide">How wide a cell is; above zero.</param>
    public OpenPlaces(Ranges allowed, long wide)
    {
        _wide = wide;
        _first = new int[allowed.IsEmpty ? 0 : (allowed.Parts[^1].To / wide) + 1];
        _parts = new(_first.Length + allowed.Parts.Count);
        Array.Fill(_first, None);
        for (var k = allowed.Parts.Count - 1; k >= 0; k--)
        {
            var (from, to) = allowed.Parts[k];
            for (var i = to / wide; i >= from / wide; i--)
            {
                _parts.Add(new(Math.Max(from, i * wide), Math.Min(to, ((i + 1) * wide) - 1), _first[i]));
                _first[i] = _parts.Count - 1;
            }
        }
    }

    /// <summary>How many cells and ranges were looked at: what a search costs.</summary>
    public long Looks { get; private set; }

    /// <summary>What of some places is open still; from now on it is not.</summary>
    public Ranges Take(Ranges reached)
    {
        var taken = new List<(long From, long To)>();
        foreach (var (from, to) in reached.Parts)
        {
            for (var i = Math.Max(0, from / _wide); i <= to / _wide && i < _first.Length; i++) Take(i, from, to, taken);
        }

        return Ranges.Rising(taken);
    }

    private void Take(long cell, long from, long to, List<(long From, long To)> taken)
    {
        Looks++;
        var before = None;
        for (var at = _first[cell]; at != None;)
        {
            Looks++;
            var part = _parts[at];
            if (part.From > to) return;
            if (part.To >= from)
            {
                var (first, last) = (Math.Max(part.From, from), Math.Min(part.To, to));
                taken.Add((first, last));
                var rest = part.Next;
                if (last < part.To)
                {
                    _parts.Add(new(last + 1, part.To, rest));
                    rest = _parts.Count - 1;
                }

                // What is left before it stays where it was; else what follows takes its place.
                if (part.From < first) _parts[at] = new(part.From, first - 1, rest);
                else if (before == None) _first[cell] = rest;
                else _parts[before] = _parts[before] with { Next = rest };
                if (part.From >= first) at = before;
            }

            before = at;
            at = part.Next;
        }
    }

    private readonly record struct Part(long From, long To, int Next);
}
