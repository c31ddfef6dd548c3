using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>Joints in line both ways: one tile, repeated square.</summary>
internal static class GridBond
{
    public static Bond Make(BondRequest.Grid request, Product product, Length joint) => new(
        new(new(product.Width + joint, Length.Zero), new(Length.Zero, product.Height + joint)),
        [BondTile.At(Length.Zero, Length.Zero, product.Width, product.Height)],
        request.Lay);
}
