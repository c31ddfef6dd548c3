using Gaugerod.Engine.Pieces;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Cutting;

/// <summary>A piece and where it lies in the tile it is cut from.</summary>
/// <param name="Id">The piece's number.</param>
/// <param name="At">Its outline in the tile, the tile's lower left corner at the origin.</param>
/// <param name="Turned">How many quarters the piece is turned counter-clockwise from how it stands on the wall to how it lies in the tile: 0, 1, 2 or 3.</param>
public sealed record PieceInTile(string Id, Ring At, int Turned);

/// <summary>A straight cut from side to side of what lies on the bench.</summary>
/// <param name="Over">What it cuts, in the tile.</param>
/// <param name="Upright">Whether it runs from the lower side up; else from left to right.</param>
/// <param name="At">Where its kept edge is: from the tile's left, or from its lower side.</param>
/// <param name="Fence">How far the fence stands off, rounded down to the tape's mark: what is kept lies between fence and blade.</param>
/// <param name="FromFar">Whether the kept part, against the fence, is the one to the right or above.</param>
public sealed record SawCut(Box Over, bool Upright, Length At, Length Fence, bool FromFar);

/// <summary>One tile out of the box.</summary>
/// <param name="Number">Its number on the job, from 1 for each product.</param>
/// <param name="Pieces">What is cut from it; one or more.</param>
public sealed record CutTile(int Number, Sequence<PieceInTile> Pieces)
{
    /// <summary>The box it is taken from, counted from 1 as they are opened; null where boxes are not planned, the default.</summary>
    public int? Box { get; init; }

    /// <summary>The cuts that part what is in it, in order; none where a piece is alone in it and marked by hand, or two are cut along their marks.</summary>
    public Sequence<SawCut> Cuts { get; init; } = [];

    /// <summary>The rectangles that fall off, in that order.</summary>
    public Sequence<Box> Left { get; init; } = [];

    /// <summary>Whether its two pieces share it by their outlines, so that it is cut along their marks.</summary>
    public bool Nests { get; init; }
}

/// <summary>One fence distance and what is cut at it.</summary>
/// <param name="Fence">The distance from the factory side, rounded down to the tape's mark so that the piece fits.</param>
/// <param name="Across">Whether the distance is measured along the tile's width (true) or its height.</param>
/// <param name="Pieces">The pieces' numbers.</param>
public sealed record SawSetting(Length Fence, bool Across, Sequence<string> Pieces)
{
    /// <summary>The numbers of tiles that are parted at it, where that gives no piece its size yet.</summary>
    public Sequence<int> Parts { get; init; } = [];

    /// <summary>By how much a piece listed here comes out short, where sizes share the setting; zero where it comes out as asked.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="tape">The tape the fence is set by.</param>
    /// <param name="within">How far sizes that share a setting may differ.</param>
    public Length Short(Piece piece, Tape tape, Length within)
    {
        // A strip from the middle of a tile is sawn at its own size.
        if (!SawSettings.AgainstAFence(piece, tape)) return Length.Zero;
        var most = Length.Zero;
        foreach (var cut in piece.Cuts)
        {
            if (tape.Down(cut.Least) - Fence is var over && over <= within) most = Length.Max(most, over);
        }

        return most;
    }
}

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

    /// <summary>
    /// Whether a piece is reckoned by the middle of its cut, so that the proof holds for tapers laid end to end too: two side by side are
    /// together nowhere longer than the tile, so not on the average either. Else by the longer end of its cut.
    /// </summary>
    public bool AtTheMiddle { get; init; }
}

/// <summary>Pieces that are cut from one blank, and what each weighs in a proof.</summary>
/// <param name="Pieces">Their numbers.</param>
/// <param name="Weight">What one weighs; a whole number from zero.</param>
public sealed record Weighed(Sequence<string> Pieces, long Weight);

/// <summary>
/// Why no fewer tiles would do for pieces of every kind: each has a weight, no tile can hold more than so much weight, and
/// all together weigh so many times that. Any weights prove something; to check these, look for the heaviest tile.
/// </summary>
/// <param name="Kinds">The pieces and their weights.</param>
/// <param name="Heaviest">The most weight that one tile can hold.</param>
/// <param name="Tiles">The least number of tiles that follows: the weight of all by <paramref name="Heaviest"/>, rounded up.</param>
/// <param name="Tried">So many tiles more are needed, since every plan of fewer was tried in vain.</param>
public sealed record WeighingProof(Sequence<Weighed> Kinds, long Heaviest, int Tiles, int Tried);

/// <summary>A way of cutting, and what it costs.</summary>
/// <param name="Tiles">Tiles.</param>
/// <param name="Settings">How many distances the fence is set to.</param>
/// <param name="LaidBy">How often a part is laid by until the fence stands elsewhere.</param>
/// <param name="Cuts">Straight cuts against the fence.</param>
/// <param name="Left">Offcuts that are large enough to keep.</param>
public sealed record CuttingCost(int Tiles, int Settings, int LaidBy, int Cuts, int Left);

/// <summary>Which tile every piece of one product comes from.</summary>
/// <param name="Product">The product's name.</param>
/// <param name="Tiles">The tiles, whole ones among them.</param>
/// <param name="Bought">How many tiles the pieces take.</param>
/// <param name="LowerBound">The least number that any plan under the rules of docs/cutting.md would take.</param>
/// <param name="Proofs">The arguments behind the bound where pieces with one cut share.</param>
/// <param name="Settings">The saw settings, the largest fence first.</param>
/// <param name="ByHand">Pieces marked by hand: tapers, notches, slots, holes and shapes.</param>
public sealed record ProductCutting(
    string Product, Sequence<CutTile> Tiles, int Bought, int LowerBound, Sequence<PairingProof> Proofs,
    Sequence<SawSetting> Settings, Sequence<string> ByHand)
{
    /// <summary>Whether the bound is met.</summary>
    public bool Proved => Bought == LowerBound;

    /// <summary>Whether no plan under the same rules takes fewer tiles than <see cref="Fewest"/>: "fewest" is said flatly only then.</summary>
    public bool FewestIsProved => Fewest?.Tiles == LowerBound;

    /// <summary>The arguments behind the bound where pieces of every kind share.</summary>
    public Sequence<WeighingProof> Weighings { get; init; } = [];

    /// <summary>How many pieces take a tile to themselves in any plan.</summary>
    public int Alone { get; init; }

    /// <summary>What cutting from the fewest tiles costs.</summary>
    public CuttingCost? Fewest { get; init; }

    /// <summary>What it costs when no offcut waits for another setting of the fence.</summary>
    public CuttingCost? Simple { get; init; }
}
