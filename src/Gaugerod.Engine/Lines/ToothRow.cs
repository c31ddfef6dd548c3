namespace Gaugerod.Engine.Lines;

/// <summary>Places around one repeat, in order, to be asked which comes next.</summary>
internal sealed class ToothRow
{
    private long[] _places = new long[16];
    private int[] _tiles = new int[16];
    private int _count;

    public void Clear() => _count = 0;

    public void Add(long place, int tiles)
    {
        if (_count == _places.Length)
        {
            Array.Resize(ref _places, _count * 2);
            Array.Resize(ref _tiles, _count * 2);
        }

        (_places[_count], _tiles[_count]) = (place, tiles);
        _count++;
    }

    public void Sort() => Array.Sort(_places, _tiles, 0, _count);

    /// <summary>The last place before u, around the repeat: how far back it is, more than zero, and its tiles.</summary>
    public (long Distance, int Tiles)? Before(long u, long period)
    {
        if (_count == 0) return null;
        if (u < 0) u += period;
        var next = FirstAtOrAfter(u);
        return next > 0
            ? (u - _places[next - 1], _tiles[next - 1])
            : (u + period - _places[_count - 1], _tiles[_count - 1]);
    }

    /// <summary>The first place after u, around the repeat: how far on it is, more than zero, and its tiles.</summary>
    public (long Distance, int Tiles)? After(long u, long period)
    {
        if (_count == 0) return null;
        if (u >= period) u -= period;
        var next = FirstAtOrAfter(u + 1);
        return next < _count
            ? (_places[next] - u, _tiles[next])
            : (_places[0] + period - u, _tiles[0]);
    }

    private int FirstAtOrAfter(long u)
    {
        var (low, high) = (0, _count);
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (_places[middle] < u) low = middle + 1;
            else high = middle;
        }

        return low;
    }
}
