using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;
using Gaugerod.Plane.Shapes;

namespace Gaugerod.Engine.Bonds;

/// <summary>
/// Each course set off from the one before by a part of a tile and its joint. Stepping one way, one tile on a slanting
/// lattice; stepping there and back, two courses repeated square.
/// </summary>
internal static class RunningBond
{
    public static Bond Make(BondRequest.Running request, Product product, Length joint)
    {
        var (along, across) = (product.Width + joint, product.Height + joint);
        // A third of a tile and its joint seldom is a whole step. Rounded once here, every course steps alike; over
        // thirty courses the bond is then at most 0.005 mm from the true third.
        var offset = Length.FromSteps(Grid.NearestStep((Int128)along.Steps * request.Numerator, request.Denominator));
        var tile = BondTile.At(Length.Zero, Length.Zero, product.Width, product.Height);
        // There and back by just half of it is the same as one way.
        return request.Stepping == Stepping.OneWay || offset * 2 == along
            ? new(new(new(along, Length.Zero), new(offset, across)), [tile], request.Lay)
            : new(
                new(new(along, Length.Zero), new(Length.Zero, across * 2)),
                [tile, BondTile.At(offset, across, product.Width, product.Height) with { Row = 1 }],
                request.Lay) { Rows = 2 };
    }
}
