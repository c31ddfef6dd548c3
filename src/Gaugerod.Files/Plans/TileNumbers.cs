using Gaugerod.Engine.Cutting;
using Gaugerod.Engine.Pieces;

namespace Gaugerod.Files.Plans;

/// <summary>Finds the tile that a piece is cut from.</summary>
internal sealed class TileNumbers
{
    private readonly Dictionary<(string Product, string Id), (int Number, int Turned)> _tiles = [];

    public TileNumbers(IEnumerable<ProductCutting> cutting)
    {
        foreach (var product in cutting)
        {
            foreach (var tile in product.Tiles)
            {
                foreach (var piece in tile.Pieces) _tiles[(product.Product, piece.Id)] = (tile.Number, piece.Turned);
            }
        }
    }

    /// <summary>The tile's number and how many quarters the piece is turned; null when no cut plan names the piece.</summary>
    public (int Number, int Turned)? Of(Piece piece) => _tiles.TryGetValue((piece.Product, piece.Id), out var tile) ? tile : null;
}
