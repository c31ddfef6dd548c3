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
        var (quarters, isLevel) = (Quarters(bond), bond.Lay == Lay.Level);
        var lay = isLevel == (quarters % 2 == 0) ? Lay.Level : Lay.Upright;
        if (bond is not BondRequest.Running running) return new BondRequest.Grid(lay);
        // There and back the next course is set off alike on both sides, and only its way along may be turned round. Going one way,
        // a half turn takes the other side for the other way, and after a quarter the one or the other is turned round.
        var round = running.Stepping == Stepping.OneWay ? quarters % 2 == 1 : quarters == 2 || isLevel == (quarters == 3);
        return new BondRequest.Running(lay, round ? running.Denominator - running.Numerator : running.Numerator, running.Denominator, running.Stepping);
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
