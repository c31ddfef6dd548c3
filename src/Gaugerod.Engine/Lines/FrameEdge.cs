using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Lines;

/// <summary>
/// A side of the field as the courses see it, in steps: along the course and across it. For a bond laid upright the face
/// is turned over its diagonal, so that along is up.
/// </summary>
/// <param name="Class">Side: it ends courses. Level: it lies along them. Raking: neither.</param>
/// <param name="A0">Along, at the end that is lower across (of a side) or earlier along (of the others).</param>
/// <param name="B0">Across, at that end.</param>
/// <param name="A1">Along, at the other end.</param>
/// <param name="B1">Across, at the other end.</param>
/// <param name="TileAfter">Whether tile lies on the side of the larger numbers.</param>
/// <param name="Edge">Its place in the face's edges.</param>
/// <param name="Round">The round that it belongs to, counted from 1; zero for none.</param>
internal readonly record struct FrameEdge(EdgeClass Class, long A0, long B0, long A1, long B1, bool TileAfter, int Edge, int Round = 0)
{
    public long LeastAlong => Math.Min(A0, A1);

    public long MostAlong => Math.Max(A0, A1);

    public long LeastAcross => Math.Min(B0, B1);

    public long MostAcross => Math.Max(B0, B1);

    /// <summary>Whether it runs square to the courses or in line with them.</summary>
    public bool IsSquare => Class == EdgeClass.Side ? A0 == A1 : Class == EdgeClass.Level && B0 == B1;

    public static FrameEdge Of(FieldEdge edge, int index, Lay lay, EdgeLegs legs)
    {
        var (run, rise) = (edge.To.X.Steps - edge.From.X.Steps, edge.To.Y.Steps - edge.From.Y.Steps);
        var (kind, round) = (legs.ClassOf(index), legs.RoundOf(index));
        // Tile lies to the left of the run: above a side that runs right, to the right of one that runs down.
        var after = kind == EdgeClass.Level ? run > 0 : rise < 0;
        var (a0, b0, a1, b1) = (edge.From.X.Steps, edge.From.Y.Steps, edge.To.X.Steps, edge.To.Y.Steps);
        if (lay == Lay.Upright)
        {
            (a0, b0, a1, b1) = (b0, a0, b1, a1);
            kind = kind switch { EdgeClass.Side => EdgeClass.Level, EdgeClass.Level => EdgeClass.Side, _ => kind };
        }

        var turn = kind == EdgeClass.Side ? b0 > b1 : a0 > a1;
        return turn ? new(kind, a1, b1, a0, b0, after, index, round) : new(kind, a0, b0, a1, b1, after, index, round);
    }

    /// <summary>Along at a place across; only for a side, whose ends differ across.</summary>
    public long AlongAt(long across) => A0 == A1 ? A0 : A0 + Divide(A1 - A0, across - B0, B1 - B0);

    /// <summary>Across at a place along; only for an edge whose ends differ along.</summary>
    public long AcrossAt(long along) => B0 == B1 ? B0 : B0 + Divide(B1 - B0, along - A0, A1 - A0);

    /// <summary>Along at a place across, of an edge that lies more along than across; its ends differ across.</summary>
    public long AlongAtAcross(long across) => B1 > B0
        ? A0 + Divide(A1 - A0, across - B0, B1 - B0)
        : A0 + Divide(A1 - A0, B0 - across, B0 - B1);

    /// <summary>a times b by c, to the nearest step. A building is under 2^29 steps, so a long holds the product.</summary>
    private static long Divide(long a, long b, long c) => Plane.Shapes.Grid.FloorDiv((2 * a * b) + c, 2 * c);
}
