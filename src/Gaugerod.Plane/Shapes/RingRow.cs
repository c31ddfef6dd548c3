namespace Gaugerod.Plane.Shapes;

/// <summary>Rings, or chains of sides, one after another in one array, which the next cut uses again: a cut makes nothing anew.</summary>
internal sealed class RingRow
{
    private TaggedCorner[] _corners = new TaggedCorner[64];
    private int[] _ends = new int[8];
    private int _filled;

    /// <summary>How many rings are closed.</summary>
    public int Count { get; private set; }

    /// <summary>A closed ring.</summary>
    public Span<TaggedCorner> this[int ring]
    {
        get
        {
            var from = ring == 0 ? 0 : _ends[ring - 1];
            return _corners.AsSpan(from, _ends[ring] - from);
        }
    }

    /// <summary>Every corner of every closed ring.</summary>
    public Span<TaggedCorner> All => _corners.AsSpan(0, Count == 0 ? 0 : _ends[Count - 1]);

    public void Clear() => (Count, _filled) = (0, 0);

    public void Add(in TaggedCorner corner)
    {
        if (_filled == _corners.Length) Array.Resize(ref _corners, 2 * _filled);
        _corners[_filled++] = corner;
    }

    public void Add(ReadOnlySpan<TaggedCorner> corners)
    {
        if (_filled + corners.Length > _corners.Length) Array.Resize(ref _corners, 2 * (_filled + corners.Length));
        corners.CopyTo(_corners.AsSpan(_filled));
        _filled += corners.Length;
    }

    /// <summary>Ends the ring that was being added to.</summary>
    public void Close()
    {
        if (Count == _ends.Length) Array.Resize(ref _ends, 2 * Count);
        _ends[Count++] = _filled;
    }
}
