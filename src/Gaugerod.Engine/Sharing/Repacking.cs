using Gaugerod.Engine.Bonds;

namespace Gaugerod.Engine.Sharing;

/// <summary>
/// Fewer tiles by chance and patience: a few tiles are emptied, their blanks go where they fit best, and the outcome is kept
/// unless it is looser than before (ruin and recreate; G. Schrimpf and others, Journal of Computational Physics 159, 2000;
/// from memory). Always the same for the same blanks.
/// </summary>
internal sealed class Repacking
{
    private const double Well = 0.9;

    private readonly Dictionary<string, int[]> _seen = new(StringComparer.Ordinal);
    private readonly Wanted _wanted;
    private readonly TileFits _fits;
    private readonly Chance _chance = new("repack");
    private readonly List<int> _loose = [];
    private readonly int[] _tried = new int[256];
    private List<int[]> _tiles = [];
    private List<double> _full = [];
    private double _tight;

    public Repacking(Wanted wanted, TileFits fits)
    {
        (_wanted, _fits) = (wanted, fits);
    }

    /// <summary>The plan at present.</summary>
    public IReadOnlyList<int[]> Tiles => _tiles;

    /// <summary>Fills met on the way that leave little over: a cover begins well with them.</summary>
    public IEnumerable<int[]> WellFilled => _seen.Values;

    /// <summary>How many places for a blank were looked at.</summary>
    public long Work { get; private set; }

    /// <summary>Begins with each kind where it fits best, the largest first, one at a time.</summary>
    public IEnumerable<bool> Begin(IEnumerable<int> loose)
    {
        (_tiles, _full) = ([], []);
        foreach (var kind in loose)
        {
            Place(kind, 0);
            yield return true;
        }

        _tight = Tightness();
    }

    /// <summary>Begins with a plan.</summary>
    public void Begin(IReadOnlyList<int[]> tiles)
    {
        _tiles = [.. tiles];
        _full = _tiles.ConvertAll(Full);
        _tight = Tightness();
    }

    /// <summary>Empties a few tiles and fills again, so many times or until there are no more tiles than asked.</summary>
    public void Improve(int times, int enough)
    {
        for (var i = 0; i < times && _tiles.Count > enough; i++) Once();
    }

    private void Once()
    {
        var (tiles, full) = (new List<int[]>(_tiles), new List<double>(_full));
        _loose.Clear();
        var ruined = Math.Min(_tiles.Count, 2 + (int)_chance.Below(4));
        for (var i = 0; i < ruined; i++)
        {
            var at = (int)_chance.Below(_tiles.Count);
            _loose.AddRange(_tiles[at]);
            (_tiles[at], _full[at]) = (_tiles[^1], _full[^1]);
            _tiles.RemoveAt(_tiles.Count - 1);
            _full.RemoveAt(_full.Count - 1);
        }

        // Largest first, but not quite: each may go before one up to a fifth larger.
        var keys = _loose.ConvertAll(kind => -_wanted.Area[kind] * (1 + (_chance.Below(1000) * 0.0002))).ToArray();
        var order = _loose.ToArray();
        Array.Sort(keys, order);
        foreach (var kind in order) Place(kind, 5);
        var tight = Tightness();
        if (_tiles.Count < tiles.Count || (_tiles.Count == tiles.Count && tight >= _tight - 1e-12)) _tight = tight;
        else (_tiles, _full) = (tiles, full);
    }

    private double Tightness() => _full.Sum(f => f * f);

    private double Full(int[] tile) => tile.Sum(kind => _wanted.Area[kind]);

    /// <summary>Into the fullest tile that takes it; one time in so many into another that does.</summary>
    private void Place(int kind, int oddOneIn)
    {
        var (best, most) = (-1, -1.0);
        var area = _wanted.Area[kind];
        var odd = oddOneIn > 0 && _chance.Below(oddOneIn) == 0;
        for (var i = 0; i < _tiles.Count; i++)
        {
            if (_full[i] + area > 1 + 1e-9 || (_full[i] <= most && !odd)) continue;
            if (odd && best >= 0 && _chance.Below(2) == 0) continue;
            Work++;
            var tile = _tiles[i];
            if (tile.Length >= _tried.Length || !_fits.Fit(With(tile, kind))) continue;
            (best, most) = (i, _full[i]);
        }

        if (best < 0)
        {
            _tiles.Add([kind]);
            _full.Add(area);
        }
        else
        {
            _tiles[best] = With(_tiles[best], kind).ToArray();
            _full[best] += area;
            if (_full[best] >= Well) _seen.TryAdd(string.Join(' ', _tiles[best]), _tiles[best]);
        }
    }

    private ReadOnlySpan<int> With(int[] tile, int kind)
    {
        var at = 0;
        while (at < tile.Length && tile[at] <= kind)
        {
            _tried[at] = tile[at];
            at++;
        }

        _tried[at] = kind;
        for (var i = at; i < tile.Length; i++) _tried[i + 1] = tile[i];
        return _tried.AsSpan(0, tile.Length + 1);
    }
}
