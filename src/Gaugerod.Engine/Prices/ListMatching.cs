using System.Globalization;
using Gaugerod.Plane;

namespace Gaugerod.Engine.Prices;

/// <summary>Finds what of a price list prices what a plan buys, and says of every other line why it does not.</summary>
internal static class ListMatching
{
    /// <summary>The prices with those of the list that the plan has use for, and every line of the list with what became of it.</summary>
    /// <param name="request">The job's own prices, which come first.</param>
    /// <param name="list">The list's lines, as read.</param>
    /// <param name="bought">What the plan buys.</param>
    public static (PriceRequest Request, Sequence<ListLine> List) Of(PriceRequest request, Sequence<ListLine> list, IReadOnlyList<Bought> bought)
    {
        var lines = list.Select(line => line.Price is not null && !request.Currency.Fits(line.Currency)
            ? line with { Fate = ListFate.Unread, Price = null, Said = $"found a price in {line.Currency}, expected {request.Currency.Code}" } : line).ToList();
        Doubles(lines);
        var used = new List<ItemPrice>();
        for (var i = 0; i < lines.Count; i++)
        {
            if (lines[i] is not { Price: { } price, Fate: ListFate.NotUsed } line) continue;
            if (bought.FirstOrDefault(one => IsOf(price, one)) is not { } one) lines[i] = line with { Said = "the plan buys nothing of this name" };
            else if (bought.Count(other => IsOf(price, other)) > 1) lines[i] = line with { Said = "the plan buys two things of this name: rename one of them in the job" };
            else if (request.Items.Any(own => IsOf(own, one))) lines[i] = line with { Said = "the job has a price of its own" };
            else if (price.Price is not null && one.Ways.All(way => way.Unit != price.Unit)) lines[i] = line with { Said = Estimator.Unfit(one, price.Unit) };
            else
            {
                lines[i] = line with { Fate = ListFate.Used };
                used.Add(price);
            }
        }

        return (request with { Items = [.. request.Items, .. used] }, lines.ToSequence());
    }

    /// <summary>Whether a price is of something bought: names are compared without regard to capitals and to how many blanks part words.</summary>
    public static bool IsOf(ItemPrice price, Bought bought) => string.Equals(PriceWords.Key(price.Item), PriceWords.Key(bought.Item), StringComparison.Ordinal);

    private const int Told = 8;

    // Lines that price the same thing differently are all left out: to take one of them would be a guess.
    private static void Doubles(List<ListLine> lines)
    {
        foreach (var alike in Enumerable.Range(0, lines.Count).Where(i => lines[i].Price is not null).GroupBy(i => PriceWords.Key(lines[i].Item), StringComparer.Ordinal).Where(group => group.Skip(1).Any()).ToList())
        {
            var (first, all) = (alike.First(), alike.ToList());
            var same = all.TrueForAll(i => lines[i].Price!.Price == lines[first].Price!.Price && lines[i].Price!.Unit == lines[first].Price!.Unit);
            // Of a list that says one thing a thousand times a few places are enough; each of the lines is named with its own fate all the same.
            var named = string.Join(", ", all.Take(Told).Select(i => $"line {Number(lines[i].First)}: {Said(lines[i].Price!)}")) + (all.Count > Told ? $" and {Number(all.Count - Told)} more" : "");
            foreach (var i in all.Where(i => !same || i != first))
            {
                lines[i] = lines[i] with { Fate = ListFate.Doubled, Said = same ? $"says the same as line {Number(lines[first].First)}" : $"priced more than once ({named}): none of them is used" };
            }
        }
    }

    private static string Said(ItemPrice price) => price.Price is { } known ? $"{PriceText.Plain(known)} by {PriceUnits.Word(price.Unit)}" : PriceText.ByOthers;

    private static string Number(int number) => number.ToString(CultureInfo.InvariantCulture);
}
