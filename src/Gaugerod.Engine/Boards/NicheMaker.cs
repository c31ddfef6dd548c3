using System.Globalization;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Boards;

/// <summary>Lines niches with the board of their wall. The wall's board ends at the opening and covers the edges of the sides, whose faces are flush with its cut.</summary>
internal static class NicheMaker
{
    /// <summary>The linings of a face's niches.</summary>
    /// <param name="task">The face.</param>
    /// <param name="before">How many pieces have numbers before theirs.</param>
    public static IEnumerable<NicheBoards> Of(BoardTask task, int before)
    {
        var screws = new BoardScrews(task.Product, null, [], [], task.Field);
        foreach (var opening in Lined(task))
        {
            var pieces = Parts(opening, task.Product).Select((part, i) => new NichePiece(
                string.Create(CultureInfo.InvariantCulture, $"b{before + i + 1}"), part.Part, Length.Max(part.One, part.Other), Length.Min(part.One, part.Other), screws.Of([Rectangle(part.One, part.Other)]).Count)).ToSequence();
            before += pieces.Count;
            yield return new(opening.Name, opening.Ring.Bounds.Width, opening.Ring.Bounds.Height, opening.Depth!.Value, pieces);
        }
    }

    /// <summary>Refuses a niche that is no deeper than its board is thick, or whose pieces come out of no sheet.</summary>
    public static void Check(BoardTask task, Remarks remarks)
    {
        var sheet = task.Product;
        foreach (var opening in Lined(task))
        {
            var path = task.Face.Openings.First(ring => string.Equals(ring.Name, opening.Name, StringComparison.Ordinal)).Path + ".depth";
            if (opening.Depth <= sheet.Thickness) remarks.Refuse(path, remarks.Say(opening.Depth!.Value), $"more than the board is thick, {remarks.Say(sheet.Thickness)}", "measure from the wall's board to that at the back");
            else if (Parts(opening, sheet).Any(part => Length.Max(part.One, part.Other) > sheet.Length || Length.Min(part.One, part.Other) > sheet.Width))
            {
                remarks.Refuse(path, $"a niche that no sheet of {sheet.Name} lines in five pieces", $"one whose back and sides each come out of a sheet, {remarks.Say(sheet.Width)} by {remarks.Say(sheet.Length)}", "leave the depth out, and board it as walls of its own");
            }
        }
    }

    private static IEnumerable<Opening> Lined(BoardTask task) => task.Face.Face.Openings.Where(opening => opening.Depth is not null);

    private static IEnumerable<(NichePart Part, Length One, Length Other)> Parts(Opening opening, BoardProduct board)
    {
        var (box, twice) = (opening.Ring.Bounds, board.Thickness + board.Thickness);
        var side = opening.Depth!.Value - board.Thickness;
        return
        [
            (NichePart.Back, box.Width + twice, box.Height + twice), (NichePart.Bottom, box.Width + twice, side), (NichePart.Top, box.Width + twice, side),
            (NichePart.Left, side, box.Height), (NichePart.Right, side, box.Height),
        ];
    }

    private static TaggedCorner[] Rectangle(Length width, Length height) =>
        [.. Ring.Of(new Box(Length.Zero, Length.Zero, width, height)).Points.Select(at => new TaggedCorner(at.X.Steps, at.Y.Steps, 0))];
}
