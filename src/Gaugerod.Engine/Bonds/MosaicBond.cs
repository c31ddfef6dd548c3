using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>
/// Sheets of chips side by side, the joint between sheets that between chips. What is bought and cut is the sheet; how well a
/// placing does is judged by the chips, so that edges fall on their joints where they can.
/// </summary>
internal static class MosaicBond
{
    public static BondMaking Make(BondRequest.Mosaic request, BondTiles tiles)
    {
        var (sheet, joint) = (tiles.Tile, tiles.Joint);
        var (width, height) = (Chip(sheet.Width, request.Across), Chip(sheet.Height, request.Up));
        if (width <= Length.Zero || height <= Length.Zero)
        {
            return new BondRefusal(
                $"{BondTiles.Say(request.Across)} by {BondTiles.Say(request.Up)} chips with joints of {tiles.Say(joint)} in a sheet {tiles.Say(sheet.Width)} by {tiles.Say(sheet.Height)}",
                "joints that leave something of the chips",
                [new($"{BondTiles.Say(Most(sheet.Width, request.Across))} by {BondTiles.Say(Most(sheet.Height, request.Up))} chips") { Request = request with { Across = Most(sheet.Width, request.Across), Up = Most(sheet.Height, request.Up) } }]);
        }

        var chips = GridBond.Make(new(Lay.Level), sheet with { Width = width, Height = height }, joint);
        return GridBond.Make(new(Lay.Level), sheet, joint) with { Chips = chips };

        int Most(Length side, int asked)
        {
            var count = asked;
            while (count > 1 && Chip(side, count) <= Length.Zero) count--;
            return count;
        }

        // A sheet's chips with a joint after each fill the sheet and one joint more.
        Length Chip(Length side, int count) => Length.FromSteps((side + joint).Steps / count) - joint;
    }
}
