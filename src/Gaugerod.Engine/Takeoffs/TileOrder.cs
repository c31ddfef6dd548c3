using System.Globalization;
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
        var counted = planned + product.Breakage + product.Spares;
        var flat = product.FlatPercent is { } percent ? (int)RoundUp((long)counted * percent, 100) : 0;
        var need = counted + flat;
        return new(product.Name, need, "tile", product.PerBox, (int)RoundUp(need, product.PerBox), planned, product.Breakage, product.Spares, flat,
            Basis(product, planned, flat));
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

    private static string Basis(Product product, int planned, int flat)
    {
        var parts = new List<string> { string.Create(CultureInfo.InvariantCulture, $"{planned} by the cut plan") };
        if (product.Breakage > 0) parts.Add(string.Create(CultureInfo.InvariantCulture, $"{product.Breakage} for breakage"));
        if (product.Spares > 0) parts.Add(string.Create(CultureInfo.InvariantCulture, $"{product.Spares} to leave with the client"));
        if (product.FlatPercent is { } percent) parts.Add(string.Create(CultureInfo.InvariantCulture, $"{flat} for the {percent} % asked for"));
        return string.Join(", ", parts) + "; one lot, one caliber";
    }

    private static long RoundUp(long number, long by) => (number + by - 1) / by;
}
