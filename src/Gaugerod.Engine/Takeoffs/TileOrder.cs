using Gaugerod.Engine.Rooms;

namespace Gaugerod.Engine.Takeoffs;

/// <summary>What to buy of a tile.</summary>
internal static class TileOrder
{
    /// <summary>
    /// Whole boxes for the tiles that the cut plan takes, with breakage and spares said apart. The cut plan already holds
    /// what cutting wastes, so no flat share goes on top unless the product asks for one; then it is taken of
    /// everything, rounded up.
    /// </summary>
    /// <param name="product">The tile.</param>
    /// <param name="planned">How many tiles the cut plan takes; zero or more.</param>
    internal static OrderLine Order(Product product, int planned)
    {
        ArgumentNullException.ThrowIfNull(product);
        ArgumentOutOfRangeException.ThrowIfNegative(planned);
        return new Extra(product.Breakage, product.Spares, product.FlatPercent).Line(product.Name, "tile", product.PerBox, planned, "cut plan", "one lot, one caliber");
    }

    /// <summary>
    /// The flat method, for comparison and only when asked: an area and a share for waste, in whole packs. Areas in
    /// one unit, any; a pack may be a box, a tile or a square metre.
    /// </summary>
    /// <param name="area">The area to tile; zero or more.</param>
    /// <param name="percent">The share for waste, in hundredths; zero or more.</param>
    /// <param name="perPack">The area of a pack; above zero. Whether a box's printed area counts the joints must be looked up.</param>
    internal static AreaOrder ByArea(decimal area, int percent, decimal perPack)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(area);
        ArgumentOutOfRangeException.ThrowIfNegative(percent);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(perPack);
        var withShare = area * (100 + percent) / 100;
        return new(withShare, (int)decimal.Ceiling(withShare / perPack));
    }
}
