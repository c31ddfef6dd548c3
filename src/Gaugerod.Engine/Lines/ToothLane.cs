namespace Gaugerod.Engine.Lines;

/// <summary>Those teeth of a face whose cuts may come out smaller than planned by the same.</summary>
/// <param name="off">By how much.</param>
/// <param name="size">A tile's size along the axis.</param>
/// <param name="period">A tile and its joint.</param>
internal sealed class ToothLane(long off, long size, long period)
{
    private readonly ToothRow _grow = new();
    private readonly ToothRow _shrink = new();

    public long Off => off;

    public void Clear()
    {
        _grow.Clear();
        _shrink.Clear();
    }

    public void Sort()
    {
        _grow.Sort();
        _shrink.Sort();
    }

    /// <summary>A growing tooth is known by where it starts, a shrinking one by where it ends: there its leg is nothing.</summary>
    public void Add(in Tooth tooth, int tiles, long over)
    {
        if (tooth.TileAfter) _grow.Add(Plane.Shapes.Grid.Mod(tooth.At - size, period), tiles, over);
        else _shrink.Add(tooth.At, tiles, over);
    }

    /// <summary>The smallest growing leg at a move; of a tile's size or more for none.</summary>
    public long Grown(long u) => _grow.Before(u, period);

    /// <summary>The smallest shrinking leg at a move; of a tile's size or more for none.</summary>
    public long Shrunk(long u) => _shrink.After(u, period);

    /// <summary>How many tiles surely have a leg under a limit.</summary>
    public int Slivers(long u, long limit) => _grow.SliversBefore(u, limit, period) + _shrink.SliversAfter(u, limit, period);
}
