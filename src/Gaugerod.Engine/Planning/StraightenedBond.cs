using Gaugerod.Engine.Bonds;
using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Planning;

/// <summary>A grid or a running bond that is turned by quarters, as the bond that lays the same tiles without being turned.</summary>
internal static class StraightenedBond
{
    /// <summary>The bond; itself where it is straight, null where there is none.</summary>
    public static BondRequest? Of(BondRequest bond)
    {
        if (bond.IsStraight) return bond;
        if (bond is not (BondRequest.Grid or BondRequest.Running) || bond.Free is not null || !bond.Turn.IsSquare) return null;
        if (Quarters(bond) % 2 == 0) return bond with { Turn = Angle.Zero };
        var lay = bond.Lay == Lay.Level ? Lay.Upright : Lay.Level;
        // The next course now lies on the other side, and so sets off the other way.
        return bond is BondRequest.Running running
            ? new BondRequest.Running(lay, running.Denominator - running.Numerator, running.Denominator, running.Stepping)
            : new BondRequest.Grid(lay);
    }

    /// <summary>A place held by hand: where a turned bond's marked corner stands, told by the lower left corner of the same tile.</summary>
    public static HeldPlace Of(HeldPlace place, BondRequest bond, Product product)
    {
        var (width, height) = bond.Lay == Lay.Level ? (product.Width, product.Height) : (product.Height, product.Width);
        var (left, down) = Quarters(bond) switch { 1 => (height, Length.Zero), 2 => (width, height), 3 => (Length.Zero, width), _ => (Length.Zero, Length.Zero) };
        return bond.IsStraight ? place : new([place.X[0] - left], place.Y - down, null);
    }

    private static int Quarters(BondRequest bond) => (((bond.Turn.Thousandths / Angle.QuarterTurn) % 4) + 4) % 4;
}
