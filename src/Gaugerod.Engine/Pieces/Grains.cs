using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Pieces;

/// <summary>Which way tiles lie and their grain runs.</summary>
internal static class Grains
{
    private const int HalfTurn = 2 * Angle.QuarterTurn;

    /// <summary>How a grain runs on a tile whose width is turned so far: from 0 to under 180 degrees, since a grain has no head.</summary>
    public static Angle Way(Grain side, Angle lies)
    {
        var turn = lies.Thousandths + (side == Grain.AlongHeight ? Angle.QuarterTurn : 0);
        return Angle.FromThousandths(((turn % HalfTurn) + HalfTurn) % HalfTurn);
    }

    /// <summary>How far a bond turns a tile's width from along: a rectangle as its cell tells, any other as its maker says.</summary>
    public static Angle Lies(BondTile tile, Product product) =>
        tile.IsBox && product.Width != product.Height && tile.Cell.Width == product.Height && tile.Cell.Height == product.Width
            ? Angle.FromThousandths(Angle.QuarterTurn)
            : tile.Lies;
}
