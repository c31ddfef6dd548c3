using Gaugerod.Engine.Pieces;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Sheets.Sheets;

/// <summary>How a piece is marked on the tile, in words.</summary>
internal static class CutWords
{
    public const string Key = "Each size is kept, measured from the factory side across from the side named; the waste is on the side named.";

    public static string Of(Piece piece, Figures figures)
    {
        var words = piece.Cuts.Select(c => Cut(c, piece.Cell, figures)).Concat(piece.Inner.Select(h => Hole(h, piece.Cell, figures))).ToArray();
        return words.Length == 0 ? "As the sketch shows." : string.Join("\n", words);
    }

    /// <summary>One cut: <c>left 4 1/2 at foot, 4 5/8 at top</c>.</summary>
    public static string Cut(CutMark cut, Box cell, Figures figures)
    {
        var upright = cut.Away is TileSide.Left or TileSide.Right;
        var whole = upright ? cell.Height : cell.Width;
        var size = figures.SameCut(cut.First, cut.Last)
            ? figures.Cut(cut.Least)
            : $"{figures.Cut(cut.First)} at {(upright ? "foot" : "left")}, {figures.Cut(cut.Last)} at {(upright ? "top" : "right")}";
        return $"{Side(cut.Away)} {size}{Part(cut, whole, upright, figures)}";
    }

    public static string Side(TileSide side) => side switch
    {
        TileSide.Left => "left",
        TileSide.Right => "right",
        TileSide.Bottom => "foot",
        _ => "top",
    };

    private static string Part(CutMark cut, Length whole, bool upright, Figures figures)
    {
        var (start, end) = upright ? ("foot", "top") : ("left", "right");
        if (cut.From <= Length.Zero && cut.To >= whole) return "";
        if (cut.From <= Length.Zero) return $", from the {start} to {figures.Near(cut.To)}";
        return cut.To >= whole
            ? $", from {figures.Near(cut.From)} off the {start} to the {end}"
            : $", from {figures.Near(cut.From)} to {figures.Near(cut.To)} off the {start}";
    }

    private static string Hole(Ring hole, Box cell, Figures figures)
    {
        var box = hole.Bounds;
        var middle = (X: box.Left + box.Right - cell.Left - cell.Left, Y: box.Bottom + box.Top - cell.Bottom - cell.Bottom);
        return $"hole {figures.Near(box.Width)} across, middle {figures.Near(Half(middle.X))} from the left, {figures.Near(Half(middle.Y))} from the foot";
    }

    private static Length Half(Length doubled) => Length.FromSteps(doubled.Steps / 2);
}
