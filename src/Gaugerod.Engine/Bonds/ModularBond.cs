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

    private static readonly (int Width, int Height)[] s_sizes = [(3, 2), (2, 2), (2, 1), (1, 1)];

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
        var (small, joint) = (tiles.Products[3], tiles.Joint);
        if (Squares.Refusal(tiles, small) is { } uneven) return uneven;
        var unit = small.Width + joint;
        for (var i = 0; i < s_sizes.Length; i++)
        {
            var product = tiles.Products[i];
            var (width, height) = ((unit * s_sizes[i].Width) - joint, (unit * s_sizes[i].Height) - joint);
            if (BondTiles.Fits(product.Width, width) && BondTiles.Fits(product.Height, height)) continue;
            return new BondRefusal(
                $"\"{product.Name}\", {tiles.Say(product.Width)} by {tiles.Say(product.Height)}, with a unit of {tiles.Say(unit)} from \"{small.Name}\" and its joint",
                $"a tile of {BondTiles.Say(s_sizes[i].Width)} by {BondTiles.Say(s_sizes[i].Height)} units less a joint",
                $"{tiles.Say(width)} by {tiles.Say(height)}");
        }

        var motif = s_places.Select(place =>
        {
            var product = tiles.Products[place.Product];
            var (width, height) = place.Stands ? (product.Height, product.Width) : (product.Width, product.Height);
            return BondTile.At(unit * place.X, unit * place.Y, width, height, place.Product);
        });
        return new Bond(new(new(unit * Side, Length.Zero), new(Length.Zero, unit * Side)), motif.ToSequence(), Lay.Level);
    }
}
