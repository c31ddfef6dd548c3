using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Lines;

/// <summary>
/// The legs of one row's tiles at rounds. They count only where the round leaves a <see cref="Legs.Neck"/> of the tile on that side of it, which is known
/// when all of its chords in the tile have been seen.
/// </summary>
internal sealed class RoundLegs
{
    /// <summary>Stands for a cut without a leg.</summary>
    public const long None = long.MaxValue - 1;

    private const int Ways = 4;

    private readonly int _rounds;
    private readonly long[] _least;
    private readonly List<Width> _widths = [];

    /// <param name="rounds">How many rounds the face has.</param>
    /// <param name="columns">How many tiles a row has at the most.</param>
    public RoundLegs(int rounds, int columns)
    {
        _rounds = rounds;
        _least = new long[columns * rounds * Ways];
        Array.Fill(_least, long.MaxValue);
    }

    /// <summary>A tile is so wide at a chord.</summary>
    public void Add(long column, in FrameEdge edge, long width, long relax)
    {
        var key = (((column * _rounds) + edge.Round - 1) * Ways) + (edge.Class == EdgeClass.Side ? 0 : 2) + (edge.TileAfter ? 1 : 0);
        _widths.Add(new(column, edge.Edge, key, width, relax));
        _least[key] = Math.Min(_least[key], width);
    }

    /// <summary>Hands on the cuts and forgets them, by their column, edge and leg.</summary>
    public void Settle(Action<long, int, long> cut)
    {
        foreach (var width in _widths)
        {
            if (_least[width.Key] >= Legs.Neck + width.Relax) cut(width.Column, width.Edge, width.Least);
            else if (width.Relax == 0) cut(width.Column, width.Edge, None);
        }

        foreach (var width in _widths) _least[width.Key] = long.MaxValue;
        _widths.Clear();
    }

    private readonly record struct Width(long Column, int Edge, long Key, long Least, long Relax);
}
