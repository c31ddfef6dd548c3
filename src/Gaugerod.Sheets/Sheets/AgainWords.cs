using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Sheets.Sheets;

/// <summary>What is said of a face measured again.</summary>
public static class AgainWords
{
    /// <summary>What the heights of the courses count from.</summary>
    public const string Heights = "Heights above the face's lower left corner.";

    /// <summary>Which courses are set, and how the last of them stands.</summary>
    public static string Stands(AgainFace again, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(again);
        if (again.Courses < again.From) return "Nothing is set yet.";
        var set = again.From == again.Courses ? $"Course {Figures.Number(again.Courses)} is set." : $"Courses {Figures.Number(again.From)} to {Figures.Number(again.Courses)} are set.";
        return $"{set} The top of course {Figures.Number(again.Courses)} stands {Off(again.OffLeft, again.OffRight, tape)}.";
    }

    /// <summary>How far off the plan both ends of a course are: <c>as planned</c>, <c>3/16 in high</c>, <c>1/8 in high at the left and as planned at the right</c>.</summary>
    public static string Off(Length left, Length right, Tape tape)
    {
        var (one, other) = (Off(left, tape), Off(right, tape));
        return string.Equals(one, other, StringComparison.Ordinal) ? one : $"{one} at the left and {other} at the right";
    }

    /// <summary>How far off the plan a height is; nothing where the tape does not show it.</summary>
    /// <param name="off">How far.</param>
    /// <param name="tape">The tape.</param>
    /// <param name="bare">Whether without the unit.</param>
    public static string OffPlan(Length off, Tape tape, bool bare = false) => off.Abs() * 2 < tape.Mark ? "" : Off(off, tape, bare);

    /// <summary>What a way to go on is called beside the others of its face.</summary>
    public static string Title(AgainFace again, int index)
    {
        ArgumentNullException.ThrowIfNull(again);
        return again.Ways.Count == 1 ? "Go on so" : index == 0 ? "Best" : $"Or, {Figures.Number(index + 1)}";
    }

    /// <summary>What a way comes to: what is cut otherwise, and what of what was asked for is lost.</summary>
    public static string Comes(AgainWay way)
    {
        ArgumentNullException.ThrowIfNull(way);
        var cuts = way.Changed.Count == 0 ? "Every piece is cut as planned." : $"{Figures.Count(way.Changed.Count, "piece is", "pieces are")} cut otherwise than planned.";
        return $"{cuts} {(way.Missed.Count == 0 ? "Nothing that was asked for is lost." : string.Join(" ", way.Missed))}";
    }

    /// <summary>What the rest takes of a product, and whether tiles are short.</summary>
    public static string Tiles(AgainOrder order)
    {
        ArgumentNullException.ThrowIfNull(order);
        var need = $"{order.Product}: the rest takes {Figures.Count(order.Needed, "tile", "tiles")}, and {Figures.Number(order.Left)} of those bought are neither set nor cut.";
        return order.Short > 0 ? $"{need} You are short {Figures.Count(order.Short, "tile", "tiles")}." : need;
    }

    /// <summary>How a piece is cut, each cut kept from the factory side across.</summary>
    public static string Cuts(Piece piece, Tape tape)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return piece.Kind == PieceKind.Full ? "none: a whole tile" : string.Join("; ", piece.Cuts.Select(cut => Said(cut, tape)));
    }

    private static string Off(Length off, Tape tape, bool bare = false) => off == Length.Zero ? "as planned" : $"{(bare ? LengthText.NearestBare(off.Abs(), tape) : LengthText.Nearest(off.Abs(), tape))} {(off > Length.Zero ? "high" : "low")}";

    private static string Said(CutMark cut, Tape tape)
    {
        var side = cut.Away switch { TileSide.Left => "left", TileSide.Right => "right", TileSide.Top => "top", _ => "bottom" };
        var (first, last) = (LengthText.DownBare(cut.First, tape), LengthText.DownBare(cut.Last, tape));
        return string.Equals(first, last, StringComparison.Ordinal) ? $"{side} {first}" : $"{side} {first} to {last}";
    }
}
