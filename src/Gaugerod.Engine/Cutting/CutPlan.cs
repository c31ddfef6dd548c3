using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Cutting;

/// <summary>A piece and where it lies in the tile it is cut from.</summary>
/// <param name="Id">The piece's number.</param>
/// <param name="At">Its outline in the tile, the tile's lower left corner at the origin.</param>
/// <param name="Turned">How many quarters the piece is turned counter-clockwise from how it stands on the wall to how it lies in the tile: 0, 1, 2 or 3.</param>
public sealed record PieceInTile(string Id, Ring At, int Turned);

/// <summary>One tile out of the box.</summary>
/// <param name="Number">Its number on the job, from 1 for each product.</param>
/// <param name="Pieces">What is cut from it; one, or two.</param>
public sealed record CutTile(int Number, Sequence<PieceInTile> Pieces)
{
    /// <summary>The box it is taken from, counted from 1 as they are opened; null where boxes are not planned, the default.</summary>
    public int? Box { get; init; }
}

/// <summary>One fence distance and what is cut at it.</summary>
/// <param name="Fence">The distance from the factory side, rounded down to the tape's mark so that the piece fits.</param>
/// <param name="Across">Whether the distance is measured along the tile's width (true) or its height.</param>
/// <param name="Pieces">The pieces' numbers.</param>
public sealed record SawSetting(Length Fence, bool Across, Sequence<string> Pieces);

/// <summary>
/// Why no fewer tiles would do for the pieces with one straight cut. A pair may share a tile only when both fit; take
/// the <paramref name="Removed"/> smallest pieces away and so many groups of odd size are left that at least so many
/// pieces stay alone (Tutte and Berge).
/// </summary>
/// <param name="Pool">Which pieces: those whose cut is measured along the tile's <c>width</c>, its <c>height</c>, or <c>width or height</c>.</param>
/// <param name="Pieces">How many pieces there are.</param>
/// <param name="Removed">How many of the smallest are taken away.</param>
/// <param name="OddGroups">How many groups of odd size are left.</param>
/// <param name="Tiles">The least number of tiles this proves: the pieces less <c>(Pieces + Removed - OddGroups) / 2</c>, rounded down.</param>
public sealed record PairingProof(string Pool, int Pieces, int Removed, int OddGroups, int Tiles)
{
    /// <summary>
    /// Null when the tile may be turned half round. Otherwise a piece that keeps the tile's left or lower end may share
    /// only with one that keeps the other end, and this many of the removed are the smallest of the left or lower end,
    /// the rest of them the smallest of the other end (Koenig): nothing that is left can share, each is a group alone.
    /// </summary>
    public int? RemovedAtNearEnd { get; init; }
}

/// <summary>Which tile every piece of one product comes from.</summary>
/// <param name="Product">The product's name.</param>
/// <param name="Tiles">The tiles, whole ones among them.</param>
/// <param name="Bought">How many tiles the pieces take.</param>
/// <param name="LowerBound">The least number that any plan under the rules of this version would take.</param>
/// <param name="Proofs">The arguments behind the bound.</param>
/// <param name="Settings">The saw settings, the largest fence first.</param>
/// <param name="ByHand">Pieces marked by hand: tapers, notches, slots, holes and shapes.</param>
public sealed record ProductCutting(
    string Product, Sequence<CutTile> Tiles, int Bought, int LowerBound, Sequence<PairingProof> Proofs,
    Sequence<SawSetting> Settings, Sequence<string> ByHand)
{
    /// <summary>Whether the bound is met.</summary>
    public bool Proved => Bought == LowerBound;
}
