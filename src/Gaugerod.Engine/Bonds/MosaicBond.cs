using Gaugerod.Engine.Rooms;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>
/// Sheets of chips side by side, the joint between sheets that between chips. What is bought and cut is the sheet; how well a
/// placing does is judged by the chips, so that edges fall on their joints where they can.
/// </summary>
public static class MosaicBond
{
    internal static BondMaking Make(BondRequest.Mosaic request, BondTiles tiles)
    {
        var (sheet, joint) = (tiles.Tile, tiles.Joint);
        var (width, height) = (Chip(sheet.Width, request.Across), Chip(sheet.Height, request.Up));
        if (width < Product.LeastSide || height < Product.LeastSide)
        {
            return new BondRefusal(
                $"{BondTiles.Say(request.Across)} by {BondTiles.Say(request.Up)} chips with joints of {tiles.Say(joint)} in a sheet {tiles.Say(sheet.Width)} by {tiles.Say(sheet.Height)}",
                $"chips of at least {tiles.Say(Product.LeastSide)} between the joints",
                [new($"{BondTiles.Say(Most(sheet.Width, request.Across))} by {BondTiles.Say(Most(sheet.Height, request.Up))} chips") { Request = request with { Across = Most(sheet.Width, request.Across), Up = Most(sheet.Height, request.Up) } }]);
        }

        var chips = GridBond.Make(new(Lay.Level), sheet with { Width = width, Height = height }, joint);
        return GridBond.Make(new(Lay.Level), sheet, joint) with { Chips = chips };

        int Most(Length side, int asked)
        {
            var count = asked;
            while (count > 1 && Chip(side, count) < Product.LeastSide) count--;
            return count;
        }

        Length Chip(Length side, int count) => MosaicBond.Chip(side, count, joint);
    }

    /// <summary>How long a chip is of so many in a sheet: the chips with a joint after each fill the sheet and one joint more.</summary>
    /// <param name="side">The sheet's width or height.</param>
    /// <param name="count">How many chips it has along that; one at least.</param>
    /// <param name="joint">The joint between chips.</param>
    public static Length Chip(Length side, int count, Length joint) => Length.FromSteps((side + joint).Steps / count) - joint;
}
