using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>The four sizes of the modular set in units of its smallest, each less a joint; and what to say of tiles that are not so.</summary>
internal static class ModularSizes
{
    private const int Smallest = 3;

    private static readonly (int Width, int Height)[] s_units = [(3, 2), (2, 2), (2, 1), (1, 1)];

    /// <summary>Which of the tiles are not of the size they should be.</summary>
    public static IEnumerable<int> Unfit(BondTiles tiles, Length unit) => Enumerable.Range(0, s_units.Length).Where(i =>
        !BondTiles.Fits(tiles.Products[i].Width, Size(tiles, unit, i).Width) || !BondTiles.Fits(tiles.Products[i].Height, Size(tiles, unit, i).Height));

    /// <summary>Why the tiles are no set: those that do not go with most of the others, with the sizes that would.</summary>
    public static BondRefusal Refusal(BondTiles tiles, Length smallest)
    {
        var agreed = Enumerable.Range(0, s_units.Length).Reverse().SelectMany(i => Units(tiles, i)).Prepend(smallest).Distinct().OrderBy(unit => Unfit(tiles, unit).Count()).First();
        var unfit = Unfit(tiles, agreed).ToList();
        var wrong = unfit.Count > 0 ? unfit[0] : Smallest;
        var (width, height) = s_units[wrong];
        // What the smallest tile is off by unseen, the largest would be off by three times.
        BondOffer[] offers = [Offer(tiles, agreed, unfit), Offer(tiles, agreed, unfit.Append(Smallest)), Offer(tiles, smallest, Unfit(tiles, smallest))];
        return new(
            $"\"{tiles.Products[wrong].Name}\", {tiles.Say(tiles.Products[wrong].Width)} by {tiles.Say(tiles.Products[wrong].Height)}, in a set with a unit of {tiles.Say(agreed)}",
            $"a tile of {BondTiles.Say(width)} by {BondTiles.Say(height)} units less a joint", offers);
    }

    private static BondOffer Offer(BondTiles tiles, Length unit, IEnumerable<int> which)
    {
        var (offered, said, unfit) = (tiles, new List<string>(), which.Distinct().ToList());
        foreach (var i in unfit)
        {
            var (width, height) = Size(tiles, unit, i);
            offered = offered.Sized(i, width, height);
            said.Add($"{tiles.Say(width)} by {tiles.Say(height)}{(unfit.Count > 1 ? $" for \"{tiles.Products[i].Name}\"" : "")}");
        }

        return new(string.Join(", ", said)) { Tiles = offered };
    }

    private static IEnumerable<Length> Units(BondTiles tiles, int i)
    {
        yield return Length.FromSteps((tiles.Products[i].Width + tiles.Joint).Steps / s_units[i].Width);
        yield return Length.FromSteps((tiles.Products[i].Height + tiles.Joint).Steps / s_units[i].Height);
    }

    private static (Length Width, Length Height) Size(BondTiles tiles, Length unit, int i) => ((unit * s_units[i].Width) - tiles.Joint, (unit * s_units[i].Height) - tiles.Joint);
}
