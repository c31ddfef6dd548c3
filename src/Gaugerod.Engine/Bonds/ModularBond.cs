using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>
/// Two tiles of three units by two, four of two by two, two of two by one and four of one by one, which fill a square of six
/// units (the counts are from memory, trade practice). How they lie is the project's own: of all the ways that a search
/// of ours met with, one in which no four tiles meet at a point, no joint runs straight for more than five units, and no
/// two small ones lie side by side; a test holds all three.
/// </summary>
internal static class ModularBond
{
    private const int Side = 6;

    // Where each lies in units, which product it is, and whether it stands upright.
    private static readonly (int X, int Y, int Product, bool Stands)[] s_places =
    [
        (0, 0, 0, false), (-1, -3, 0, true),
        (-2, -5, 1, false), (-3, -3, 1, false), (1, -2, 1, false), (-3, -1, 1, false),
        (-4, -4, 2, false), (1, -4, 2, true),
        (0, -4, 3, false), (2, -3, 3, false), (-1, 0, 3, false), (-3, 1, 3, false),
    ];

    public static BondMaking Make(BondTiles tiles)
    {
        var unit = tiles.Products[3].Width + tiles.Joint;
        if (ModularSizes.Unfit(tiles, unit).Any()) return ModularSizes.Refusal(tiles, unit);

        var motif = s_places.Select(place =>
        {
            var product = tiles.Products[place.Product];
            var (width, height) = place.Stands ? (product.Height, product.Width) : (product.Width, product.Height);
            return BondTile.At(unit * place.X, unit * place.Y, width, height, place.Product);
        });
        return new Bond(new(new(unit * Side, Length.Zero), new(Length.Zero, unit * Side)), motif.ToSequence(), Lay.Level);
    }
}
