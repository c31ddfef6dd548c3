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
    private const int Tries = 400;

    public static BondMaking Make(BondRequest.Planks request, BondTiles tiles)
    {
        var (height, joint, products) = (tiles.Tile.Height, tiles.Joint, tiles.Products);
        if (products.FirstOrDefault(other => other.Height != height) is { } odd)
        {
            return new BondRefusal($"\"{odd.Name}\", {tiles.Say(odd.Height)} wide", "planks of one width in a course", tiles.Say(height));
        }

        var lengths = products.Select(plank => (plank.Width + joint).Steps).ToArray();
        var chance = new Chance(request.Start);
        var rows = new List<PlankRow>();
        while (rows.Count < Rows)
        {
            if (Next(rows, lengths, request.Stagger.Steps, chance) is not { } row) return Refusal(request, tiles, lengths);
            rows.Add(row);
        }

        var (period, rise) = (Length.FromSteps(lengths.Sum()), height + joint);
        var motif = rows.SelectMany((row, i) => row.Planks.Select(plank =>
            BondTile.At(Length.FromSteps(plank.At - rows[0].Planks[0].At), rise * i, products[plank.Product].Width, height, plank.Product) with { Row = i }));
        return new Bond(new(new(period, Length.Zero), new(Length.Zero, rise * Rows)), motif.ToSequence(), Lay.Level) { Rows = Rows };
    }

    /// <summary>A course that keeps the stagger from the one below it and, being the last, from the first; null when none was met with.</summary>
    private static PlankRow? Next(List<PlankRow> rows, long[] lengths, long stagger, Chance chance)
    {
        PlankRow? kept = null;
        var best = -1L;
        for (var i = 0; i < Tries; i++)
        {
            var row = PlankRow.ByChance(lengths, chance);
            var near = rows.Count == 0 ? long.MaxValue : row.Clearance(rows[^1]);
            if (rows.Count == Rows - 1) near = Math.Min(near, row.Clearance(rows[0]));
            if (near < stagger) continue;
            var clear = rows.Count < 2 ? 0 : row.Clearance(rows[^2]);
            if (rows.Count == Rows - 1) clear = Math.Min(clear, row.Clearance(rows[1]));
            // Half the stagger from the course two below is plenty; else the best of many.
            if (clear > best) (kept, best) = (row, clear);
            if (rows.Count < 2 || clear * 2 >= stagger) break;
        }

        return kept;
    }

    private static BondRefusal Refusal(BondRequest.Planks request, BondTiles tiles, long[] lengths)
    {
        // With one end every so often, half of that is the most there can be; chance meets with a third of it at once.
        var most = lengths.Sum() / (lengths.Length * 2);
        return new(
            $"a stagger of {tiles.Say(request.Stagger)} with planks of {string.Join(", ", tiles.Products.Select(plank => tiles.Say(plank.Width)))}",
            "a stagger that courses in chance order can keep", $"{tiles.Say(tiles.Tape.Down(Length.FromSteps(most * 2 / 3)))} or less");
    }
}
