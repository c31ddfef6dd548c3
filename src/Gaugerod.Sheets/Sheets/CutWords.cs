using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Sheets.Sheets;

/// <summary>How a piece is marked on the tile, in words.</summary>
internal static class CutWords
{
    public const string Key = "Each size is kept, measured from the factory side across from the side named; the waste is on the side named.";

    public static string Of(PieceOnFace of, Figures figures)
    {
        var piece = of.Piece;
        var (nips, rounds) = (Nip.Of(piece, figures), RoundCut.Of(piece));
        List<string> words =
        [
            .. piece.Cuts.Where(c => Shows(c, figures) && !nips.Any(n => n.Says(c)) && !rounds.Any(r => r.Holds(c))).Select(c => Cut(c, piece, figures)),
            .. nips.Where(n => !rounds.SelectMany(r => r.Cuts).Any(n.Says)).Select(n => n.Words), .. rounds.Select(r => Round(r, figures)), .. of.Holes.Select(h => Hole(h, piece, figures)),
        ];
        if (CutBothWays(piece, TileSide.Left, TileSide.Right)) words.Add($"piece {figures.Cut(piece.Upright.Bounds.Width)} wide");
        if (CutBothWays(piece, TileSide.Bottom, TileSide.Top)) words.Add($"piece {figures.Cut(piece.Upright.Bounds.Height)} high");
        if (of.Note is { } note) words.Add(note);
        return words.Count == 0 ? "As the sketch shows." : string.Join("\n", words);
    }

    private static bool CutBothWays(Piece piece, TileSide one, TileSide other) =>
        piece.Cuts.Any(c => c.Away == one) && piece.Cuts.Any(c => c.Away == other);

    /// <summary>Whether a cut is long enough to be marked with this tape.</summary>
    private static bool Shows(CutMark cut, Figures figures) => figures.Tape.Nearest(cut.To) != figures.Tape.Nearest(cut.From);

    /// <summary>One cut: <c>left 4 1/2 at foot, 4 5/8 at top</c>.</summary>
    public static string Cut(CutMark cut, Piece piece, Figures figures)
    {
        var upright = cut.Away is TileSide.Left or TileSide.Right;
        var (cell, box) = (piece.Cell, piece.Upright.Bounds);
        var reach = upright ? (From: box.Bottom - cell.Bottom, To: box.Top - cell.Bottom) : (From: box.Left - cell.Left, To: box.Right - cell.Left);
        var size = figures.SameCut(cut.First, cut.Last)
            ? figures.Cut(cut.Least)
            : $"{figures.Cut(cut.First)} at {(upright ? "foot" : "left")}, {figures.Cut(cut.Last)} at {(upright ? "top" : "right")}";
        return $"{Side(cut.Away)} {size}{Part(cut, reach, upright, figures)}";
    }

    /// <summary>A round: its radius, and three places on it, from the tile's left side and its foot.</summary>
    private static string Round(RoundCut round, Figures figures)
    {
        var places = round.Marked.Select(at => $"{figures.Near(at.X)} right {figures.Near(at.Y)} up");
        return $"round{(round.Radius is { } radius ? $", radius {figures.Near(radius)}" : "")}, through {string.Join("; ", places)}";
    }

    public static string Side(TileSide side) => side switch
    {
        TileSide.Left => "left",
        TileSide.Right => "right",
        TileSide.Bottom => "foot",
        _ => "top",
    };

    /// <summary>Where along its side a cut runs; nothing when it runs over the whole piece, to a mark of the tape.</summary>
    private static string Part(CutMark cut, (Length From, Length To) reach, bool upright, Figures figures)
    {
        var (start, end) = upright ? ("foot", "top") : ("left", "right");
        var mark = figures.Tape.Mark;
        var (first, last) = (cut.From - reach.From < mark, reach.To - cut.To < mark);
        if (first && last) return "";
        if (first) return $", from the {start} to {figures.Near(cut.To)}";
        return last
            ? $", from {figures.Near(cut.From)} off the {start} to the {end}"
            : $", from {figures.Near(cut.From)} to {figures.Near(cut.To)} off the {start}";
    }

    private static string Hole(Hole hole, Piece piece, Figures figures)
    {
        var (cell, at) = (piece.Cell, piece.InCell(hole.Centre));
        return $"hole {figures.Near(hole.Diameter)} across, middle {Place(at.X, cell.Width, "left", "right", figures)}, {Place(at.Y, cell.Height, "foot", "top", figures)}";
    }

    private static string Place(Length at, Length size, string start, string end, Figures figures)
    {
        if (at.IsNegative) return $"{figures.Near(at.Abs())} beyond the {start}";
        return at > size ? $"{figures.Near(at - size)} beyond the {end}" : $"{figures.Near(at)} from the {start}";
    }
}
