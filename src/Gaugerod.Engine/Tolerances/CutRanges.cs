using Gaugerod.Engine.Lines;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Tolerances;

/// <summary>Says for every edge of a face how sure its cuts are.</summary>
internal static class CutRanges
{
    /// <summary>The ranges, one for each edge that cuts tiles, in the order of the face's edges.</summary>
    /// <param name="face">The face.</param>
    /// <param name="pieces">What is set on it.</param>
    /// <param name="lines">The lines snapped on it; what is set is counted from them.</param>
    /// <param name="joint">The joint.</param>
    /// <param name="stack">What adds up.</param>
    public static IEnumerable<CutRange> Of(FinishedFace face, Sequence<Piece> pieces, IReadOnlyList<SnapLine> lines, Length joint, ErrorStack stack)
    {
        var (plumb, level) = (At(lines, Axis.Plumb), At(lines, Axis.Level));
        var cuts = from piece in pieces from cut in piece.Cuts select (cut.Faces, cut.Least, Whole: Across(piece, cut.Away), Tiles: Tiles(piece, cut.Away, plumb, level, joint));
        var byEdge = cuts.Where(cut => cut.Faces.Length > 0).GroupBy(cut => cut.Faces, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.ToList(), StringComparer.Ordinal);
        foreach (var edge in face.Edges.Select(edge => edge.Name).Distinct(StringComparer.Ordinal))
        {
            if (!byEdge.TryGetValue(edge, out var own)) continue;
            var tiles = own.Max(cut => cut.Tiles);
            yield return new(face.Name, edge, own.Min(cut => cut.Least), own[0].Whole, tiles, stack.GiveOrTake(tiles, tiles + 1), stack.AtWorst(tiles, tiles + 1));
        }
    }

    private static Length Across(Piece piece, TileSide away) => away is TileSide.Left or TileSide.Right ? piece.Cell.Right - piece.Cell.Left : piece.Cell.Top - piece.Cell.Bottom;

    /// <summary>How many whole tiles stand between the line a piece's row is counted from and the piece.</summary>
    private static int Tiles(Piece piece, TileSide away, Length? plumb, Length? level, Length joint)
    {
        var (from, middle) = away is TileSide.Left or TileSide.Right ? (plumb, piece.Cell.Left + piece.Cell.Right) : (level, piece.Cell.Bottom + piece.Cell.Top);
        if (from is not { } line) return 0;
        var (twice, repeat) = ((middle - (line * 2)).Abs().Steps, (Across(piece, away) + joint).Steps);
        return (int)(twice / (2 * repeat));
    }

    private static Length? At(IReadOnlyList<SnapLine> lines, Axis axis)
    {
        foreach (var line in lines)
        {
            if (line.Axis == axis) return line.At;
        }

        return null;
    }
}
