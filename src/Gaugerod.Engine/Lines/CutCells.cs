using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Lines;

/// <summary>
/// The cut tiles of a face by kind, where each would lie whole. Filled anew at every frame of a tiling that slides, so it
/// keeps its room and is read as plain numbers. Each tile is its first corner and which of the bond's outlines it has.
/// </summary>
public sealed class CutCells
{
    private readonly long[][] _corners = new long[(int)PieceKind.Shaped + 1][];
    private readonly int[] _used = new int[(int)PieceKind.Shaped + 1];

    /// <summary>None yet.</summary>
    public CutCells()
    {
        for (var kind = 0; kind < _corners.Length; kind++) _corners[kind] = [];
    }

    /// <summary>The tiles of a kind, three numbers each: x and y of the first corner, in steps of a length on the face, and the place of its outline in the slide's.</summary>
    /// <param name="kind">The kind; of whole tiles there are none.</param>
    public ReadOnlySpan<long> Of(PieceKind kind) => _corners[(int)kind].AsSpan(0, _used[(int)kind]);

    /// <summary>Counts the outlines from another first one.</summary>
    /// <param name="first">The place of what was the first.</param>
    internal void Renumber(int first)
    {
        for (var kind = 0; kind < _used.Length; kind++)
        {
            for (var i = 2; i < _used[kind]; i += 3) _corners[kind][i] += first;
        }
    }

    internal void Clear() => Array.Clear(_used);

    internal void Add(PieceKind kind, long x, long y, int outline)
    {
        ref var used = ref _used[(int)kind];
        ref var corners = ref _corners[(int)kind];
        if (used + 3 > corners.Length) Array.Resize(ref corners, Math.Max(96, corners.Length * 2));
        corners[used] = x;
        corners[used + 1] = y;
        corners[used + 2] = outline;
        used += 3;
    }
}
