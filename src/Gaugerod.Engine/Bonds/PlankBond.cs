using Gaugerod.Engine.Rooms;
using Gaugerod.Plane;
using Gaugerod.Plane.Measure;

namespace Gaugerod.Engine.Bonds;

/// <summary>
/// Courses of planks in chance order, each course beginning at chance, no end nearer to an end of the course below than the
/// stagger, and none in line with one two courses below where that can be helped. A repeat is <see cref="Rows"/> courses,
/// each of one plank of every length; the same start gives the same courses anywhere.
/// </summary>
internal static class PlankBond
{
    public const int Rows = 12;

    // How often a whole repeat is begun anew, how many orders of planks a course tries, and in how many steps a stagger that will do is looked for.
    private const int Repeats = 8;
    private const int Orders = 60;
    private const int Parts = 24;

    public static BondMaking Make(BondRequest.Planks request, BondTiles tiles)
    {
        var (height, joint, products) = (tiles.Tile.Height, tiles.Joint, tiles.Products);
        if (products.FirstOrDefault(other => other.Height != height) is { } odd)
        {
            var alike = tiles with { Products = products.Select(plank => plank with { Height = height }).ToSequence() };
            return new BondRefusal($"\"{odd.Name}\", {tiles.Say(odd.Height)} wide", "planks of one width in a course", [new(LengthText.Exact(height, tiles.Tape)) { Tiles = alike }]);
        }

        var lengths = products.Select(plank => (plank.Width + joint).Steps).ToArray();
        if (Laid(lengths, request.Stagger.Steps, request.Start) is not { } rows) return Refusal(request, tiles, lengths);
        var (period, rise) = (Length.FromSteps(lengths.Sum()), height + joint);
        var motif = rows.SelectMany((row, i) => row.Planks.Select(plank =>
            BondTile.At(Length.FromSteps(plank.At - rows[0].Planks[0].At), rise * i, products[plank.Product].Width, height, plank.Product) with { Row = i }));
        return new Bond(new(new(period, Length.Zero), new(Length.Zero, rise * Rows)), motif.ToSequence(), Lay.Level) { Rows = Rows };
    }

    /// <summary>The courses of a repeat; null when none were met with. The last course must suit the one below it and the first, so a repeat that began badly is begun anew.</summary>
    private static List<PlankRow>? Laid(long[] lengths, long stagger, string start)
    {
        var chance = new Chance(start);
        for (var i = 0; i < Repeats; i++)
        {
            var rows = new List<PlankRow>();
            while (rows.Count < Rows && Next(rows, lengths, stagger, chance) is { } row) rows.Add(row);
            if (rows.Count == Rows) return rows;
            // A second course that suits no first will not come of another first.
            if (rows.Count < 2) return null;
        }

        return null;
    }

    /// <summary>A course that keeps the stagger from the one below it and, being the last, from the first; null when there is none in many orders of the planks.</summary>
    private static PlankRow? Next(List<PlankRow> rows, long[] lengths, long stagger, Chance chance)
    {
        var last = rows.Count == Rows - 1;
        PlankRow[] beside = rows.Count == 0 ? [] : last ? [rows[^1], rows[0]] : [rows[^1]];
        PlankRow[] beyond = rows.Count < 2 ? [] : last ? [rows[^2], rows[1]] : rows.Count == Rows - 2 ? [rows[^2], rows[0]] : [rows[^2]];
        PlankRow? kept = null;
        for (var i = 0; i < Orders; i++)
        {
            var row = PlankRow.InChanceOrder(lengths, chance);
            // Half the stagger from the courses two away is plenty; where it cannot be had, what keeps the stagger will do.
            if (row.Anywhere([.. beside.Select(other => (other, stagger)), .. beyond.Select(other => (other, stagger / 2))], chance) is { } best) return best;
            kept ??= row.Anywhere([.. beside.Select(other => (other, stagger))], chance);
        }

        return kept;
    }

    private static BondRefusal Refusal(BondRequest.Planks request, BondTiles tiles, long[] lengths)
    {
        // An end over the middle of the longest plank is as far from its ends as one can be.
        var most = Math.Min(request.Stagger.Steps, lengths.Max() / 2);
        var parts = Enumerable.Range(1, Parts - 1).Select(part => most * (Parts - part) / Parts);
        var staggers = parts.Append(Product.LeastSide.Steps).Select(steps => tiles.Tape.Down(Length.FromSteps(steps))).Append(Product.LeastSide)
            .Where(stagger => stagger >= Product.LeastSide && stagger < request.Stagger).Distinct();
        return new(
            $"a stagger of {tiles.Say(request.Stagger)} with planks of {string.Join(", ", tiles.Products.Select(plank => tiles.Say(plank.Width)))}",
            "a stagger that courses in chance order can keep", staggers.Select(stagger => new BondOffer(tiles.Say(stagger)) { Request = request with { Stagger = stagger } }));
    }
}
