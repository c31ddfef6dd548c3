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
                $"a width over {tiles.Say(width + joint)}");
        }

        if (Squares.Refusal(tiles, square) is { } uneven) return uneven;
        if (!BondTiles.Fits(square.Width, left))
        {
            return new BondRefusal($"a square of {tiles.Say(square.Width)}", $"a square that fills what four tiles leave, {tiles.Say(left)}", tiles.Say(left));
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
    }
}
