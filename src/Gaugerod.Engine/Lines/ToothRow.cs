namespace Gaugerod.Engine.Lines;

/// <summary>Places around one repeat, in order, to be asked which comes next.</summary>
internal sealed class ToothRow
{
    private long[] _places = new long[16];
    private Count[] _counts = new Count[16];
    private int _count;

    public void Clear() => _count = 0;

    public void Add(long place, int tiles, long over)
    {
        if (_count == _places.Length)
        {
            Array.Resize(ref _places, _count * 2);
            Array.Resize(ref _counts, _count * 2);
        }

        (_places[_count], _counts[_count]) = (place, new(tiles, over));
        _count++;
    }

    public void Sort() => Array.Sort(_places, _counts, 0, _count);

    /// <summary>How far back the last place before u is, around the repeat: more than zero; a great deal when there is none.</summary>
    public long Before(long u, long period)
    {
        if (_count == 0) return long.MaxValue / 2;
        if (u < 0) u += period;
        var next = FirstAtOrAfter(u);
        return next > 0 ? u - _places[next - 1] : u + period - _places[_count - 1];
    }

    /// <summary>How far on the first place after u is, around the repeat: more than zero; a great deal when there is none.</summary>
    public long After(long u, long period)
    {
        if (_count == 0) return long.MaxValue / 2;
        if (u >= period) u -= period;
        var next = FirstAtOrAfter(u + 1);
        return next < _count ? _places[next] - u : _places[0] + period - u;
    }

    /// <summary>How many tiles surely have a leg under a limit at the places before u, going back.</summary>
    public int SliversBefore(long u, long limit, long period)
    {
        var (sum, next) = (0, FirstAtOrAfter(u));
        for (var i = 0; i < _count; i++)
        {
            var place = next - 1 - i;
            var leg = place >= 0 ? u - _places[place] : u + period - _places[place + _count];
            if (leg >= limit) break;
            sum += _counts[place >= 0 ? place : place + _count].At(leg);
        }

        return sum;
    }

    /// <summary>How many tiles surely have a leg under a limit at the places after u, going on.</summary>
    public int SliversAfter(long u, long limit, long period)
    {
        var (sum, next) = (0, FirstAtOrAfter(u + 1));
        for (var i = 0; i < _count; i++)
        {
            var place = next + i;
            var leg = place < _count ? _places[place] - u : _places[place - _count] + period - u;
            if (leg >= limit) break;
            sum += _counts[place < _count ? place : place - _count].At(leg);
        }

        return sum;
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

    /// <summary>So many tiles are cut at a place as soon as its leg is over a length.</summary>
    private readonly record struct Count(int Tiles, long Over)
    {
        public int At(long leg) => leg > Over ? Tiles : 0;
    }
}
