using System.Globalization;
using Gaugerod.Engine.Pieces;
using Gaugerod.Engine.Planning;

namespace Gaugerod.App.Parts;

/// <summary>Which tile a piece is cut from, in words.</summary>
internal static class SourceTile
{
    /// <summary>The tile's number and what else comes from it: "Tile 70: B21 comes from the same tile."</summary>
    public static string Of(Plan plan, Piece piece)
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
