using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>
/// A large square and a small one at its lower right. With S and s their sides and joints the steps are (S, s) and (-s, S):
/// a repeat of S² + s², the squares of Pythagoras. Any two sizes will do.
/// </summary>
internal static class PinwheelBond
{
    public static BondMaking Make(Angle turn, BondTiles tiles)
    {
        var (large, small, joint) = (tiles.Tile, tiles.Products[1], tiles.Joint);
        if ((Squares.Refusal(tiles, large) ?? Squares.Refusal(tiles, small)) is { } uneven) return uneven;
        var (big, little) = (large.Width + joint, small.Width + joint);
        if (little >= big)
        {
            return new BondRefusal(
                $"squares of {tiles.Say(large.Width)} with squares of {tiles.Say(small.Width)}",
                "a second square smaller than the run's own", [
                    little > big
                        ? new("the two products exchanged") { Tiles = tiles with { Products = [small, large] } }
                        : new("a grid, for squares of one size") { Request = new BondRequest.Grid(Lay.Level) { Turn = turn } },
                ]);
        }

        return new Bond(
            new(new(big, little), new(-little, big)),
            [BondTile.At(Length.Zero, Length.Zero, large.Width, large.Width), BondTile.At(big, Length.Zero, small.Width, small.Width, 1)],
            Lay.Level);
    }
}
