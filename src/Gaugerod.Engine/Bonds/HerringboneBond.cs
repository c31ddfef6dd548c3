using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>
/// Tiles laid level and tiles laid upright, each level one a step up and to the right of the one before. With l and w a
/// tile's length and the width of those abreast, joints included, the level tiles' steps are (w, w) and (l, -l); an upright
/// one hangs under each level one's right end. Any l and w with l over w will do.
/// </summary>
internal static class HerringboneBond
{
    public static BondMaking Make(BondRequest.Herringbone request, BondTiles tiles)
    {
        var (tile, joint, abreast) = (tiles.Tile, tiles.Joint, request.Abreast);
        var (l, w) = (tile.Width + joint, (tile.Height + joint) * abreast);
        if (l <= w)
        {
            var (fewer, most) = ((int)((l.Steps - 1) / (tile.Height + joint).Steps), Length.FromSteps(l.Steps / abreast) - joint);
            // A tile is what it is; how many lie side by side is the setter's to say.
            return new BondRefusal(
                $"a tile {tiles.Say(tile.Width)} long, {BondTiles.Say(abreast)} of them side by side {tiles.Say(w - joint)} wide",
                "a tile longer than the tiles side by side are wide",
                [
                    .. fewer > 0 ? [new($"{BondTiles.Say(fewer)} abreast") { Request = request with { Abreast = fewer } }] : Array.Empty<BondOffer>(),
                    Height(tiles.Tape.Down(most - Length.FromSteps(1))), Height(tiles.Under(most)),
                    tiles.Offer($"a width of {tiles.Say(tiles.Over(w - joint))}", 0, tiles.Over(w - joint), null),
                ]);
        }

        var motif = new List<BondTile>();
        for (var i = 0; i < abreast; i++) motif.Add(BondTile.At(Length.Zero, (tile.Height + joint) * i, tile.Width, tile.Height));
        for (var i = 0; i < abreast; i++) motif.Add(BondTile.At(l + ((tile.Height + joint) * i), w - l, tile.Height, tile.Width));
        return new Bond(new(new(w, w), new(l, -l)), motif.ToSequence(), Lay.Level);

        BondOffer Height(Length height) => tiles.Offer($"a height of {tiles.Say(height)}", 0, null, height);
    }
}
