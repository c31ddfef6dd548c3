using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>
/// Four tiles chase each other around a small square. The square is what the tiles leave: their length less their width
/// and a joint, so that a tile twice as long as wide, joint included, goes round a square as wide as itself.
/// </summary>
internal static class WindmillBond
{
    public static BondMaking Make(BondTiles tiles)
    {
        var (tile, square, joint) = (tiles.Tile, tiles.Products[1], tiles.Joint);
        var (length, width) = (tile.Width, tile.Height);
        var left = length - width - joint;
        if (left <= Length.Zero)
        {
            return new BondRefusal(
                $"a tile {tiles.Say(length)} by {tiles.Say(width)}", "a tile longer than it is wide by more than a joint",
                // As long as its square asks.
                [Long(width + joint + square.Width), Long(tiles.Over(width + joint + Product.LeastSide)), High()]);
        }

        if (Squares.Refusal(tiles, square) is { } uneven) return uneven;
        if (!BondTiles.Fits(square.Width, left))
        {
            return new BondRefusal($"a square of {tiles.Say(square.Width)}", $"a square that fills what four tiles leave, {tiles.Say(left)}", [tiles.Offer(tiles.Say(left), 1, left, left), Long(width + joint + square.Width), High()]);
        }

        var (l, w) = (length + joint, width + joint);
        // Half of what the square is short of its hole stands at either side.
        var at = w + Length.FromSteps((left - square.Width).Steps / 2);
        return new Bond(
            new(new(l + w, Length.Zero), new(Length.Zero, l + w)),
            [
                BondTile.At(Length.Zero, Length.Zero, length, width), BondTile.At(l, Length.Zero, width, length),
                BondTile.At(w, l, length, width), BondTile.At(Length.Zero, w, width, length),
                BondTile.At(at, at, square.Width, square.Width, 1),
            ],
            Lay.Level);

        BondOffer High() => tiles.Offer($"a height of {tiles.Say(length - joint - square.Width)}", 0, null, length - joint - square.Width);

        // A tile of this length leaves a square of so much.
        BondOffer Long(Length tileLength)
        {
            var (sized, fits) = (tiles.Sized(0, tileLength, null), tileLength - width - joint);
            var same = BondTiles.Fits(square.Width, fits) && square.Width == square.Height;
            return new($"a width of {tiles.Say(tileLength)}{(same ? "" : $", with a square of {tiles.Say(fits)}")}") { Tiles = same ? sized : sized.Sized(1, fits, fits) };
        }
    }
}
