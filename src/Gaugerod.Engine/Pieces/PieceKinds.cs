using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Pieces;

/// <summary>Names what kind of piece an outline is.</summary>
internal static class PieceKinds
{
    /// <summary>The kind.</summary>
    /// <param name="outline">The outline, sides tagged.</param>
    /// <param name="cuts">Its cuts, in the outline's order.</param>
    /// <param name="drilled">Whether a round hole is in it or at its side.</param>
    /// <param name="framed">Whether an opening lies wholly inside it.</param>
    /// <param name="cell">The whole tile.</param>
    /// <param name="tape">A cut whose two ends read the same on this tape is parallel.</param>
    public static PieceKind Of(TaggedCorner[] outline, Sequence<CutMark> cuts, bool drilled, bool framed, Box cell, Tape tape)
    {
        if (framed) return PieceKind.Shaped;
        if (cuts.Count == 0) return drilled ? PieceKind.Hole : PieceKind.Full;
        if (drilled) return PieceKind.Shaped;
        var parallel = cuts.All(cut => tape.Down(cut.First) == tape.Down(cut.Last));
        if (cuts.Count == 1)
        {
            if (!Spans(cuts[0], cell)) return PieceKind.Shaped;
            return parallel ? PieceKind.Straight : PieceKind.Taper;
        }

        // A wall with a bend in it: one cut all the same, set out at its ends and at the bend.
        if (cuts.All(cut => cut.Away == cuts[0].Away) && OneAfterAnother(outline, cuts.Count)) return PieceKind.Taper;

        if (cuts.Count == 2)
        {
            var turn = Turn(outline);
            if (turn > 0 && Square(cuts[0], cuts[1])) return parallel ? PieceKind.Corner : PieceKind.Taper;
            return turn < 0 && parallel && Square(cuts[0], cuts[1]) ? PieceKind.Notch : PieceKind.Shaped;
        }

        return cuts.Count == 3 && parallel && OneAfterAnother(outline, 3) && Turn(outline) < 0 && cuts[0].Away == Across(cuts[2].Away)
            ? PieceKind.Slot
            : PieceKind.Shaped;
    }

    private static bool Spans(CutMark cut, Box cell)
    {
        var whole = cut.Away is TileSide.Left or TileSide.Right ? cell.Height : cell.Width;
        return cut.From == Length.Zero && cut.To == whole;
    }

    private static bool Square(CutMark one, CutMark other) =>
        one.Away is TileSide.Left or TileSide.Right != other.Away is TileSide.Left or TileSide.Right;

    private static TileSide Across(TileSide side) => side switch
    {
        TileSide.Left => TileSide.Right,
        TileSide.Right => TileSide.Left,
        TileSide.Bottom => TileSide.Top,
        _ => TileSide.Bottom,
    };

    /// <summary>Which way the outline turns where the first cut meets the next: 1 outwards, -1 inwards, 0 where they do not meet.</summary>
    private static int Turn(TaggedCorner[] outline)
    {
        for (var i = 0; i < outline.Length; i++)
        {
            var (a, b, c) = (outline[i], outline[(i + 1) % outline.Length], outline[(i + 2) % outline.Length]);
            if (a.Tag < 0 || b.Tag < 0) continue;
            return Int128.Sign(((Int128)(b.X - a.X) * (c.Y - b.Y)) - ((Int128)(b.Y - a.Y) * (c.X - b.X)));
        }

        return 0;
    }

    private static bool OneAfterAnother(TaggedCorner[] outline, int count) =>
        Enumerable.Range(0, outline.Length).Any(start =>
            Enumerable.Range(0, count).All(i => outline[(start + i) % outline.Length].Tag >= 0));
}
