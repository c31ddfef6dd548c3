using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;

namespace Gaugerod.Engine.Lines;

/// <summary>The edges that run through one tile, and what kind of piece they make of it.</summary>
internal struct CellCuts
{
    private int _one;
    private int _two;
    private int _three;

    public int Count { get; private set; }

    public bool Drilled { get; set; }

    /// <summary>Takes an edge; edges come in the order of the face's.</summary>
    public void Add(int edge)
    {
        Count++;
        if (Count == 1) _one = edge;
        else if (Count == 2) _two = edge;
        else if (Count == 3) _three = edge;
    }

    /// <summary>
    /// The kind, as <see cref="PieceKinds"/> names it by the piece's outline. Of a tile that comes apart into two pieces it
    /// is one of theirs.
    /// </summary>
    /// <param name="cell">The whole tile.</param>
    /// <param name="edges">The face's edges.</param>
    /// <param name="ring">Where each edge of the face begins and ends.</param>
    /// <param name="mark">The tape's mark; a cut whose two ends read the same is parallel.</param>
    public readonly PieceKind Kind(in FrameCell cell, FrameEdge[] edges, RingWays ring, long mark)
    {
        if (Drilled) return Count == 0 ? PieceKind.Hole : PieceKind.Shaped;
        return Count switch
        {
            1 => Alone(edges[_one], cell, mark),
            2 => Two(cell, edges, ring, mark),
            3 => Three(cell, edges, ring, mark),
            _ => PieceKind.Shaped,
        };
    }

    private static PieceKind Alone(in FrameEdge edge, in FrameCell cell, long mark) =>
        !cell.Spans(edge) ? PieceKind.Shaped : cell.IsParallel(edge, mark) ? PieceKind.Straight : PieceKind.Taper;

    private readonly PieceKind Two(in FrameCell cell, FrameEdge[] edges, RingWays ring, long mark)
    {
        var (first, second) = ring.Follows(_one, _two) ? (edges[_one], edges[_two]) : (edges[_two], edges[_one]);
        var square = cell.IsSide(first) != cell.IsSide(second);
        if (!ring.Follows(first.Edge, second.Edge) || !cell.Holds(ring.End(first.Edge)))
        {
            if (square || !cell.Spans(first) || !cell.Spans(second) || cell.FaceEachOther(first, second)) return PieceKind.Shaped;
            return cell.IsParallel(first, mark) && cell.IsParallel(second, mark) ? PieceKind.Straight : PieceKind.Taper;
        }

        if (!square) return ring.Away(first.Edge) == ring.Away(second.Edge) ? PieceKind.Taper : PieceKind.Shaped;
        var (parallel, turn) = (cell.IsParallel(first, mark) && cell.IsParallel(second, mark), ring.Turn(first.Edge, second.Edge));
        if (turn > 0) return parallel ? PieceKind.Corner : PieceKind.Taper;
        return parallel ? PieceKind.Notch : PieceKind.Shaped;
    }

    private readonly PieceKind Three(in FrameCell cell, FrameEdge[] edges, RingWays ring, long mark)
    {
        var (a, b, c) = (edges[_one], edges[_two], edges[_three]);
        // A ring's last edge comes before its first.
        for (var turned = 0; turned < 2 && !(ring.Follows(a.Edge, b.Edge) && ring.Follows(b.Edge, c.Edge)); turned++) (a, b, c) = (b, c, a);
        if (!ring.Follows(a.Edge, b.Edge) || !ring.Follows(b.Edge, c.Edge) || !cell.Holds(ring.End(a.Edge)) || !cell.Holds(ring.End(b.Edge))) return PieceKind.Shaped;
        if (ring.Away(a.Edge) == ring.Away(b.Edge) && ring.Away(b.Edge) == ring.Away(c.Edge)) return PieceKind.Taper;
        var slot = ring.Turn(a.Edge, b.Edge) < 0 && cell.IsSide(a) == cell.IsSide(c) && ring.Away(a.Edge) != ring.Away(c.Edge)
            && cell.IsParallel(a, mark) && cell.IsParallel(b, mark) && cell.IsParallel(c, mark);
        return slot ? PieceKind.Slot : PieceKind.Shaped;
    }
}

/// <summary>A whole tile as the courses see it, in steps.</summary>
/// <param name="Left">Where it begins along.</param>
/// <param name="Bottom">Where it begins across.</param>
/// <param name="Right">Where it ends along.</param>
/// <param name="Top">Where it ends across.</param>
/// <param name="Lay">How the bond is laid.</param>
internal readonly record struct FrameCell(long Left, long Bottom, long Right, long Top, Lay Lay)
{
    /// <summary>Whether an edge takes off one end of the tile along, as <see cref="CutMarks.Away"/> tells it on the face.</summary>
    public bool IsSide(in FrameEdge edge)
    {
        var (along, across) = (Math.Abs(edge.A1 - edge.A0), Math.Abs(edge.B1 - edge.B0));
        return Lay == Lay.Level ? along <= across : along < across;
    }

    public bool Holds((long Along, long Across) place) => place.Along > Left && place.Along < Right && place.Across > Bottom && place.Across < Top;

    /// <summary>Whether an edge runs from one side of the tile to the side across.</summary>
    public bool Spans(in FrameEdge edge)
    {
        if (IsSide(edge))
        {
            if (edge.LeastAcross > Bottom || edge.MostAcross < Top) return false;
            var (low, high) = (Along(edge, Bottom), Along(edge, Top));
            return low >= Left && low <= Right && high >= Left && high <= Right;
        }

        if (edge.LeastAlong > Left || edge.MostAlong < Right) return false;
        var (one, other) = (edge.AcrossAt(Left), edge.AcrossAt(Right));
        return one >= Bottom && one <= Top && other >= Bottom && other <= Top;
    }

    /// <summary>Whether the two ends of a cut read the same on the tape, from the factory side across.</summary>
    public bool IsParallel(in FrameEdge edge, long mark)
    {
        if (edge.IsSquare) return true;
        // Where the edge leaves the tile by another side, the cut ends there: at nothing, or at the whole tile.
        if (IsSide(edge))
        {
            var (low, high) = (Along(edge, Math.Max(Bottom, edge.LeastAcross)), Along(edge, Math.Min(Top, edge.MostAcross)));
            return Mark(edge.TileAfter ? Right - low : low - Left, Right - Left, mark) == Mark(edge.TileAfter ? Right - high : high - Left, Right - Left, mark);
        }

        var (one, other) = (edge.AcrossAt(Math.Max(Left, edge.LeastAlong)), edge.AcrossAt(Math.Min(Right, edge.MostAlong)));
        return Mark(edge.TileAfter ? Top - one : one - Bottom, Top - Bottom, mark) == Mark(edge.TileAfter ? Top - other : other - Bottom, Top - Bottom, mark);
    }

    /// <summary>Whether the tile lies between two edges of one way, not outside both.</summary>
    public bool FaceEachOther(in FrameEdge one, in FrameEdge other)
    {
        if (one.TileAfter == other.TileAfter) return true;
        var (before, after) = one.TileAfter ? (one, other) : (other, one);
        return IsSide(before) ? Along(before, Bottom) < Along(after, Bottom) : before.AcrossAt(Left) < after.AcrossAt(Left);
    }

    private static long Mark(long distance, long whole, long mark) => Math.Clamp(distance, 0, whole) / mark;

    private static long Along(in FrameEdge edge, long across) => edge.B1 >= edge.B0 ? edge.AlongAt(across) : edge.AlongAtAcross(across);
}
