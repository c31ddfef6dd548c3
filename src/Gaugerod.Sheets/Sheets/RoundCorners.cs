using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane;

namespace Gaugerod.Sheets.Sheets;

/// <summary>A tile's place that a corner of the room parts: the piece on one wall, and the piece that goes on with it on the next.</summary>
/// <param name="From">The piece on the wall on the left.</param>
/// <param name="To">The piece that goes on, on the wall on the right.</param>
/// <param name="FromTile">The tile that the first is cut from.</param>
/// <param name="ToTile">The tile that the other is cut from: the same one where the offcut goes on.</param>
internal sealed record RoundCorner(Piece From, Piece To, int FromTile, int ToTile);

/// <summary>Finds where the courses of a run go round its corners, and whether the offcut goes on.</summary>
internal static class RoundCorners
{
    /// <summary>All of them of one product, wall by wall, from the top course down; none on runs that begin anew on each face.</summary>
    public static IReadOnlyList<RoundCorner> Of(ProductCutting cutting, Sequence<RunPlan> runs)
    {
        var tiles = cutting.Tiles.SelectMany(t => t.Pieces.Select(p => (p.Id, t.Number))).ToDictionary(p => p.Id, p => p.Number, StringComparer.Ordinal);
        var found = new List<RoundCorner>();
        foreach (var run in runs.Where(r => !r.IsPattern && r.Request.Corners == Corners.Wrap && string.Equals(r.Request.Product, cutting.Product, StringComparison.Ordinal)))
        {
            foreach (var (left, right) in run.Faces.Zip(run.Faces.Skip(1)))
            {
                foreach (var piece in left.Pieces.Where(p => p.Kind != PieceKind.Full))
                {
                    // The same place of the unrolled run: one tile, were there no corner.
                    var place = piece.Cell.Left + left.Face.Unrolled;
                    var next = right.Pieces.Where(p => p.Course == piece.Course && p.Cell.Left + right.Face.Unrolled == place).MinBy(p => p.Outline.Bounds.Left);
                    if (next is null || !tiles.TryGetValue(piece.Id, out var one) || !tiles.TryGetValue(next.Id, out var other) || left.Pieces.Any(p => p.Course == piece.Course && p.Outline.Bounds.Left > piece.Outline.Bounds.Left)) continue;
                    found.Add(new(piece, next, one, other));
                }
            }
        }

        return found;
    }

    /// <summary>One of them in words: <c>A5 goes on as B6: both from tile 12</c>.</summary>
    public static string Words(RoundCorner corner) => corner.FromTile == corner.ToTile
        ? $"{corner.From.Id} goes on as {corner.To.Id}: both from tile {Figures.Number(corner.FromTile)}"
        : $"{corner.From.Id} goes on as {corner.To.Id}: from tiles {Figures.Number(corner.FromTile)} and {Figures.Number(corner.ToTile)}";
}
