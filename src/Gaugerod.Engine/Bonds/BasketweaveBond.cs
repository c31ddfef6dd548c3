using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>
/// Blocks as wide as a tile is long, tiles level in one and upright in the next. Of n tiles side by side with their n - 1
/// joints a block is square when L = n W + (n - 1) j (trade practice; so also on the page cited for it in the project's
/// notes); the joint inside a block is what makes it so, and must be one that is allowed.
/// </summary>
internal static class BasketweaveBond
{
    private const int Most = 12;

    public static BondMaking Make(BondTiles tiles)
    {
        var (tile, joint) = (tiles.Tile, tiles.Joint);
        var module = (tile.Height + joint).Steps;
        var n = (int)Math.Min(Most, (tile.Width.Steps + joint.Steps + (module / 2)) / module);
        var inner = n < 2 ? Length.Zero : Length.FromSteps((tile.Width - (tile.Height * n)).Steps / (n - 1));
        if (n < 2 || !tiles.Allows(inner))
        {
            n = Math.Max(n, 2);
            var (width, height) = ((tile.Height * n) + (joint * (n - 1)), Length.FromSteps((tile.Width - (joint * (n - 1))).Steps / n));
            return new BondRefusal(
                $"a tile {tiles.Say(tile.Width)} by {tiles.Say(tile.Height)}",
                $"a tile as long as {BondTiles.Say(n)} side by side with their joints",
                [tiles.Offer($"a width of {tiles.Say(width)}", 0, width, null), tiles.Offer($"a height of {tiles.Say(height)}", 0, null, height)]);
        }

        var block = tile.Width + joint;
        var motif = new List<BondTile>();
        for (var i = 0; i < n; i++) motif.Add(BondTile.At(Length.Zero, (tile.Height + inner) * i, tile.Width, tile.Height));
        for (var i = 0; i < n; i++) motif.Add(BondTile.At(block + ((tile.Height + inner) * i), Length.Zero, tile.Height, tile.Width));
        return new Bond(new(new(block, block), new(block * 2, Length.Zero)), motif.ToSequence(), Lay.Level);
    }
}
