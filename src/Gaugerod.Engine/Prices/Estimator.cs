using Gaugerod.Plane;

namespace Gaugerod.Engine.Prices;

/// <summary>Prices what a plan buys and the work it asks for.</summary>
internal static class Estimator
{
    /// <summary>The estimate. What has no price is a line of its own and in no total.</summary>
    /// <param name="request">The setter's prices.</param>
    /// <param name="bought">What the plan buys.</param>
    /// <param name="work">What the plan has to be done, run by run.</param>
    public static Estimate Of(PriceRequest request, IReadOnlyList<Bought> bought, IReadOnlyList<LabourAmount> work)
    {
        var lines = new List<EstimateLine>();
        foreach (var one in bought) lines.Add(Buy(one, request.Items.FirstOrDefault(price => ListMatching.IsOf(price, one))));
        lines.AddRange(request.Items.Where(price => price.Quantity is not null && !bought.Any(one => ListMatching.IsOf(price, one))).Select(Own));
        lines.AddRange(request.Labour.Select(task => LabourLines.Of(task, work)));
        if (request.Travel is { } travel) lines.Add(Charged(CostGroup.Travel, "travel", travel));
        if (request.Waste is { } waste) lines.Add(Charged(CostGroup.Waste, "waste removal", waste));
        var idle = request.Items.Where(price => price.Quantity is null && !bought.Any(one => ListMatching.IsOf(price, one)));
        return Summing.Of(request, lines.ConvertAll(line => line with { Cost = Cost(line, request.Currency) })) with
        {
            NotUsed = idle.Select(price => $"{price.Item}: the plan buys nothing of this name").ToSequence(),
        };
    }

    /// <summary>Each of the three as it is paid: rounded line by line, so that the lines add up to what is said.</summary>
    private static Spread? Cost(EstimateLine line, Currency currency) =>
        line.IsByOthers ? Spread.Zero : line.Price?.With(line.Quantity, (price, quantity) => currency.Paid(price * quantity));

    private static EstimateLine Buy(Bought bought, ItemPrice? price)
    {
        var usual = bought.Ways[0];
        if (price is null) return new(CostGroup.Materials, bought.Item, Counted(bought.Packs, usual.InPack), usual.Word, null, bought.How) { Lacks = "no price" };
        if (price.Price is null) return new(CostGroup.Materials, bought.Item, Counted(bought.Packs, usual.InPack), usual.Word, null, bought.How) { IsByOthers = true, Note = price.Note, From = price.From };
        if (price.Quantity is { } said)
        {
            var planned = $"{PriceText.Plain(Counted(bought.Packs, usual.InPack))} {usual.Word}";
            var word = bought.Ways.Where(way => way.Unit == price.Unit).Select(way => way.Word).FirstOrDefault(PriceUnits.Word(price.Unit));
            return new(CostGroup.Materials, bought.Item, said, word, price.Price, $"as you say; the plan has {planned}: {bought.How}") { Note = price.Note, From = price.From };
        }

        if (bought.Ways.All(way => way.Unit != price.Unit))
        {
            return new(CostGroup.Materials, bought.Item, Counted(bought.Packs, usual.InPack), usual.Word, null, bought.How) { Lacks = Unfit(bought, price.Unit), Note = price.Note, From = price.From };
        }

        var way = bought.Ways.First(way => way.Unit == price.Unit);
        // Half a pack is not sold.
        var (quantity, how) = (Counted((bought.Packs + price.More).Each(decimal.Ceiling), way.InPack), bought.How);
        if (price.More != Spread.Zero) how += $"; {PriceText.Plain(price.More)} packs more as you say";
        return new(CostGroup.Materials, bought.Item, quantity, way.Word, price.Price, how) { Note = price.Note, From = price.From };
    }

    /// <summary>Why a price by one unit does not price what is bought by others.</summary>
    internal static string Unfit(Bought bought, PriceUnit unit)
    {
        var ways = bought.Ways.Select(way => PriceUnits.Word(way.Unit)).Distinct(StringComparer.Ordinal).ToList();
        return $"no price: one by \"{PriceUnits.Word(unit)}\" does not fit; it is bought by {string.Join(", ", ways)}";
    }

    private static EstimateLine Own(ItemPrice price) => new(CostGroup.Materials, price.Item, price.Quantity!.Value, PriceUnits.Word(price.Unit), price.Price, "as you say")
    {
        IsByOthers = price.Price is null, Note = price.Note, From = price.From,
    };

    private static EstimateLine Charged(CostGroup group, string what, Charge charge) =>
        new(group, what, charge.Quantity, charge.Called.Length > 0 ? charge.Called : PriceUnits.Word(PriceUnit.Lump), charge.Price, "as you say") { Note = charge.Note };

    private static Spread Counted(Spread packs, decimal inPack) => packs.Each(count => Hundredths(count * inPack));

    /// <summary>A quantity as it is priced: to a hundredth, so that whoever multiplies the printed figures gets the printed amount.</summary>
    internal static decimal Hundredths(decimal quantity) => decimal.Round(quantity, 2, MidpointRounding.AwayFromZero);
}
