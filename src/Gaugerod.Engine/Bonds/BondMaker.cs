using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>Turns what was asked for into a lattice and a motif. A new bond is one new file and one line here.</summary>
internal static class BondMaker
{
    public static Bond Make(BondRequest request, Product product, Length joint) => request switch
    {
        BondRequest.Grid grid => GridBond.Make(grid, product, joint),
        BondRequest.Running running => RunningBond.Make(running, product, joint),
        _ => throw new ArgumentOutOfRangeException(nameof(request), request, "No maker for this bond."),
    };
}
