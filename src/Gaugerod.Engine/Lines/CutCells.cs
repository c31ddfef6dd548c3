using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Lines;

/// <summary>
/// The cut tiles of a face by kind, where each would lie whole. Filled anew at every frame of a tiling that slides, so it
/// keeps its room and is read as plain numbers. All tiles of a face are of one size.
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

    /// <summary>The lower left corners of the tiles of a kind, x and y in turn, in steps of a length on the face.</summary>
    /// <param name="kind">The kind; of whole tiles there are none.</param>
    public ReadOnlySpan<long> Of(PieceKind kind) => _corners[(int)kind].AsSpan(0, _used[(int)kind]);

    internal void Clear() => Array.Clear(_used);

    internal void Add(PieceKind kind, long left, long bottom)
    {
        ref var used = ref _used[(int)kind];
        ref var corners = ref _corners[(int)kind];
        if (used + 2 > corners.Length) Array.Resize(ref corners, Math.Max(64, corners.Length * 2));
        corners[used] = left;
        corners[used + 1] = bottom;
        used += 2;
    }
}
