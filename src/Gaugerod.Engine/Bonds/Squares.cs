using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>What bonds of square tiles ask of them.</summary>
internal static class Squares
{
    /// <summary>Why a tile is not the square that a bond needs; null when it is.</summary>
    public static BondRefusal? Refusal(BondTiles tiles, Product tile) => tile.Width == tile.Height
        ? null
        : new(
            $"\"{tile.Name}\", {tiles.Say(tile.Width)} by {tiles.Say(tile.Height)}",
            "a square tile", new[] { Length.Min(tile.Width, tile.Height), Length.Max(tile.Width, tile.Height) }
                .Select(side => tiles.Offer($"{tiles.Say(side)} both ways", Enumerable.Range(0, tiles.Products.Count).First(i => tiles.Products[i] == tile), side, side)));
}
