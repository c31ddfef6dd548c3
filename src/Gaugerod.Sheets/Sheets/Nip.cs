using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What is too shallow to saw: a corner, or a stretch of a side, told by how much of it goes.</summary>
/// <param name="Cuts">The cuts that make it; the words stand in place of theirs.</param>
/// <param name="Words">What to do.</param>
internal sealed record Nip(IReadOnlyList<CutMark> Cuts, string Words)
{
    /// <summary>Whether a cut is told by this nip.</summary>
    public bool Says(CutMark cut) => Cuts.Contains(cut);

    /// <summary>The nips of a piece: up to 1/8 in or 3 mm, common practice, no source.</summary>
    public static IReadOnlyList<Nip> Of(Piece piece, Figures figures) =>
        [.. piece.Cuts.Where(c => c.Away is TileSide.Bottom or TileSide.Top).Select(c => Of(c, piece, figures)).OfType<Nip>()];

    private static Nip? Of(CutMark cut, Piece piece, Figures figures)
    {
        var shallow = figures.Tape.Unit == LengthUnit.Inch ? Length.FromInches(0, 1, 8) : Length.FromMillimetres(3);
        var (atLeft, atRight) = (cut.From <= Length.Zero, cut.To >= piece.Cell.Width);

        // As the kept sizes on the sketch say it: what is cut is rounded down.
        var high = figures.Tape.Nearest(piece.Cell.Height) - figures.Tape.Down(cut.Least);
        if (atLeft == atRight || high == Length.Zero || !figures.SameCut(cut.First, cut.Last)) return null;
        var side = atLeft ? TileSide.Left : TileSide.Right;
        var beside = piece.Cuts.Where(c => c.Away == side && (cut.Away == TileSide.Bottom ? c.From <= Length.Zero && c.To < piece.Cell.Height : c.To >= piece.Cell.Height && c.From > Length.Zero)).ToArray();
        if (beside is not [var upright]) return null;
        var wide = figures.Tape.Nearest(piece.Cell.Width) - figures.Tape.Down(upright.Least);
        if (wide == Length.Zero || Length.Min(wide, high) > shallow) return null;
        var corner = $"{(cut.Away == TileSide.Bottom ? "lower" : "upper")} {CutWords.Side(side)} corner";
        return new([cut, upright], $"a small nip at the {corner}: {figures.Near(wide)} wide, {figures.Near(high)} high; nip it or grind it");
    }
}
