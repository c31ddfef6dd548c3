namespace Gaugerod.Engine.Sharing;

/// <summary>A cover in the making.</summary>
internal sealed class Cover
{
    private readonly Relaxed _relaxed;
    private readonly TileFill _fill;
    private readonly Columns _columns;
    private readonly Pricing _pricing;
    private readonly long _end;

    public Cover(Relaxed relaxed, TileFill fill, int[] want, Columns columns, bool toTheEnd)
    {
        (_relaxed, _fill, _columns) = (relaxed, fill, columns);
        _pricing = new(fill, want, columns, toTheEnd);
        _end = toTheEnd ? fill.Work + 400_000 : long.MaxValue;
    }

    /// <summary>The sum of the parts of tiles.</summary>
    public double Tiles => _columns.Program.Tiles;

    /// <summary>Weights of every kind that give the best bound found, one tile being <see cref="Relaxed.Unit"/>; zero for what is not wanted.</summary>
    public long[] Weights => _pricing.Weights;

    /// <summary>The fills used and how much of each.</summary>
    public IEnumerable<(int[] Fill, double Level)> Used => _columns.Program.Used;

    /// <summary>Goes on to the end, a little at a time.</summary>
    public IEnumerable<bool> Steps()
    {
        do
        {
            foreach (var _ in _columns.Settle()) yield return true;
            yield return true;
            if (_fill.Work > _end) break;
            foreach (var _ in _pricing.Next()) yield return true;
        }
        while (_pricing.GoesOn);
        _relaxed.Know(_columns.Fills);
    }
}
