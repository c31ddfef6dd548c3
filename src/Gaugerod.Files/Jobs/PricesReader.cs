using Gaugerod.Engine.Prices;
using Gaugerod.Files.Json;
using Gaugerod.Plane;

namespace Gaugerod.Files.Jobs;

/// <summary>Reads the setter's prices and how a price is made of them.</summary>
internal static class PricesReader
{
    private const string OnCost = "on cost", OfPrice = "of price";

    // What a till or a handshake rounds to.
    private static readonly string[] s_steps = ["0.01", "0.05", "0.1", "0.5", "1", "5", "10"];

    /// <summary>The prices; null where the job states none, or none that could be read.</summary>
    /// <param name="entry">What stands there.</param>
    /// <param name="values">Takes what is wrong.</param>
    /// <param name="runs">The runs' names; null for one that has none yet.</param>
    /// <param name="bought">The names of what may be bought, with what each is.</param>
    public static PriceRequest? Read(Entry? entry, Values values, IReadOnlyList<string?> runs, IReadOnlyList<(string? Name, string What)> bought)
    {
        if (entry is null || Fields.Open(entry, PriceForms.Prices, values) is not { } fields) return null;
        var currency = Code(fields["currency"], values);
        var prices = new PriceValues(values, currency);
        var (items, tasks) = (new Uniques("the priced items", parts: false) { Alike = PriceWords.Key }, new Uniques("the tasks", parts: false));
        var request = new PriceRequest(currency ?? new("EUR"))
        {
            Items = fields.Items("items").Select(item => Item(item, prices, items, bought)).OfType<ItemPrice>().ToSequence(),
            Labour = fields.Items("labour").Select(task => LabourReader.Read(task, prices, tasks, runs)).OfType<LabourPrice>().ToSequence(),
            Travel = Charge(fields["travel"], prices),
            Waste = Charge(fields["waste"], prices),
            Margin = Margin(fields["margin"], prices),
            Tax = Tax(fields, prices),
            Rounding = Rounding(fields["rounding"], values, currency),
            Quote = QuoteReader.Read(fields["quote"], prices),
        };
        return currency is null ? null : request;
    }

    private static Currency? Code(Entry? entry, Values values)
    {
        if (entry is null) return null;
        if (entry is Entry.Text { Value: var code } && Currency.IsCode(code)) return new(code);
        var meant = (PriceValues.Written(entry) ?? "").Trim().ToUpperInvariant();
        values.Log.Add(entry, "the three capital letters of a currency (ISO 4217), such as \"EUR\"", Currency.IsCode(meant) ? Values.Quoted(meant) : null);
        return null;
    }

    private static ItemPrice? Item(Entry entry, PriceValues prices, Uniques names, IReadOnlyList<(string? Name, string What)> bought)
    {
        var values = prices.Values;
        if (Fields.Open(entry, PriceForms.Item, values) is not { } fields) return null;
        var name = names.Take(fields["item"], values);

        // One price would price both.
        var alike = name is null ? [] : bought.Where(one => one.Name is not null && string.Equals(PriceWords.Key(one.Name), PriceWords.Key(name), StringComparison.Ordinal)).Distinct().Select(one => one.What).ToList();
        if (alike.Count > 1) values.Log.AddSaid(fields["item"]!, $"\"{name}\", which is the name of {string.Join(" and of ", alike)}", "what only one thing that is bought is called", "another name for one of them");
        if (name is not null && alike.Count == 0 && fields["quantity"] is null && Near.Of(name, bought.Select(one => one.Name).OfType<string>()) is { } meant) values.Log.Doubt(fields["item"]!, DoubtOf.Name, $"\"{name}\", which nothing that is bought is called", "the name of what is bought, or a \"quantity\" of your own", Values.Quoted(meant));
        var free = fields["price"] is Entry.Text { Value: PriceText.ByOthers };
        var price = free ? null : prices.Price(fields["price"]);
        var unit = values.Word(fields["unit"], Words.PriceUnits);
        var (quantity, more, note) = (prices.Quantity(fields["quantity"]), prices.Quantity(fields["more"], none: true) ?? Spread.Zero, values.Note(fields["note"], Values.MostInRow) ?? "");
        if (!free && fields["unit"] is null) fields.Missing("unit", "a unit such as \"box\"");
        if (unit is PriceUnit.Lump) quantity ??= Spread.Of(1);
        if (unit is PriceUnit.Hour && fields["quantity"] is null) fields.Missing("quantity", "how many hours");
        if (fields["more"] is { } beside && quantity is not null) values.Log.AddSaid(beside, "more packs than the plan says, beside a quantity of your own", "one of the two");
        return name is null || (!free && (price is null || unit is null)) ? null : new(name, unit ?? PriceUnit.Each, price) { Quantity = quantity, More = more, Note = note };
    }

    private static Charge? Charge(Entry? entry, PriceValues prices)
    {
        if (entry is null || Fields.Open(entry, PriceForms.Charge, prices.Values) is not { } fields) return null;
        var (price, quantity, called, note) = (prices.Price(fields["price"]), prices.Quantity(fields["quantity"]) ?? Spread.Of(1), fields["called"] is null ? null : fields.Name("called"), prices.Values.Note(fields["note"], Values.MostInRow));
        return price is { } known ? new(known) { Quantity = quantity, Called = called ?? "", Note = note ?? "" } : null;
    }

    private static Margin? Margin(Entry? entry, PriceValues prices)
    {
        // The two differ: a fifth on cost is a sixth of the price.
        if (prices.Percent(entry, [OnCost, OfPrice], $"hundredths, and of what: \"20 % {OnCost}\" or \"15 % {OfPrice}\"") is not var (percent, word)) return null;
        var onCost = string.Equals(word, OnCost, StringComparison.Ordinal);
        if (onCost || percent <= 90) return new(percent, onCost);
        prices.Values.Log.Add(entry!, "at most 90 hundredths of the price");
        return null;
    }

    private static Tax? Tax(Fields fields, PriceValues prices)
    {
        var values = prices.Values;
        var percent = prices.Percent(fields["tax"], [], "hundredths such as \"21 %\"");
        var on = fields.Items("taxOn", atLeast: 1).Select(item => values.Word(item, Words.CostGroups)).OfType<CostGroup>().Distinct().Order().ToSequence();
        var name = fields["taxName"] is null ? null : fields.Name("taxName");
        foreach (var beside in (string[])["taxOn", "taxName"])
        {
            if (fields[beside] is { } said && fields["tax"] is null) values.Log.AddSaid(said, $"a \"{beside}\" and no \"tax\"", "the \"tax\" beside it", "\"tax\": \"..\"");
        }

        if (percent is not var (hundredths, _)) return null;
        if (hundredths > 100)
        {
            values.Log.Add(fields["tax"]!, "hundredths from 0 to 100");
            return null;
        }

        return new(hundredths, on.Count == 0 ? Engine.Prices.Tax.Everything : on) { Name = name ?? "tax" };
    }

    private static decimal? Rounding(Entry? entry, Values values, Currency? currency)
    {
        if (entry is null) return null;
        var steps = s_steps.Where(step => currency is null || decimal.Parse(step, System.Globalization.CultureInfo.InvariantCulture) >= currency.Least).ToList();
        var text = PriceValues.Written(entry);
        if (text is not null && decimal.TryParse(text, System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture, out var step) && steps.Any(one => decimal.Parse(one, System.Globalization.CultureInfo.InvariantCulture) == step)) return step;
        values.Log.Add(entry, Values.OneOf(steps));
        return null;
    }
}
