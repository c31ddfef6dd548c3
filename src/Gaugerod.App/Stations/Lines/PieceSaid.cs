using System.Globalization;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;
using Gaugerod.Plane.Measure;
using Gaugerod.Sheets.Sheets;

namespace Gaugerod.App.Stations.Lines;

/// <summary>A piece in words.</summary>
/// <param name="Number">Its number.</param>
/// <param name="Size">The box around it.</param>
/// <param name="What">Its kind, its face and its course.</param>
/// <param name="Cuts">Its cuts, in the words of the printed cut list; empty for a whole tile.</param>
/// <param name="Source">The tile it comes from, and what else does.</param>
internal sealed record PieceSaid(string Number, string Size, string What, IReadOnlyList<string> Cuts, string Source)
{
    public static PieceSaid Of(Plan plan, int run, int face, Piece piece)
    {
        var tape = plan.Job.Tape;
        var kind = PieceWords.Of(piece.Kind);
        return new(
            piece.Id,
            $"{LengthText.Down(piece.Width, tape)} × {LengthText.Down(piece.Height, tape)}",
            string.Create(CultureInfo.InvariantCulture, $"{char.ToUpperInvariant(kind[0])}{kind[1..]}, {piece.Face}, course {piece.Course}"),
            piece.Kind == PieceKind.Full ? [] : CutText.Of(Alone(plan, run, face, piece))[piece.Id].Split('\n'),
            SourceOf(plan, piece));
    }

    /// <summary>The plan with this piece alone: the words of one piece hang on no other, and those of thousands would take too long.</summary>
    private static Plan Alone(Plan plan, int run, int face, Piece piece)
    {
        var of = plan.Runs[run];
        return plan with { Runs = [of with { Faces = [of.Faces[face] with { Pieces = [piece] }] }] };
    }

    private static string SourceOf(Plan plan, Piece piece)
    {
        foreach (var product in plan.Cutting)
        {
            if (!string.Equals(product.Product, piece.Product, StringComparison.Ordinal)) continue;
            foreach (var tile in product.Tiles)
            {
                for (var i = 0; i < tile.Pieces.Count; i++)
                {
                    if (!string.Equals(tile.Pieces[i].Id, piece.Id, StringComparison.Ordinal)) continue;
                    var others = tile.Pieces.Where(other => !string.Equals(other.Id, piece.Id, StringComparison.Ordinal)).Select(other => other.Id).ToList();
                    var rest = others.Count > 0 ? $"{string.Join(" and ", others)} {(others.Count == 1 ? "comes" : "come")} from the same tile" : piece.Kind == PieceKind.Full ? "whole" : "nothing else comes from it";
                    return string.Create(CultureInfo.InvariantCulture, $"Tile {tile.Number}{(plan.Cutting.Count > 1 ? $" of {product.Product}" : "")}: {rest}.");
                }
            }
        }

        return "";
    }
}
