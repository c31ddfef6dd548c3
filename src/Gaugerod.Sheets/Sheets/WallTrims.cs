using Gaugerod.Engine.Planning;
using Gaugerod.Engine.Trims;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A piece of trim, a corner piece or a stop, where it sits on a wall.</summary>
/// <param name="Id">Its number on the job.</param>
/// <param name="Outline">Its outline on the wall.</param>
/// <param name="IsCut">Whether the saw has to do with it.</param>
/// <param name="Line">The line it is a piece of, or one of the two that a corner piece belongs to.</param>
/// <param name="Piece">The piece; null for a corner piece or a stop.</param>
/// <param name="Corner">The corner piece or stop; null for a piece of a line.</param>
public sealed record TrimPart(string Id, Ring Outline, bool IsCut, PlannedTrim Line, TrimPiece? Piece, CornerPiece? Corner);

/// <summary>What stands on a wall of its trims; every picture of the wall, on paper and on the screen, draws the same.</summary>
public static class WallTrims
{
    /// <summary>The lines on a wall that have pieces of their own: not what is worked on the field's tiles.</summary>
    public static IReadOnlyList<PlannedTrim> Lines(Plan plan, string wall)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Trims.Lines.Count == 0 ? [] :
        [
            .. plan.Trims.Lines.Where(line => line.Pieces.Count > 0 && string.Equals(line.Face, wall, StringComparison.Ordinal)
                && plan.Job.Trims.Any(trim => !trim.IsWorked && string.Equals(trim.Name, line.Product, StringComparison.Ordinal))),
        ];
    }

    /// <summary>All that is drawn: the pieces of every line from its right end, then corner pieces and stops.</summary>
    public static IReadOnlyList<TrimPart> Of(Plan plan, string wall) => Of(Lines(plan, wall));

    internal static IReadOnlyList<TrimPart> Of(IReadOnlyList<PlannedTrim> lines)
    {
        var pieces = lines.SelectMany(line => line.Pieces.Select(piece => new TrimPart(piece.Id, piece.Outline, !TrimWords.IsWhole(piece), line, piece, null)));
        var corners = lines.SelectMany(line => line.CornerPieces.SelectMany(corner => corner.Parts.Where(part => string.Equals(part.Face, line.Face, StringComparison.Ordinal))
            .Select(part => new TrimPart(corner.Id, part.Outline, false, line, null, corner))));
        return [.. pieces.Concat(corners.DistinctBy(part => part.Id, StringComparer.Ordinal))];
    }
}
