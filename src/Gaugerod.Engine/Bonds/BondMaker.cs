using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>Turns what was asked for into a lattice and a motif. A new bond is one new file and one line here.</summary>
internal static class BondMaker
{
    /// <summary>The bond, or why these tiles do not make it, with what would.</summary>
    public static BondMaking Make(BondRequest request, BondTiles tiles)
    {
        var making = MakeOnce(request, tiles);
        return making.Refusal is not { } refusal ? making : refusal with { Offer = refusal.Offers.FirstOrDefault(Makes) };

        bool Makes(BondOffer offer) => (offer.Tiles is null || offer.Tiles.CanBeHad) && MakeOnce(offer.Request ?? request, offer.Tiles ?? tiles).Bond is not null;
    }

    private static BondMaking MakeOnce(BondRequest request, BondTiles tiles) => request switch
    {
        BondRequest.Grid or BondRequest.Running => request.IsStraight || request.Lay == Lay.Level
            ? Straight(request, tiles.Tile, tiles.Joint)
            : Straight(request, tiles.Tile, tiles.Joint).Transposed(),
        BondRequest.Herringbone herringbone => HerringboneBond.Make(herringbone, tiles),
        BondRequest.Basketweave => BasketweaveBond.Make(tiles),
        BondRequest.Pinwheel => PinwheelBond.Make(request.Turn, tiles),
        BondRequest.Windmill => WindmillBond.Make(tiles),
        BondRequest.Hexagon hexagon => HexagonBond.Make(hexagon, tiles),
        BondRequest.Octagon octagon => OctagonBond.Make(octagon, tiles),
        BondRequest.Chevron chevron => ChevronBond.Make(chevron, tiles),
        BondRequest.Modular => ModularBond.Make(tiles),
        BondRequest.Planks planks => PlankBond.Make(planks, tiles),
        BondRequest.Mosaic mosaic => MosaicBond.Make(mosaic, tiles),
        _ => throw new ArgumentOutOfRangeException(nameof(request), request, "No maker for this bond."),
    };

    /// <summary>A grid or a running bond: any tile makes one.</summary>
    public static Bond Straight(BondRequest request, Product product, Length joint) => request switch
    {
        BondRequest.Grid grid => GridBond.Make(grid, product, joint),
        BondRequest.Running running => RunningBond.Make(running, product, joint),
        _ => throw new ArgumentOutOfRangeException(nameof(request), request, "Not a straight bond."),
    };
}
